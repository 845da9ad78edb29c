using Markdig.Extensions.Tables;
using Markdig.Syntax;

namespace GuideBuilder.Rendering.Markup;

/// <summary>Turns CommonMark into blocks whose links name items, and reports what a text may not hold.</summary>
internal sealed class MarkupReader
{
    private readonly LocalText _source;
    private readonly InlineReader _inlines;
    private readonly FaultList _faults;
    private readonly int _raise;

    /// <summary>A reader for one text; every heading level is lowered by so many.</summary>
    internal MarkupReader(LocalText source, string pageLanguage, KnownIds known, FaultList faults, int raise)
    {
        (_source, _faults, _raise) = (source, faults, raise);
        _inlines = new(source, pageLanguage, known, faults);
    }

    /// <summary>The blocks of some CommonMark that came from the text.</summary>
    internal ImmutableArray<Model.Block> Read(string words)
    {
        try
        {
            return Blocks(Dialect.Parse(words));
        }
        catch (ArgumentException)
        {
            _faults.Add(RenderingFaults.TooDeep(_source.Place));
            return [];
        }
    }

    private ImmutableArray<Model.Block> Blocks(ContainerBlock container) => [.. container.SelectMany(Read)];

    private IEnumerable<Model.Block> Read(Markdig.Syntax.Block block) => block switch
    {
        HeadingBlock heading => [new Model.Block.Heading(Math.Max(1, heading.Level - _raise), null, _inlines.Read(heading.Inline))],
        ParagraphBlock paragraph => [new Model.Block.Prose(_inlines.Read(paragraph.Inline))],
        ListBlock list => [new Model.Block.Listing(list.IsOrdered, [.. list.OfType<ListItemBlock>().Select(Blocks)])],
        QuoteBlock quote => [new Model.Block.Quotation(Blocks(quote))],
        CodeBlock code => [new Model.Block.ExactLines(code.Lines.ToString())],
        ThematicBreakBlock => [new Model.Block.Divider()],
        Table table => [Grid(table)],
        LinkReferenceDefinitionGroup => [],
        _ => [],
    };

    private Model.Block.Grid Grid(Table table)
    {
        var rows = table.OfType<Markdig.Extensions.Tables.TableRow>().ToList();
        var heads = rows.Where(r => r.IsHeader).Take(1).SelectMany(Cells).Select(c => new GridColumn(c.PlainWords));
        return new(Phrase.Empty, [.. heads], [.. rows.Where(r => !r.IsHeader).Select(r => new GridRow(null, [.. Cells(r)]))]);
    }

    private IEnumerable<Phrase> Cells(Markdig.Extensions.Tables.TableRow row) =>
        row.OfType<TableCell>().Select(c => c.OfType<ParagraphBlock>().Select(p => _inlines.Read(p.Inline)).FirstOrDefault(Phrase.Empty));
}
