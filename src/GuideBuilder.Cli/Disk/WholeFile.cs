namespace GuideBuilder.Cli.Disk;

/// <summary>Writes one file whole or not at all: beside its place first, then in one step into it.</summary>
internal static class WholeFile
{
    /// <summary>The file holds exactly these bytes; an earlier one keeps its permissions, and a link stays a link.</summary>
    internal static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        try
        {
            var target = Path.GetFullPath(File.Exists(path) && File.ResolveLinkTarget(path, returnFinalTarget: true) is { } linked ? linked.FullName : path);
            var fresh = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.guidebuilder-new");
            try
            {
                Put(fresh, bytes, target);
                File.Move(fresh, target, overwrite: true);
            }
            finally
            {
                File.Delete(fresh);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new ShellException(ShellFaults.CannotWriteFile(path, Loading.Why(problem)));
        }
    }

    private static void Put(string fresh, ReadOnlySpan<byte> bytes, string target)
    {
        using (var stream = new FileStream(fresh, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
        }

        if (!OperatingSystem.IsWindows() && File.Exists(target))
        {
            File.SetUnixFileMode(fresh, File.GetUnixFileMode(target));
        }
    }
}
