using System.Text.Json;

namespace GuideBuilder.Rendering.Schema;

/// <summary>What may stand under one question: its words as description, its options with theirs.</summary>
internal static class QuestionSchema
{
    private const string Unknown = "unknown";

    /// <summary>The property of that question.</summary>
    internal static void Write(Utf8JsonWriter json, Question question, bool mayBeUnknown)
    {
        json.WriteStartObject(question.Id);
        json.WriteString("title", question.Label.Words);
        json.WriteString("description", string.Join("\n\n", new[] { question.Wording, question.HowToFindOut, question.WhatItDecides }.Where(t => !t.IsEmpty).Select(t => t.Words)));
        json.WriteStartArray("anyOf");
        Answers(json, question);
        if (mayBeUnknown)
        {
            Const(json, Unknown, "");
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Answers(Utf8JsonWriter json, Question question)
    {
        switch (question.Kind)
        {
            case QuestionKind.Choice or QuestionKind.YesNo:
                Options(json, question);
                break;
            case QuestionKind.Several:
                List(json, () => Options(json, question), unique: true);
                Const(json, Value.Several.None, "");
                break;
            case QuestionKind.Quantity:
                QuantitySchema.Write(json, question.Range!);
                break;
            case QuestionKind.Date:
                Pattern(json, $"^{Shapes.Date}$");
                break;
            case QuestionKind.Days:
                List(json, () => Pattern(json, $"^{Shapes.Date}( to {Shapes.Date})?$"), unique: false);
                Const(json, Value.Several.None, "");
                break;
            case QuestionKind.Text or QuestionKind.NumberName:
                Shapes.Words(json);
                break;
            default:
                throw new UnreachableException();
        }
    }

    private static void Options(Utf8JsonWriter json, Question question)
    {
        foreach (var option in question.Options)
        {
            Const(json, option.Id, option.Wording.Words);
        }
    }

    private static void List(Utf8JsonWriter json, Action items, bool unique)
    {
        json.WriteStartObject();
        json.WriteString("type", "array");
        json.WriteNumber("minItems", 1);
        json.WriteBoolean("uniqueItems", unique);
        json.WriteStartObject("items");
        json.WriteStartArray("anyOf");
        items();
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Const(Utf8JsonWriter json, string value, string meaning)
    {
        json.WriteStartObject();
        json.WriteString("const", value);
        if (meaning.Length > 0)
        {
            json.WriteString("description", meaning);
        }

        json.WriteEndObject();
    }

    private static void Pattern(Utf8JsonWriter json, string pattern)
    {
        json.WriteStartObject();
        Shapes.Text(json, pattern);
        json.WriteEndObject();
    }
}
