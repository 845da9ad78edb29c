using System.Collections.Concurrent;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Reading;

namespace GuideBuilder.Cli.Runs;

/// <summary>The guidance as a handbook wants it, in its language and under its imprint. Each is read once, when it is first wanted.</summary>
internal sealed class Shelf(ImmutableArray<SourceText> files, string root, LocalDate today)
{
    private readonly ConcurrentDictionary<(string Language, string Imprint), Lazy<Staged<Guidance>>> _read = [];

    /// <summary>The shelf of a guidance folder, or of the guidance inside the program.</summary>
    internal static Shelf Of(string? folder, LocalDate today)
    {
        var (files, root) = GuidanceFolder.Load(folder);
        return new(files, root, today);
    }

    /// <summary>Every file of the guidance.</summary>
    internal ImmutableArray<SourceText> Files => files;

    /// <summary>The guidance in its own language, under nobody's imprint.</summary>
    internal Staged<Guidance> Plain => Take(LocalText.Original, null);

    /// <summary>The guidance in a language, under an imprint if one is named.</summary>
    internal Staged<Guidance> Take(string language, ImprintFiles? imprint) =>
        _read.GetOrAdd((language, imprint?.File.Path ?? ""), _ => new(() => Read(language, imprint))).Value;

    private Staged<Guidance> Read(string language, ImprintFiles? imprint)
    {
        var guidance = GuidanceReader.Read(files, root, today, language);
        return imprint is null ? guidance : guidance.Then(read => ImprintReader.Over(read, imprint.File, imprint.Logo));
    }
}

/// <summary>An imprint file and the logo that it names, if it could be loaded.</summary>
internal sealed record ImprintFiles(SourceText File, SourceText? Logo)
{
    /// <summary>Loads an imprint, and its logo from beside it.</summary>
    internal static ImprintFiles Load(string path)
    {
        var file = Loading.File(path);
        var logo = ImprintReader.LogoOf(file) is { } name ? Path.Combine(Path.GetDirectoryName(path) ?? "", name) : null;
        return new(file, System.IO.File.Exists(logo) ? Loading.File(logo) : null);
    }
}
