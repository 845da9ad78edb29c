namespace GuideBuilder.Cli.Disk;

/// <summary>Files to bytes. The only place that opens a file to read it.</summary>
internal static class Loading
{
    /// <summary>Largest file that is loaded at all, in bytes; the reading stage has its own, smaller budgets.</summary>
    private const long Largest = 16 * 1024 * 1024;

    /// <summary>The file as bytes, named as the person named it.</summary>
    internal static SourceText File(string path) => Reading(path, () =>
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
        var wanted = (int)Math.Min(stream.Length, Largest + 1);
        var bytes = new byte[wanted];
        stream.ReadExactly(bytes);
        return new SourceText(path.Replace('\\', '/'), bytes);
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
        EndOfStreamException => "it changed while it was read",
        _ => problem.Message.TrimEnd('.'),
    };
}
