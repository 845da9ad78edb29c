using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Data;
using GuideBuilder.Rendering.Pages;
using GuideBuilder.Tests.Support;
using FaultList = GuideBuilder.Rendering.FaultList;

namespace GuideBuilder.Tests.Rendering.Editions;

/// <summary>No answer reaches a reader whom it is not for: the same bytes come out whatever the answer is.</summary>
public sealed class DisclosureTests
{
    public static TheoryData<EditionKind> Parts => [EditionKind.Public, EditionKind.Neighbour, EditionKind.Customer];

    private static AnswerSet Demo => Support.Editions.Demo;

    [Fact]
    public void The_public_edition_is_the_same_byte_for_byte_whatever_the_answers_are_that_it_may_not_print()
    {
        var may = Disclosure.Most(EditionKind.Public);
        var other = Demo.With(q => !may.Contains(q.Data), Demo.Other);

        Assert.NotEqual(Demo.ByName.Values.Select(g => g.Value), other.ByName.Values.Select(g => g.Value));
        Assert.Equal(Support.Editions.Bind(Demo, EditionKind.Public).Words(), Support.Editions.Bind(other, EditionKind.Public).Words());
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void The_pages_of_an_edition_do_not_know_what_it_may_not_print(EditionKind edition)
    {
        var may = Disclosure.Most(edition);
        var told = Support.Editions.Plan(Demo, edition).Answers;

        Findings.AreNone(
            from question in Content.Guidance.Questions
            where !may.Contains(question.Data)
            let given = told[question.Name]
            where given.Standing == Standing.Known || given.Value is not null || given.Place is not null
            select question.Name);
    }

    [Fact]
    public void The_public_edition_holds_no_words_dates_numbers_or_history_of_anybody()
    {
        var planted = Demo.With(q => q.Kind is QuestionKind.Text or QuestionKind.NumberName or QuestionKind.Date or QuestionKind.Days, Demo.Other) with
        {
            FileName = "zanzibar.yaml",
            Handbook = Demo.Handbook with { FilledInBy = "Zanzibar" },
            Log = [new(new(2026, 11, 3), LogKind.Noted, null, null, null, null, null, "Zanzibar", "Zanzibar", Place.None)],
            Papers = [new(PaperKind.Letter, "supplier", new(2026, 11, 3), null, null, [], [], "Zanzibar", Place.None)],
        };
        var words = Support.Editions.Bind(planted, EditionKind.Public).Words();

        Assert.DoesNotContain("zanzibar", words, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("1200010305967", words, StringComparison.Ordinal);
        Assert.DoesNotContain("17 September", words, StringComparison.Ordinal);
        Assert.DoesNotContain("2027-09-17", words, StringComparison.Ordinal);
        Assert.DoesNotContain("<time", words, StringComparison.Ordinal);
        Assert.DoesNotContain("in 10 of our", words, StringComparison.Ordinal);
        Assert.DoesNotContain(CalendarFile.Name, words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_neighbour_gets_what_concerns_them_and_nothing_else()
    {
        var book = Support.Editions.Bind(Demo, EditionKind.Neighbour);

        Assert.Equal(["emergencies.html", "index.html", "large-print.html", "letter-neighbour-sheet.html", "paper.html", "style.css", "ticks.js"], book.Files.Select(f => f.Name).Order(StringComparer.Ordinal));
        Findings.AreNone(new[] { "Rowan", "stairlift", "£", "pendant" }.Where(w => book.Words().Contains(w, StringComparison.OrdinalIgnoreCase)));
    }

    [Theory]
    [InlineData("no")]
    [InlineData("yes")]
    public void A_letter_says_the_same_whatever_is_answered_about_health_or_absence_unless_it_may(string consent)
    {
        var agreed = Demo.With(q => q.Name == "people.share-needs", _ => new Value.Option(consent));
        var (one, two) = (Letters(agreed), Letters(agreed.With(q => q.Data is DataClass.Health or DataClass.Absence, agreed.Other)));
        var differ = one.Where(l => two[l.Key] != l.Value).Select(l => l.Key).ToList();
        var may = consent == "yes" ? Content.Guidance.Disclosures.Where(d => d.MayPrint.Contains(DataClass.Health)).Select(d => d.Id) : [];

        Findings.AreNone(differ.Except(may));
        Assert.Equal(consent == "yes", differ.Count > 0);
    }

    [Fact]
    public void The_sheet_for_the_door_and_the_calendar_tell_nothing_of_health_or_absence()
    {
        string[] told = ["telecare", "stairlift", "priority register", "medic", "asthma", "frail", "away", "23 December"];
        var other = Demo.With(q => q.Data is DataClass.Health, Demo.Other);
        var words = Door(Demo) + Door(other) + Support.Editions.Bind(Demo, EditionKind.Householder).File(CalendarFile.Name) + Support.Editions.Bind(other, EditionKind.Householder).File(CalendarFile.Name);

        Findings.AreNone(told.Where(w => words.Contains(w, StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public void Health_goes_to_the_register_the_supplier_and_the_operator_only() =>
        Findings.AreNone(Content.Guidance.Disclosures.Where(d => d.MayPrint.Contains(DataClass.Health)).Select(d => d.Id)
            .Except(["letter-priority-register", "letter-supplier-enquiry", "letter-supplier-booking", "letter-meter-reach", "letter-operator-enquiry", "letter-operator-application", "letter-application-pack"]));

    private static Dictionary<string, string> Letters(AnswerSet answers)
    {
        var bindery = Handbook.Open(Support.Editions.Plan(answers, EditionKind.Householder), Content.Guidance, new FaultList());
        return Content.Guidance.Letters.ToDictionary(l => l.Id, l => PlainText.Of(new(l.Id, PageKind.Letter, "", Phrase.Empty, bindery.ReadLetter(l))), StringComparer.Ordinal);
    }

    private static string Door(AnswerSet answers)
    {
        var bindery = Handbook.Open(Support.Editions.Plan(answers, EditionKind.Householder), Content.Guidance, new FaultList());
        return PlainText.Of(PageMaker.Make(bindery, bindery.Outline.Single(l => l.Id == "door-sheet")));
    }
}
