using System.Collections.Immutable;
using System.Text.RegularExpressions;
using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Tests.Rendering;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Hostile;

/// <summary>Hostile words in guidance and imprint: they are refused, or come to nothing; and no file that other programs read can be led astray by them.</summary>
public sealed partial class GuidanceWordsTests
{
    private static readonly BoundBook Plain = Titled("plain words");

    [Fact]
    public void The_text_of_a_page_is_refused_or_harmless() => Findings.AreNone(
        from words in HostileWords.All
        let staged = Bound.With(words + "\n")
        from wrong in staged.Value is null ? NotTold(staged.Faults) : Harmless.Wrong(staged.Value.File("extra.html"))
        select $"{words}: {wrong}");

    [Fact]
    public void The_words_of_an_imprint_are_refused_or_harmless_and_its_lines_are_shown_as_written() => Findings.AreNone(
        from words in HostileWords.All.Where(w => !w.Contains("{{", StringComparison.Ordinal))
        let staged = Imprinted(words)
        from wrong in staged.Value is null ? NotTold(staged.Faults) : Harmless.Wrong(staged.Value.File("extra.html"))
        select $"{words}: {wrong}");

    [Fact]
    public void The_name_of_an_answers_file_is_shown_as_it_is_and_does_nothing() => Findings.AreNone(
        from words in HostileWords.All
        let page = Named(words)
        from wrong in Harmless.Wrong(page).Concat(HostileWords.Seen(new AngleSharp.Html.Parser.HtmlParser().ParseDocument(page).Body!.TextContent).Contains(HostileWords.Seen(words.Replace("\0", "", StringComparison.Ordinal)), StringComparison.Ordinal) ? [] : ["other words"])
        select $"{words}: {wrong}");

    [Fact]
    public void No_cell_of_the_costs_is_taken_for_a_formula_or_for_two() => Findings.AreNone(
        from words in HostileWords.All
        let rows = Cells(Titled(words).File("costs.csv"))
        from wrong in rows.Length != Cells(Plain.File("costs.csv")).Length || rows.Any(r => r.Length != 8) ? ["another shape"]
            : rows.Skip(1).Any(r => r[0] != words && r[0] != "'" + words) ? ["other words"]
            : rows.SelectMany(r => r).Any(c => c.Length > 0 && c[0] is '=' or '+' or '@' or '\t' or '\r' or '\uFF1D') ? new[] { "a formula" }
            : []
        select $"{words}: {wrong}");

    [Fact]
    public void No_line_of_the_calendar_is_taken_for_another() => Findings.AreNone(
        from words in HostileWords.All
        let lines = Unfolded(Titled(words).File("dates.ics"))
        from wrong in !Names(lines).SequenceEqual(Names(Unfolded(Plain.File("dates.ics")))) ? ["other lines"]
            : !lines.Any(l => l.StartsWith("SUMMARY:", StringComparison.Ordinal) && Unescaped(l).Contains(words.ReplaceLineEndings("\n"), StringComparison.Ordinal)) ? new[] { "other words" }
            : []
        select $"{words}: {wrong}");

    private static IEnumerable<string> NotTold(IEnumerable<Fault> faults) => faults.Any(f => f.Severity == Severity.Error) ? [] : ["refused without a fault"];

    // The sample with those words for the title of every cost, step and party.
    private static BoundBook Titled(string words)
    {
        var title = Small.Words(words);
        RuleHead Head(Rule rule) => rule.Head with { Title = title };
        var plan = SamplePlan.For();
        var titled = plan with
        {
            Costs = [.. plan.Costs.Select(c => c with { Cost = c.Cost with { Item = c.Cost.Item with { Head = Head(c.Cost.Item) } } })],
            Steps = [.. plan.Steps.Select(s => s with { Step = s.Step with { Item = s.Step.Item with { Head = Head(s.Step.Item) } } })],
            Parties = [.. plan.Parties.Select(p => p with { Item = p.Item with { Head = Head(p.Item) } })],
        };
        var staged = Handbook.Render(titled, Sample.Guidance([.. Bound.Pages]));
        Findings.AreNone(staged.Faults.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()));
        return staged.Value!;
    }

    private static string Named(string file)
    {
        var plan = SamplePlan.For();
        var named = plan with { Facts = plan.Facts with { Answers = plan.Facts.Answers with { FileName = file } } };
        return Handbook.Render(named, Sample.Guidance([.. Bound.Pages, ("extra", "# Extra\n\n{{ block \"method\" }}\n")])).Value!.File("extra.html");
    }

    private static Staged<BoundBook> Imprinted(string words)
    {
        var said = Small.Words(words);
        var imprint = new Imprint(said, said, said, new(said, said, said), ["electrician"], null, new(null, null), said, said, said, null, Place.None);
        var page = "# Extra\n\n{{ block \"imprint\" }}\n\n{{ block \"imprint-closing\" }}\n\n{{ block \"imprint-terms\" }}\n";
        return Handbook.Render(SamplePlan.For(), Sample.Guidance([.. Bound.Pages, ("extra", page)]) with { Imprint = imprint });
    }

    // Rows and cells as RFC 4180 divides them.
    private static ImmutableArray<string[]> Cells(string csv) =>
        [.. Row().Matches(csv.TrimStart('\uFEFF')).Select(r => Cell().Matches(r.Value).Select(c => c.Groups[1].Value.Replace("\"\"", "\"", StringComparison.Ordinal)).ToArray())];

    // Lines of at most 75 octets that go on with a space are one.
    private static string[] Unfolded(string calendar)
    {
        Assert.All(calendar.Split("\r\n"), l => Assert.True(System.Text.Encoding.UTF8.GetByteCount(l) <= 75 && !l.Any(c => c is '\r' or '\n'), l));
        return calendar.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
    }

    private static IEnumerable<string> Names(string[] lines) => lines.Select(l => l.StartsWith("BEGIN", StringComparison.Ordinal) || l.StartsWith("END", StringComparison.Ordinal) ? l : l[..l.IndexOfAny([':', ';'])]);

    private static string Unescaped(string line) => Escape().Replace(line, m => m.Value[1] is 'n' or 'N' ? "\n" : m.Value[1..]);

    [GeneratedRegex("""(?:"(?:[^"]|"")*",?)+\r\n""")]
    private static partial Regex Row();

    [GeneratedRegex(""""(?:^|,)"((?:[^"]|"")*)"(?=,|\r\n)"""")]
    private static partial Regex Cell();

    [GeneratedRegex(@"\\.")]
    private static partial Regex Escape();
}
