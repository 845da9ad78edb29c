using System.Globalization;
using System.Text.Json;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Rendering.Form;
using GuideBuilder.Tests.Support;
using Written = GuideBuilder.Model.Written;

namespace GuideBuilder.Tests.Rendering.Questionnaire;

/// <summary>The program agrees with the shared cases; the tests in the browser ask the same of the page.</summary>
public sealed class VectorTests
{
    [Fact]
    public void Questions_are_asked_as_the_cases_say() =>
        Findings.AreNone(Vectors.Read().GetProperty("asked").EnumerateArray().Where(v => Asked(v) != v.GetProperty("asked").GetString()).Select(v => $"{v} but {Asked(v)}"));

    [Fact]
    public void Amounts_come_to_what_the_cases_say() =>
        Findings.AreNone(Vectors.Read().GetProperty("amounts").EnumerateArray().Where(v => Amount(v) != v.GetProperty("amount").GetString()).Select(v => $"{v} but {Amount(v)}"));

    [Fact]
    public void Every_condition_of_a_question_is_tried_both_ways()
    {
        var tried = Vectors.Read().GetProperty("asked").EnumerateArray().Select(v => $"{v.GetProperty("question").GetString()} {v.GetProperty("asked").GetString()}").ToHashSet(StringComparer.Ordinal);

        Assert.All(["home.block-stair", "people.battery-hours", "place.gas-distance", "operator.loop-answer", "wish.overhead-becomes", "ground.surface"], q =>
            Assert.All(["yes", "no"], asked => Assert.Contains($"{q} {asked}", tried)));
    }

    private static string Asked(JsonElement vector)
    {
        var question = Content.Guidance.Questions.Single(q => q.Name == vector.GetProperty("question").GetString());
        var (answers, _) = AnswerReader.ReadSoFar(Answers(vector.GetProperty("answers").EnumerateObject().Select(a => (a.Name, Of(a.Value)))), Content.Guidance);
        return Judge.Of(question.AskIf, name => answers[name]).Truth switch
        {
            Truth.Holds => "yes",
            Truth.Open => "open",
            _ => "no",
        };
    }

    private static string? Amount(JsonElement vector)
    {
        var name = vector.GetProperty("question").GetString()!;
        var (answers, _) = AnswerReader.ReadSoFar(Answers([(name, new Written.One(vector.GetProperty("text").GetString()!, false)), ("people.medical-equipment", new Written.One("yes", false))]), Content.Guidance);
        return answers[name].Value is Value.Amount { Quantity: var quantity }
            ? (quantity.Amount * SmallestUnits.Size(quantity.Unit)).ToString("0.#########", CultureInfo.InvariantCulture)
            : null;
    }

    private static WrittenAnswers Answers(IEnumerable<(string Name, Written Value)> answers) => new(
        [],
        [.. answers.GroupBy(a => a.Name.Split('.')[0], StringComparer.Ordinal).Select(s => new WrittenEntry(s.Key, new Written.Keys([.. s.Select(a => new WrittenEntry(a.Name.Split('.')[1], a.Value, []))]), []))],
        []);

    private static Written Of(JsonElement value) => value.ValueKind == JsonValueKind.Array
        ? new Written.List([.. value.EnumerateArray().Select(i => new WrittenItem(new Written.One(i.GetString()!, false), []))])
        : new Written.One(value.GetString()!, false);
}
