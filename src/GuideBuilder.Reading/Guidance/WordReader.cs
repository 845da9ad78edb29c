namespace GuideBuilder.Reading;

/// <summary>Reads what is words rather than rules: the head, sources, the glossary, labels, pages, letters and the look.</summary>
internal sealed class WordReader(Desk desk)
{
    /// <summary>The languages of books: that of the guidance first, then those of content/words.</summary>
    public static Read<ImmutableArray<string>> Languages { get; } = (node, faults) =>
    {
        var languages = Values.ListOf<string>(Language)(node, faults);
        if (languages is not [LocalText.Original, ..])
        {
            faults.Add(ReadingFaults.OriginalFirst(node.Place));
        }

        return languages;
    };

    /// <summary>What the guidance says of itself, and its nations.</summary>
    public (GuidanceHead Head, ImmutableArray<Nation> Nations) ReadHead(Fields fields)
    {
        var id = fields.Need("id", Values.Id, "guidance");
        if (id != "guidance")
        {
            desk.Faults.Add(ReadingFaults.NotOneOf(fields.Node("id")!.Place, id, ["guidance"]));
        }

        var head = new GuidanceHead(
            fields.NeedText("title"),
            fields.Need("edition-date", Values.Date, default),
            fields.Has("review-by") ? desk.ReviewBy(fields) ?? default : fields.Need("review-by", Values.Date, default),
            fields.Need("languages", Languages, [LocalText.Original]));
        return (head, desk.List(fields.Need<Node?>("nations", (node, _) => node, null), "a nation", Nation));
    }

    /// <summary>The source in an entry.</summary>
    public static Source ReadSource(Fields fields) => new(
        fields.Need("id", Values.Id, ""),
        fields.NeedText("title"),
        fields.Need("publisher", Values.Line, ""),
        fields.FindLine("edition") ?? "",
        fields.FindLine("year") ?? "",
        fields.FindLine("section") ?? "",
        fields.Find("address", Address, ""),
        fields.Need("mark", Values.OneOf(("read", Mark.Read), ("memory", Mark.Memory), ("judged", Mark.Judged)), Mark.Memory),
        fields.FindDate("checked"),
        fields.Place);

    /// <summary>The term in an entry.</summary>
    public Term ReadTerm(Fields fields) => new(
        fields.Need("id", Values.Id, ""),
        fields.NeedText("term"),
        fields.Find("also", Values.ListOf(Values.Text), []),
        fields.NeedText("meaning"),
        desk.References(fields, "source", Kinds.Source),
        fields.Place);

    /// <summary>The label in an entry; the form for other numbers is that for one unless it is given.</summary>
    public static Label ReadLabel(Fields fields)
    {
        var one = fields.NeedText("one");
        return new(fields.Need("id", Values.Id, ""), one, fields.Find("other", Values.Text, one));
    }

    /// <summary>A page or letter: its first line is its title.</summary>
    public Template ReadTemplate(ContentFile file)
    {
        var text = file.Text ?? "";
        if (file.Text is not null && !(text.StartsWith("# ", StringComparison.Ordinal) && text.Split('\n')[0].Trim().Length > 2))
        {
            desk.Faults.Add(ReadingFaults.NoTitle(file.Start));
        }

        return new(file.Stem, new(text, file.Language, file.Start)) { OwnTitle = file.OwnTitle };
    }

    /// <summary>A file of the look, as it is.</summary>
    public static LocalText ReadLook(ContentFile file) => new(file.Text ?? "", LocalText.Original, file.Start);

    /// <summary>What a translation says of itself: its language, that language's own name, and who has read it.</summary>
    public BookLanguage ReadLanguage(Fields fields) => new(
        fields.Need("id", Language, LocalText.Original),
        fields.NeedText("title"),
        fields.Need("reviewed-by", new ReviewReader(desk).Read, null));

    private static string Language(Node node, FaultList faults)
    {
        var tag = Values.Single(node, faults) ?? "";
        if (tag.Length > 0 && !(tag is [>= 'a' and <= 'z', >= 'a' and <= 'z', ..] && tag.All(c => c is '-' || char.IsAsciiLetterOrDigit(c))))
        {
            faults.Add(ReadingFaults.NotALanguage(node.Place, tag));
        }

        return tag;
    }

    private Nation Nation(Fields fields) => new(
        fields.Need("id", Values.Id, ""),
        fields.NeedText("title"),
        desk.NeedReference(fields, "holidays", Kinds.Holidays),
        fields.Need("currency", Values.OneOf(("£", Unit.Of("£")), ("€", Unit.Of("€"))), Unit.Of("£")),
        fields.Place)
    {
        Bodies = fields.Find("bodies", (node, _) => desk.One(node, "bodies", f => Bodies(node, f)), FrozenDictionary<string, LocalText>.Empty),
        Numbers = desk.List(fields.Node("numbers"), "a number to ring", f => new EmergencyNumber(f.Need("number", Values.Line, ""), desk.NeedReference(f, "source", Kinds.Source), f.Place)),
    };

    private static FrozenDictionary<string, LocalText> Bodies(Node node, Fields fields) =>
        node is not Mapping mapping
            ? FrozenDictionary<string, LocalText>.Empty
            : mapping.Entries.Where(e => Ids.IsId(e.Key.Text)).ToFrozenDictionary(e => e.Key.Text, e => fields.NeedText(e.Key.Text), StringComparer.Ordinal);

    private static string Address(Node node, FaultList faults)
    {
        var address = Values.Line(node, faults);
        if (!address.StartsWith("https://", StringComparison.Ordinal) && !address.StartsWith("http://", StringComparison.Ordinal))
        {
            faults.Add(ReadingFaults.NotAnAddress(node.Place, address));
        }

        return address;
    }
}
