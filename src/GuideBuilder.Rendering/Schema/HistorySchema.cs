using System.Text.Json;
using GuideBuilder.Rendering.Questionnaire;

namespace GuideBuilder.Rendering.Schema;

/// <summary>What may stand in the sections that are no questions: the handbook's own, papers and log.</summary>
internal static class HistorySchema
{
    /// <summary>What the handbook's own section may hold.</summary>
    internal static void Handbook(Utf8JsonWriter json, ImmutableArray<string> languages)
    {
        json.WriteStartObject(PlainLayout.Handbook);
        AnswersSchema.Object(json, ["format"], () =>
        {
            json.WriteStartObject("format");
            json.WriteNumber("const", 1);
            json.WriteEndObject();
            Property(json, "id", () => Shapes.Text(json, Shapes.Id));
            Property(json, "public-id", () => Shapes.Text(json, Shapes.Id));
            Property(json, "edition", () => Shapes.OneOf(json, Words<EditionKind>()));
            Property(json, "filled-in-by", () => Shapes.AnyWords(json));
            Property(json, "imprint", () => Shapes.AnyWords(json));
            Property(json, "language", () => Shapes.OneOf(json, languages));
        });
        json.WriteEndObject();
    }

    /// <summary>What a paper may hold.</summary>
    internal static void Papers(Utf8JsonWriter json, Guidance guidance) => List(json, "papers", ["kind"], () =>
    {
        Property(json, "kind", () => Shapes.OneOf(json, Words<PaperKind>()));
        Property(json, "from", () => Shapes.OneOf(json, guidance.Parties.Select(p => p.Id)));
        Property(json, "dated", () => Day(json));
        Property(json, "valid-until", () => Day(json));
        Property(json, "amount", () => Sum(json));
        Property(json, "goods", () => Sum(json));
        Property(json, "covers", () => Costs(json, guidance));
        Property(json, "leaves-out", () => Costs(json, guidance));
        Property(json, "reference", () => Shapes.AnyWords(json));
    });

    /// <summary>What a happening may hold.</summary>
    internal static void Log(Utf8JsonWriter json, Guidance guidance) => List(json, "log", ["on", "what"], () =>
    {
        Property(json, "on", () => Day(json));
        Property(json, "what", () => Shapes.OneOf(json, Words<LogKind>()));
        Property(json, "step", () => Shapes.OneOf(json, guidance.Steps.Select(s => s.Id)));
        Property(json, "party", () => Shapes.OneOf(json, guidance.Parties.Select(p => p.Id)));
        Property(json, "date", () => Day(json));
        Property(json, "amount", () => Sum(json));
        Property(json, "valid-until", () => Day(json));
        Property(json, "reference", () => Shapes.AnyWords(json));
        Property(json, "note", () => Shapes.AnyWords(json));
        Property(json, "after-five", () => Shapes.OneOf(json, ["yes", "no"]));
    });

    /// <summary>The words for the members of a closed list: DateGiven is date-given.</summary>
    internal static IEnumerable<string> Words<T>()
        where T : struct, Enum => Enum.GetNames<T>().Select(name => string.Concat(name.Select((c, at) => (at > 0 && char.IsUpper(c) ? "-" : "") + char.ToLowerInvariant(c))));

    private static void List(Utf8JsonWriter json, string name, ImmutableArray<string> needed, Action properties)
    {
        json.WriteStartObject(name);
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        AnswersSchema.Object(json, needed, properties);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Property(Utf8JsonWriter json, string name, Action content)
    {
        json.WriteStartObject(name);
        content();
        json.WriteEndObject();
    }

    private static void Day(Utf8JsonWriter json) => Shapes.Text(json, $"^{Shapes.Date}$");

    private static void Costs(Utf8JsonWriter json, Guidance guidance)
    {
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        Shapes.OneOf(json, guidance.Costs.Select(c => c.Id));
        json.WriteEndObject();
    }

    // A bare number is a number to an editor; a sum with its sign or with words about VAT is text.
    private static void Sum(Utf8JsonWriter json)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("type", "number");
        json.WriteEndObject();
        json.WriteStartObject();
        Shapes.Text(json, Shapes.Sum);
        json.WriteEndObject();
        json.WriteEndArray();
    }
}
