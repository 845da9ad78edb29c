namespace GuideBuilder.Cli.Disk;

/// <summary>What an earlier run that was killed may have left beside a target.</summary>
internal static class Leftovers
{
    /// <summary>Removes a folder that has our list in it, or nothing at all; any other stays.</summary>
    internal static void Clear(string folder)
    {
        var stands = Directory.Exists(folder) && new DirectoryInfo(folder).LinkTarget is null;
        if (stands && (File.Exists(Path.Combine(folder, BoundFiles.Name)) || !Directory.EnumerateFileSystemEntries(folder).Any()))
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Puts the earlier handbook back if a run was killed between taking it away and putting the new one in its place; else removes it.</summary>
    internal static void Recover(string target, string old)
    {
        if (Directory.Exists(old) && !Directory.Exists(target))
        {
            Directory.Move(old, target);
        }

        Clear(old);
    }
}
