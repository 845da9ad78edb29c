using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Form;
using GuideBuilder.Tests.Support;
using Home = GuideBuilder.Tests.Support.Home;

namespace GuideBuilder.Tests.Cases;

/// <summary>What content/README.md tells an editor to do, done in a copy, and what the handbook then says.</summary>
public sealed class EditorTests
{
    private const string Demo = "answers/avebury-close.yaml";

    private const string Question = """
        - id: cellar-dry
          label: Dry cellar
          wording: Is the cellar dry all year?
          how-to-find-out: Ask whoever has lived there longest.
          what-it-decides: Whether the intake is warned of water.
          kind: yes-no
          data-class: none
          ease: ask
          ask-if: {intake.where: {is: cellar}}
          options:
            yes: {weight: 8}
            no: {weight: 2, assume: yes}
          source: [our-judgement]


        """;

    private const string Hazard = """
        - id: water-in-the-cellar
          title: Water in the cellar
          applies-if: {intake.cellar-dry: {is: no}}
          because: You said that the cellar is not dry.
          source: [our-judgement]
          signal-word: danger
          cause: Water reaches the intake.
          harm: Electric shock.
          people: Whoever goes down.
          when: After rain.
          controls:
            - {level: eliminate, what: "Another place for the intake.", by: network-operator}
          stop-when: Water is on the floor.
          before: {severity: 5, likelihood: 2}
          after: {severity: 5, likelihood: 1}
          reviewed-by: not yet reviewed


        """;

    private const string Isle = """
            - id: isle
              title: An isle
              holidays: england-and-wales
              currency: £
              bodies: {}
            - id: wales

        """;

    [Fact]
    public void A_price_that_is_changed_is_another_sum_on_the_money_page()
    {
        var price = Entry("content/tables/prices.yaml", "operator-outside-joint");
        var changed = Changed(("content/tables/prices.yaml", price, Line(price, "likely", "£4,321").Replace("high: £", "high: £1", StringComparison.Ordinal)));

        Assert.True(Sum(Home.At(Demo, changed)) > 3 * Sum(Home.At(Demo)));
        Assert.NotEqual(Home.At(Demo).Words("money"), Home.At(Demo, changed).Words("money"));
    }

    [Fact]
    public void A_duration_that_is_changed_moves_what_follows()
    {
        var step = Entry("content/steps.yaml", "operator-plans-works");
        var changed = Changed(("content/steps.yaml", step, step.Replace("takes: {low: 20, likely: 35, high: 65,", "takes: {low: 90, likely: 95, high: 99,", StringComparison.Ordinal)));

        Assert.True(Finish(Home.At(Demo, changed)) > Finish(Home.At(Demo)));
        Assert.Contains("95", Home.At(Demo, changed).Words("operator-plans-works"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sentence_that_is_changed_stands_on_its_page_with_link_and_number()
    {
        var changed = Changed(("content/pages/money.md", "No single bill covers this job.", "No one bill covers [the joint hole](see:dig-joint-hole-by-contractor). Ring {{ body \"network-emergency\" }}. {{ if present \"looped-supply\" }}It is looped.{{ end }}"));

        Assert.Contains("No one bill covers the joint hole. Ring 105. It is looped.", Home.At(Demo, changed).Words("money"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_question_is_asked_and_the_hazard_that_asks_it_stands_in_the_register()
    {
        var changed = Changed(("content/questions/intake.yaml", "- id: slack\n", Question + "- id: slack\n"), ("content/hazards.yaml", "- id: tidy-intake\n", Hazard + "- id: tidy-intake\n"));
        const string Cellar = "home: {nation: england}\nwish: {moves: [cutout]}\nintake: {where: cellar";

        Assert.Contains("Is the cellar dry all year?", System.Text.Encoding.UTF8.GetString(FormPage.Render(changed).Value!.Bytes.Span), StringComparison.Ordinal);
        Assert.Equal(ItemState.Open, Home.Given(Cellar + "}", changed).Items.State("water-in-the-cellar"));
        Assert.Contains("Water in the cellar", Home.Given(Cellar + ", cellar-dry: no}", changed).Words("dangers"), StringComparison.Ordinal);
        Assert.DoesNotContain("Water in the cellar", Home.Given(Cellar + ", cellar-dry: yes}", changed).Words("dangers"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_nation_that_is_added_names_every_word_that_it_still_wants_and_is_bound_when_it_has_them()
    {
        (string, string, string)[] changes =
        [
            ("content/questions/home.yaml", "    wales: {wording: Wales, weight: 5}\n", "    wales: {wording: Wales, weight: 5}\n    isle: {wording: An isle, weight: 1}\n"),
            .. Rates(),
        ];
        var bare = Changed([.. changes, ("content/guidance.yaml", "    - id: wales\n", Isle)]);
        var faults = Handbook.Render(Home.Given("home: {nation: isle}\nwish: {moves: [cutout]}", bare).Plan, bare).Faults;
        var english = Entry("content/guidance.yaml", "england", "    ").Replace("id: england", "id: isle", StringComparison.Ordinal).Replace("title: England", "title: An isle", StringComparison.Ordinal);
        var whole = Changed([.. changes, ("content/guidance.yaml", "    - id: wales\n", english + "    - id: wales\n")]);

        Assert.Contains(faults, f => f.ToString().Contains("network-emergency", StringComparison.Ordinal));
        Assert.Contains("105", Home.Given("home: {nation: isle}\nwish: {moves: [cutout]}", whole).Words("emergencies"), StringComparison.Ordinal);
        Assert.Empty(Handbook.Render(Home.Given("home: {nation: isle}\nwish: {moves: [cutout]}", whole).Plan, whole).Faults);
    }

    [Fact]
    public void A_language_that_is_added_speaks_where_it_has_words_and_English_where_it_has_not()
    {
        var files = Guidances.Changed(("content/guidance.yaml", "languages: [en-GB, cy]", "languages: [en-GB, cy, gd]"))
            .Append(new("content/words/gd/language.yaml", "- id: gd\n  title: Gàidhlig\n  reviewed-by: not yet reviewed\n"u8.ToArray()))
            .Append(new("content/words/gd/pages/money.md", "# Airgead\n"u8.ToArray()));
        var read = GuidanceReader.Read([.. files], "content", Guidances.Today, language: "gd");
        Findings.AreNone(read.Faults.Select(f => f.ToString()));
        var pages = Home.At(Demo, read.Value!).Files;

        Assert.Contains("<html lang=\"gd\"", pages["money.html"], StringComparison.Ordinal);
        Assert.Contains("Airgead", pages["money.html"], StringComparison.Ordinal);
        Assert.Contains("lang=\"en-GB\"", pages["money.html"], StringComparison.Ordinal);
    }

    private static decimal Sum(Home home) => home.Plan.Costs.Single(c => c.Cost.Item.Id == "operator-alteration").Gross.Likely;

    private static NodaTime.LocalDate Finish(Home home) => home.Plan.Schedule.Finish.Likely;

    private static Guidance Changed(params (string File, string Was, string Now)[] changes)
    {
        var read = GuidanceReader.Read(Guidances.Changed(changes), "content", Guidances.Today);
        Findings.AreNone(read.Faults.Select(f => f.ToString()));
        return read.Value!;
    }

    // A rate of the new nation beside that of Wales, in each row.
    private static IEnumerable<(string, string, string)> Rates() =>
        from row in Content.Guidance.Tables.Vat
        let entry = Entry("content/tables/vat.yaml", row.Id)
        let wales = entry.Split('\n').Single(l => l.StartsWith("  wales:", StringComparison.Ordinal))
        select ("content/tables/vat.yaml", entry, entry.Replace(wales, wales + "\n" + wales.Replace("wales", "isle", StringComparison.Ordinal), StringComparison.Ordinal));

    private static string Entry(string file, string id, string indent = "")
    {
        var text = File.ReadAllText(Repository.At(file));
        var at = text.IndexOf($"{indent}- id: {id}\n", StringComparison.Ordinal);
        var end = text.IndexOf($"\n{indent}- id: ", at + 1, StringComparison.Ordinal);
        return end < 0 ? text[at..] : text[at..(end + 1)];
    }

    private static string Line(string entry, string key, string value) => System.Text.RegularExpressions.Regex.Replace(entry, $"(?m)^  {key}: .*$", $"  {key}: {value}");
}
