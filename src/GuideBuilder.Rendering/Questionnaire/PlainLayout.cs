using System.Text;
using System.Text.RegularExpressions;

namespace GuideBuilder.Rendering.Questionnaire;

/// <summary>Writes an answers file in the plain layout: a line a key, two spaces a level, lists a line an item, no braces, no brackets, no block of text, and above each section and question its name as a comment.</summary>
public sealed partial class PlainLayout
{
    /// <summary>The section that comes first and is not one of questions.</summary>
    internal const string Handbook = "handbook";

    // What comes after the questions, in this order.
    private static readonly ImmutableArray<string> Last = ["papers", "log"];

    private readonly StringBuilder _text = new();
    private readonly FrozenDictionary<string, string> _labels;

    private PlainLayout(FrozenDictionary<string, string> labels) => _labels = labels;

    /// <summary>The file of that name; a missing name of a section is a fault.</summary>
    public static Staged<SourceText> Write(WrittenAnswers answers, Guidance guidance, string path)
    {
        var faults = new FaultList();
        var layout = new PlainLayout(Names(guidance, new Phrases(guidance.Labels, faults)));
        return Staged<SourceText>.From(new(path, Encoding.UTF8.GetBytes(layout.Write(answers, Order(guidance)))), faults.All);
    }

    /// <summary>The keys of the sections in the order in which they are written.</summary>
    internal static ImmutableArray<string> Sections(Guidance guidance) => [Handbook, .. guidance.Questions.Select(q => q.Section).Distinct(StringComparer.Ordinal), .. Last];

    /// <summary>The comment that stands above each section, and above each question by its full name.</summary>
    internal static FrozenDictionary<string, string> Names(Guidance guidance, Phrases phrases) =>
        Sections(guidance).Select(s => (Name: s, Words: phrases.Say("section-" + s)))
            .Concat(guidance.Questions.Select(q => (q.Name, Words: q.Label.Words)))
            .ToFrozenDictionary(n => n.Name, n => " " + string.Join(' ', n.Words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparer.Ordinal);

    private static FrozenDictionary<string, int> Order(Guidance guidance) =>
        Sections(guidance).Concat(guidance.Questions.Select(q => q.Name)).Select((name, at) => (name, at)).ToFrozenDictionary(n => n.name, n => n.at, StringComparer.Ordinal);

    private string Write(WrittenAnswers answers, FrozenDictionary<string, int> order)
    {
        var sections = answers.Sections.Where(s => !SaysNothing(s.Value) || !s.Notes.IsEmpty).OrderBy(s => order.GetValueOrDefault(s.Key, int.MaxValue)).ToList();
        Notes(answers.NotesAtTop.AddRange(sections[0].Notes).Remove(_labels.GetValueOrDefault(sections[0].Key, "")), 0);
        sections[0] = sections[0] with { Notes = [] };
        foreach (var section in sections)
        {
            _text.Append(_text.Length == 0 ? "" : "\n");
            Notes(section.Notes.Remove(_labels.GetValueOrDefault(section.Key, "")), 0);
            if (!SaysNothing(section.Value))
            {
                Name(section.Key, 0);
                Section(section, order);
            }
        }

        if (!answers.NotesAtEnd.IsEmpty)
        {
            _text.Append('\n');
            Notes(answers.NotesAtEnd, 0);
        }

        return _text.ToString();
    }

    private void Section(WrittenEntry section, FrozenDictionary<string, int> order)
    {
        if (section.Value is not Written.Keys keys)
        {
            Entry(section with { Notes = [] }, 0);
            return;
        }

        _text.Append(section.Key).Append(":\n");
        foreach (var entry in keys.Entries.OrderBy(e => order.GetValueOrDefault($"{section.Key}.{e.Key}", int.MaxValue)))
        {
            var name = $"{section.Key}.{entry.Key}";
            Notes(entry.Notes.Remove(_labels.GetValueOrDefault(name, "")), 1);
            Name(name, 1);
            Entry(entry with { Notes = [] }, 1);
        }
    }

    private void Name(string name, int level)
    {
        if (_labels.TryGetValue(name, out var words))
        {
            Notes([words], level);
        }
    }

    private void Notes(ImmutableArray<string> notes, int level)
    {
        foreach (var note in notes)
        {
            Indent(level).Append('#').Append(note).Append('\n');
        }
    }

    private void Entry(WrittenEntry entry, int level)
    {
        Notes(entry.Notes, level);
        if (!SaysNothing(entry.Value))
        {
            Indent(level);
            AfterIndent(entry, level);
        }
    }

    // An empty list or mapping cannot stand in the plain layout, and says the same as none.
    private static bool SaysNothing(Written value) => value is Written.List { Items.IsEmpty: true } or Written.Keys { Entries.IsEmpty: true };

    private void AfterIndent(WrittenEntry entry, int level)
    {
        _text.Append(Scalar(entry.Key, isOwnWord: false)).Append(':');
        Under(entry.Value, level + 1);
    }

    private void Under(Written value, int level)
    {
        switch (value)
        {
            case Written.One one:
                _text.Append(' ').Append(Scalar(one.Text, one.Quoted)).Append('\n');
                break;
            case Written.List list:
                _text.Append('\n');
                Items(list, level);
                break;
            case Written.Keys keys:
                _text.Append('\n');
                foreach (var entry in keys.Entries)
                {
                    Entry(entry, level);
                }

                break;
            default:
                throw new UnreachableException();
        }
    }

    private void Items(Written.List list, int level)
    {
        foreach (var item in list.Items)
        {
            Notes(item.Notes, level);
            if (item.Value is not Written.Keys { Entries: [var first, .. var rest] })
            {
                Indent(level).Append('-');
                Under(item.Value, level + 1);
                continue;
            }

            Notes(first.Notes, level);
            Indent(level).Append('-');

            _text.Append(' ');
            AfterIndent(first, level + 1);
            foreach (var entry in rest)
            {
                Entry(entry, level + 1);
            }
        }
    }

    private StringBuilder Indent(int level) => _text.Append(' ', 2 * level);

    // Between quotes unless it is plainly one value; a person's own word that would stand for something else keeps its quotes.
    private static string Scalar(string text, bool isOwnWord) =>
        Plain().IsMatch(text) && !text.EndsWith(' ') && text != "null" && !(isOwnWord && text == "unknown") ? text : Quoted(text);

    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            _ = c switch
            {
                '"' or '\\' => quoted.Append('\\').Append(c),
                '\n' => quoted.Append("\\n"),
                '\r' => quoted.Append("\\r"),
                '\t' => quoted.Append("\\t"),
                _ => quoted.Append(c),
            };
        }

        return quoted.Append('"').ToString();
    }

    [GeneratedRegex(@"\A[A-Za-z0-9\u00C0-\u024F£€][A-Za-z0-9\u00C0-\u024F£€ .,'()/+%\u00B2\u00B3Ω&;!?_-]*\z")]
    private static partial Regex Plain();
}
