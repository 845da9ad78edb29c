using System.Security.Cryptography;
using System.Text;

namespace GuideBuilder.Cli.Disk;

/// <summary>The file in each handbook folder that says this program made it, and lists what it wrote. Only what is listed is ever removed.</summary>
internal static class BoundFiles
{
    /// <summary>The file's name.</summary>
    internal const string Name = "bound-files.txt";

    private const string FirstLine = "This folder was made by guidebuilder. Binding again replaces the files listed here and no others.";

    /// <summary>The file's text for these files: one line each with SHA-256, length and name, in ordinal order.</summary>
    internal static byte[] Write(IEnumerable<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        var lines = files.OrderBy(f => f.Name, StringComparer.Ordinal)
            .Select(f => Invariant($"{Convert.ToHexStringLower(SHA256.HashData(f.Bytes.Span))} {f.Bytes.Length} {f.Name}"));
        return Encoding.UTF8.GetBytes(string.Join('\n', lines.Prepend(FirstLine)) + "\n");
    }

    /// <summary>The names listed in a folder's file; null when the folder has none of ours.</summary>
    internal static FrozenSet<string>? Read(string folder)
    {
        var path = Path.Combine(folder, Name);
        if (!File.Exists(path) || new FileInfo(path) is { LinkTarget: not null })
        {
            return null;
        }

        var lines = File.ReadAllLines(path);
        return lines.FirstOrDefault() == FirstLine ? lines.Skip(1).Select(NameIn).Append(Name).ToFrozenSet(StringComparer.Ordinal) : null;
    }

    private static string NameIn(string line) => line.Split(' ', 3) is [_, _, var name] ? name : "";
}
