using System.Text.Json;
using System.Text.RegularExpressions;

namespace GuideBuilder.Rendering.Schema;

/// <summary>What may stand under a question for a quantity: a bare number within its range, or a number with a unit that fits, or two (5 ft 6 in).</summary>
internal static class QuantitySchema
{
    /// <summary>The two forms.</summary>
    internal static void Write(Utf8JsonWriter json, QuantityRange range)
    {
        json.WriteStartObject();
        json.WriteString("type", "number");
        json.WriteNumber("minimum", range.Least);
        if (range.Most != decimal.MaxValue)
        {
            json.WriteNumber("maximum", range.Most);
        }

        json.WriteEndObject();
        json.WriteStartObject();
        Shapes.Text(json, Pattern(range.Unit));
        json.WriteEndObject();
    }

    private static string Pattern(Unit asked)
    {
        if (asked.Dimension is Dimension.Pounds or Dimension.Euros)
        {
            return Shapes.Sum;
        }

        var units = Unit.SpellingsOf(asked.Dimension).Select(s => s.Spelling).Where(s => s.Length > 0).OrderByDescending(s => s.Length).ThenBy(s => s, StringComparer.Ordinal);
        var unit = string.Join('|', units.Select(u => u is "\"" ? "\"" : Regex.Escape(u)));
        return unit.Length == 0 ? $"^{Shapes.Number}$" : $@"^{Shapes.Number}( *({unit})( +{Shapes.Number} *({unit}))?)?$";
    }
}
