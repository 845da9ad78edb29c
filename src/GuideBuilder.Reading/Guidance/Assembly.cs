namespace GuideBuilder.Reading;

/// <summary>Puts the guidance together from its files, each kind in written order, questions in the order of asking.</summary>
internal sealed class Assembly(ImmutableArray<ContentFile> files, Desk desk)
{
    private readonly PartyReader _parties = new(desk);
    private readonly PaperRuleReader _papers = new(desk);
    private readonly TableReader _tables = new(desk);
    private readonly WordReader _words = new(desk);

    /// <summary>The whole guidance, with stand-ins where there are faults.</summary>
    public Guidance Read()
    {
        var (head, nations) = Head();
        return new(
            head,
            nations,
            [.. Layout.Sections.SelectMany(Questions)],
            Of(Kinds.Fact, new FactReader(desk).Read),
            Of(Kinds.Party, _parties.Read),
            Of(Kinds.Way, _parties.ReadWay),
            Of(Kinds.Step, new StepReader(desk).Read),
            Of(Kinds.Cost, _papers.ReadCost),
            Of(Kinds.Hazard, new HazardReader(desk).Read),
            Of(Kinds.Consent, _papers.ReadConsent),
            Of(Kinds.Clock, _papers.ReadClock),
            Of(Kinds.Source, WordReader.ReadSource),
            Of(Kinds.Term, _words.ReadTerm),
            Tables(),
            [.. files.Where(f => f.IsIn("pages")).Select(_words.ReadTemplate)],
            [.. files.Where(f => f.IsIn("letters")).Select(_words.ReadTemplate)],
            Labels(files, desk),
            new(files.Where(f => f.IsIn("look")).ToFrozenDictionary(f => f.Name["look/".Length..], WordReader.ReadLook, StringComparer.Ordinal)))
        {
            Meetings = Of(Kinds.Meeting, new MeetingReader(desk).Read),
            Disclosures = Of(Kinds.Disclosure, new DisclosureReader(desk).Read),
            Language = desk.Entries(File(Layout.LanguageFile), "a language", _words.ReadLanguage).FirstOrDefault(BookLanguage.Original),
        };
    }

    /// <summary>The fixed phrases of some files, by id.</summary>
    public static FrozenDictionary<string, Label> Labels(ImmutableArray<ContentFile> files, Desk desk) =>
        desk.Entries(files.FirstOrDefault(f => Layout.KindOf(f.Name) == Kinds.Label), $"a {Kinds.Label}", WordReader.ReadLabel).DistinctBy(l => l.Id).ToFrozenDictionary(l => l.Id, StringComparer.Ordinal);

    private (GuidanceHead Head, ImmutableArray<Nation> Nations) Head() =>
        desk.Entries(File(Layout.Head), "the guidance", _words.ReadHead) is [var head, ..]
            ? head
            : (new(LocalText.Empty, default, default, []), []);

    private IEnumerable<Question> Questions(string section) =>
        desk.Entries(File($"questions/{section}.yaml"), "a question", new QuestionReader(section, desk).Read);

    private Tables Tables() => new(
        Of(Kinds.Price, new PriceReader(desk).Read),
        Of(Kinds.Vat, _tables.ReadVat),
        Of(Kinds.Index, _tables.ReadIndex),
        Of(Kinds.Region, _tables.ReadRegions),
        Of(Kinds.Holidays, _tables.ReadHolidays),
        [.. files.Where(f => f.IsIn("tables") && Layout.KindOf(f.Name) == f.Stem).SelectMany(Rows)]);

    private IEnumerable<TableRow> Rows(ContentFile file) =>
        file.Root is null ? [] : Values.ListOf((node, _) => _tables.ReadRow(file.Stem, node))(file.Root, desk.Faults);

    private ImmutableArray<T> Of<T>(string kind, Func<Fields, T> read) =>
        desk.Entries(files.FirstOrDefault(f => Layout.KindOf(f.Name) == kind), $"a {kind}", read);

    private ContentFile? File(string name) => files.FirstOrDefault(f => f.Name == name);
}
