namespace GuideBuilder.Cli.Disk;

/// <summary>Which folders may become a handbook.</summary>
internal static class Targets
{
    /// <summary>The full path of a folder that may be written: new, empty, or made by this program. Anything else is a fault and nothing is touched.</summary>
    internal static string Check(string folder)
    {
        var target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        if (Refusal(target) is { } why)
        {
            throw new ShellException(ShellFaults.NotAPlaceToBind(folder, why));
        }

        var occupied = Directory.Exists(target) && Directory.EnumerateFileSystemEntries(target).Any();
        return occupied && BoundFiles.Read(target) is null ? throw new ShellException(ShellFaults.NotOurs(folder)) : target;
    }

    /// <summary>The full path of a folder in which many handbooks and their list may stand. A handbook, and a folder whose pages somebody else made, are no such place.</summary>
    internal static string CheckList(string folder, bool isOurs)
    {
        var target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var why = Refusal(target)
            ?? (File.Exists(Path.Combine(target, BoundFiles.Name)) ? "it is a handbook itself"
            : !isOurs && File.Exists(Path.Combine(target, "index.html")) ? "its index.html was not made by guidebuilder"
            : null);
        return why is null ? target : throw new ShellException(ShellFaults.NotAListsPlace(folder, why));
    }

    /// <summary>Names in the folder itself that this program did not list, in ordinal order.</summary>
    internal static IEnumerable<string> Foreign(string target)
    {
        if (!Directory.Exists(target))
        {
            return [];
        }

        var ours = BoundFiles.Read(target) ?? FrozenSet<string>.Empty;
        return new DirectoryInfo(target).EnumerateFileSystemInfos().Select(e => e.Name).Where(n => !ours.Contains(n)).Order(StringComparer.Ordinal).ToArray();
    }

    private static string? Refusal(string target)
    {
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        return target switch
        {
            _ when Path.GetDirectoryName(target) is null => "it is the root of the disk",
            _ when File.Exists(target) && !Directory.Exists(target) => "it is a file",
            _ when new FileInfo(target).LinkTarget is not null => "it is a link",
            _ when home.Length > 0 && target == Path.TrimEndingDirectorySeparator(home) => "it is your home folder",
            _ when target == Path.TrimEndingDirectorySeparator(Directory.GetCurrentDirectory()) => "it is the folder you are in",
            _ when Path.Exists(Path.Combine(target, ".git")) => "it is a repository",
            _ => null,
        };
    }
}
