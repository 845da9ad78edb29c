using GuideBuilder.Rendering.Data;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The parts that help to find the way: contents, glossary, sources, index.</summary>
internal static class BackBlocks
{
    /// <summary>Every chapter in reading order.</summary>
    internal static ImmutableArray<Block> Contents(Bindery bindery)
    {
        var chapters = bindery.Outline.Where(l => l.Kind == PageKind.Chapter).ToList();
        return Make.List(chapters.Select(Line));
    }

    /// <summary>A link to the file of dates, where the book has one.</summary>
    internal static ImmutableArray<Block> CalendarLink(Bindery bindery) => CalendarFile.IsIn(bindery.Plan)
        ? [new Block.Prose(bindery.Labels.Compose("calendar-file", ("file", Phrase.Of(new Inline.Link(new Target.File(CalendarFile.Name), Phrase.Of(bindery.Say("calendar-file-name")))))))]
        : [];

    /// <summary>The files for paper and for other programs, a line each.</summary>
    internal static ImmutableArray<Block> DataFiles(Bindery bindery) => Make.List(
    [
        .. bindery.Apart.Select(l => Bindery.Link(l.Id, l.Title)),
        .. new[] { ("file-paper", "paper.html"), ("file-large", "large-print.html"), ("file-costs", PlanFiles.Costs), ("file-plan", PlanFiles.Plan), ("file-schema", PlanFiles.Schema) }
            .Select(f => Phrase.Of(new Inline.Link(new Target.File(f.Item2), Phrase.Of(bindery.Say(f.Item1))))),
    ]);

    /// <summary>Terms and their meanings, by the alphabet.</summary>
    internal static ImmutableArray<Block> Glossary(Bindery bindery) =>
        [new Block.Definitions([.. bindery.Guidance.Terms.OrderBy(t => t.Word.Words, StringComparer.OrdinalIgnoreCase).Select(t => new Definition(t.Id, Term(bindery, t), bindery.Read(t.Meaning)))])];

    /// <summary>Every publication, by title.</summary>
    internal static ImmutableArray<Block> Sources(Bindery bindery) =>
        [new Block.Definitions([.. bindery.Guidance.Sources.OrderBy(s => s.Title.Words, StringComparer.OrdinalIgnoreCase).ThenBy(s => s.Id, StringComparer.Ordinal).Select(s => Source(bindery, s))])];

    private static Phrase Line(OutlineLine line) => Phrase.Of(line.Number + " ") + Bindery.Link(line.Id, line.Title);

    private static Phrase Term(Bindery bindery, Term term) =>
        term.Also.IsEmpty ? bindery.Words(term.Word) : bindery.Labels.Compose("term-also", ("term", bindery.Words(term.Word)), ("also", Phrase.Join(", ", term.Also.Select(bindery.Words))));

    private static Definition Source(Bindery bindery, Source source)
    {
        var parts = new[] { source.Publisher, source.Edition, source.Year, source.Section }.Where(p => p.Length > 0);
        var address = source.Address.Length == 0 ? Phrase.Empty : Phrase.Of(" ") + Phrase.Of(new Inline.Link(new Target.Outside(source.Address), Phrase.Of(source.Address)));
        var seen = source.Checked is { } day ? bindery.Labels.Compose("source-checked", ("date", bindery.Dates.SayOfGuidance(day))) : Phrase.Empty;
        return new(source.Id, bindery.Words(source.Title), [new Block.Prose(Phrase.Of(string.Join(", ", parts) + ".") + address + Phrase.Of(" " + bindery.Say($"source-{Marks.LabelOf(source.Mark)}")) + seen)]);
    }
}
