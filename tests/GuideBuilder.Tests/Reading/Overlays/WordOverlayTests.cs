using GuideBuilder.Model;

namespace GuideBuilder.Tests.Reading.Overlays;

public sealed class WordOverlayTests
{
    [Theory]
    [InlineData("steps.yaml", "- {id: site-visit, title: Mae rhywun yn edrych, party: «household»}", "HB1120")]
    [InlineData("steps.yaml", "- {id: site-visit, takes: {low: «1»}}", "HB1120")]
    [InlineData("steps.yaml", "- {id: «site-visti», title: Mae rhywun yn edrych}", "HB1121")]
    [InlineData("steps.yaml", "- {id: site-visit, «titel»: Mae rhywun yn edrych}", "HB1020")]
    [InlineData("questions/home.yaml", "- {id: kind, options: {flat: {wording: Fflat}, «flatt»: {wording: Fflat}}}", "HB1121")]
    [InlineData("tables/holidays.yaml", "- {id: england-and-wales, days: «[{name: Nadolig}, {name: Calan}]»}", "HB1122")]
    [InlineData("pages/covre.md", "«# Clawr\n»", "HB1121")]
    [InlineData("look/stylesheet.css", "«body {}\n»", "HB1070")]
    public void A_wrong_translation_is_found_where_it_stands(string name, string marked, string code)
    {
        var text = Marked.Parse(marked);
        var faults = Read($"words/cy/{name}", text.Text).Faults;

        Assert.Contains(faults, f => f.Code == code && f.Place.Path == $"content/words/cy/{name}" && (f.Place.Line, f.Place.Column) == text.Marks[0]);
    }

    [Theory]
    [InlineData("[cy]", "HB1123")]
    [InlineData("[en-GB, Welsh!]", "HB1124")]
    public void A_wrong_list_of_languages_is_a_fault(string languages, string code) =>
        Assert.Contains(SmallGuidance.With("guidance.yaml", SmallGuidance.Files["guidance.yaml"].Replace("[en-GB]", languages, StringComparison.Ordinal)).Faults, f => f.Code == code);

    [Fact]
    public void Words_in_a_language_that_is_not_named_belong_to_nothing() => Assert.Contains(SmallGuidance.With("words/gd/labels.yaml", "").Faults, f => f.Code == "HB1070");

    [Fact]
    public void A_language_that_the_guidance_lacks_is_a_fault_of_the_answers() =>
        SmallAnswers.FindsIn("handbook: {format: 1, language: «gd»}\nwish: {moves: [meter]}\nhome: {nation: england}\n", "HB1125");

    [Fact]
    public void Texts_are_laid_over_by_id_and_know_their_language()
    {
        var guidance = Read("words/cy/steps.yaml", "- {id: site-visit, title: Mae rhywun yn edrych}").Value!;

        Assert.Equal(("Mae rhywun yn edrych", "cy"), (guidance.Steps[0].Title.Words, guidance.Steps[0].Title.Language));
        Assert.Equal(("A quotation needs a look.", "en-GB"), (guidance.Steps[0].Head.Because.Words, guidance.Steps[0].Head.Because.Language));
    }

    [Fact]
    public void A_page_that_is_a_title_alone_translates_the_title_alone()
    {
        var page = Read("words/cy/pages/cover.md", "# Clawr\n").Value!.Pages.Single();

        Assert.Equal(("Clawr", "cy", "en-GB"), (page.OwnTitle!.Words, page.OwnTitle.Language, page.Text.Language));
        Assert.Equal("cy", Read("words/cy/pages/cover.md", "# Clawr\n\nGeiriau.\n").Value!.Pages.Single().Text.Language);
    }

    [Fact]
    public void A_form_for_other_numbers_that_is_not_translated_follows_the_one()
    {
        var guidance = Read("words/cy/labels.yaml", "- {id: day, one: diwrnod}").Value!;

        Assert.Equal(("diwrnod", "days"), (guidance.Labels["day"].Other.Words, guidance.PlainLabels["day"].Other.Words));
    }

    private static Staged<Guidance> Read(string name, string text) => SmallGuidance.Read(
        new Dictionary<string, string>(SmallGuidance.Files, StringComparer.Ordinal) { ["guidance.yaml"] = SmallGuidance.Files["guidance.yaml"].Replace("[en-GB]", "[en-GB, cy]", StringComparison.Ordinal), [name] = text }, "cy");
}
