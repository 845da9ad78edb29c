using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Html;

/// <summary>How one edition of the book writes its pages: where a home is addressed from a page, how far headings are lowered, and what stands before every id on a page.</summary>
internal sealed record Manner(Func<string, Home, string> Address, int Depth, Func<string, string> IdPrefix)
{
    /// <summary>A file for each page.</summary>
    internal static Manner Files { get; } = new(
        (from, home) => (home.Page == from && home.Fragment is not null ? "" : FileOf(home.Page)) + (home.Fragment is null ? "" : "#" + home.Fragment),
        0,
        _ => "");

    /// <summary>Pages one level down, several to a file; a page that is in none of these files has one of its own.</summary>
    internal static Manner Paper(Func<string, string?> fileOf) => new(
        (from, home) => fileOf(home.Page) is { } file
            ? (file == fileOf(from) ? "" : file) + "#" + home.Page + (home.Fragment is null ? "" : "--" + home.Fragment)
            : Files.Address(from, home),
        1,
        page => page + "--");

    /// <summary>The file that a page is written to.</summary>
    internal static string FileOf(string page) => page == BookOrder.Cover ? "index.html" : page + ".html";
}

/// <summary>Writes the blocks of one page as HTML.</summary>
internal sealed class PageWriter
{
    // A table of more columns than this is set as entries where the page is narrow.
    private const int MostNarrowColumns = 2;

    private readonly Manner _manner;
    private readonly HtmlWriter _out = new();
    private readonly PhraseWriter _phrases;
    private readonly string _prefix;

    private PageWriter(Page page, Manner manner, Addresses addresses, Bindery bindery, FaultList faults)
    {
        _manner = manner;
        _prefix = manner.IdPrefix(page.Id);
        _phrases = new(_out, page, manner, addresses, bindery.Speak(page.Language, bindery.May).Labels, faults);
    }

    /// <summary>The page's blocks, without its title.</summary>
    internal static string Write(Page page, Manner manner, Addresses addresses, Bindery bindery, FaultList faults)
    {
        var writer = new PageWriter(page, manner, addresses, bindery, faults);
        writer.Blocks(page.Blocks);
        return writer._out.ToString();
    }

    private void Blocks(ImmutableArray<Block> blocks)
    {
        foreach (var block in blocks)
        {
            Write(block);
        }
    }

    private void Write(Block block)
    {
        switch (block)
        {
            case Block.Prose prose:
                Element("p", prose.Words);
                break;
            case Block.Heading heading:
                Title(heading.Level, heading.Anchor, heading.Words);
                break;
            case Block.Listing listing:
                List(listing);
                break;
            case Block.Definitions definitions:
                Define(definitions);
                break;
            case Block.Quotation quotation:
                _out.Open("blockquote");
                Blocks(quotation.Inside);
                _out.CloseLine();
                break;
            case Block.ExactLines exact:
                _out.Open("pre").Text(exact.Text).CloseLine();
                break;
            case Block.Divider:
                _out.Void("hr").Line();
                break;
            default:
                Composite(block);
                break;
        }
    }

    private void Composite(Block block)
    {
        switch (block)
        {
            case Block.Entry entry:
                Entry(entry);
                break;
            case Block.Grid grid:
                Grid(grid);
                break;
            case Block.DangerPanel panel:
                Panel(panel);
                break;
            case Block.Drawing drawing:
                PictureWriter.Write(_out, drawing, _prefix);
                break;
            case Block.Logo logo:
                _out.Open("p", ("class", "logo")).Void("img", ("alt", logo.InWords), ("src", $"data:{logo.Picture.MediaType};base64,{Convert.ToBase64String(logo.Picture.Bytes.Span)}")).CloseLine();
                break;
            case Block.Ticks ticks:
                Ticks(ticks);
                break;
            case Block.Sheet sheet:
                _out.Open("div", ("class", "sheet")).Line();
                Blocks(sheet.Inside);
                _out.CloseLine();
                break;
            default:
                throw new UnreachableException();
        }
    }

    private void Element(string tag, Phrase words, string? id = null)
    {
        _out.Open(tag, ("id", id));
        _phrases.Write(words);
        _out.CloseLine();
    }

    private void Title(int level, string? anchor, Phrase words) => Element(HeadingOf(level), words, Id(anchor));

    private string HeadingOf(int level) => Invariant($"h{Math.Min(6, level + 1 + _manner.Depth)}");

    private string? Id(string? anchor) => anchor is null ? null : _prefix + anchor;

    private void List(Block.Listing listing)
    {
        _out.Open(listing.Numbered ? "ol" : "ul").Line();
        foreach (var item in listing.Items)
        {
            _out.Open("li");
            Item(item);
            _out.CloseLine();
        }

        _out.CloseLine();
    }

    // A single paragraph needs no element of its own inside an item, a cell or a definition.
    private void Item(ImmutableArray<Block> blocks)
    {
        if (blocks is [Block.Prose only])
        {
            _phrases.Write(only.Words);
            return;
        }

        Blocks(blocks);
    }

    private void Define(Block.Definitions definitions)
    {
        _out.Open("dl").Line();
        foreach (var item in definitions.Items)
        {
            Element("dt", item.Term, Id(item.Anchor));
            _out.Open("dd");
            Item(item.Said);
            _out.CloseLine();
        }

        _out.CloseLine();
    }

    private void Entry(Block.Entry entry)
    {
        _out.Open(entry.Title.IsEmpty ? "div" : "section", ("class", "entry"), ("id", Id(entry.Anchor))).Line();
        if (!entry.Title.IsEmpty)
        {
            Title(entry.Level, null, entry.Title);
        }

        _out.Open("div", ("class", "text")).Line();
        Blocks(entry.Text);
        _out.CloseLine();
        Side(entry.Lines);
        _out.CloseLine();
    }

    private void Side(ImmutableArray<SideLine> lines)
    {
        if (lines.IsEmpty)
        {
            return;
        }

        _out.Open("div", ("class", "side")).Line();
        foreach (var line in lines)
        {
            _out.Open("p").Open("b").Text(line.Label + ":").Close().Text(" ");
            _phrases.Write(line.Says);
            _out.CloseLine();
        }

        _out.CloseLine();
    }

    private void Ticks(Block.Ticks ticks)
    {
        _out.Open("ul", ("class", "ticks")).Line();
        foreach (var box in ticks.Boxes)
        {
            _out.Open("li").Void("input", ("type", "checkbox"), ("id", Id(box.Id))).Open("label", ("for", Id(box.Id)));
            _phrases.Write(box.Task);
            _out.Close().CloseLine();
        }

        _out.CloseLine();
    }

    // The signal word is part of the heading, so that whoever goes from heading to heading hears it first.
    private void Panel(Block.DangerPanel panel)
    {
        var word = SignalNames.Of(panel.Word);
        _out.Open("div", ("class", $"panel {word}"), ("id", Id(panel.Anchor))).Line();
        _out.Open(HeadingOf(panel.Level), ("class", "titled")).Open("span", ("class", "signal"));
        if (panel.Word != SignalWord.Notice)
        {
            PictureWriter.Triangle(_out);
        }

        _out.Open("b").Text(panel.WordText).Close().Close().Text(" ").Open("span", ("class", "what"));
        _phrases.Write(panel.Title);
        _out.Close().CloseLine().Open("div", ("class", "message")).Line();
        Blocks(panel.Text);
        _out.CloseLine().CloseLine();
    }

    private void Grid(Block.Grid grid)
    {
        var wide = grid.Columns.Length > MostNarrowColumns;
        _out.Open("div", ("class", wide ? "grid wide" : "grid"));
        GridWriter.Write(_out, _phrases, grid, wide, Id);
        _out.CloseLine();
    }
}
