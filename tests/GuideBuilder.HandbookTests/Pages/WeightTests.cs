using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Pages;

/// <summary>What a page may weigh, in bytes as they lie on the disk.</summary>
public sealed class WeightTests(Handbooks handbooks)
{
    private const long Whole = 1_000_000;
    private const long Page = 150_000;
    private const long Cover = 60_000;

    [Fact]
    public void No_page_is_heavier_than_it_may_be() => Findings.AreNone(
        from home in Handbooks.Homes
        from page in handbooks.PagesOf(home)
        let bytes = new FileInfo(Path.Combine(handbooks.Of(home), page)).Length
        where bytes > MayWeigh(page)
        select $"{home}/{page}: {bytes} bytes, may be {MayWeigh(page)}");

    // Books in one file, and the page that gives a reason for every line, are read on paper or searched, not opened in a hallway.
    private static long MayWeigh(string page) => page switch
    {
        "index.html" => Cover,
        "how-this-was-worked-out.html" => Whole,
        _ when page.StartsWith("paper", StringComparison.Ordinal) || page.StartsWith("large-print", StringComparison.Ordinal) => Whole,
        _ => Page,
    };
}
