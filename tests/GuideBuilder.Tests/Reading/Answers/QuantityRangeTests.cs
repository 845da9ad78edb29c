using System.Collections.Immutable;
using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Reading.Answers;

/// <summary>Every question that asks for a quantity, answered with what makes no sense, and with the ends of what does.</summary>
public sealed class QuantityRangeTests
{
    private const int Line = 12;

    private static readonly ImmutableArray<Question> Asked = [.. Content.Guidance.Questions.Where(q => q.Kind == QuestionKind.Quantity)];

    public static TheoryData<string> Names => [.. Asked.Select(q => q.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void An_amount_that_makes_no_sense_is_a_fault_where_it_stands(string name)
    {
        var range = Of(name).Range!;
        var odd = new[] { "-1", "-0.001", "999999999", "1e300", ".nan", ".inf", "-.inf", "many", "3 furlongs", "0x10", "1,2,3", "79228162514264337593543950336" };
        string[] outside = [.. odd, Written(range.Most + 0.001m, range.Unit), .. range.Least > 0 ? [Written(range.Least - 0.001m, range.Unit), "0"] : Array.Empty<string>()];

        Assert.All(outside, text => Assert.Contains(Faults(name, text), f => f.Severity == Severity.Error && f.Place.Line == Line));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_ends_of_the_range_count(string name)
    {
        var range = Of(name).Range!;

        Assert.All(new[] { range.Least, range.Most }, end => Assert.DoesNotContain(Faults(name, Written(end, range.Unit)), f => f.Code == "HB1028"));
    }

    [Fact]
    public void What_stands_for_an_unknown_answer_lies_within_its_range() =>
        Findings.AreNone(from q in Asked from v in q.IfUnknown where v.Value.In(q.Range!.Unit)?.Amount is not { } amount || amount < q.Range.Least || amount > q.Range.Most select q.Name);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_ends_of_every_range_at_once_give_figures_or_none_and_never_throw(bool most)
    {
        var given = from q in Content.Guidance.Questions
                    let value = q.Kind == QuestionKind.Quantity ? (object)new Quantity(most ? q.Range!.Most : q.Range!.Least, q.Range.Unit) : q.Options.IsEmpty || q.Kind == QuestionKind.Several ? null : q.Options[^1].Id
                    where value is not null
                    select (q.Name, value);
        var answers = Small.Answers(Content.Guidance, [.. given]);
        Lookup lookup = name => answers.ByName.TryGetValue(name, out var answer) ? answer : new Given.Derived(name, Standing.Known, new Value.Option("yes"), new("fact", name, Place.None, Truth.Holds, [], LocalText.Empty, []));
        var rows = ElectricalSheets.Of(lookup, Content.Guidance.Tables).Rows.Concat(GroundSheets.Of(lookup, lookup, Content.Guidance.Tables)!.Rows).ToArray();

        Assert.NotEmpty(rows);
        Assert.All(GroundFacts.ByName.Values.Concat(ElectricalFacts.ByName.Values), fact => _ = fact(lookup, Content.Guidance.Tables));
    }

    private static Question Of(string name) => Asked.Single(q => q.Name == name);

    private static string Written(decimal amount, Unit unit) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{amount} {unit.Symbol}");

    private static ImmutableArray<Fault> Faults(string name, string text)
    {
        var question = Of(name);
        var home = question.Section == "home" ? "" : "home:\n  nation: england\n";
        var wish = question.Section == "wish" ? "" : "wish:\n  moves: [cutout, meter, board]\n";
        var head = "handbook:\n  format: 1\n  id: range\n" + home + wish;
        var inside = question.Section is "home" ? "  nation: england\n" : question.Section is "wish" ? "  moves: [cutout, meter]\n" : "";
        var before = head + question.Section + ":\n" + inside;
        var padded = string.Concat(Enumerable.Repeat("#\n", Line - 1 - before.Count(c => c == '\n'))) + before;
        return AnswerReader.Read(new("range.yaml", Encoding.UTF8.GetBytes($"{padded}  {question.Id}: {text}\n")), Content.Guidance).Faults;
    }
}
