using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering;

public sealed class LinkTests
{
    [Theory]
    [InlineData("[x](https://example.org/a?b=c)", "https://example.org/a?b=c")]
    [InlineData("[x](http://example.org)", "http://example.org")]
    [InlineData("[x](mailto:a@example.org)", "mailto:a@example.org")]
    [InlineData("[x](tel:105)", "tel:105")]
    [InlineData("[x](see:dig-joint-hole)", "dig-joint-hole.html")]
    [InlineData("[x](see:cutout)", "method.html#cutout")]
    [InlineData("[x](see:intake.cable-kind)", "method.html#intake.cable-kind")]
    [InlineData("[x](see:operator-alteration)", "method.html#operator-alteration")]
    [InlineData("[x](see:cover)", "index.html")]
    [InlineData("[x](see:letter-enquiry)", "letter-enquiry.html")]
    public void A_link_of_an_allowed_scheme_leads_there(string text, string address) =>
        Assert.Contains($"<a href=\"{address.Replace("&", "&amp;", StringComparison.Ordinal)}\">x</a>", Bound.Page(text), StringComparison.Ordinal);

    [Theory]
    [InlineData("[x](javascript:alert(1))")]
    [InlineData("[x](JavaScript:alert(1))")]
    [InlineData("[x](&#106;avascript:alert(1))")]
    [InlineData("[x](data:text/html,x)")]
    [InlineData("[x](vbscript:x)")]
    [InlineData("[x](file:///etc/passwd)")]
    [InlineData("[x](//example.org)")]
    [InlineData("[x](other.html)")]
    [InlineData("[x](#fragment)")]
    [InlineData("[x](../up)")]
    [InlineData("[x]()")]
    [InlineData("<javascript:alert>")]
    [InlineData("[x][r]\n\n[r]: javascript:x")]
    public void A_link_of_any_other_scheme_is_a_fault(string text) => Assert.Equal("HB3008", Assert.Single(Bound.With(text).Faults).Code);

    [Fact]
    public void A_link_that_names_nothing_is_a_fault_where_it_stands_with_the_nearest_id()
    {
        var fault = Assert.Single(Bound.With("One.\n\nSee [the hole](see:dig-joint-hoel).\n").Faults);

        Assert.Equal("content/pages/extra.md:5:16: Nothing is called dig-joint-hoel. The nearest id is dig-joint-hole. [HB3009]", fault.ToString());
    }

    [Fact]
    public void An_image_is_a_fault() => Assert.Equal("HB3017", Assert.Single(Bound.With("![x](https://example.org/x.png)").Faults).Code);

    [Fact]
    public void Raw_html_is_text() => Assert.Contains("a &lt;b onclick=&quot;x&quot;&gt;b&lt;/b&gt;", Bound.Page("a <b onclick=\"x\">b</b>"), StringComparison.Ordinal);

    [Fact]
    public void A_block_twice_on_a_page_would_give_its_items_two_places() =>
        Assert.Contains(Bound.With("{{ block \"costs\" }}\n\n{{ block \"costs\" }}\n").Faults, f => f.Code == "HB3015");

    [Fact]
    public void An_item_that_is_ruled_out_leads_to_the_entry_that_says_why()
    {
        var plan = SamplePlan.For();
        var steps = plan.Steps.Select(s => s.Step.Item.Id == "ask-operator" ? s with { Step = s.Step with { State = ItemState.RuledOut }, Dates = null } : s);

        Assert.Contains("<a href=\"method.html#reason-ask-operator\">x</a>", Bound.Page("[x](see:ask-operator)", plan with { Steps = [.. steps] }), StringComparison.Ordinal);
    }

    [Fact]
    public void A_letter_with_nothing_to_say_gets_no_page_and_links_to_it_are_words()
    {
        var guidance = Sample.Guidance([.. Bound.Pages, ("extra", "# Extra\n\n[x](see:letter-enquiry)\n")]) with
        {
            Letters = [Sample.Page("letters", "letter-enquiry", "# Enquiry\n\n{{ if nation == \"ireland\" }}\nDear Sir\n{{ end }}\n")],
        };
        var staged = Handbook.Render(SamplePlan.For(), guidance);
        Findings.AreNone(staged.Faults.Select(f => f.ToString()));

        Assert.DoesNotContain(staged.Value!.Files, f => f.Name == "letter-enquiry.html");
        Assert.Contains("<p>x</p>", staged.Value!.File("extra.html"), StringComparison.Ordinal);
    }
}
