namespace GuideBuilder.Reading;

/// <summary>Turns the files of a guidance folder into trees and texts, sorted by name.</summary>
internal static class ContentFiles
{
    /// <summary>Every file that belongs to the guidance, with the words of a language laid over it where one is named; files that do not belong are faults.</summary>
    public static ImmutableArray<ContentFile> Read(IReadOnlyList<SourceText> files, string root, FaultList faults, string language = LocalText.Original)
    {
        var named = files.Select(f => (Name: Below(root, f.Path), Source: f))
            .Where(f => !Layout.IsForEditors(f.Name))
            .OrderBy(f => f.Name, StringComparer.Ordinal)
            .ToList();
        var plain = named.Where(f => !IsWords(f.Name)).Select(f => Read(f.Name, f.Source, faults)).OfType<ContentFile>().ToImmutableArray();
        var laid = new WordOverlay(language, faults);
        foreach (var (name, source) in named.Where(f => IsWords(f.Name)))
        {
            if (LanguageOf(name, plain) == language && Read(name, source, faults) is { } words)
            {
                plain = laid.Over(plain, words with { Name = name[(Layout.Words.Length + language.Length + 2)..], Language = language });
            }
            else if (Layout.KindOf(name) is null || LanguageOf(name, plain) is null)
            {
                faults.Add(ReadingFaults.NotOfTheGuidance(new(source.Path, 1, 1), name, Layout.Names.SelectMany(n => Languages(plain).Select(l => $"{Layout.Words}/{l}/{n}"))));
            }
        }

        return plain;
    }

    private static bool IsWords(string name) => name.StartsWith(Layout.Words + "/", StringComparison.Ordinal);

    private static string? LanguageOf(string name, ImmutableArray<ContentFile> plain) => Languages(plain).FirstOrDefault(l => name.StartsWith($"{Layout.Words}/{l}/", StringComparison.Ordinal));

    private static IEnumerable<string> Languages(ImmutableArray<ContentFile> plain) =>
        plain.Where(f => f.Name == Layout.Head).SelectMany(f => f.Entries).Select(e => e["languages"]).OfType<Sequence>().SelectMany(l => l.Items).OfType<Scalar>().Select(s => s.Text).Where(l => l != LocalText.Original);

    private static ContentFile? Read(string name, SourceText source, FaultList faults)
    {
        var start = new Place(source.Path, 1, 1);
        if (Layout.KindOf(name) is null || name == Layout.LanguageFile)
        {
            faults.Add(ReadingFaults.NotOfTheGuidance(start, name, Layout.Names));
            return null;
        }

        if (name.EndsWith(".yaml", StringComparison.Ordinal) && !name.StartsWith("look/", StringComparison.Ordinal))
        {
            return new(name, YamlText.Read(source, Budget.Guidance, faults), null, start);
        }

        return new(name, null, Utf8Text.Decode(source, Budget.Guidance, faults) is { } text ? Utf8Text.WithLineFeeds(text) : null, start);
    }

    private static string Below(string root, string path)
    {
        var folder = root.Replace('\\', '/').TrimEnd('/') + "/";
        var name = path.Replace('\\', '/');
        return root.Length > 0 && name.StartsWith(folder, StringComparison.Ordinal) ? name[folder.Length..] : name;
    }
}
