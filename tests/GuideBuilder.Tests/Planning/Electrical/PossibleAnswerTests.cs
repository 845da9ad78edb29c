using GuideBuilder.Model;
using static GuideBuilder.Tests.Planning.Electrical.Home;

namespace GuideBuilder.Tests.Planning.Electrical;

/// <summary>What each answer that is missing would make of the sheet.</summary>
public sealed class PossibleAnswerTests
{
    private const string Fuse = "intake.fuse-rating";
    private const string Earth = "operator.earth-offered";
    private const string Phases = "intake.phases";

    private static (string, object)[] Without(params string[] names) => [.. Known.Where(k => !names.Contains(k.Item1))];

    private static SheetCases Table(ElectricalSheet sheet, string question) => Assert.Single(sheet.Cases, c => c.Question == question);

    private static SheetCase Line(SheetCases cases, string line) => Assert.Single(cases.Lines, l => l.Line == line);

    private static object Given(Value value) => value is Value.Amount amount ? amount.Quantity : ((Value.Option)value).Id;

    [Fact]
    public void Nothing_missing_leaves_no_case() => Assert.Empty(Sheet(Known).Cases);

    [Theory]
    [InlineData(Fuse, "60 A 80 A 100 A")]
    [InlineData(Earth, "combined cable-sheath own-rod")]
    public void A_missing_answer_has_a_column_for_each_that_is_possible(string question, string answers) =>
        Assert.Equal(answers, string.Join(' ', Table(Sheet(Without(question)), question).Answers.Select(a => a is Value.Amount amount ? amount.Quantity.ToString() : ((Value.Option)a).Id)));

    [Theory]
    [InlineData(Fuse)]
    [InlineData(Earth)]
    [InlineData(Phases)]
    public void Each_case_is_the_line_of_the_sheet_on_which_that_answer_is_given(string question)
    {
        var cases = Table(Sheet(Without(question)), question);

        Assert.NotEmpty(cases.Lines);
        Assert.All(cases.Answers.Select((answer, at) => (answer, at)), column =>
        {
            var given = Sheet([.. Without(question), (question, Given(column.answer))]);
            Assert.All(cases.Lines, line => Assert.Equal(
                given.Rows.Where(r => r.Id == line.Line).Select(r => (r.Result, r.Limit?.Worth, r.Verdict)).SingleOrDefault(),
                line.Rows[column.at] is { } row ? (row.Result, row.Limit?.Worth, row.Verdict) : default));
        });
    }

    [Fact]
    public void The_sheet_itself_knows_no_more_for_its_cases()
    {
        var sheet = Sheet(Without(Fuse));

        Assert.Null(sheet.Line("selective-fuse").Result);
        Assert.Equal(LimitVerdict.NotKnown, sheet.Line("tails-clipped").Verdict);
        Assert.Equal(["32 A", "45 A", "60 A"], Line(Table(sheet, Fuse), "selective-fuse").Rows.Select(r => ((Value.Amount)r!.Result!).Quantity.ToString()));
        Assert.All(Line(Table(sheet, Fuse), "tails-clipped").Rows, r => Assert.NotEqual(LimitVerdict.NotKnown, r!.Verdict));
    }

    [Fact]
    public void A_line_on_two_missing_answers_stands_once_with_the_other_beside_it()
    {
        var sheet = Sheet(Without(Fuse, Earth, "intake.earth-reading"));
        var lines = sheet.Cases.SelectMany(c => c.Lines).Where(l => l.Line == "declared-most-premises-2018").ToArray();

        Assert.All(lines, l => Assert.Equal([Earth], l.Taken.Select(t => t.Question)));
        Assert.Equal(["combined cable-sheath"], lines.Select(l => string.Join(' ', l.Taken[0].Answers.Select(a => ((Value.Option)a).Id))));
        Assert.DoesNotContain(Table(sheet, Earth).Lines, l => l.Line == "declared-most-premises-2018");
    }

    [Fact]
    public void What_comes_out_the_same_under_every_other_answer_does_not_name_it() =>
        Assert.Empty(Line(Table(Sheet(Without(Fuse, Earth)), Fuse), "earthing-heat").Taken);

    [Fact]
    public void No_line_stands_among_the_cases_that_none_of_them_settles() =>
        Assert.All(Sheet().Cases.SelectMany(c => c.Lines), l => Assert.Contains(l.Rows, r => r?.Result is not null));

    [Fact]
    public void No_case_of_an_earth_proves_a_loop_that_nobody_has_measured() =>
        Assert.All(Sheet(Without(Fuse, Earth, "intake.earth-reading")).Cases.SelectMany(c => c.Lines).Where(l => l.Line.EndsWith("-loop", StringComparison.Ordinal)).SelectMany(l => l.Rows), r => Assert.NotEqual(LimitVerdict.Within, r?.Verdict));

    [Fact]
    public void A_home_of_which_nothing_is_known_still_gets_numbers()
    {
        var sheet = Sheet();
        var numbers = sheet.Cases.SelectMany(c => c.Lines).SelectMany(l => l.Rows).Count(r => r?.Result is Value.Amount);

        Assert.True(numbers > 20, $"{numbers} numbers");
        Assert.All(sheet.Rows, r => Assert.NotEqual(LimitVerdict.Within, r.Verdict));
    }

    [Fact]
    public void A_fact_that_stands_for_an_answer_is_never_taken_for_another() =>
        Assert.All(Sheet(Without(Fuse)).Cases.SelectMany(c => c.Lines).SelectMany(l => l.Rows).OfType<SheetRow>(), row => Assert.DoesNotContain(Fuse, row.Open));
}
