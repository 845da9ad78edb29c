using GuideBuilder.Rendering.Blocks;

namespace GuideBuilder.Rendering.Sheets;

/// <summary>What each answer that is still missing would make of the sheet: a table a question, a column a possible answer.</summary>
internal static class CaseTables
{
    /// <summary>Under one heading, the tables and the sources of all their lines; nothing where no line hangs on such an answer.</summary>
    internal static ImmutableArray<Block> Of(SheetWords words, ElectricalSheet sheet) => sheet.Cases.IsEmpty ? [] :
    [
        new Block.Heading(1, null, Phrase.Of(words.Say("cases"))),
        new Block.Prose(Phrase.Of(words.Say("cases-words"))),
        .. sheet.Cases.Select(c => Table(words, c)),
        new Block.Prose(words.Bindery.Labels.Compose("sheet-sources", ("sources", words.Sources(Sources(sheet))))),
    ];

    /// <summary>Whether a line is not known and its cases tell what it would be.</summary>
    internal static Func<SheetRow, bool> Instead(ImmutableArray<SheetCases> cases)
    {
        var told = cases.IsDefaultOrEmpty ? [] : cases.SelectMany(c => c.Lines).Select(l => l.Line).ToFrozenSet(StringComparer.Ordinal);
        return row => row.Result is null && told.Contains(row.Id);
    }

    private static Block.Grid Table(SheetWords words, SheetCases cases)
    {
        var bindery = words.Bindery;
        var caption = bindery.Labels.Compose("sheet-cases-caption", ("question", words.Name(cases.Question)));
        return new(
            caption,
            [new(bindery.Say("column-what")), .. cases.Answers.Select(a => new GridColumn(words.Worth(a, cases.Question)))],
            [.. cases.Lines.Select(l => Make.Row(null, [Name(words, l), .. l.Rows.Select(r => Phrase.Of(Cell(words, r)))]))]);
    }

    private static Phrase Name(SheetWords words, SheetCase line)
    {
        var name = line.Rows.OfType<SheetRow>().Select(words.Line).First();
        return Phrase.Of(line.Taken.IsEmpty ? name : $"{name} ({string.Join("; ", line.Taken.Select(t => string.Join(", ", t.Answers.Select(a => words.Worth(a, t.Question)))))})");
    }

    private static string Cell(SheetWords words, SheetRow? row)
    {
        var bindery = words.Bindery;
        return row is null ? bindery.Say("sheet-case-none")
            : row.Limit?.Worth is { } limit ? bindery.Say("sheet-case", ("0", words.Result(row)), ("1", words.Worth(limit, row.Limit.Name)), ("2", words.Verdict(row.Verdict)))
            : words.Result(row);
    }

    private static IEnumerable<string> Sources(ElectricalSheet sheet) =>
        sheet.Cases.SelectMany(c => c.Lines).SelectMany(l => l.Rows).OfType<SheetRow>().SelectMany(r => r.Sources).Distinct(StringComparer.Ordinal);
}
