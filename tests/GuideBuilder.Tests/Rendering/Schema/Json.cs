using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using GuideBuilder.Reading;

namespace GuideBuilder.Tests.Rendering.Schema;

/// <summary>A YAML tree as an editor sees it: plain values resolved by the core schema of YAML 1.2, section 10.3.2 (from memory).</summary>
internal static partial class Json
{
    public static JsonNode? Of(Node node) => node switch
    {
        Mapping mapping => new JsonObject(mapping.Entries.Select(e => KeyValuePair.Create(e.Key.Text, Of(e.Value)))),
        Sequence list => new JsonArray([.. list.Items.Select(Of)]),
        Scalar { Form: ScalarForm.Plain } scalar => Resolved(scalar.Text),
        Scalar scalar => JsonValue.Create(scalar.Text),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static JsonNode? Resolved(string plain) => plain switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => JsonValue.Create(true),
        "false" or "False" or "FALSE" => JsonValue.Create(false),
        _ when Number().IsMatch(plain) => JsonValue.Create(decimal.Parse(plain, NumberStyles.Float, CultureInfo.InvariantCulture)),
        _ => JsonValue.Create(plain),
    };

    [GeneratedRegex(@"\A[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?\z")]
    private static partial Regex Number();
}
