using Scriban.Parsing;

namespace GuideBuilder.Rendering.Templates;

/// <summary>Turns Scriban's positions, counted from zero within a text, into places of the file the text stands in.</summary>
internal static class TemplatePlaces
{
    /// <summary>The place of a position; on the text's first line its own column counts, on later ones the line's.</summary>
    internal static Place At(LocalText text, TextPosition position) => At(text.Place, position.Line, position.Column);

    /// <summary>The place of a character of the text.</summary>
    internal static Place At(LocalText text, int offset)
    {
        var before = text.Words.AsSpan(0, Math.Clamp(offset, 0, text.Words.Length));
        var line = before.Count('\n');
        return At(text.Place, line, before.Length - (before.LastIndexOf('\n') + 1));
    }

    /// <summary>The place where some words first stand in the text; the text's own place where they do not.</summary>
    internal static Place Of(LocalText text, string words)
    {
        var offset = text.Words.IndexOf(words, StringComparison.Ordinal);
        return offset < 0 ? text.Place : At(text, offset);
    }

    private static Place At(Place place, int line, int column) =>
        place == Place.None ? place : new(place.Path, place.Line + line, line == 0 ? place.Column + column : column + 1);
}
