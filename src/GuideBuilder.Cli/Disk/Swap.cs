using System.Runtime.InteropServices;

namespace GuideBuilder.Cli.Disk;

/// <summary>Puts a new folder in the place of an old one.</summary>
internal static partial class Swap
{
    private const int FromWorkingFolder = -100;

    private const uint Exchange = 2;

    /// <summary>The fresh folder takes the target's place: in one step where the system can exchange two names, else by moving the old one aside and back again if that fails.</summary>
    internal static void Into(string target, string fresh, string aside)
    {
        if (!Directory.Exists(target))
        {
            Directory.Move(fresh, target);
            return;
        }

        if (ExchangeNames(fresh, target))
        {
            return;
        }

        Directory.Move(target, aside);
        try
        {
            Directory.Move(fresh, target);
        }
        catch (IOException)
        {
            Directory.Move(aside, target);
            throw;
        }

        Leftovers.ClearIfPossible(aside);
    }

    // The call is Linux's; a system or a disk without it answers that it cannot, and the slower way is taken.
    private static bool ExchangeNames(string one, string other)
    {
        try
        {
            return OperatingSystem.IsLinux() && RenameAt2(FromWorkingFolder, one, FromWorkingFolder, other, Exchange) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            return false;
        }
    }

    [LibraryImport("libc", EntryPoint = "renameat2", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int RenameAt2(int oldFolder, string oldName, int newFolder, string newName, uint flags);
}
