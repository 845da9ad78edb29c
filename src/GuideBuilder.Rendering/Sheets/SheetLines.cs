using GuideBuilder.Rendering.Blocks;

namespace GuideBuilder.Rendering.Sheets;

/// <summary>Lines of a sheet as a reader sees them: a table of what came out, and an entry for each line that says how.</summary>
internal static class SheetLines
{
    /// <summary>The lines in parts, each under its heading; a part begins with the first of its lines that is there. A line that is told case by case elsewhere, and not known here, is left out of the table.</summary>
    internal static IEnumerable<Block> InParts(SheetWords words, ImmutableArray<SheetRow> rows, ImmutableArray<(string Part, ImmutableArray<string> Lines)> parts, ImmutableArray<SheetCases> cases = default) =>
        parts.SelectMany(part => Part(words, part.Part, [.. rows.Where(r => part.Lines.Any(l => IsOf(l, r.Id)))], CaseTables.Instead(cases)));

    /// <summary>What came out, line by line, with the limit and how it stands to it.</summary>
    internal static ImmutableArray<Block> Table(SheetWords words, string caption, IEnumerable<SheetRow> rows) => Make.Grid(
        words.Bindery, caption, ["column-what", "column-indicative", "column-against"], rows.Select(r => Make.Row(null, Phrase.Of(words.Line(r)), Phrase.Of(words.Result(r)), Against(words, r))));

    /// <summary>A part whose lines are worked out as those above it: its table, and the sources of all its lines at once.</summary>
    internal static ImmutableArray<Block> Brief(SheetWords words, string part, ImmutableArray<SheetRow> rows, params ImmutableArray<string> names) => rows.Where(r => names.Any(n => IsOf(n, r.Id))).ToImmutableArray() is { IsEmpty: false } found ?
    [
        new Block.Heading(1, null, Phrase.Of(words.Say($"part-{part}"))),
        new Block.Prose(Phrase.Of(words.Say($"brief-{part}"))),
        .. Table(words, "sheet-caption", found),
        new Block.Prose(words.Bindery.Labels.Compose("sheet-sources", ("sources", words.Sources(found.SelectMany(r => r.Sources).Distinct(StringComparer.Ordinal))))),
    ] : [];

    // A name that ends in a hyphen stands for every line that begins so.
    private static bool IsOf(string name, string line) => name.EndsWith('-') ? line.StartsWith(name, StringComparison.Ordinal) : line == name;

    private static ImmutableArray<Block> Part(SheetWords words, string part, ImmutableArray<SheetRow> rows, Func<SheetRow, bool> elsewhere) => rows.IsEmpty ? [] :
    [
        new Block.Heading(1, null, Phrase.Of(words.Say($"part-{part}"))),
        .. rows.All(elsewhere) ? [] : Table(words, "sheet-caption", rows.Where(r => !elsewhere(r))),
        .. rows.Select(r => Worked(words, r, elsewhere(r))),
    ];

    private static Phrase Against(SheetWords words, SheetRow row) => row.Limit is not { } limit
        ? Phrase.Of(words.Bindery.Say("sheet-no-limit"))
        : words.Bindery.Labels.Compose(limit.Worth is null ? "sheet-against-open" : "sheet-against", ("limit", Phrase.Of(words.Worth(limit.Worth, limit.Name))), ("verdict", Phrase.Of(words.Verdict(row.Verdict))));

    private static Block.Entry Worked(SheetWords words, SheetRow row, bool elsewhere)
    {
        var bindery = words.Bindery;
        var limit = row.Limit is { } held && !elsewhere
            ? [new Block.Prose(bindery.Labels.Compose("sheet-limit", ("limit", words.Figure(held)), ("verdict", Phrase.Of(words.Verdict(row.Verdict)))))]
            : ImmutableArray<Block>.Empty;
        return new Block.Entry(
            null,
            2,
            Phrase.Of(words.Line(row)),
            [
                new Block.Prose(bindery.Labels.Compose("sheet-formula", ("formula", Phrase.Of(words.Say($"formula-{row.Formula}"))))),
                .. Make.List(row.Inputs.Select(words.Figure)),
                elsewhere ? Make.Say(bindery, "sheet-result-elsewhere") : new Block.Prose(bindery.Labels.Compose("sheet-result", ("result", Phrase.Of(new Inline.Strong(Phrase.Of(words.Result(row))))))),
                .. limit,
            ],
            Lines(words, row));
    }

    private static ImmutableArray<SideLine> Lines(SheetWords words, SheetRow row)
    {
        var bindery = words.Bindery;
        ImmutableArray<SideLine> source = row.Sources.IsEmpty ? [] : [Sides.Line(bindery, "left-source", words.Sources(row.Sources))];
        ImmutableArray<SideLine> open = row.Open.IsEmpty ? [] : [Sides.Line(bindery, "left-settled-by", Phrase.Join(", ", row.Open.Select(words.Name)))];
        return [Sides.Line(bindery, "left-how-sure", Phrase.Of(bindery.Say(Marks.LabelOf(row.Mark)))), .. open, .. source];
    }
}
