using AngleSharp.Html.Parser;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>Given the plan of the last handbook, the cover says what has changed and why.</summary>
public sealed class SinceTests(Handbooks handbooks)
{
    private static readonly string Answers = Repository.At("answers/" + Handbooks.Homes[0] + ".yaml");

    private string LastPlan => Path.Combine(handbooks.Of(Handbooks.Homes[0]), "plan.json");

    [Fact]
    public async Task An_answer_that_was_learnt_is_named_as_the_cause_of_each_change()
    {
        var changes = await ChangesAsync(File.ReadAllText(Answers).Replace("asbestos-board: unknown", "asbestos-board: no", StringComparison.Ordinal), Handbooks.Today);

        Assert.Contains(changes, c => c.StartsWith("No longer in the plan: The asbestos result comes back.", StringComparison.Ordinal));
        var cause = Assert.Single(changes.Select(c => c[c.IndexOf("Cause: ", StringComparison.Ordinal)..]).Distinct(StringComparer.Ordinal));
        Assert.Matches("^Cause: your answer on [^,]*asbestos.$", cause);
        Assert.DoesNotContain(changes, c => c.StartsWith("New in the plan", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_happening_is_named_as_the_cause_of_what_is_done()
    {
        var answers = File.ReadAllText(Answers);
        Assert.DoesNotContain("\nlog:", answers, StringComparison.Ordinal);

        var changes = await ChangesAsync(answers + "\nlog:\n  - { on: 2026-11-25, step: find-supply-number, what: done }\n", "2026-11-25");

        Assert.Contains(changes, c => c.Contains("Find your supply number", StringComparison.Ordinal) && c.Contains("25 November 2026", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Where_only_time_has_passed_time_is_the_cause()
    {
        var changes = await ChangesAsync(File.ReadAllText(Answers), "2027-01-05");

        Assert.NotEmpty(changes);
        Assert.All(changes, c => Assert.EndsWith("Cause: time has passed.", c, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_same_answers_on_the_same_day_change_nothing() => Assert.Empty(await ChangesAsync(File.ReadAllText(Answers), Handbooks.Today));

    [Fact]
    public async Task A_file_that_is_no_plan_is_a_fault_and_nothing_is_written()
    {
        using var folder = new Folder();

        var bound = await Tool.GuideBuilderAsync("bind", Answers, "--to", folder.At("book"), "--since", folder.Put("notes.json", "[1]"));

        Assert.Equal(1, bound.Exit);
        Assert.Contains("notes.json:1:1: This is not the plan of an earlier handbook.", bound.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.At("book")));
    }

    [Fact]
    public async Task One_earlier_plan_does_not_go_with_two_homes()
    {
        using var folder = new Folder();

        var bound = await Tool.GuideBuilderAsync("bind", Answers, Answers, "--to", folder.At("book"), "--since", LastPlan);

        Assert.Equal(2, bound.Exit);
        Assert.Contains("HB4019", bound.Errors, StringComparison.Ordinal);
    }

    // The lines under the cover's heading of changes.
    private async Task<string[]> ChangesAsync(string answers, string today)
    {
        using var folder = new Folder();
        var bound = await Tool.GuideBuilderAsync("bind", folder.Put("home.yaml", answers), "--to", folder.At("book"), "--today", today, "--since", LastPlan);
        Assert.True(bound.Exit == 0, bound.Errors);
        var cover = new HtmlParser().ParseDocument(File.ReadAllText(folder.At("book", "index.html")));
        var heading = cover.QuerySelectorAll("h2").Single(h => h.TextContent.StartsWith("What has changed since", StringComparison.Ordinal));
        return heading.NextElementSibling is { LocalName: "ul" } list ? [.. list.Children.Select(line => line.TextContent.Trim())] : [];
    }
}
