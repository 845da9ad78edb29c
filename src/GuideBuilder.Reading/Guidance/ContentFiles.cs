namespace GuideBuilder.Reading;

/// <summary>Turns the files of a guidance folder into trees and texts, sorted by name.</summary>
internal static class ContentFiles
{
    /// <summary>Every file that belongs to the guidance; those that do not are faults.</summary>
    public static ImmutableArray<ContentFile> Read(IReadOnlyList<SourceText> files, string root, FaultList faults) =>
    [
        .. files.Select(f => (Name: Below(root, f.Path), Source: f))
            .Where(f => !Layout.IsForEditors(f.Name))
            .OrderBy(f => f.Name, StringComparer.Ordinal)
            .Select(f => Read(f.Name, f.Source, faults))
            .OfType<ContentFile>(),
    ];

    private static ContentFile? Read(string name, SourceText source, FaultList faults)
    {
        var start = new Place(source.Path, 1, 1);
        if (Layout.KindOf(name) is null)
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
