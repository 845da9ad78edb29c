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

    /// <summary>Removes such a folder if the disk lets it; what stays now is removed before the next handbook is written, or that run says why not.</summary>
    internal static void ClearIfPossible(string folder)
    {
        try
        {
            Clear(folder);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Whether a handbook was written is settled by now, and a leftover does not change it.
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
