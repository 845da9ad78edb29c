namespace GuideBuilder.Reading;

/// <summary>One factory for each mistake that a person can make in a file. Codes never change; a code that falls out of use is not used again.</summary>
internal static partial class ReadingFaults
{
    /// <summary>A file beyond its limit. Example: an answers file of 2 MiB.</summary>
    public static Fault FileTooLong(Place place, int most) =>
        Error("HB1001", place, Invariant($"The file is longer than {most:#,0} bytes."), "Divide it or shorten it.");

    /// <summary>A file that is not UTF-8 from its first bytes on. Example: saved as "Unicode" (UTF-16) by an old editor.</summary>
    public static Fault OtherEncoding(Place place) =>
        Error("HB1002", place, "The file is not UTF-8 but UTF-16 or UTF-32.", "Save it again as UTF-8.");

    /// <summary>Bytes that are not UTF-8. Example: an é saved as Latin-1.</summary>
    public static Fault NotUtf8(Place place) =>
        Error("HB1003", place, "The bytes here are not UTF-8.", "Save the file again as UTF-8.");

    /// <summary>A character that no file may hold. Example: NUL, U+0085, a bidirectional override.</summary>
    public static Fault ForbiddenCharacter(Place place, string code, string what) =>
        Error("HB1004", place, $"{code} is {what}.", "Delete it; an editor may not show it.");

    /// <summary>A file without content. Example: only comments.</summary>
    public static Fault EmptyFile(Place place) =>
        Error("HB1005", place, "The file says nothing.", "Write at least one key and its value.");

    /// <summary>Text that is not YAML. Example: <c>name: Smith: the younger</c>.</summary>
    public static Fault Malformed(Place place, string reason) =>
        Error("HB1006", place, $"This is not YAML: {LowerFirst(reason).TrimEnd('.')}.", "Put words that hold a colon or begin with a sign such as @ or % in quotes, and line keys up with spaces.");

    /// <summary>A bracket or brace without its end. Example: <c>moves: [cutout, meter</c>.</summary>
    public static Fault NotClosed(Place place) =>
        Error("HB1007", place, "What begins here is not ended properly.", "Close each [ with ] and each { with }.");

    /// <summary>A tab before a key. Example: a key indented with the tab key.</summary>
    public static Fault TabIndents(Place place) =>
        Error("HB1008", place, "A tab indents this line.", "Indent with spaces.");

    /// <summary>An anchor or alias. Example: <c>home: &amp;a {nation: england}</c>, <c>place: *a</c>.</summary>
    public static Fault Anchor(Place place) =>
        Error("HB1009", place, "Anchors (&) and aliases (*) are not read.", "Write the value out, or put quotes around words that begin with & or *.");

    /// <summary>An explicit tag. Example: <c>built: !!int 1954</c>.</summary>
    public static Fault Tag(Place place) =>
        Error("HB1010", place, "Tags (!) are not read.", "Leave the tag out, or put quotes around words that begin with !.");

    /// <summary>A second document in one file. Example: a line <c>---</c> half way down.</summary>
    public static Fault SeveralDocuments(Place place) =>
        Error("HB1011", place, "A second document begins here.", "Keep one document in a file; delete the line ---.");

    /// <summary>A list or mapping as a key. Example: <c>? [a, b]</c>.</summary>
    public static Fault ComplexKey(Place place) =>
        Error("HB1012", place, "A key must be one word.", "Write a key, a colon and then its value; put quotes around words that begin with [ or {.");

    /// <summary>A merge key. Example: <c>&lt;&lt;: {nation: wales}</c>.</summary>
    public static Fault MergeKey(Place place) =>
        Error("HB1013", place, "Merge keys (<<) are not read.", "Write the keys out.");

    /// <summary>A key that stands twice. Example: two lines <c>nation:</c> under <c>home:</c>.</summary>
    public static Fault DuplicateKey(Place place, string key, Place first) =>
        Error("HB1014", place, Invariant($"`{Shown(key)}` already stands in line {first.Line}."), Invariant($"Keep line {first.Line} or line {place.Line}."));

    /// <summary>Lists in lists beyond the limit. Example: a thousand opening brackets.</summary>
    public static Fault TooDeep(Place place, int most) =>
        Error("HB1015", place, "Lists and mappings stand too deep inside one another.", Invariant($"At most {most} levels are read."));

    /// <summary>More keys and values than any real file has. Example: a list of a million entries.</summary>
    public static Fault TooManyNodes(Place place, int most) =>
        Error("HB1016", place, "The file has too many keys and values.", Invariant($"At most {most:#,0} are read."));

    /// <summary>A directive. Example: <c>%YAML 1.1</c>.</summary>
    public static Fault Directive(Place place) =>
        Error("HB1017", place, "Directives (%) are not read.", "Delete the lines that begin with %.");

    /// <summary>A forbidden character written as an escape. Example: <c>"\u202E"</c>.</summary>
    public static Fault EscapedCharacter(Place place, string code, string what) =>
        Error("HB1018", place, $"The value holds {code}, {what}, written as an escape.", "Leave it out.");

    /// <summary>Words divided by their own comma. Example: <c>{wording: Grey, dull metal}</c>.</summary>
    public static Fault CommaDivides(Place place, string words) =>
        Error("HB1019", place, $"The comma before `{Shown(words)}` ends the value before it.", "Put words and sums that hold a comma in quotes where they stand between braces.");

    private static Fault Error(string code, Place place, string wrong, string right) => new(code, Severity.Error, place, OneLine(wrong), OneLine(right));

    private static Fault Warning(string code, Place place, string wrong, string right) => new(code, Severity.Warning, place, OneLine(wrong), OneLine(right));

    // A fault quotes what people wrote, which may hold tabs and line ends.
    private static string OneLine(string words) => words.Any(char.IsControl) ? string.Concat(words.Select(c => char.IsControl(c) ? ' ' : c)) : words;

    private static string LowerFirst(string words) => words.Length == 0 ? words : char.ToLowerInvariant(words[0]) + words[1..];

    /// <summary>Words from a file as a fault may print them: one line, and not too long.</summary>
    private static string Shown(string words)
    {
        const int Most = 60;
        var line = string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= Most ? line : line[..(char.IsHighSurrogate(line[Most - 1]) ? Most - 1 : Most)] + "…";
    }

    private static string Near(string? nearest, string otherwise) => nearest is null ? otherwise : $"Did you mean `{nearest}`?";

    private static string Listed(IEnumerable<string> words) => string.Join(", ", words.Select(w => $"`{w}`"));
}
