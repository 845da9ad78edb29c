namespace GuideBuilder.Reading;

/// <summary>Where in a file an index of its text stands.</summary>
internal static class Positions
{
    /// <summary>Line and column, counted from one, of an index; a line ends with a line feed, a carriage return, or both.</summary>
    public static Place At(string path, string text, int index)
    {
        var line = 1;
        var lineStart = 0;
        for (var at = 0; at < index; at++)
        {
            if (text[at] == '\n' || (text[at] == '\r' && (at + 1 == text.Length || text[at + 1] != '\n')))
            {
                line++;
                lineStart = at + 1;
            }
        }

        return new(path, line, index - lineStart + 1);
    }

    /// <summary>The place of the first tab that stands where only spaces may indent, or null.</summary>
    public static Place? FirstTabInIndentation(string path, string text)
    {
        var indenting = true;
        for (var at = 0; at < text.Length; at++)
        {
            if (indenting && text[at] == '\t')
            {
                return At(path, text, at);
            }

            indenting = text[at] is '\n' or '\r' || (indenting && text[at] == ' ');
        }

        return null;
    }
}
