using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Cases;

/// <summary>The files of the guidance as they stand, and copies with a change.</summary>
internal static class Guidances
{
    /// <summary>The day on which the copies are judged.</summary>
    public static readonly LocalDate Today = new(2026, 11, 24);

    private static readonly SourceText[] Files =
    [
        .. Directory.EnumerateFiles(Repository.At("content"), "*", SearchOption.AllDirectories).Select(f => new SourceText(Repository.Short(f), File.ReadAllBytes(f))),
    ];

    /// <summary>A copy in which the first place of some words in a file has other words; a change that finds no place fails the test.</summary>
    public static SourceText[] Changed(params (string File, string Was, string Now)[] changes) =>
        changes.Aggregate(Files, (files, change) => [.. files.Select(f => f.Path == change.File ? Changed(f, change.Was, change.Now) : f)]);

    private static SourceText Changed(SourceText file, string was, string now)
    {
        var text = Encoding.UTF8.GetString(file.Bytes.Span);
        var at = text.IndexOf(was, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{file.Path} does not have {was}");
        return new(file.Path, Encoding.UTF8.GetBytes(text[..at] + now + text[(at + was.Length)..]));
    }
}
