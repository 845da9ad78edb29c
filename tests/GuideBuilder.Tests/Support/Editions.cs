using System.Collections.Frozen;
using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Withholding;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using NodaTime;

namespace GuideBuilder.Tests.Support;

/// <summary>The first demo home bound in any edition, with very few trials, and its answers changed one by one.</summary>
internal static class Editions
{
    private const int Trials = 20;

    /// <summary>The answers of the first demo home.</summary>
    public static AnswerSet Demo { get; } = AnswerReader.Read(new SourceText("answers/avebury-close.yaml", File.ReadAllBytes(Repository.At("answers/avebury-close.yaml"))), Content.Guidance).Value!;

    /// <summary>The guidance under the invented firm's imprint.</summary>
    public static Guidance Imprinted { get; } = ImprintReader.Over(Content.Guidance, At("answers/imprint/rushlight.yaml"), At("answers/imprint/rushlight.svg")).Value!;

    /// <summary>The plan of an edition.</summary>
    public static Plan Plan(AnswerSet answers, EditionKind edition, LocalDate? today = null)
    {
        var guidance = GuidanceOf(edition);
        var plan = EditionAnswers.Of(answers, guidance, edition)
            .Then(a => FactDeriver.Derive(a, guidance))
            .Then(f => Planner.Plan(f, guidance, new(today ?? Home.Today, Occasion.DefaultSeed, edition), new(Trials, Trials, -1)));
        Findings.AreNone(plan.Faults.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()));
        return edition is EditionKind.Householder or EditionKind.Public ? plan.Value! : ToldPlan.Of(plan.Value!, EditionAnswers.Printed(answers, guidance, edition), guidance);
    }

    /// <summary>The handbook of an edition.</summary>
    public static BoundBook Bind(AnswerSet answers, EditionKind edition)
    {
        var book = Handbook.Render(Plan(answers, edition), GuidanceOf(edition));
        Findings.AreNone(book.Faults.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()));
        return book.Value!;
    }

    /// <summary>The guidance that an edition is bound from.</summary>
    public static Guidance GuidanceOf(EditionKind edition) => edition == EditionKind.Customer ? Imprinted : Content.Guidance;

    /// <summary>Every file of a book as one text.</summary>
    public static string Words(this BoundBook book) => string.Concat(book.Files.Select(f => f.Name + "\n" + Encoding.UTF8.GetString(f.Bytes.Span)));

    /// <summary>The answers with another value for each of these questions, where they are answered.</summary>
    public static AnswerSet With(this AnswerSet answers, Func<Question, bool> which, Func<Question, Value> other) => answers with
    {
        ByName = answers.ByName.Values.Select(g => g.Standing == Standing.Known && which(g.Question) ? g with { Value = other(g.Question) } : g).ToFrozenDictionary(g => g.Name, StringComparer.Ordinal),
    };

    /// <summary>The answers with this one given, whatever stood there.</summary>
    public static AnswerSet Answered(this AnswerSet answers, Question question, Value value) =>
        answers with { ByName = answers.ByName.Values.Select(g => g.Question == question ? g with { Standing = Standing.Known, Value = value } : g).ToFrozenDictionary(g => g.Name, StringComparer.Ordinal) };

    /// <summary>The answers with these questions unknown.</summary>
    public static AnswerSet Without(this AnswerSet answers, IReadOnlyCollection<string> questions) =>
        answers with { ByName = answers.ByName.Values.Select(g => questions.Contains(g.Name) ? new Given.Answered(g.Question, Standing.Unknown, null, null) : g).ToFrozenDictionary(g => g.Name, StringComparer.Ordinal) };

    /// <summary>The answered questions that an edition may not print.</summary>
    public static IReadOnlyCollection<string> Withheld(this AnswerSet answers, EditionKind edition) =>
        [.. answers.ByName.Values.Where(g => g.Standing == Standing.Known && !Disclosure.Most(edition).Contains(g.Question.Data)).Select(g => g.Name)];

    /// <summary>Another value for a question than the one it has: another option, another day, another word.</summary>
    public static Value Other(this AnswerSet answers, Question question) => question.Kind switch
    {
        QuestionKind.Choice or QuestionKind.YesNo => new Value.Option((question.Options.Select(o => o.Id).Concat(["yes", "no"]).First(o => answers[question.Name].Value is not Value.Option now || now.Id != o))),
        QuestionKind.Several => new Value.Several([question.Options[^1].Id]),
        QuestionKind.Quantity => new Value.Amount(new Quantity(question.Range!.Most, question.Range.Unit)),
        QuestionKind.Date => new Value.Day(new LocalDate(2027, 9, 17)),
        QuestionKind.Days => new Value.Days([new DateInterval(new(2027, 2, 3), new(2027, 2, 19))]),
        QuestionKind.Text => new Value.Words("Zanzibar"),
        QuestionKind.NumberName => new Value.NumberName("1200010305967"),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static SourceText At(string path) => new(path, File.ReadAllBytes(Repository.At(path)));
}
