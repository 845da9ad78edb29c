using GuideBuilder.Model;
using GuideBuilder.Reading;
using NodaTime;

namespace GuideBuilder.Tests.Reading;

public sealed class GuidanceReaderTests
{
    [Fact]
    public void A_right_guidance_has_no_faults() => Assert.Empty(SmallGuidance.Read(SmallGuidance.Files).Faults);

    [Fact]
    public void Questions_come_in_the_order_of_asking_whatever_their_files_are_called() =>
        Assert.Equal(
            ["home.nation", "home.kind", "home.storeys", "home.block-stair", "home.looped", "home.signs", "home.address", "home.supply-number", "wish.moves", "place.distance", "place.offer", "dates.needed-by", "dates.away"],
            SmallGuidance.Value.Questions.Select(q => q.Name));

    [Fact]
    public void The_order_of_the_files_makes_no_difference()
    {
        var names = SmallGuidance.Files.Keys.Order(StringComparer.Ordinal).ToList();
        var forward = SmallGuidance.Read(names.ToDictionary(n => n, n => SmallGuidance.Files[n], StringComparer.Ordinal)).Value!;
        names.Reverse();
        var backward = SmallGuidance.Read(names.ToDictionary(n => n, n => SmallGuidance.Files[n], StringComparer.Ordinal)).Value!;

        Assert.Equal(forward.Questions.Select(q => q.Place), backward.Questions.Select(q => q.Place));
        Assert.Equal(forward.Steps.Select(q => q.Id), backward.Steps.Select(q => q.Id));
    }

    [Fact]
    public void Files_are_known_by_their_names_below_the_root_as_the_person_named_it()
    {
        var files = SmallGuidance.Files.Select(f => new SourceText("../my guidance/" + f.Key, System.Text.Encoding.UTF8.GetBytes(f.Value.Replace("kind: choice", "kind: choyce", StringComparison.Ordinal)))).ToList();

        Assert.Empty(GuidanceReader.Read([.. files.Where(f => f.Path.Contains("look", StringComparison.Ordinal))], "elsewhere", SmallGuidance.Today).Faults.Where(f => f.Code == "HB1034"));
        Assert.Contains(GuidanceReader.Read(files, "../my guidance/", SmallGuidance.Today).Faults, f => f.Place.ToString() == "../my guidance/questions/home.yaml:4:9");
    }

    [Fact]
    public void Entries_keep_what_was_written()
    {
        var guidance = SmallGuidance.Value;
        var link = guidance.Steps[1].After[0];

        Assert.Equal(("105", "England"), (guidance.Nations[0].Bodies["network-emergency"].Words, guidance.Nations[0].Title.Words));
        Assert.Equal(("site-visit", 2, DayCount.WorkingDays, "network-operator", false), (link.Step, link.Lag, link.Of, link.Whose, link.SameDay));
        Assert.Equal([IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday], guidance.Parties[0].Works);
        Assert.Equal((600m, 1100m, 2000m), (guidance.Tables.Prices[0].Amount.Low, guidance.Tables.Prices[0].Amount.Likely, guidance.Tables.Prices[0].Amount.High));
        Assert.Equal(0.2m, guidance.Tables.Vat[0].ByNation["england"]);
        Assert.Equal(Quantity.Of(1.8m, "t"), guidance.Tables.Rows[0].Quantity("density"));
        Assert.Equal((null, "105"), (guidance.Tables.Rows[0].Cells["telephone"].Quantity, guidance.Tables.Rows[0].Cells["telephone"].Words));
        Assert.Equal(("cover", "# Cover\n\nWords.\n"), (guidance.Pages[0].Id, guidance.Pages[0].Text.Words));
        Assert.Equal(new Place("content/pages/cover.md", 1, 1), guidance.Pages[0].Text.Place);
        Assert.Equal("days", guidance.Labels["day"].Other.Words);
        Assert.Equal("body {}\n", guidance.Look.Files["stylesheet.css"].Words);
        Assert.Equal("en-GB", guidance.Terms[0].Meaning.Language);
    }

    [Fact]
    public void Carriage_returns_make_no_difference_to_a_text() =>
        Assert.Equal("# Cover\n\nWords.\n", SmallGuidance.With("pages/cover.md", "# Cover\r\n\r\nWords.\r\n").Value!.Pages[0].Text.Words);

    [Fact]
    public void A_file_with_a_mistake_of_form_hides_no_mistake_elsewhere_and_starts_none()
    {
        var files = new Dictionary<string, string>(SmallGuidance.Files, StringComparer.Ordinal) { ["parties.yaml"] = "- id: [\n", ["labels.yaml"] = "- {id: day, won: day}\n" };

        Assert.Equal(["HB1021", "HB1020", "HB1006"], SmallGuidance.Read(files).Faults.Select(f => f.Code));
    }

    [Fact]
    public void Guidance_without_its_head_is_no_guidance()
    {
        var faults = GuidanceReader.Read([], "content/", SmallGuidance.Today).Faults;

        Assert.Equal(("HB1071", "content/guidance.yaml:1:1"), (Assert.Single(faults).Code, faults[0].Place.ToString()));
    }

    [Theory]
    [InlineData("questions/hmoe.yaml", "questions/home.yaml")]
    [InlineData("fact.yaml", "facts.yaml")]
    [InlineData("pages/Cover Page.md", null)]
    [InlineData("pages/deep/cover.md", null)]
    [InlineData("pages/con.md", null)]
    [InlineData(".facts.yaml.swp", null)]
    public void A_file_without_a_place_in_the_guidance_is_a_fault(string name, string? near)
    {
        var fault = Assert.Single(SmallGuidance.With(name, "").Faults);

        Assert.Equal("HB1070", fault.Code);
        Assert.True(near is null || fault.Right.Contains($"`{near}`", StringComparison.Ordinal), fault.Right);
    }

    [Fact]
    public void A_review_day_that_has_passed_is_a_warning_and_today_is_not()
    {
        const string Source = "- {{id: clay-wet, weight: 2 t, review-by: {0}, source: [common-practice]}}\n";
        var due = SmallGuidance.Adding("tables/soils.yaml", string.Format(System.Globalization.CultureInfo.InvariantCulture, Source, "2026-11-23"));
        var today = SmallGuidance.Adding("tables/soils.yaml", string.Format(System.Globalization.CultureInfo.InvariantCulture, Source, "2026-11-24"));

        Assert.Equal(("HB1083", Severity.Warning), (Assert.Single(due.Faults).Code, due.Faults[0].Severity));
        Assert.NotNull(due.Value);
        Assert.Empty(today.Faults);
    }
}
