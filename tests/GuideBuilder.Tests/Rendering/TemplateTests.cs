using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering;

public sealed class TemplateTests
{
    [Theory]
    [InlineData("HB3001", 1, "«{{ if true »}}")]
    [InlineData("HB3002", 1, "{{ «nobody }}")]
    [InlineData("HB3002", 1, "{{ «nation.colour }}")]
    [InlineData("HB3002", 2, "One.\nTwo {{ «answer }}")]
    [InlineData("HB3002", 1, "{{ «date.now }}")]
    [InlineData("HB3002", 1, "{{ «math.random 1 2 }}")]
    [InlineData("HB3003", 1, "{{ «capture x }}a{{ end }}")]
    [InlineData("HB3003", 1, "{{ «include \"x\" }}")]
    [InlineData("HB3003", 1, "{{ «html.escape \"x\" }}")]
    [InlineData("HB3003", 1, "{{ «func f }}a{{ end }}")]
    [InlineData("HB3004", 1, "Say «`{{ nation }}` here.")]
    [InlineData("HB3004", 3, "Say\n\n«    {{ nation }}")]
    [InlineData("HB3005", 1, "{{ «block \"cost\" }}")]
    [InlineData("HB3006", 1, "See {{ «block \"wish\" }} here.")]
    [InlineData("HB3014", 1, "{{ «answer \"home.adress\" }}")]
    [InlineData("HB3014", 1, "{{ «start_of \"dig-hole\" }}")]
    [InlineData("HB3014", 1, "{{ «amount_of \"alteration\" }}")]
    [InlineData("HB3014", 1, "{{ «missed \"day\" \"day\" }}")]
    [InlineData("HB3014", 1, "{{ «body \"network\" }}")]
    [InlineData("HB3010", 1, "{{ label \"nobody\" }}")]
    public void A_mistake_in_a_template_is_reported_where_it_stands(string code, int line, string marked)
    {
        var text = marked.Replace("«", "", StringComparison.Ordinal).Replace("»", "", StringComparison.Ordinal);
        var fault = Assert.Single(Bound.With(text).Faults);

        Assert.Equal(code, fault.Code);
        if (marked.Contains('«', StringComparison.Ordinal))
        {
            // The page's text begins on its third line.
            var column = marked.Split('\n')[line - 1].IndexOf('«', StringComparison.Ordinal) + 1;
            Assert.Equal(("content/pages/extra.md", line + 2), (fault.Place.Path, fault.Place.Line));
            Assert.InRange(fault.Place.Column, column > 10 ? column - 6 : 1, column + 12);
        }
    }

    [Fact]
    public void A_text_that_grows_too_long_is_a_fault_and_is_never_cut() =>
        Assert.Equal("HB3007", Assert.Single(Bound.With($"{{{{ for i in 1..60000 }}}}{new string('a', 100)}{{{{ end }}}}").Faults).Code);

    [Fact]
    public void Every_mistake_of_a_page_and_of_its_letters_is_reported_at_once() =>
        Assert.Equal(["HB3009", "HB3008"], Bound.With("[a](see:nobody)\n\n[b](javascript:x)\n").Faults.Select(f => f.Code));

    [Fact]
    public void Values_are_written_by_name()
    {
        var page = Bound.Page("{{ nation }}; {{ body \"network-emergency\" }}; {{ start_of \"day-cutout\" }}; {{ amount_of \"operator-alteration\" }}; {{ if holds \"way\" \"outside-cabinet\" }}outside{{ end }}");

        Assert.Contains("england; 105; Sunday 3 January 2027; from £600 to £2,400, most likely £1,200; outside", page, StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_that_is_missing_leaves_a_blank_with_its_name() =>
        Assert.Contains("<span class=\"gap\"></span><span class=\"gap-name\">(Address)</span>", Bound.Page("At {{ answer \"home.address\" }}", SamplePlan.For(null)), StringComparison.Ordinal);

    [Fact]
    public void The_public_edition_leaves_a_blank_where_personal_data_would_stand() =>
        Assert.Contains("<span class=\"gap\"></span><span class=\"gap-name\">(Address)</span>", Bound.Page("At {{ answer \"home.address\" }}", SamplePlan.For(edition: EditionKind.Public)), StringComparison.Ordinal);
}
