using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using NodaTime;

namespace GuideBuilder.Tests.Reading;

/// <summary>A guidance of a few entries that is right in everything, to be made wrong in one place.</summary>
internal static class SmallGuidance
{
    public const string Root = "content";

    public static LocalDate Today { get; } = new(2026, 11, 24);

    public static IReadOnlyDictionary<string, string> Files { get; } = SmallGuidanceFiles.All;

    public static Guidance Value { get; } = Read(Files).Value ?? throw new InvalidOperationException(string.Join('\n', Read(Files).Faults));

    /// <summary>Reads the small guidance with one file put in place of its own, or added.</summary>
    public static Staged<Guidance> With(string name, string text) => Read(new Dictionary<string, string>(Files, StringComparer.Ordinal) { [name] = text });

    /// <summary>Reads the small guidance with entries added at the end of a file.</summary>
    public static Staged<Guidance> Adding(string name, string entries) => With(name, Files.GetValueOrDefault(name, "") + entries);

    public static Staged<Guidance> Read(IReadOnlyDictionary<string, string> files, string language = LocalText.Original) => GuidanceReader.Read([.. files.Select(f => Source(f.Key, f.Value))], Root, Today, language);

    /// <summary>Fails unless entries added to a file have these faults at their marks, and the rest of the guidance none.</summary>
    public static void Finds(string name, string marked, params string[] codes)
    {
        var before = Files.GetValueOrDefault(name, "");
        var text = Marked.Parse(before + marked);
        var faults = With(name, text.Text).Faults;

        text.HasExactly(faults, $"{Root}/{name}", codes);
        Assert.All(faults, f => Assert.Equal($"{Root}/{name}", f.Place.Path));
    }

    private static SourceText Source(string name, string text) => new($"{Root}/{name}", Encoding.UTF8.GetBytes(text));
}
