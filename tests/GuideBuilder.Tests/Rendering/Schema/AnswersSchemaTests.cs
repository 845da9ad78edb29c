using System.Text;
using System.Text.Json.Nodes;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Rendering.Schema;
using GuideBuilder.Tests.Support;
using Json.Schema;

namespace GuideBuilder.Tests.Rendering.Schema;

/// <summary>The schema takes every answers file that is right, and of those that are wrong each whose mistake an editor can see.</summary>
public sealed class AnswersSchemaTests
{
    private static readonly JsonSchema Answers = JsonSchema.FromText(Encoding.UTF8.GetString(AnswersSchema.Write(Content.Guidance).Span));

    public static TheoryData<string> Files => [.. AnswersFiles.Paths];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_answers_file_is_as_the_schema_says(string path) => Findings.AreNone(Wrong(AnswersFiles.Load(path)));

    [Theory]
    [InlineData("{}", "home", "nation", "unknown")]
    [InlineData("{}", "home", "natoin", "wales")]
    [InlineData("{}", "home", "kind", "castle")]
    [InlineData("{}", "home", "built", "about 1954")]
    [InlineData("{}", "home", "built", "3000")]
    [InlineData("{}", "place", "distance", "4 kg")]
    [InlineData("{}", "place", "distance", "four metres")]
    [InlineData("{}", "place", "near", "gas-meter")]
    [InlineData("{}", "dates", "needed-by", "15/03/2027")]
    [InlineData("{}", "handbook", "edition", "private")]
    [InlineData("{}", "handbook", "format", "2")]
    [InlineData("{}", "garden", "size", "4")]
    public void A_value_that_cannot_be_right_is_refused(string rest, string section, string key, string value)
    {
        var file = (JsonObject)JsonNode.Parse(rest)!;
        file["handbook"] = new JsonObject { ["format"] = 1 };
        file["home"] = new JsonObject { ["nation"] = "england" };
        file["wish"] = new JsonObject { ["moves"] = "none" };
        Assert.True(Evaluate(file).IsValid);

        file[section] ??= new JsonObject();
        file[section]![key] = Json.Resolved(value);
        Assert.False(Evaluate(file).IsValid);
    }

    [Theory]
    [InlineData("home: {nation: england}\nwish: {moves: none}\n")]
    [InlineData("handbook: {format: 1}\nwish: {moves: none}\n")]
    [InlineData("handbook: {format: 1}\nhome: {nation: england}\n")]
    [InlineData("handbook: {format: 1}\nhome: {kind: semi}\nwish: {moves: none}\n")]
    [InlineData("handbook: {format: 1}\nhome: {nation: england}\nwish: {}\n")]
    [InlineData("handbook: {format: 1}\nhome: {nation: england}\nwish: {moves: [cutout, cutout]}\n")]
    [InlineData("handbook: {format: 1}\nhome: {nation: england}\nwish: {moves: none}\nlog: [{on: 2026-09-01, what: finished}]\n")]
    [InlineData("handbook: {format: 1}\nhome: {nation: england}\nwish: {moves: none}\npapers: [{kind: quotation, from: postman}]\n")]
    [InlineData("handbook: {format: 1}\nhome: {nation: england}\nwish: {moves: none}\ndates: {away: [Monday]}\n")]
    public void A_file_that_cannot_be_right_is_refused(string text)
    {
        Assert.NotEmpty(Wrong(AnswersFiles.Of(text)));
        Assert.Null(AnswerReader.Read(AnswersFiles.Of(text), Content.Guidance).Value);
    }

    [Fact]
    public void Every_unit_that_may_be_written_is_taken()
    {
        foreach (var question in Content.Guidance.Questions.Where(q => q.Range is not null))
        {
            foreach (var (spelling, unit) in Unit.SpellingsOf(question.Range!.Unit.Dimension).Where(s => s.Spelling.Length > 0))
            {
                var amount = new Quantity(question.Range.Least, question.Range.Unit).In(unit).Amount;
                var file = AnswersFiles.Of(FormattableString.Invariant($"handbook: {{format: 1}}\nhome: {{nation: england}}\nwish: {{moves: none}}\n{question.Section}: {{{question.Id}: '{amount:0.#########} {spelling.Replace("'", "''", StringComparison.Ordinal)}'}}\n").Replace("home: {nation: england}\nwish: {moves: none}\nhome: {", "wish: {moves: none}\nhome: {nation: england, ", StringComparison.Ordinal));
                Findings.AreNone(Wrong(file));
            }
        }
    }

    [Fact]
    public void Each_question_brings_its_words_and_each_option_its_meaning()
    {
        var schema = JsonNode.Parse(AnswersSchema.Write(Content.Guidance).Span)!;

        foreach (var question in Content.Guidance.Questions)
        {
            var written = schema["properties"]![question.Section]!["properties"]![question.Id]!;
            Assert.Equal(question.Label.Words, (string?)written["title"]);
            Assert.StartsWith(question.Wording.Words, (string?)written["description"], StringComparison.Ordinal);
            Assert.All(question.Options, option => Assert.Contains($"\"{option.Id}\"", written.ToJsonString(), StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Words_of_papers_and_log_are_those_that_are_read()
    {
        Assert.Equal(LogWords.Happenings.Select(h => h.Word), HistorySchema.Words<LogKind>());
        Assert.Equal(LogWords.Papers.Select(p => p.Word), HistorySchema.Words<PaperKind>());
    }

    private static IEnumerable<string> Wrong(SourceText file)
    {
        var result = Evaluate(Json.Of(YamlText.Read(file, Budget.Answers, new FaultList())!));
        return result.IsValid ? [] : (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}")).DefaultIfEmpty("not valid");
    }

    private static EvaluationResults Evaluate(JsonNode? file)
    {
        using var document = System.Text.Json.JsonDocument.Parse(file!.ToJsonString());
        return Answers.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
    }
}
