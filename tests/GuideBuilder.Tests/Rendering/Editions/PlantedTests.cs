using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Rendering.Editions;

/// <summary>An answer that can be known again is planted to every question that takes words, numbers, amounts or days, and looked for in every byte of the editions that may not print its class. Of answers by options WithholdingTests and DisclosureTests show that whatever is chosen gives the same.</summary>
public sealed class PlantedTests
{
    private static AnswerSet Demo => Support.Editions.Demo;

    public static TheoryData<EditionKind> Parts => [EditionKind.Public, EditionKind.Neighbour, EditionKind.Customer];

    [Theory]
    [MemberData(nameof(Parts))]
    public void No_planted_answer_of_a_class_that_an_edition_may_not_print_is_in_any_of_its_files(EditionKind edition)
    {
        var may = Disclosure.Most(edition);
        var planted = Content.Guidance.Questions.Select((q, i) => (Question: q, Number: i)).Where(q => !may.Contains(q.Question.Data) || (edition == EditionKind.Public && IsFree(q.Question))).Where(q => Marks(q.Question, q.Number).Length > 0).ToList();
        var answers = planted.Aggregate(Demo, (a, q) => a.Answered(q.Question, Planted(q.Question, q.Number)));
        var book = Support.Editions.Bind(answers, edition);

        Assert.NotEmpty(planted);
        Findings.AreNone(
            from file in book.Files
            let text = Encoding.UTF8.GetString(file.Bytes.Span)
            from question in planted
            from mark in Marks(question.Question, question.Number)
            where text.Contains(mark, StringComparison.OrdinalIgnoreCase)
            select $"{file.Name}: {question.Question.Name} ({mark})");
    }

    [Fact]
    public void A_neighbours_pages_name_nobody_but_in_the_letter_to_them()
    {
        var personal = Content.Guidance.Questions.Select((q, i) => (Question: q, Number: i)).Where(q => q.Question.Data is DataClass.Personal or DataClass.OtherPerson && q.Question.Kind is QuestionKind.Text or QuestionKind.NumberName).ToList();
        var answers = personal.Aggregate(Demo, (a, q) => a.Answered(q.Question, Planted(q.Question, q.Number)));
        var book = Support.Editions.Bind(answers, EditionKind.Neighbour);

        Findings.AreNone(
            from file in book.Files
            where !file.Name.StartsWith("letter-", StringComparison.Ordinal) && !file.Name.StartsWith("paper", StringComparison.Ordinal) && !file.Name.StartsWith("large-print", StringComparison.Ordinal)
            from question in personal
            from mark in Marks(question.Question, question.Number)
            where Encoding.UTF8.GetString(file.Bytes.Span).Contains(mark, StringComparison.OrdinalIgnoreCase)
            select $"{file.Name}: {question.Question.Name} ({mark})");
    }

    [Fact]
    public void The_calendar_and_the_table_of_costs_hold_no_answer_about_anybody()
    {
        var people = Content.Guidance.Questions.Select((q, i) => (Question: q, Number: i)).Where(q => q.Question.Data != DataClass.None && IsFree(q.Question)).ToList();
        var answers = people.Aggregate(Demo, (a, q) => a.Answered(q.Question, Planted(q.Question, q.Number)));
        var book = Support.Editions.Bind(answers, EditionKind.Householder);

        Findings.AreNone(
            from file in book.Files
            where file.Name is "dates.ics" or "costs.csv"
            from question in people
            from mark in Marks(question.Question, question.Number)
            where Encoding.UTF8.GetString(file.Bytes.Span).ReplaceLineEndings("").Contains(mark, StringComparison.OrdinalIgnoreCase)
            select $"{file.Name}: {question.Question.Name} ({mark})");
    }

    private static bool IsFree(Question question) => question.Kind is QuestionKind.Text or QuestionKind.NumberName or QuestionKind.Date or QuestionKind.Days;

    private static Value Planted(Question question, int number) => question.Kind switch
    {
        QuestionKind.Text => new Value.Words(Word(number)),
        QuestionKind.NumberName => new Value.NumberName(Digits(number)),
        QuestionKind.Date => new Value.Day(Day(number)),
        QuestionKind.Days => new Value.Days([new DateInterval(Day(number), Day(number).PlusDays(2))]),
        QuestionKind.Quantity => new Value.Amount(new Quantity(Amount(question), question.Range!.Unit)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    // What would tell the answer, in each way in which it could be written.
    private static string[] Marks(Question question, int number) => question.Kind switch
    {
        QuestionKind.Text => [Word(number)],
        QuestionKind.NumberName => [Digits(number)],
        QuestionKind.Date or QuestionKind.Days => [FormattableString.Invariant($"{Day(number):uuuu-MM-dd}"), FormattableString.Invariant($"{Day(number):uuuuMMdd}"), FormattableString.Invariant($"{Day(number).Day} {Months[Day(number).Month - 1]} {Day(number).Year}")],
        QuestionKind.Quantity => [FormattableString.Invariant($"{Amount(question):0.###} {question.Range!.Unit.Symbol}")],
        _ => [],
    };

    private static readonly string[] Months = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    private static string Word(int number) => FormattableString.Invariant($"zanzibar{number:000}q");

    private static string Digits(int number) => FormattableString.Invariant($"77{number:000}41965031");

    // Beyond the reach of every plan, so that no step falls on it.
    private static LocalDate Day(int number) => new LocalDate(2035, 1, 1).PlusDays(number * 3);

    private static decimal Amount(Question question) => question.Range!.Least + ((question.Range.Most - question.Range.Least) * 0.3713m);
}
