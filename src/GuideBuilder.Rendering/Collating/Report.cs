using System.Text;
using System.Text.Json;

namespace GuideBuilder.Rendering.Collating;

/// <summary>Findings as a person reads them, and as another program does.</summary>
public static class Report
{
    private const int Format = 1;

    /// <summary>A line a finding, errors first, under their kinds, with the count of each.</summary>
    public static string Text(ImmutableArray<Finding> findings)
    {
        var text = new StringBuilder();
        foreach (var kind in Sorted(findings).GroupBy(f => f.Kind, StringComparer.Ordinal))
        {
            text.Append(Invariant($"{kind.Key} ({kind.Count()})\n"));
            foreach (var finding in kind)
            {
                text.Append(Invariant($"  {(finding.Severity == Severity.Error ? "error" : "look")}: {finding.Where}: {finding.What.ReplaceLineEndings(" ")}\n"));
            }
        }

        return text.Append(Invariant($"{findings.Count(f => f.Severity == Severity.Error)} to put right, {findings.Count(f => f.Severity == Severity.Warning)} to look at.\n")).ToString();
    }

    /// <summary>The same as JSON in UTF-8.</summary>
    public static byte[] Json(ImmutableArray<Finding> findings)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("format", Format);
            json.WriteNumber("errors", findings.Count(f => f.Severity == Severity.Error));
            json.WriteStartArray("findings");
            foreach (var finding in Sorted(findings))
            {
                json.WriteStartObject();
                json.WriteString("severity", finding.Severity == Severity.Error ? "error" : "warning");
                json.WriteString("kind", finding.Kind);
                json.WriteString("where", finding.Where);
                json.WriteString("what", finding.What);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return [.. buffer.ToArray(), (byte)'\n'];
    }

    private static IEnumerable<Finding> Sorted(ImmutableArray<Finding> findings) =>
        findings.OrderByDescending(f => f.Severity).ThenBy(f => f.Kind, StringComparer.Ordinal).ThenBy(f => f.Where, StringComparer.Ordinal).ThenBy(f => f.What, StringComparer.Ordinal);
}
