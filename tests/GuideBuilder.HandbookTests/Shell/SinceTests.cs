using System.Net;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>Given the plan of the last handbook, the cover says what has changed and why.</summary>
public sealed class SinceTests(Handbooks handbooks)
{
    private static readonly string Answers = Repository.At("answers/" + Handbooks.Homes[0] + ".yaml");

    private string LastPlan => Path.Combine(handbooks.Of(Handbooks.Homes[0]), "plan.json");

    [Fact]
    public async Task An_answer_that_was_learnt_is_named_as_the_cause()
    {
        using var folder = new Folder();
        var learnt = folder.Put("home.yaml", File.ReadAllText(Answers).Replace("asbestos-board: unknown", "asbestos-board: no", StringComparison.Ordinal));

        var bound = await Tool.GuideBuilderAsync("bind", learnt, "--to", folder.At("book"), "--today", Handbooks.Today, "--since", LastPlan);

        Assert.True(bound.Exit == 0, bound.Errors);
        var cover = WebUtility.HtmlDecode(File.ReadAllText(folder.At("book", "index.html")));
        Assert.Contains("What has changed since", cover, StringComparison.Ordinal);
        Assert.Contains("No longer in the plan: A trained person takes a sample of the board. Cause: your answer on", cover, StringComparison.Ordinal);
    }

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
}
