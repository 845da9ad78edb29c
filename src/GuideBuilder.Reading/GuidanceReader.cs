namespace GuideBuilder.Reading;

/// <summary>Reads the guidance: every file under its folder, every static check, every fault in one run.</summary>
public static class GuidanceReader
{
    /// <summary>The guidance in these files, whose paths begin with the folder <paramref name="root"/> as the person named it. Review days are judged against today. Where a language is named its words are laid over those of the guidance.</summary>
    public static Staged<Guidance> Read(IReadOnlyList<SourceText> files, string root, LocalDate today, string language = LocalText.Original)
    {
        var faults = new FaultList();
        var content = ContentFiles.Read(files, root, faults, language);
        if (content.All(f => f.Name != Layout.Head))
        {
            faults.Add(ReadingFaults.MissingFile(new(root.Length == 0 ? Layout.Head : root.TrimEnd('/') + "/" + Layout.Head, 1, 1), Layout.Head));
        }

        var desk = new Desk(IdScan.Of(content, faults), faults, today);
        var guidance = new Assembly(content, desk).Read();
        if (language != LocalText.Original)
        {
            guidance = guidance with { PlainLabels = Assembly.Labels(ContentFiles.Read(files, root, new FaultList()), desk) };
        }

        GuidanceChecks.Run(guidance, desk);
        return Staged<Guidance>.From(guidance, faults.Found);
    }
}
