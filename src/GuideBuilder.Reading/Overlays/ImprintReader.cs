namespace GuideBuilder.Reading;

/// <summary>Lays an imprint over the guidance: whose name stands on the handbook, and the prices and durations of that firm's own lines. It has no key that could take anything away.</summary>
public static class ImprintReader
{
    private const int LongestHold = 366;

    /// <summary>The logo that an imprint names, beside which file it is looked for; null when it names none. Faults are left to the reading itself.</summary>
    public static string? LogoOf(SourceText imprint) =>
        YamlText.Read(imprint, Budget.Answers, new FaultList()) is Mapping root && root["logo"] is Scalar { IsEmpty: false } logo ? logo.Text : null;

    /// <summary>The guidance with the imprint over it, or everything that is wrong with the imprint. The logo is the file that it names, if it could be loaded.</summary>
    public static Staged<Guidance> Over(Guidance guidance, SourceText file, SourceText? logo)
    {
        var faults = new FaultList();
        var root = YamlText.Read(file, Budget.Answers, faults);
        if (root is null)
        {
            return Staged<Guidance>.From(null, faults.Found);
        }

        var fields = new Fields(root, "an imprint", faults);
        var imprint = Read(fields, guidance, logo, faults);
        var lines = new ImprintLines(guidance, imprint, faults);
        var laid = lines.Durations(fields.Node("durations"), lines.Prices(fields.Node("prices"), guidance with { Imprint = imprint }));
        fields.Close();
        return Staged<Guidance>.From(laid, faults.Found);
    }

    private static Imprint Read(Fields fields, Guidance guidance, SourceText? logo, FaultList faults) => new(
        fields.Need("name", Words, LocalText.Empty),
        fields.Find("address", Words, LocalText.Empty),
        fields.Find("registration", Words, LocalText.Empty),
        fields.Find("contact", Contact, new(LocalText.Empty, LocalText.Empty, LocalText.Empty)),
        fields.Need("parties", Values.ListOf<string>((node, f) => Party(node, guidance, f)), []),
        fields.Node("logo") is { } named ? LogoCheck.Read(logo, named.Place, faults) : null,
        fields.Find("colours", Colours, new(null, null)),
        fields.Find("opening", Words, LocalText.Empty),
        fields.Find("closing", Words, LocalText.Empty),
        fields.Find("terms", Words, LocalText.Empty),
        fields.Find<int?>("prices-hold-days", (node, f) => Values.Whole(1, LongestHold)(node, f), null),
        fields.Place);

    private static LocalText Words(Node node, FaultList faults)
    {
        var text = Values.Text(node, faults);
        if (text.Words.Contains("{{", StringComparison.Ordinal))
        {
            faults.Add(ReadingFaults.NoTemplateHere(node.Place));
        }

        return text;
    }

    private static ImprintContact Contact(Node node, FaultList faults)
    {
        var fields = new Fields(node, "a contact", faults);
        var contact = new ImprintContact(fields.Find("telephone", Words, LocalText.Empty), fields.Find("email", Words, LocalText.Empty), fields.Find("website", Words, LocalText.Empty));
        fields.Close();
        return contact;
    }

    private static ImprintColours Colours(Node node, FaultList faults)
    {
        var fields = new Fields(node, "colours", faults);
        var colours = new ImprintColours(fields.Find("links", Colour, null), fields.Find("rules", Colour, null));
        fields.Close();
        return colours;
    }

    private static Sourced<string>? Colour(Node node, FaultList faults)
    {
        var text = Values.Line(node, faults);
        if (text is ['#', _, _, _, _, _, _] && text.Skip(1).All(char.IsAsciiHexDigit))
        {
            return new(text.ToLowerInvariant(), node.Place);
        }

        faults.Add(ReadingFaults.NotAColour(node.Place, text));
        return null;
    }

    private static string Party(Node node, Guidance guidance, FaultList faults)
    {
        var id = Values.Single(node, faults) ?? "";
        var forHire = guidance.Parties.Where(p => p.IsForHire).Select(p => p.Id).ToList();
        if (!forHire.Contains(id))
        {
            faults.Add(ReadingFaults.NotForHire(node.Place, id, forHire));
        }

        return id;
    }
}
