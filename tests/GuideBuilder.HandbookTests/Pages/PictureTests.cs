using System.Buffers.Binary;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Pages;

/// <summary>The README shows five pages of the committed handbook, as a phone and as a laptop show them.</summary>
public sealed class PictureTests
{
    private const int MostBytes = 80_000;

    // A picture of an empty sheet is far smaller.
    private const int LeastBytes = 4_000;

    private static readonly string[] Pages = ["cover", "step", "day", "hole", "money"];

    [Fact]
    public void The_README_shows_each_page_at_both_sizes_in_small_files() => Findings.AreNone(
        from page in Pages
        from size in new[] { (Name: "phone", Width: 500), (Name: "laptop", Width: 1280) }
        let path = $"tests/shots/{page}-{size.Name}.png"
        let wrong = !File.Exists(Repository.At(path)) ? "is not there (bash tests/pictures)"
            : WidthOf(path) != size.Width ? $"is {WidthOf(path)} wide"
            : new FileInfo(Repository.At(path)).Length is < LeastBytes or > MostBytes ? "is too small or too large"
            : !File.ReadAllText(Repository.At("README.md")).Contains(path, StringComparison.Ordinal) ? "is not in the README"
            : null
        where wrong is not null
        select $"{path} {wrong}");

    // The width stands at byte 16 of a PNG.
    private static int WidthOf(string path) => BinaryPrimitives.ReadInt32BigEndian(File.ReadAllBytes(Repository.At(path)).AsSpan(16, 4));
}
