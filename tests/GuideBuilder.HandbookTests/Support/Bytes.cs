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
}
