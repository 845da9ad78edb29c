using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace GuideBuilder.Cli.Disk;

/// <summary>Sees to it that what was written has reached the disk, so that a handbook that takes its place is whole even after the power has failed.</summary>
internal static partial class Settled
{
    /// <summary>Waits until every file in the folder is on the disk. On Linux one call does for all of them what a call for each takes three times as long over; where there is none, or it fails, each file is asked by itself.</summary>
    internal static void Wait(string folder, IReadOnlyList<string> names)
    {
        if (names.Count > 0 && AtOnce(Path.Combine(folder, names[0])))
        {
            return;
        }

        foreach (var name in names)
        {
            using var stream = new FileStream(Path.Combine(folder, name), FileMode.Open, FileAccess.Write, FileShare.None);
            stream.Flush(flushToDisk: true);
        }
    }

    private static bool AtOnce(string path)
    {
        try
        {
            using var file = OperatingSystem.IsLinux() ? File.OpenHandle(path) : null;
            return file is not null && SyncFs(file) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            return false;
        }
    }

    [LibraryImport("libc", EntryPoint = "syncfs", SetLastError = true)]
    private static partial int SyncFs(SafeFileHandle file);
}
