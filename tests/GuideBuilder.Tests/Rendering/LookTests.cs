using System.Collections.Frozen;
using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Pages;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering;

public sealed class LookTests
{
    private static readonly Template Page = Sample.Page("pages", "money", "# Money\n");

    [Fact]
    public void A_missing_file_of_the_look_is_a_fault()
    {
        var guidance = Sample.Guidance(Bound.Pages) with { Look = new Look(FrozenDictionary<string, LocalText>.Empty) };

        Assert.Equal(["HB3013", "HB3013", "HB3013", "HB3013"], Handbook.Render(SamplePlan.For(), guidance).Faults.Select(f => f.Code));
    }

    [Theory]
    [InlineData("# remark\n\nmoney\n", "")]
    [InlineData("money\nmony\n", "HB3011")]
    [InlineData("", "HB3012")]
    [InlineData("money\n  pages of costs\n", "HB3019")]
    public void The_list_of_chapters_is_checked(string list, string code)
    {
        var faults = new FaultList();

        Assert.Single(BookOrder.Read(Sample.Text(list), [Page], faults), l => l.Page == "money");
        Assert.Equal(code, string.Concat(faults.All.Select(f => f.Code)));
    }

    [Fact]
    public void A_page_begins_with_its_title()
    {
        var faults = new FaultList();

        Assert.Equal("Money", PageTitle.Of(Page, faults));
        Assert.Empty(faults.All);
        Assert.Equal("money", PageTitle.Of(Sample.Page("pages", "money", "Money\n"), faults));
        Assert.Equal("HB3016", Assert.Single(faults.All).Code);
    }

    [Fact]
    public void A_text_nested_too_deeply_is_a_fault() => Assert.Equal("HB3018", Assert.Single(Bound.With(new string('>', 5000) + " x").Faults).Code);

    [Fact]
    public void The_policy_stands_right_after_the_character_set() =>
        Assert.Contains(
            "<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'none'\">",
            Bound.Page("x"),
            StringComparison.Ordinal);
}
