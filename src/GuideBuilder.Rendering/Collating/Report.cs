using System.Text;
using System.Text.Json;

namespace GuideBuilder.Rendering.Collating;

/// <summary>Findings as a person reads them, and as another program does.</summary>
public static class Report
{
    private const int Format = 1;

    /// <summary>A line a finding, in the order in which a publisher would go about them: what must be put right, what somebody has to read first, and the rest; under their kinds, with the count of each.</summary>
    public static string Text(ImmutableArray<Finding> findings)
    {
        var text = new StringBuilder();
        Part(text, "To put right before anything is published", findings.Where(f => f.Severity == Severity.Error));
        Part(text, "To be read by somebody who can judge it", findings.Where(f => f.Severity != Severity.Error && Unread.Is(f)));
        Part(text, "To look at when the words are next edited", findings.Where(f => f.Severity != Severity.Error && !Unread.Is(f)));
        return text.Append(Invariant($"{findings.Count(f => f.Severity == Severity.Error)} to put right, {findings.Count(f => f.Severity == Severity.Warning)} to look at.\n")).ToString();
    }

    private static void Part(StringBuilder text, string heading, IEnumerable<Finding> findings)
    {
        var kinds = Sorted([.. findings]).GroupBy(f => f.Kind, StringComparer.Ordinal).ToList();
        text.Append(kinds.Count == 0 ? "" : heading + "\n");
        foreach (var kind in kinds)
        {
            text.Append(Invariant($"{kind.Key} ({kind.Count()})\n"));
            foreach (var finding in kind)
            {
                text.Append(Invariant($"  {(finding.Severity == Severity.Error ? "error" : "look")}: {finding.Where}: {finding.What.ReplaceLineEndings(" ")}\n"));
            }
        }
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
