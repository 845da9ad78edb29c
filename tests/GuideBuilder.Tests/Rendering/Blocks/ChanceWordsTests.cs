using System.Text;
using System.Text.RegularExpressions;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering.Blocks;

/// <summary>A chance that rests on judgement: one figure, the words that say so beside it, and never in the public edition.</summary>
public sealed partial class ChanceWordsTests
{
    [Fact]
    public void Every_chance_says_that_it_is_a_judgement()
    {
        var told = Pages("answers/avebury-close.yaml", EditionKind.Householder).SelectMany(p => Chances().Matches(p)).Select(m => m.Value).ToArray();

        Assert.True(told.Length > 10);
        Assert.All(told, t => Assert.EndsWith("(our judgement, no published count)", t, StringComparison.Ordinal));
    }

    [Fact]
    public void The_public_edition_tells_no_chance() =>
        Assert.All(Pages("answers/avebury-close.yaml", EditionKind.Public), p => Assert.DoesNotMatch(Chances(), p));

    [Theory]
    [InlineData("answers/avebury-close.yaml")]
    [InlineData("answers/mostly-unknown.yaml")]
    public void The_base_column_adds_to_the_penny(string file)
    {
        var plan = Home.At(file).Plan;
        var lines = plan.Costs.Where(c => c.Added).ToArray();

        Assert.All(lines, l => Assert.Equal(l.Gross.Likely, Math.Round(l.Gross.Likely, 2)));
        Assert.All(lines, l => Assert.Equal(l.Net.Likely, Math.Round(l.Net.Likely, 2)));
        Assert.Equal(plan.Money.Base, lines.Sum(l => l.Gross.Likely));
        Assert.Equal(plan.Money.BaseVat, lines.Sum(l => l.Gross.Likely - l.Net.Likely));
    }

    private static IEnumerable<string> Pages(string file, EditionKind edition)
    {
        var answers = AnswerReader.Read(new SourceText(file, File.ReadAllBytes(Repository.At(file))), Content.Guidance).Value!;
        answers = answers with { Handbook = answers.Handbook with { Edition = edition } };
        var plan = Planner.Plan(FactDeriver.Derive(answers, Content.Guidance).Value!, Content.Guidance, new(Home.Today, Occasion.DefaultSeed, edition), new Effort(300, 20, -1)).Value!;
        return Handbook.Render(plan, Content.Guidance).Value!.Files.Where(f => f.Name.EndsWith(".html", StringComparison.Ordinal)).Select(f => Encoding.UTF8.GetString(f.Bytes.Span));
    }

    [GeneratedRegex(@"[0-9]+ in 10\b[^()<]*(\([^)]*\))?")]
    private static partial Regex Chances();
}
