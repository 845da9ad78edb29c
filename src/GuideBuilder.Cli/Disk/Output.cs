using System.CommandLine;

namespace GuideBuilder.Cli.Disk;

/// <summary>Where a verb that makes one file puts it.</summary>
internal static class Output
{
    /// <summary>The option that names the file.</summary>
    internal static Option<string?> To() => new("--to") { HelpName = "FILE", Description = "The file to write; without it, standard output." };

    // So many bytes tell a file that this program made from any other.
    private const int Beginning = 48;

    /// <summary>Writes the bytes to the file, whole or not at all, or to standard output. A file that is there already is replaced only if it begins as this one does.</summary>
    internal static Exit Write(string? to, ReadOnlyMemory<byte> bytes)
    {
        if (to is not null)
        {
            if (File.Exists(to) && !Loading.File(to).Bytes.Span.StartsWith(bytes.Span[..Math.Min(Beginning, bytes.Length)]))
            {
                throw new ShellException(ShellFaults.NotOurFile(to));
            }

            WholeFile.Write(to, bytes.Span);
            return Exit.Done;
        }

        using var output = Console.OpenStandardOutput();
        output.Write(bytes.Span);
        return Exit.Done;
    }
}
