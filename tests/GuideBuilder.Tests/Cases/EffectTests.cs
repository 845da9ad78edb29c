using System.Collections.Frozen;
using System.Text.Json;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;
using Home = GuideBuilder.Tests.Support.Home;

namespace GuideBuilder.Tests.Cases;

/// <summary>Nothing is asked for nothing: of two answers to a question, the handbook that follows differs beside its lists of answers.</summary>
public sealed class EffectTests
{
    // Pages that repeat the answers, or list where words stand, whatever else depends on them.
    private static readonly string[] Lists = ["how-this-was-worked-out", "what-you-do-not-know", "what-changes-less", "operator-call-sheet", "index-page"];

    // Nearly all unknown, so that every question is asked and nothing hides an effect; and a home in which sums can be worked out.
    private static readonly Func<AnswerSet>[] Bases =
    [
        () => HazardRegister.Answers("home: {nation: england}\nwish: {moves: [cutout, meter]}"),
        () => HazardRegister.Answers("home: {nation: ireland}\nwish: {moves: [cutout, meter]}"),
        () => AnswersFiles.Read(AnswersFiles.Load("answers/avebury-close.yaml")),
    ];

    [Fact]
    public void One_of_the_answers_to_a_question_changes_more_than_the_list_of_answers()
    {
        var all = Content.Guidance.Questions;
        var tried = Math.Min(Sizes.Of("answers-changed"), all.Length);

        Findings.AreNone(Enumerable.Range(0, tried).Select(i => all[(int)((long)i * all.Length / tried)]).Where(q => !HasEffect(q)).Select(q => q.Name));
    }

    [Fact]
    public void A_question_that_nothing_asks_about_is_found() =>
        Assert.False(HasEffect(Content.Guidance.Questions.First(q => q.Kind == QuestionKind.YesNo) with { Section = "home", Id = "idle" }));

    private static bool HasEffect(Question question) => Bases.Any(b => HasEffect(With(b(), question), question));

    private static bool HasEffect(AnswerSet home, Question question)
    {
        if (home[question.Name].Standing == Standing.NotAsked)
        {
            return false;
        }

        var values = ValuesOf(question).Select(v => Answered(home, question, v)).ToArray();
        var first = Home.Answering(values[0]);
        return values.Skip(1).Any(v => Differ(first, Home.Answering(v)));
    }

    // The data first, because it is made quickly; then the words of the pages that both have.
    private static bool Differ(Home one, Home other) =>
        Data(one) != Data(other)
        || !one.Pages.SequenceEqual(other.Pages)
        || one.Pages.Except(Lists).Any(p => one.Words(p) != other.Words(p));

    private static string Data(Home home)
    {
        using var data = JsonDocument.Parse(home.Data);
        return string.Join('\n', data.RootElement.EnumerateObject().Where(p => p.Name != "answers").Select(p => p.Value.GetRawText()));
    }

    private static IEnumerable<string> ValuesOf(Question question) => question.Kind switch
    {
        QuestionKind.Choice => question.Options.Select(o => o.Id),
        QuestionKind.YesNo => ["yes", "no"],
        QuestionKind.Several => question.Options.Where(o => o.Id != "none").Select(o => $"[{o.Id}]").Prepend("none"),
        QuestionKind.Quantity => [Of(question.Range!, question.Range!.Least), Of(question.Range, question.Range.Most), Of(question.Range, Math.Round((question.Range.Least + question.Range.Most) / 2))],
        QuestionKind.Date => ["2027-02-01", "2026-12-01", "2027-10-01"],
        QuestionKind.Days => ["[2027-02-01]", "[2026-12-01 to 2027-05-30]"],
        QuestionKind.NumberName => ["'00123456789'", "'2000000000000'"],
        _ => ["one", "another"],
    };

    private static string Of(QuantityRange range, decimal amount) =>
        range.Unit.Dimension is Dimension.Pounds or Dimension.Euros ? $"{range.Unit.Symbol}{FormattableString.Invariant($"{amount:0.00}")}" : FormattableString.Invariant($"{amount:0.######} {range.Unit.Symbol}").TrimEnd();

    private static AnswerSet With(AnswerSet home, Question question) => home.ByName.ContainsKey(question.Name)
        ? home
        : home with { ByName = home.ByName.Append(KeyValuePair.Create(question.Name, new Given.Answered(question, Standing.Unknown, null, null))).ToFrozenDictionary(StringComparer.Ordinal) };

    // What hangs on the answer is asked, or asked no longer, as when the file is read.
    private static AnswerSet Answered(AnswerSet home, Question question, string written)
    {
        var faults = new FaultList();
        var value = new AnswerValue(question, faults).Read(((Mapping)YamlText.Read(AnswersFiles.Of($"a: {written}\n"), Budget.Answers, faults)!)["a"]!);
        Findings.AreNone(faults.Found.Select(f => f.ToString()));
        var given = home.ByName.ToDictionary(p => p.Key, p => p.Value, StringComparer.Ordinal);
        given[question.Name] = given[question.Name] with { Standing = Standing.Known, Value = value };
        foreach (var asked in Content.Guidance.Questions.Select(q => given[q.Name]).ToArray())
        {
            var fails = Judge.Of(asked.Question.AskIf, name => given[name]).Truth == Truth.Fails;
            given[asked.Name] = fails ? asked with { Standing = Standing.NotAsked, Value = null } : asked.Standing == Standing.NotAsked ? asked with { Standing = Standing.Unknown } : asked;
        }

        return home with { ByName = given.ToFrozenDictionary(StringComparer.Ordinal) };
    }
}
