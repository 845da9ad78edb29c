namespace GuideBuilder.Reading;

/// <summary>Reads the section <c>handbook</c>.</summary>
internal sealed class HandbookReader(string fileName, ImmutableArray<string> languages, FaultList faults)
{
    private const int Format = 1;
    private const int ShortestId = 3;
    private const int LongestId = 40;

    /// <summary>The editions by the words of an answers file.</summary>
    public static (string Word, EditionKind Means)[] Editions { get; } =
    [
        ("householder", EditionKind.Householder),
        ("neighbour", EditionKind.Neighbour),
        ("public", EditionKind.Public),
        ("customer", EditionKind.Customer),
    ];

    private static readonly Read<EditionKind> ReadEdition = Values.OneOf(Editions);

    /// <summary>What stands in for a section with faults.</summary>
    public static HandbookSettings StandIn { get; } = new(Format, "", EditionKind.Householder, null, null);

    /// <summary>The settings in the section.</summary>
    public HandbookSettings Read(Node node)
    {
        var fields = new Fields(node, "section `handbook`", faults);
        var edition = fields.Find("edition", ReadEdition, fields.Has("imprint") ? EditionKind.Customer : EditionKind.Householder);
        var settings = new HandbookSettings(
            fields.Need("format", ReadFormat, Format),
            Id(fields, edition),
            edition,
            fields.FindLine("filled-in-by"),
            fields.Node("imprint") is { } imprint ? new Sourced<string>(Values.Line(imprint, faults), imprint.Place) : null)
        {
            HasOwnId = fields.Has("id"),
            PublicId = fields.Node("public-id") is { } id ? Checked(id) : null,
            Language = fields.Node("language") is { } language ? new Sourced<string>(Language(language), language.Place) : null,
        };
        fields.Close();
        return settings;
    }

    private string Language(Node node)
    {
        var tag = Values.Line(node, faults);
        if (!languages.Contains(tag))
        {
            faults.Add(ReadingFaults.NoSuchLanguage(node.Place, tag, languages));
        }

        return tag;
    }

    private static int ReadFormat(Node node, FaultList faults)
    {
        var before = faults.Count;
        var number = Values.Number(node, faults);
        if (number != Format && faults.Count == before)
        {
            faults.Add(ReadingFaults.UnknownFormat(node.Place, Format));
        }

        return Format;
    }

    private string Id(Fields fields, EditionKind edition)
    {
        if (fields.Node("id") is { } node)
        {
            return Checked(node) ?? "";
        }

        if (edition == EditionKind.Public && !fields.Has("public-id"))
        {
            faults.Add(ReadingFaults.PublicNeedsId(fields.Place));
        }

        var id = IdOf(fileName);
        if (!IsHandbookId(id) && edition != EditionKind.Public)
        {
            faults.Add(ReadingFaults.FileNameMakesNoId(fields.Place));
        }

        return id;
    }

    private string? Checked(Node node)
    {
        var given = Values.Single(node, faults);
        if (given is not null && !IsHandbookId(given))
        {
            faults.Add(ReadingFaults.NotAHandbookId(node.Place, given, Ids.From(given, LongestId)));
        }

        return given;
    }

    /// <summary>The id that a file's name makes.</summary>
    public static string IdOf(string fileName)
    {
        var dot = fileName.LastIndexOf('.');
        return Ids.From(dot > 0 ? fileName[..dot] : fileName, LongestId);
    }

    private static bool IsHandbookId(string id) => Ids.IsId(id) && id.Length is >= ShortestId and <= LongestId;
}
