using GuideBuilder.Reading;
using GuideBuilder.Rendering.Questionnaire;

namespace GuideBuilder.Cli.Asking;

/// <summary>A questionnaire while it is filled in, as a value: what was written in the file before, and each answer so far by the question's full name. Answers to questions that are asked no longer are kept, and written again once they are.</summary>
internal sealed class Filling
{
    private readonly WrittenAnswers _file;
    private readonly ImmutableDictionary<string, WrittenEntry> _given;
    private readonly FrozenDictionary<string, Given.Answered> _answers;

    private Filling(Guidance guidance, WrittenAnswers file, ImmutableDictionary<string, WrittenEntry> given)
    {
        (Guidance, _file, _given) = (guidance, file, given);
        (_answers, Faults) = AnswerReader.ReadSoFar(File(given), guidance);
    }

    /// <summary>The guidance whose questions are asked.</summary>
    internal Guidance Guidance { get; }

    /// <summary>What is wrong so far; the path of a fault's place is the question's full name.</summary>
    internal ImmutableArray<Fault> Faults { get; }

    /// <summary>The sections in the order in which they are asked.</summary>
    internal ImmutableArray<string> Sections => [.. Guidance.Questions.Select(q => q.Section).Distinct(StringComparer.Ordinal)];

    /// <summary>An empty questionnaire, or one with what stands in a file already.</summary>
    internal static Filling Of(Guidance guidance, WrittenAnswers? before)
    {
        var file = before ?? Empty(guidance);
        var names = guidance.Questions.Select(q => q.Name).ToHashSet(StringComparer.Ordinal);
        var given = file.Sections.SelectMany(s => s.Value is Written.Keys keys ? keys.Entries.Select(e => (Name: $"{s.Key}.{e.Key}", Entry: e)) : []);
        return new(guidance, file, given.Where(g => names.Contains(g.Name)).ToImmutableDictionary(g => g.Name, g => g.Entry, StringComparer.Ordinal));
    }

    /// <summary>The same with an answer to a question.</summary>
    internal Filling With(Question question, Written answer) =>
        new(Guidance, _file, _given.SetItem(question.Name, new(question.Id, answer, _given.TryGetValue(question.Name, out var before) ? before.Notes : [])));

    /// <summary>Whether a question matters, given what is known.</summary>
    internal bool IsAsked(Question question) => _answers[question.Name].Standing != Standing.NotAsked;

    /// <summary>What was answered to a question, or null.</summary>
    internal Given.Answered? AnswerTo(Question question) => _given.ContainsKey(question.Name) && IsAsked(question) ? _answers[question.Name] : null;

    /// <summary>The questions of a section that matter, in order.</summary>
    internal ImmutableArray<Question> Asked(string section) => [.. Guidance.Questions.Where(q => q.Section == section && IsAsked(q))];

    /// <summary>Whether the answers that no handbook can do without are there: the nation, and one about the wish.</summary>
    internal bool CanBeBound => _answers["home.nation"].Standing == Standing.Known && Guidance.Questions.Any(q => q.Section == "wish" && AnswerTo(q) is not null);

    /// <summary>The file in the plain layout, without answers to questions that are not asked.</summary>
    internal Staged<SourceText> Write(string path) =>
        PlainLayout.Write(File(_given.RemoveRange(Guidance.Questions.Where(q => !IsAsked(q)).Select(q => q.Name))), Guidance, path);

    /// <summary>The answers as planning takes them.</summary>
    internal AnswerSet ForPlanning() => new("", new(1, "sketch", EditionKind.Householder, null, null), _answers, [], []);

    private static WrittenAnswers Empty(Guidance guidance) => new(
        guidance.Labels.TryGetValue("answers-file-head", out var head) ? [" " + head.One.Words] : [],
        [new("handbook", new Written.Keys([new("format", new Written.One("1", Quoted: false), [])]), [])],
        []);

    private WrittenAnswers File(ImmutableDictionary<string, WrittenEntry> given)
    {
        var sections = Sections.Select(section => Section(section, given)).OfType<WrittenEntry>();
        var others = _file.Sections.Where(s => !Sections.Contains(s.Key));
        return _file with { Sections = [.. others, .. sections] };
    }

    private WrittenEntry? Section(string section, ImmutableDictionary<string, WrittenEntry> given)
    {
        ImmutableArray<WrittenEntry> entries = [.. Guidance.Questions.Where(q => q.Section == section).Select(q => given.GetValueOrDefault(q.Name)).OfType<WrittenEntry>()];
        var before = _file.Sections.FirstOrDefault(s => s.Key == section);
        return entries.IsEmpty && before is null ? null : new(section, new Written.Keys(entries), before?.Notes ?? []);
    }
}
