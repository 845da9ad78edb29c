using System.Runtime.InteropServices;

namespace GuideBuilder.Cli.Disk;

/// <summary>Takes what others have put into a handbook folder along into the one that replaces it.</summary>
internal static partial class Strangers
{
    private const int FromWorkingFolder = -100;

    /// <summary>The new place holds the same as the old one: on Linux the very same files under a second name, whatever their kind, elsewhere copies.</summary>
    internal static void Bring(string from, string to)
    {
        if (Directory.Exists(from) && new DirectoryInfo(from).LinkTarget is null)
        {
            Directory.CreateDirectory(to);
            foreach (var entry in new DirectoryInfo(from).EnumerateFileSystemInfos())
            {
                Bring(entry.FullName, Path.Combine(to, entry.Name));
            }

            KeepMode(from, to);
        }
        else if (!NameAgain(from, to))
        {
            Copy(from, to);
        }
    }

    private static void Copy(string from, string to)
    {
        if (new FileInfo(from).LinkTarget is { } link)
        {
            File.CreateSymbolicLink(to, link);
        }
        else
        {
            File.Copy(from, to);
        }
    }

    // Who may look into a folder is its owner's choice.
    private static void KeepMode(string from, string to)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(to, File.GetUnixFileMode(from));
        }
    }

    // A pipe has nothing to copy and would be waited for without end, so files are named again where the system can do that.
    private static bool NameAgain(string from, string to)
    {
        try
        {
            return OperatingSystem.IsLinux() && LinkAt(FromWorkingFolder, from, FromWorkingFolder, to, 0) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            return false;
        }
    }

    [LibraryImport("libc", EntryPoint = "linkat", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int LinkAt(int fromFolder, string from, int toFolder, string to, int flags);
}
