using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Living;

        Assert.Contains("The house has been without supply since Wednesday 24 February 2027", cover, StringComparison.Ordinal);
        Assert.Contains("nobody came on Wednesday 24 February 2027, 1 calendar day ago", cover, StringComparison.Ordinal);
        Assert.Contains("Clear the way for every crew, by", cover, StringComparison.Ordinal);
    }

        Assert.Contains("You have paid, with these left open", cover, StringComparison.Ordinal);
Assert.Contains("£2,140", cover, StringComparison.Ordinal);
Assert.Contains("The asbestos result comes back left open when you paid", cover, StringComparison.Ordinal);
Assert.DoesNotContain("Check what the quotation leaves out left open", cover, StringComparison.Ordinal);
    }

private string Words(string page)
{
    var body = new HtmlParser().ParseDocument(File.ReadAllText(missed.At("home", page))).Body!;
    return Gaps().Replace(string.Join(' ', body.QuerySelectorAll("h1, h2, h3, h4, p, li, td, th, dt, dd").Where(e => e.QuerySelector("p, li, dt") is null).Select(e => e.TextContent)), " ");
}

[GeneratedRegex(@"\s+")]
private static partial Regex Gaps();
}
