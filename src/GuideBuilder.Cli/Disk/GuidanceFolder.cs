using System.Reflection;

namespace GuideBuilder.Cli.Disk;

/// <summary>Loads the guidance: from a folder, or the one that travels inside the program.</summary>
internal static class GuidanceFolder
{
    /// <summary>What the built-in guidance is called in faults.</summary>
    private const string BuiltIn = "content";

    /// <summary>The files of the folder (of the built-in guidance when there is no folder), in ordinal order of their names, and the root that their names begin with.</summary>
    internal static (ImmutableArray<SourceText> Files, string Root) Load(string? folder) =>
        folder is null ? (Inside(), BuiltIn) : (Under(folder), folder.Replace('\\', '/').TrimEnd('/'));

    private static ImmutableArray<SourceText> Inside()
    {
        var program = Assembly.GetExecutingAssembly();
        return
        [
            .. program.GetManifestResourceNames()
                .Where(n => n.StartsWith(BuiltIn + "/", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(n => new SourceText(n, Bytes(program.GetManifestResourceStream(n)!))),
        ];
    }

    private static byte[] Bytes(Stream stream)
    {
        using var all = new MemoryStream();
        using (stream)
        {
            stream.CopyTo(all);
        }

        return all.ToArray();
    }

    private static ImmutableArray<SourceText> Under(string folder) => Loading.Reading(folder, () =>
    {
        if (!System.IO.File.Exists(Path.Combine(folder, "guidance.yaml")))
        {
            throw new ShellException(ShellFaults.NoGuidance(folder));
        }

        // Links are not followed: a link in the folder could lead anywhere.
        var walk = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Hidden };
        var names = Directory.EnumerateFiles(folder, "*", walk)
            .Select(p => Path.GetRelativePath(folder, p).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);
        var root = folder.Replace('\\', '/').TrimEnd('/');
        return names.Select(n => Loading.File(root + "/" + n)).ToImmutableArray();
    });
}
