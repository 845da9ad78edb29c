namespace GuideBuilder.Rendering.Pages;

/// <summary>Takes a page or letter apart into its title, which is the first line, and the rest.</summary>
internal static class PageTitle
{
    /// <summary>The words of the first line after its number sign; a page without one is a fault.</summary>
    internal static string Of(Template page, FaultList? faults = null)
    {
        var first = page.Text.Words.ReplaceLineEndings("\n").Split('\n', 2)[0].Trim();
        if (first.StartsWith("# ", StringComparison.Ordinal))
        {
            return first[2..].Trim();
        }

        faults?.Add(RenderingFaults.TitleMissing(page.Text.Place));
        return page.Id;
    }

    /// <summary>The title with its language, which may be translated where the text is not.</summary>
    internal static LocalText Said(Template page) => page.OwnTitle ?? page.Text with { Words = Of(page) };

    /// <summary>What follows the first line, with its place.</summary>
    internal static LocalText Rest(Template page)
    {
        var parts = page.Text.Words.ReplaceLineEndings("\n").Split('\n', 2);
        var place = page.Text.Place;
        return page.Text with { Words = parts.Length > 1 ? parts[1] : "", Place = new(place.Path, place.Line + 1, 1) };
    }
}
