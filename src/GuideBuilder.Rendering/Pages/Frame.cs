using GuideBuilder.Rendering.Templates;
using Scriban.Runtime;

namespace GuideBuilder.Rendering.Pages;

/// <summary>Sets a page into the frame of the look. Values are escaped for HTML; only what the writer made is not.</summary>
internal sealed class Frame
{
    // A list longer than this gets a filter from the script.
    private const int MostUnfiltered = 30;

    // What the script says; the page carries the words, so that a translation reaches them.
    private static readonly ImmutableArray<string> ScriptWords = ["colours", "as-device", "light", "dark", "filter", "shown"];

    private readonly LocalText _frame;
    private readonly Bindery _bindery;

    internal Frame(LocalText frame, Bindery bindery) => (_frame, _bindery) = (frame, bindery);

    /// <summary>The whole file of a page: the page that follows is named at its foot (null for none).</summary>
    internal string Around(Page page, string kind, string body, OutlineLine? next)
    {
        var labels = _bindery.Labels;
        var book = _bindery.Guidance.Head.Title.Words;
        var title = Tongues.Plain(page.Title.PlainWords);
        var names = new ScriptObject(StringComparer.Ordinal)
        {
            ["lang"] = _bindery.Language,
            ["text_lang"] = page.Language,
            ["title_lang"] = LanguageOf(page),
            ["next_lang"] = next is null ? "" : LanguageOf(next.Title, next.Language),
            ["book_lang"] = _bindery.Guidance.Head.Title.Language,
            ["handbook"] = _bindery.Plan.Answers.Handbook.Id,
            ["page"] = page.Id,
            ["kind"] = kind,
            ["page_title"] = page.Id == BookOrder.Cover ? title : $"{title}, {book}",
            ["heading"] = title,
            ["number"] = page.Number,
            ["book"] = book,
            ["cover"] = Manner.FileOf(BookOrder.Cover),
            ["is_cover"] = page.Id == BookOrder.Cover,
            ["is_public"] = _bindery.Plan.Occasion.Edition == EditionKind.Public,
            ["body"] = new Ready(body),
            ["next_file"] = next is null ? "" : Manner.FileOf(next.Id),
            ["next_number"] = next?.Number ?? "",
            ["next_title"] = next?.Title.PlainWords ?? "",
            ["edition"] = Edition(),
            ["check"] = Check(),
            ["translation"] = Translation(),
            ["skip"] = labels.Say("frame-skip"),
            ["not_alone"] = labels.Say("letter-comes-first"),
            ["is_index"] = page.Blocks.OfType<Block.Definitions>().ToList() is [{ Items.Length: > MostUnfiltered }],
        };
        foreach (var word in ScriptWords)
        {
            names[$"say_{word.Replace('-', '_')}"] = Tongues.Plain(labels.Say($"script-{word}"));
        }

        return TemplateRunner.Html(_frame, names, _bindery.Faults);
    }

    /// <summary>The language of a page's title, which may be another than that of its text.</summary>
    internal static string LanguageOf(Page page) => LanguageOf(page.Title, page.Language);

    private static string LanguageOf(Phrase title, string otherwise) => title.Parts is [Inline.InLanguage said] ? said.Language : otherwise;

    // A translation that no native reader has checked says so at the foot of every page.
    private string Translation() => _bindery.Guidance.Language switch
    {
        { IsOriginal: true } => "",
        { ReviewedBy: null } => _bindery.Labels.Say("frame-translation-unchecked"),
        var language => _bindery.Labels.Say("frame-translation-checked", ("role", language.ReviewedBy!.Role.Words), ("date", _bindery.Dates.OfGuidance(language.ReviewedBy.On))),
    };

    /// <summary>The rule of the stylesheet that prints title, edition and date at the edges of every sheet of paper.</summary>
    internal string PaperEdges() => $$"""

        @page {
          @top-left {
            content: "{{Quoted(_bindery.Guidance.Head.Title.Words)}}";
          }

          @bottom-left {
            font-size: 8pt;
            content: "{{Quoted(Edition())}} {{Quoted(Check())}}";
          }
        }

        """.ReplaceLineEndings("\n");

    // Words inside a string of the stylesheet.
    private static string Quoted(string words) => Tongues.Plain(words).ReplaceLineEndings(" ").Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);

    private string Check() => _bindery.Labels.Say("frame-check", ("date", _bindery.Dates.OfGuidance(_bindery.Guidance.Head.ReviewBy)));

    private string Edition() => _bindery.Labels.Say(
        "frame-edition",
        ("edition", _bindery.Labels.Say($"edition-{_bindery.Plan.Occasion.Edition.ToString().ToLowerInvariant()}")),
        ("date", _bindery.Plan.Occasion.Edition == EditionKind.Public ? _bindery.Dates.OfGuidance(_bindery.Guidance.Head.EditionDate) : _bindery.Dates.Short(_bindery.Plan.Occasion.Today)));
}
