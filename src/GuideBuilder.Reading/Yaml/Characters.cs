namespace GuideBuilder.Reading;

/// <summary>Which characters no file may hold: those that no keyboard makes and that hide, reorder or end text.</summary>
internal static class Characters
{
    /// <summary>What is wrong with a character, or null when it may stand in a file.</summary>
    public static string? Forbidden(char c) => c switch
    {
        '\t' or '\n' or '\r' => null,
        < ' ' or '\u007F' => "a control character",
        '\u0085' or '\u2028' or '\u2029' => "a line separator that most editors do not show",
        >= '\u0080' and <= '\u009F' => "a control character",
        '\uFEFF' => "a byte order mark inside the text",
        '\uFFFE' or '\uFFFF' => "a code that is no character",
        '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') => "a mark that reverses the direction of writing",
        _ => null,
    };

    /// <summary>The code as Unicode writes it, such as U+202E.</summary>
    public static string Code(char c) => Invariant($"U+{(int)c:X4}");
}
