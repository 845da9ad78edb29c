using System.Text;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>Answers files that are made to break a reader: by size, by depth, by what YAML lets a file say of itself, by bytes that are no text, and by values that mean another thing than they show.</summary>
internal static class HostileYaml
{
    private const int Million = 1_000_000;

    /// <summary>Each with a name, the code of the fault that it must have, and its bytes.</summary>
    public static IEnumerable<(string Name, string Code, byte[] Bytes)> All =>
    [
        .. Texts.Select(t => (t.Name, t.Code, Encoding.UTF8.GetBytes(t.Text))),
        ("utf-16-le", "HB1002", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Good)]),
        ("utf-16-be", "HB1002", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(Good)]),
        ("utf-32-le", "HB1002", [0xFF, 0xFE, 0, 0, .. Encoding.UTF32.GetBytes(Good)]),
        ("utf-16-without-mark", "HB1002", Encoding.Unicode.GetBytes(Good)),
        ("latin-1", "HB1003", [.. Encoding.UTF8.GetBytes("# "), 0xE9, .. Encoding.UTF8.GetBytes("\n" + Good)]),
        ("overlong", "HB1003", [.. Encoding.UTF8.GetBytes("a: "), 0xC0, 0xAF]),
        ("half-a-pair", "HB1003", [.. Encoding.UTF8.GetBytes("a: "), 0xED, 0xA0, 0x80]),
        ("beyond-unicode", "HB1003", [.. Encoding.UTF8.GetBytes("a: "), 0xF4, 0x90, 0x80, 0x80]),
        ("cut-in-two", "HB1003", [.. Encoding.UTF8.GetBytes("a: "), 0xE2, 0x82]),
        ("nothing-but-nul", "HB1002", new byte[Million]),
    ];

    private const string Good = "handbook: {format: 1}\nhome: {nation: england}\nwish: {moves: [meter]}\n";

    private static IEnumerable<(string Name, string Code, string Text)> Texts =>
    [
        ("scalar-of-50-mb", "HB1001", "a: " + new string('x', 50 * Million)),
        ("quoted-of-50-mb", "HB1001", "a: \"" + new string('x', 50 * Million) + "\""),
        ("just-too-long", "HB1001", Good + "#" + new string('x', 1 << 20)),
        ("depth-10000-of-brackets", "HB1015", Deep("[", "]")),
        ("depth-10000-of-braces", "HB1015", Deep("{a: ", "}")),
        ("depth-10000-of-dashes", "HB1015", string.Concat(Enumerable.Repeat("- ", 10_000)) + "x"),
        ("depth-10000-of-lines", "HB1015", string.Concat(Enumerable.Range(0, 1_000).Select(i => new string(' ', i) + "a:\n"))),
        ("half-a-million-keys", "HB1016", string.Concat(Enumerable.Range(0, 110_000).Select(i => "k" + i.ToString("x", null) + ": \n"))),
        ("alias-bomb", "HB1009", "a: &a [x,x,x,x,x,x,x,x,x]\n" + string.Concat("bcdefghi".Select(c => $"{c}: &{c} [{string.Join(',', Enumerable.Repeat("*" + (char)(c - 1), 9))}]\n"))),
        ("alias-of-itself", "HB1009", "a: &a\n  b: *a\n"),
        ("merge-key", "HB1013", "home:\n  <<: {nation: england}\n"),
        ("merge-of-aliases", "HB1009", "a: &a {b: c}\nhome:\n  <<: [*a, *a]\n"),
        ("tag-of-a-type", "HB1010", "home: !!python/object/apply:os.system [ls]\n"),
        ("tag-of-dotnet", "HB1010", "home: !<tag:yaml.org,2002:System.Diagnostics.Process> {}\n"),
        ("tag-binary", "HB1010", "home: !!binary R0lGODlhDAAMAIQAAP==\n"),
        ("directive", "HB1017", "%YAML 1.1\n---\n" + Good),
        ("several-documents", "HB1011", Good + "---\n" + Good),
        ("key-that-is-a-list", "HB1012", "? [a, b]\n: c\n"),
        ("key-twice", "HB1014", Good + "home: {nation: wales}\n"),
        ("nul", "HB1004", "a: b\0c\n"),
        ("escape-nul", "HB1018", "a: \"b\\0c\"\n"),
        ("reversed", "HB1004", "a: b\u202Ec\n"),
        ("line-separator", "HB1004", "a: b\u2028handbook: x\n"),
        ("byte-order-mark-inside", "HB1004", "a: b\uFEFFc\n"),
        ("tab-for-indentation", "HB1008", "home:\n\tnation: england\n"),
        ("not-ended", "HB1007", "home: [england\nwish: {moves\n"),
        ("norway", "HB1", Good.Replace("england", "no", StringComparison.Ordinal)),
        ("octal-format", "HB1", Good.Replace("format: 1", "format: 0o1", StringComparison.Ordinal)),
        ("hex-format", "HB1", Good.Replace("format: 1", "format: 0x1", StringComparison.Ordinal)),
        ("exponent-format", "HB1", Good.Replace("format: 1", "format: 1e0", StringComparison.Ordinal)),
        ("base-60", "HB1", Good + "place: {distance: 1:30}\n"),
        ("infinite", "HB1", Good + "place: {distance: .inf}\n"),
        ("not-a-number", "HB1", Good + "place: {distance: .nan}\n"),
        ("date-for-a-word", "HB1", Good.Replace("england", "2027-01-01", StringComparison.Ordinal)),
        ("null-nation", "HB1", Good.Replace("england", "~", StringComparison.Ordinal)),
        ("number-without-end", "HB1", Good + "place: {distance: " + new string('9', 100_000) + " m}\n"),
        ("year-without-end", "HB1", Good + "dates: {needed-by: 9999999999-12-31}\n"),
        ("away-for-ever", "HB1", Good + "dates: {away: [1900-01-01 to 2199-12-31]}\n"),
        ("return-in-a-line", "HB1", Good + "people: {phone: \"01632\\rBcc: x\"}\n"),
    ];

    private static string Deep(string open, string close) => "a: " + string.Concat(Enumerable.Repeat(open, 10_000)) + "x" + string.Concat(Enumerable.Repeat(close, 10_000));
}
