using System.Text;

namespace GuideBuilder.Rendering.Pages;

/// <summary>The whole book as one page in reading order: the same pages, written one level down.</summary>
internal static class PaperEdition
{
    /// <summary>The file it is written to.</summary>
    internal const string FileName = "paper.html";

    internal static string Of(IReadOnlyList<Page> pages, Frame frame, Addresses addresses, Bindery bindery)
    {
        var body = new StringBuilder();
        foreach (var page in pages)
        {
            body.Append(Part(page)).Append(PageWriter.Write(page, Manner.Paper, addresses, bindery.Labels, bindery.Faults)).Append("</section>\n");
        }

        return frame.Around("paper", "paper", Phrase.Of(bindery.Say("paper-title")), "", body.ToString(), null);
    }

    private static string Part(Page page)
    {
        var head = new HtmlWriter();
        head.Open("section", ("id", page.Id), ("class", page.Kind is PageKind.Chapter or PageKind.Cover or PageKind.Letter ? "part fresh" : "part"));
        head.Open("h2").Text(page.Number.Length == 0 ? page.Title.PlainWords : $"{page.Number} {page.Title.PlainWords}").Close();
        const string Closing = "</section>";
        return head.Close().ToString()[..^Closing.Length] + "\n";
    }
}
