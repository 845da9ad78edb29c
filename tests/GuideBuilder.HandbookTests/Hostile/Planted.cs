using GuideBuilder.Tests.Support;
using static System.FormattableString;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>Answers files in which every field of free text holds hostile words, each field others than the next, and the papers hold them all; as many books as there are words have each word in each field.</summary>
internal static class Planted
{
    private static readonly (string Section, string Key, bool OneLine)[] Fields =
    [
        ("home", "address", false), ("home", "operator-name", false), ("home", "supplier-name", false),
        ("people", "name", false), ("people", "phone", true), ("people", "email", false),
        ("land", "route-owner", false), ("land", "neighbour-name", false),
        ("wish", "detail", false),
        ("operator", "answered-by", false), ("operator", "reference", true), ("operator", "duct-colour", false), ("operator", "evening-return", false),
        ("handbook", "filled-in-by", true), ("papers", "reference", true), ("log", "reference", true), ("log", "note", false),
    ];

    // Kept in the file, and in no page.
    private static readonly string[] Unprinted = ["handbook.filled-in-by", "log.reference"];

    /// <summary>The words of a book by field (section.key), as its answers file has them; without hostile ones where the number is negative.</summary>
    public static Dictionary<string, string> Of(int book, int books) => Fields.Select((f, i) => (Name: f.Section + "." + f.Key, Words: Words(f.OneLine, i, book, books))).ToDictionary(f => f.Name, f => f.Words, StringComparer.Ordinal);

    /// <summary>The words that must be seen somewhere in that book.</summary>
    public static IEnumerable<string> Printed(int book, int books) => Of(book, books).Where(f => !Unprinted.Contains(f.Key)).Select(f => f.Value).Concat(Papers(book)).Select(HostileWords.Seen).Where(w => w.Length > 0);

    /// <summary>The answers file of a book.</summary>
    public static string Text(int book, int books)
    {
        var words = Of(book, books).ToDictionary(f => f.Key, f => HostileWords.Yaml(f.Value), StringComparer.Ordinal);
        string Section(string section, string more) => $"{section}: {{{more}{string.Concat(Fields.Where(f => f.Section == section).Select(f => $", {f.Key}: {words[section + "." + f.Key]}"))}}}\n";
        return Section("handbook", Invariant($"format: 1, id: {IdOf(book)}"))
            + Section("home", "nation: england, kind: semi")
            + Section("people", "children-or-pets: yes")
            + "intake: {service: underground, looped: yes}\n"
            + "place: {kind: outside-box}\n"
            + Section("wish", "moves: [cutout, meter]")
            + Section("land", "others-land: yes")
            + Section("operator", "asked-on: 2026-11-02")
            + $"papers:\n  - {{kind: quotation, from: network-operator, dated: 2026-11-10, amount: £1180, reference: {words["papers.reference"]}}}\n"
            + string.Concat(Papers(book).Select(w => $"  - {{kind: letter, from: supplier, dated: 2026-11-11, reference: {HostileWords.Yaml(w)}}}\n"))
            + $"log:\n  - {{on: 2026-11-03, what: applied, party: network-operator, reference: {words["log.reference"]}, note: {words["log.note"]}}}\n";
    }

    /// <summary>An imprint with all those words in its lines, and in its texts those of them that no text is refused for.</summary>
    public static string Imprint(IReadOnlyList<string> words)
    {
        string[] refused = ["](", "![", "]:", "<javascript"];
        var lines = HostileWords.Yaml(string.Join('\n', words));
        var text = HostileWords.Yaml(string.Join("\n\n", words.Where(w => !refused.Any(r => w.Contains(r, StringComparison.Ordinal)))));
        return $"name: {HostileWords.Yaml(words[0])}\naddress: {lines}\nregistration: {lines}\ncontact: {{telephone: {lines}, email: {lines}, website: {lines}}}\nparties: [electrician]\nopening: {text}\nclosing: {text}\nterms: {text}\n";
    }

    /// <summary>The id of a book; all are as long, so that pages differ by the words alone.</summary>
    public static string IdOf(int book) => Invariant($"book-{(book < 0 ? 999 : book):000}");

    private static IEnumerable<string> Papers(int book) => HostileWords.All.Select(w => book < 0 ? "plain words" : HostileWords.InOneLine(w));

    private static string Words(bool oneLine, int field, int book, int books)
    {
        var words = book < 0 ? "plain words" : HostileWords.All[((field * books) + book) % HostileWords.All.Length];
        return oneLine ? HostileWords.InOneLine(words) : words;
    }
}
