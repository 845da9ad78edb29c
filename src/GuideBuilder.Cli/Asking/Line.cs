using System.Globalization;
using GuideBuilder.Cli.Printing;

namespace GuideBuilder.Cli.Asking;

/// <summary>Understands a line that a person typed.</summary>
internal static class Line
{
    /// <summary>The longest line that is taken for an answer.</summary>
    internal const int Longest = 4000;

    private static readonly FrozenDictionary<string, Said> Commands = new Dictionary<string, Said>(StringComparer.OrdinalIgnoreCase)
    {
        [""] = new Said.Nothing(), ["back"] = new Said.Back(), ["next"] = new Said.Next(), ["section"] = new Said.Section(), ["sheet"] = new Said.Sheet(), ["why"] = new Said.Why(),
        ["help"] = new Said.Help(), ["?"] = new Said.Help(), ["save"] = new Said.Save(), ["later"] = new Said.Later(), ["stop"] = new Said.Later(), ["quit"] = new Said.Later(),
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenSet<string> DontKnow =
        new[] { "don't know", "dont know", "do not know", "i don't know", "i dont know", "i do not know", "not known", "unknown", "dk" }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>What was said at a question; null is the end of the input.</summary>
    internal static Said AtQuestion(string? line, Question question)
    {
        var text = (line ?? "later").Trim();
        return text.Length > Longest ? new Said.TooMuch(Longest)
            : Command(text) is { } command ? command
            : HasOptions(question) && Number(text) is { } number && number > question.Options.Length ? new Said.NotThere(number)
            : new Said.Answer(Answer(text, question));
    }

    /// <summary>What of an answer is none of the options of its question; nothing where the question has none.</summary>
    internal static string[] NoneOf(Written answer, Question question)
    {
        string[] said = answer is Written.List list ? [.. list.Items.Select(i => i.Value).OfType<Written.One>().Select(o => o.Text)] : answer is Written.One one ? [one.Text] : [];
        return HasOptions(question) ? [.. said.Where(t => question.Options.All(o => o.Id != t))] : [];
    }

    /// <summary>What would be right instead of words that are none of the options, in the numbers and words of the sheet: the reading's own fault speaks of the ids of a file.</summary>
    internal static string Right(string[] none, Question question)
    {
        var line = string.Join(", ", none);
        var words = question.Options.Select((o, i) => (Number: i + 1, Words: o.Wording.IsEmpty ? o.Id : o.Wording.Words, o.Id)).ToList();
        var near = NearestName.To(line.ToUpperInvariant(), words.SelectMany(o => new[] { o.Words.ToUpperInvariant(), o.Id.ToUpperInvariant() }));
        bool IsNear(string text) => text.Equals(near, StringComparison.OrdinalIgnoreCase);
        var meant = words.FirstOrDefault(o => IsNear(o.Words) || IsNear(o.Id));
        return Invariant($"`{line}` is none of the answers.{(near is null ? "" : Invariant($" Did you mean {meant.Number}, {meant.Words}?"))} Type a number from 0 to {question.Options.Length}, or the words beside it.");
    }

    private static bool HasOptions(Question question) => question.Kind is QuestionKind.Choice or QuestionKind.YesNo or QuestionKind.Several;

    /// <summary>What was said at the end of a section: a number goes back to that question.</summary>
    internal static Said AtEnd(string? line)
    {
        var text = (line ?? "later").Trim();
        return Command(text) ?? (Number(text) is { } number ? new Said.To(number) : new Said.Help());
    }

    private static Said? Command(string text) =>
        Commands.TryGetValue(text, out var command) ? command
        : text.StartsWith("go ", StringComparison.OrdinalIgnoreCase) && Number(text[3..].Trim()) is { } number ? new Said.To(number)
        : null;

    private static Written Answer(string text, Question question)
    {
        if (DontKnow.Contains(text.Replace('’', '\'')) || (HasOptions(question) && text == "0"))
        {
            return One("unknown");
        }

        return question.Kind switch
        {
            QuestionKind.Choice or QuestionKind.YesNo => One(Option(text, question)),
            QuestionKind.Several => Several(text, question),
            QuestionKind.Days => Days(text),
            QuestionKind.Text or QuestionKind.NumberName => new Written.One(Unquoted(text), Quoted: true),
            _ => One(text),
        };
    }

    private static Written Several(string text, Question question)
    {
        if (IsNone(text))
        {
            return One(Value.Several.None);
        }

        var whole = Option(text, question);
        var words = whole != text || question.Options.Any(o => o.Id == whole)
            ? [whole]
            : text.Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries).Where(w => w != "and").Select(w => Option(w, question));
        return List(words);
    }

    private static Written Days(string text) =>
        IsNone(text) ? One(Value.Several.None) : List(text.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    // By its number on the sheet, its id, its wording, or the first letter of yes and no.
    private static string Option(string text, Question question)
    {
        if (Number(text) is { } number && number >= 1 && number <= question.Options.Length)
        {
            return question.Options[number - 1].Id;
        }

        var named = question.Options.FirstOrDefault(o => IsCalled(o, text) || (question.Kind == QuestionKind.YesNo && text.Equals(o.Id[..1], StringComparison.OrdinalIgnoreCase)));
        return named?.Id ?? text;
    }

    private static bool IsCalled(QuestionOption option, string text) =>
        text.Equals(option.Id, StringComparison.OrdinalIgnoreCase) || text.Equals(option.Wording.Words, StringComparison.OrdinalIgnoreCase);

    private static bool IsNone(string text) => text.Equals(Value.Several.None, StringComparison.OrdinalIgnoreCase);

    private static string Unquoted(string text) => text is ['"', .. var inside, '"'] && inside.Length > 0 ? inside : text;

    private static int? Number(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static Written.One One(string text) => new(text, Quoted: false);

    private static Written.List List(IEnumerable<string> words) => new([.. words.Select(w => new WrittenItem(One(w), []))]);
}
