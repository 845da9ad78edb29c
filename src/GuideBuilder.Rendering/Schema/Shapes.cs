using System.Text.Json;

namespace GuideBuilder.Rendering.Schema;

/// <summary>The forms of values that more than one key takes, as regular expressions that every JSON Schema validator knows.</summary>
internal static class Shapes
{
    /// <summary>A date, written year-month-day.</summary>
    internal const string Date = "[0-9]{4}-[0-9]{2}-[0-9]{2}";

    /// <summary>A number in ordinary digits.</summary>
    internal const string Number = @"-?[0-9][0-9,]*(\.[0-9]{1,9})?";

    /// <summary>A sum of money, with or without what it says of VAT.</summary>
    internal const string Sum = $"^[£€]?{Number}( .+)?$";

    /// <summary>An id.</summary>
    internal const string Id = "^[a-z0-9]+(-[a-z0-9]+)*$";

    /// <summary>Words of that form.</summary>
    internal static void Text(Utf8JsonWriter json, string pattern)
    {
        json.WriteString("type", "string");
        json.WriteString("pattern", pattern);
    }

    /// <summary>A person's own words; an editor may take some of them for a number or for a truth.</summary>
    internal static void Words(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        AnyWords(json);
        json.WriteEndObject();
    }

    /// <summary>The same, inside an object that is open already.</summary>
    internal static void AnyWords(Utf8JsonWriter json)
    {
        json.WriteStartArray("type");
        foreach (var type in (ReadOnlySpan<string>)["string", "number", "boolean"])
        {
            json.WriteStringValue(type);
        }

        json.WriteEndArray();
    }

    /// <summary>One of these words.</summary>
    internal static void OneOf(Utf8JsonWriter json, IEnumerable<string> words)
    {
        json.WriteStartArray("enum");
        foreach (var word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }
}
