using System.Security.Cryptography;

namespace GuideBuilder.HandbookTests.Support;

/// <summary>Whole folders, to be compared byte for byte.</summary>
internal static class Bytes
{
    /// <summary>Every file under a folder with the SHA-256 of its bytes, in ordinal order.</summary>
    public static string[] Of(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(path => $"{Path.GetRelativePath(folder, path)} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path)))}")
            .Order(StringComparer.Ordinal)];

    /// <summary>The files of a handbook that are not there, or not as its own list says; the list names every file with its hash.</summary>
    public static IEnumerable<string> Broken(string book) =>
        from line in File.ReadLines(Path.Combine(book, "bound-files.txt")).Skip(1)
        let parts = line.Split(' ', 3)
        let path = Path.Combine(book, parts[2])
        where !File.Exists(path) || Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path))) != parts[0]
        select path;
}
