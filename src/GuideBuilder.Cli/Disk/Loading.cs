namespace GuideBuilder.Cli.Disk;

/// <summary>Files to bytes. The only place that opens a file to read it.</summary>
internal static class Loading
{
    /// <summary>Largest file that is loaded at all, in bytes; the reading stage has its own, smaller budgets.</summary>
    private const long Largest = 16 * 1024 * 1024;

    // The numbers that the systems give to their refusals (ENOSPC, EROFS and EMFILE of POSIX; ERROR_DISK_FULL of Windows).
    private const int NoRoom = 28, ReadOnly = 30, NoHandles = 24, NoRoomOnWindows = unchecked((int)0x80070070);

    /// <summary>Every file of these names, or a fault for each that cannot be read.</summary>
    internal static SourceText[] Files(IEnumerable<string> paths)
    {
        var (texts, faults) = (new List<SourceText>(), new List<ShellFault>());
        foreach (var path in paths)
        {
            try
            {
                texts.Add(File(path));
            }
            catch (ShellException problem)
            {
                faults.AddRange(problem.Faults);
            }
        }

        return faults.Count == 0 ? [.. texts] : throw new ShellException([.. faults]);
    }

    /// <summary>The file as bytes, named as the person named it. What lies beyond the largest is not loaded, and what has no length beforehand (a pipe) is read to its end.</summary>
    internal static SourceText File(string path) => Reading(path, () =>
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1);
        using var all = new MemoryStream();
        var piece = new byte[64 * 1024];
        for (var got = stream.Read(piece); got > 0 && all.Length <= Largest; got = stream.Read(piece))
        {
            all.Write(piece, 0, got);
        }

        return new SourceText(path.Replace(Path.DirectorySeparatorChar, '/'), all.ToArray());
    });

    /// <summary>Runs what reads a path; what the machine says against it becomes a fault of the shell.</summary>
    internal static T Reading<T>(string path, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new ShellException(ShellFaults.CannotRead(path, Why(problem)));
        }
    }

    /// <summary>The machine's reason in a few words, without the path and without a full stop.</summary>
    internal static string Why(Exception problem) => problem switch
    {
        FileNotFoundException or DirectoryNotFoundException => "there is no such file or folder",
        UnauthorizedAccessException => "it is not allowed, or it is a folder",
        { HResult: NoRoom or NoRoomOnWindows } => "the disk is full",
        { HResult: ReadOnly } => "the disk can only be read",
        { HResult: NoHandles } => "too many files are open",
        _ => problem.Message.TrimEnd('.'),
    };
}
