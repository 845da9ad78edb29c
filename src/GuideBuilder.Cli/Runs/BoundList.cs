using System.Text.Json;
using GuideBuilder.Cli.Disk;
using NodaTime.Text;

namespace GuideBuilder.Cli.Runs;

/// <summary>The list of the handbooks in a folder: the day of the run, an entry each by id, and the ids of those that were faulty.</summary>
internal sealed record BoundList(LocalDate? Today, ImmutableArray<BoundEntry> Entries, ImmutableArray<string> Faulty)
{
    /// <summary>The file's name.</summary>
    internal const string Name = "bound.json";

    private const int Format = 1;
    private const string Maker = "guidebuilder";

    /// <summary>A list of nothing.</summary>
    internal static BoundList Empty { get; } = new(null, [], []);

    /// <summary>The name of the list of one slice, until the slices are gathered.</summary>
    internal static string NameOf(Slice slice) => Invariant($"bound-{slice.K}-of-{slice.N}.json");

    /// <summary>The list in a file; null where there is none that this program wrote.</summary>
    internal static BoundList? Load(string path)
    {
        if (!File.Exists(path))
        {
            return null;
        }

        try
        {
            using var json = JsonDocument.Parse(Loading.Reading(path, () => File.ReadAllBytes(path)));
            return json.RootElement.GetProperty("made-by").GetString() == Maker && json.RootElement.GetProperty("format").GetInt32() == Format ? Of(json.RootElement) : null;
        }
        catch (Exception problem) when (problem is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or UnparsableValueException)
        {
            return null;
        }
    }

    /// <summary>The list as a file, entries by id.</summary>
    internal byte[] Write()
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("made-by", Maker);
            json.WriteNumber("format", Format);
            json.WriteString("today", LocalDatePattern.Iso.Format(Today!.Value));
            json.WriteStartArray("handbooks");
            foreach (var entry in Entries.OrderBy(e => e.Id, StringComparer.Ordinal))
            {
                Write(json, entry);
            }

            json.WriteEndArray();
            json.WriteStartArray("faulty");
            foreach (var id in Faulty.Order(StringComparer.Ordinal))
            {
                json.WriteStringValue(id);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return [.. buffer.ToArray(), (byte)'\n'];
    }

    private static void Write(Utf8JsonWriter json, BoundEntry entry)
    {
        json.WriteStartObject();
        json.WriteString("id", entry.Id);
        json.WriteString("key", entry.Key);
        json.WriteString("edition", entry.About.Edition.ToString().ToLowerInvariant());
        json.WriteString("nation", entry.About.Nation);
        json.WriteString("building", entry.About.Building);
        json.WriteString("way", entry.About.Way);
        json.WriteString("for", entry.About.For);
        Write(json, "bound-on", entry.About.Days.Bound);
        Write(json, "works-day", entry.About.Days.Work);
        json.WriteBoolean("works-day-held", entry.About.Days.IsHeld);
        Write(json, "needed-by", entry.About.Days.NeededBy);
        json.WriteStartObject("cautions");
        foreach (var (id, mark) in entry.About.Cautions)
        {
            json.WriteString(id, mark);
        }

        json.WriteEndObject();
        json.WriteStartArray("files");
        foreach (var file in entry.Files)
        {
            json.WriteStringValue(Invariant($"{file.Hash} {file.Length} {file.Name}"));
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, LocalDate? day)
    {
        if (day is { } known)
        {
            json.WriteString(name, LocalDatePattern.Iso.Format(known));
        }
    }

    private static LocalDate? Day(JsonElement entry, string name) =>
        entry.TryGetProperty(name, out var day) ? LocalDatePattern.Iso.Parse(day.GetString()!).GetValueOrThrow() : null;

    private static BoundList Of(JsonElement root) => new(
        LocalDatePattern.Iso.Parse(Text(root, "today")).GetValueOrThrow(),
        [.. root.GetProperty("handbooks").EnumerateArray().Select(Entry)],
        [.. root.GetProperty("faulty").EnumerateArray().Select(f => f.GetString()!)]);

    private static BoundEntry Entry(JsonElement entry) => new(
        Text(entry, "id"),
        Text(entry, "key"),
        new(
            Enum.Parse<EditionKind>(Text(entry, "edition"), ignoreCase: true),
            Text(entry, "nation"),
            Text(entry, "building"),
            Text(entry, "way"),
            Text(entry, "for"),
            [.. entry.GetProperty("cautions").EnumerateObject().Select(c => KeyValuePair.Create(c.Name, c.Value.GetString()!))])
        {
            Days = new(Day(entry, "bound-on"), Day(entry, "works-day"), entry.TryGetProperty("works-day-held", out var held) && held.GetBoolean(), Day(entry, "needed-by")),
        },
        [.. entry.GetProperty("files").EnumerateArray().Select(f => FileIn(f.GetString()!))]);

    private static BoundEntryFile FileIn(string line) => line.Split(' ', 3) is [var hash, var length, var name]
        ? new(name, long.Parse(length, System.Globalization.CultureInfo.InvariantCulture), hash)
        : throw new FormatException();

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;
}
