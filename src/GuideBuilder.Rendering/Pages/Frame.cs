using GuideBuilder.Rendering.Templates;
using Scriban.Runtime;

namespace GuideBuilder.Rendering.Pages;

/// <summary>Sets a page into the frame of the look. Values are escaped for HTML; only what the writer made is not.</summary>
internal sealed class Frame
{
    private readonly LocalText _frame;
    private readonly Bindery _bindery;

    internal Frame(LocalText frame, Bindery bindery) => (_frame, _bindery) = (frame, bindery);

    /// <summary>The whole file of a page: the page that follows is named at its foot (null for none).</summary>
    internal string Around(string page, string kind, Phrase title, string number, string body, OutlineLine? next)
    {
        var labels = _bindery.Labels;
        var book = _bindery.Guidance.Head.Title.Words;
        var names = new ScriptObject(StringComparer.Ordinal)
        {
            ["lang"] = _bindery.Language,
            ["handbook"] = _bindery.Plan.Answers.Handbook.Id,
            ["page"] = page,
            ["kind"] = kind,
            ["page_title"] = page == BookOrder.Cover ? book : $"{title.PlainWords}, {book}",
            ["heading"] = title.PlainWords,
            ["number"] = number,
            ["book"] = book,
            ["cover"] = Manner.FileOf(BookOrder.Cover),
            ["is_cover"] = page == BookOrder.Cover,
            ["body"] = new Ready(body),
            ["next_file"] = next is null ? "" : Manner.FileOf(next.Id),
            ["next_number"] = next?.Number ?? "",
            ["next_title"] = next?.Title.PlainWords ?? "",
            ["edition"] = Edition(),
            ["check"] = Check(),
            ["skip"] = labels.Say("frame-skip"),
            ["not_alone"] = labels.Say("letter-comes-first"),
        };
        return TemplateRunner.Html(_frame, names, _bindery.Faults);
    }

    /// <summary>The rule of the stylesheet that prints title, edition and date at the edges of every sheet of paper.</summary>
    internal string PaperEdges() => $$"""

        @page {
          @top-left {
            content: "{{Quoted(_bindery.Guidance.Head.Title.Words)}}";
          }

          @bottom-left {
            content: "{{Quoted(Edition())}} {{Quoted(Check())}}";
          }
        }

        """.ReplaceLineEndings("\n");

    // Words inside a string of the stylesheet.
    private static string Quoted(string words) => words.ReplaceLineEndings(" ").Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);

    private string Check() => _bindery.Labels.Say("frame-check", ("date", _bindery.Dates.Short(_bindery.Guidance.Head.ReviewBy)));

    private string Edition() => _bindery.Labels.Say(
        "frame-edition",
        ("edition", _bindery.Labels.Say($"edition-{_bindery.Plan.Occasion.Edition.ToString().ToLowerInvariant()}")),
        ("date", _bindery.Plan.Occasion.Edition == EditionKind.Public ? _bindery.Guidance.Head.EditionDate.ToString("uuuu-MM-dd", null) : _bindery.Dates.Short(_bindery.Plan.Occasion.Today)));
}
