using System.Text.Encodings.Web;
using System.Text.Json;
using GuideBuilder.Rendering.Questionnaire;

namespace GuideBuilder.Rendering.Schema;

/// <summary>Writes the JSON Schema (draft 2020-12) of an answers file, so that an editor completes keys and options, shows what each question asks, and marks what cannot be right while a person types. What depends on earlier answers only <c>check</c> can say.</summary>
public static class AnswersSchema
{
    private const string Draft = "https://json-schema.org/draft/2020-12/schema";
    private const string Nation = "home.nation";

    /// <summary>The sections that an answers file cannot do without.</summary>
    private static readonly ImmutableArray<string> Needed = [PlainLayout.Handbook, "home", "wish"];

    /// <summary>The schema as JSON in UTF-8.</summary>
    public static ReadOnlyMemory<byte> Write(Guidance guidance)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", Draft);
            json.WriteString("title", guidance.Head.Title.Words);
            Object(json, Needed, () => Sections(json, guidance));
            json.WriteEndObject();
        }

        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    /// <summary>An object that may hold the properties that are written inside it, and no others.</summary>
    internal static void Object(Utf8JsonWriter json, ImmutableArray<string> needed, Action properties)
    {
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        json.WriteStartObject("properties");
        properties();
        json.WriteEndObject();
        json.WriteStartArray("required");
        foreach (var name in needed)
        {
            json.WriteStringValue(name);
        }

        json.WriteEndArray();
    }

    private static void Sections(Utf8JsonWriter json, Guidance guidance)
    {
        HistorySchema.Handbook(json, guidance.Head.Languages);
        foreach (var section in guidance.Questions.GroupBy(q => q.Section, StringComparer.Ordinal))
        {
            json.WriteStartObject(section.Key);
            var hasNation = section.Any(q => q.Name == Nation);
            Object(json, hasNation ? [Nation[(section.Key.Length + 1)..]] : [], () =>
            {
                foreach (var question in section)
                {
                    QuestionSchema.Write(json, question, mayBeUnknown: question.Name != Nation);
                }
            });
            if (section.Key == "wish")
            {
                json.WriteNumber("minProperties", 1);
            }

            json.WriteEndObject();
        }

        HistorySchema.Papers(json, guidance);
        HistorySchema.Log(json, guidance);
    }
}
