using System.CommandLine;

namespace GuideBuilder.Cli.Disk;

/// <summary>Where a verb that makes one file puts it.</summary>
internal static class Output
{
    /// <summary>The option that names the file.</summary>
    internal static Option<string?> To() => new("--to") { HelpName = "FILE", Description = "The file to write; without it, standard output." };

    /// <summary>Writes the bytes to the file, whole or not at all, or to standard output.</summary>
    internal static Exit Write(string? to, ReadOnlyMemory<byte> bytes)
    {
        if (to is not null)
        {
            WholeFile.Write(to, bytes.Span);
            return Exit.Done;
        }

        using var output = Console.OpenStandardOutput();
        output.Write(bytes.Span);
        return Exit.Done;
    }
}
