namespace GuideBuilder.Cli.Disk;

/// <summary>Writes a handbook whole or not at all: beside the target first, then in one step into its place. Files in the folder that are not ours come along untouched.</summary>
internal static class HandbookFolder
{
    // How the systems say that another run holds a file: EWOULDBLOCK of Linux and of macOS, ERROR_SHARING_VIOLATION of Windows.
    private const int HeldOnLinux = 11, HeldOnMac = 35, HeldOnWindows = unchecked((int)0x80070020);

    /// <summary>Makes the folder hold exactly these files (and what others had put there). Until the last step the earlier handbook stands as it was.</summary>
    internal static void Write(string folder, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        try
        {
            var target = Targets.Check(folder);
            NothingInTheWay(folder, target, files);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            using var turn = TakeTurn(folder, Beside(target, "turn"));
            var fresh = Beside(target, "new");
            Leftovers.Clear(fresh);
            Leftovers.Recover(target, Beside(target, "old"));
            try
            {
                Fill(fresh, files, target);
                Swap.Into(target, fresh, Beside(target, "old"));
            }
            finally
            {
                Leftovers.ClearIfPossible(fresh);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new ShellException(ShellFaults.CannotWrite(folder, Loading.Why(problem)));
        }
    }

    /// <summary>Takes a handbook away: the files that its own list names, and the folder if nothing else is in it. A folder that this program did not make stays.</summary>
    internal static bool Remove(string folder)
    {
        if (BoundFiles.Read(folder) is not { } ours)
        {
            return false;
        }

        foreach (var name in ours.Order(StringComparer.Ordinal))
        {
            File.Delete(Path.Combine(folder, Path.GetFileName(name)));
        }

        if (!Directory.EnumerateFileSystemEntries(folder).Any())
        {
            Directory.Delete(folder);
        }

        return true;
    }

    // A name beside the target, on the same disk, that no other handbook uses.
    private static string Beside(string target, string what) =>
        Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.guidebuilder-{what}");

    // A file of somebody else's that has the name of one of ours is not replaced: nobody but its owner knows what it is worth.
    private static void NothingInTheWay(string folder, string target, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        if (Targets.Foreign(target).Intersect(files.Select(f => f.Name), StringComparer.OrdinalIgnoreCase).FirstOrDefault() is { } name)
        {
            throw new ShellException(ShellFaults.InTheWay(folder, name));
        }
    }

    private static FileStream TakeTurn(string folder, string path)
    {
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException problem) when (problem.HResult is HeldOnLinux or HeldOnMac or HeldOnWindows)
        {
            throw new ShellException(ShellFaults.InUse(folder));
        }
    }

    private static void Fill(string fresh, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files, string target)
    {
        Make(fresh, target);

        // The list goes first, so that a run that is killed leaves a folder that the next run knows as ours.
        Put(fresh, BoundFiles.Name, BoundFiles.Write(files));
        foreach (var (name, bytes) in files)
        {
            Put(fresh, name, bytes);
        }

        Settled.Wait(fresh, [BoundFiles.Name, .. files.Select(f => f.Name)]);
        foreach (var name in Targets.Foreign(target))
        {
            Strangers.Bring(Path.Combine(target, name), Path.Combine(fresh, name));
        }
    }

    // Who may look into the folder, and who may write there, was decided by whoever made it.
    private static void Make(string fresh, string target)
    {
        if (!OperatingSystem.IsWindows() && Directory.Exists(target))
        {
            Directory.CreateDirectory(fresh, File.GetUnixFileMode(target));
            File.SetUnixFileMode(fresh, File.GetUnixFileMode(target));
        }
        else
        {
            Directory.CreateDirectory(fresh);
        }
    }

    private static void Put(string folder, string name, ReadOnlyMemory<byte> bytes)
    {
        using var stream = new FileStream(Path.Combine(folder, name), FileMode.CreateNew, FileAccess.Write, FileShare.None);
        stream.Write(bytes.Span);
    }
}
