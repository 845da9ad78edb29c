namespace GuideBuilder.Reading;

/// <summary>Reads the entries of <c>papers</c> and <c>log</c>; sums are in the currency of the nation, where it is known.</summary>
internal sealed class HistoryReader(Guidance guidance, Unit? currency, DayReach reach, FaultList faults)
{
    /// <summary>The paper in an entry.</summary>
    public Paper ReadPaper(Node node)
    {
        var fields = new Fields(node, "a paper", faults);
        var dated = fields.FindDate("dated");
        var paper = new Paper(
            fields.Need("kind", Values.OneOf(LogWords.Papers), PaperKind.Letter),
            Reference(fields, "from", "party", guidance.Parties),
            dated,
            NotBefore(dated, fields, "valid-until"),
            Sum(fields),
            Costs(fields, "covers"),
            Costs(fields, "leaves-out"),
            fields.FindLine("reference"),
            fields.Place)
        {
            Goods = Goods(fields),
        };
        fields.Close();
        return paper;
    }

    // Before VAT, as the rule on goods asks; a sum that says it has VAT in it is none.
    private Quantity? Goods(Fields fields)
    {
        var goods = Sum(fields, "goods");
        if (goods is { Vat: VatBasis.Including, Quantity.Unit: var unit })
        {
            faults.Add(ReadingFaults.NotABareSum(fields.Node("goods")!.Place, unit.Symbol));
        }

        return goods?.Quantity;
    }

    /// <summary>The happening in an entry.</summary>
    public LogEvent ReadEvent(Node node)
    {
        var fields = new Fields(node, "a log entry", faults);
        var on = Happened(fields);
        var what = fields.Need("what", Values.OneOf(LogWords.Happenings), LogKind.Noted);
        var happened = new LogEvent(
            on,
            what,
            Reference(fields, "step", "step", guidance.Steps),
            Reference(fields, "party", "party", guidance.Parties),
            what == LogKind.DateGiven ? Ahead(on, fields, "date") : fields.FindDate("date"),
            Sum(fields),
            Ahead(on, fields, "valid-until"),
            fields.FindLine("reference"),
            fields.Node("note") is { } note ? Values.Words(note, faults) : null,
            fields.Place)
        {
            AfterFive = fields.Find("after-five", Values.YesNo, false),
        };
        CheckParts(happened, fields);
        fields.Close();
        return happened;
    }

    private void CheckParts(LogEvent happened, Fields fields)
    {
        string[] needed = happened.What switch
        {
            LogKind.DateGiven => ["step", "date"],
            LogKind.Missed or LogKind.Done => ["step"],
            LogKind.Quoted or LogKind.Accepted or LogKind.Refused => happened.Step is null ? ["party"] : [],
            LogKind.Paid => ["amount"],
            _ => [],
        };
        foreach (var key in needed.Where(k => !fields.Has(k)))
        {
            faults.Add(ReadingFaults.LogEntryNeeds(fields.Place, LogWords.Of(happened.What), key));
        }

        if (happened.What != LogKind.DateGiven && fields.Node("date") is { } date)
        {
            faults.Add(ReadingFaults.DateOnlyWhenGiven(date.Place));
        }
    }

    private LocalDate Happened(Fields fields)
    {
        var before = faults.Count;
        var on = fields.Need("on", Values.Date, default);
        if (faults.Count == before && fields.Node("on") is { } node)
        {
            reach.CheckPast(on, node.Place);
        }

        return on;
    }

    private LocalDate? Ahead(LocalDate on, Fields fields, string key)
    {
        var before = faults.Count;
        var day = NotBefore(on, fields, key);
        if (day is { } ahead && faults.Count == before)
        {
            reach.Check(ahead, fields.Node(key)!.Place);
        }

        return day;
    }

    private LocalDate? NotBefore(LocalDate? first, Fields fields, string key)
    {
        var before = faults.Count;
        var day = fields.FindDate(key);
        if (day < first && faults.Count == before)
        {
            faults.Add(ReadingFaults.DayBeforeItsEntry(fields.Node(key)!.Place, key, first!.Value));
        }

        return day;
    }

    private Value.Amount? Sum(Fields fields, string key = "amount")
    {
        if (fields.Node(key) is not { } node || Values.Single(node, faults) is not { } text)
        {
            return null;
        }

        return QuantityText.Read(text, currency ?? Unit.Of(text.TrimStart().StartsWith('€') ? "€" : "£"), node.Place, faults);
    }

    private ImmutableArray<Sourced<string>> Costs(Fields fields, string key) => fields.Find(
        key,
        Values.ListOf((node, _) => new Sourced<string>(Checked(node, "cost", guidance.Costs), node.Place)),
        []);

    private string? Reference(Fields fields, string key, string kind, IEnumerable<Rule> rules) =>
        fields.Find<string?>(key, (node, _) => Checked(node, kind, rules), null);

    private string Checked(Node node, string kind, IEnumerable<Rule> rules)
    {
        var id = Values.Single(node, faults);
        if (id is not null && rules.All(r => r.Id != id))
        {
            faults.Add(ReadingFaults.UnknownReference(node.Place, id, kind, rules.Select(r => r.Id)));
        }

        return id ?? "";
    }
}
