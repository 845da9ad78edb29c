namespace GuideBuilder.Reading;

/// <summary>Reads costs, consents and clocks.</summary>
internal sealed class PaperRuleReader(Desk desk)
{
    private static readonly Read<ConsentKind> ReadKind = Values.OneOf(
        ("permission", ConsentKind.Permission),
        ("notification", ConsentKind.Notification),
        ("certificate", ConsentKind.Certificate),
        ("legal-duty", ConsentKind.LegalDuty));

    private static readonly Read<SumFor> ReadFor = Values.OneOf(
        ("failure", SumFor.Failure),
        ("lateness", SumFor.Lateness),
        ("each-day-late", SumFor.EachDayLate));

    /// <summary>The cost in an entry.</summary>
    public Cost ReadCost(Fields fields) => new(
        desk.Head(fields, Kinds.Cost, ConditionScope.Rules),
        desk.NeedReference(fields, "invoiced-by", Kinds.Party),
        desk.NeedReference(fields, "price", Kinds.Price),
        fields.Find<string?>("quantity", desk.QuantityName, null),
        desk.FindReference(fields, "due", Kinds.Step),
        fields.FindText("about"))
    {
        PaidAheadOf = desk.FindReference(fields, "paid-ahead-of", Kinds.Meeting),
        NilWhileOpen = fields.Find("nil-while-open", Values.YesNo, false),
    };

    /// <summary>The consent in an entry.</summary>
    public Consent ReadConsent(Fields fields) => new(
        desk.Head(fields, Kinds.Consent, ConditionScope.Rules),
        fields.Need("kind", ReadKind, ConsentKind.Permission),
        fields.FindText("who-gives"),
        fields.FindText("when-needed"),
        fields.FindText("about"),
        desk.FindReference(fields, "gates", Kinds.Step));

    /// <summary>The clock in an entry.</summary>
    public Clock ReadClock(Fields fields)
    {
        var head = desk.Head(fields, Kinds.Clock, ConditionScope.Rules);
        var (starts, step) = fields.Need("starts", (node, _) => desk.One(node, "a start", Happening), (LogKind.Noted, null));
        var ends = fields.Find<(LogKind Event, string? Step)?>("ends", (node, _) => desk.One(node, "an end", Happening), null);
        return new(
            head,
            desk.NeedReference(fields, "party", Kinds.Party),
            starts,
            step,
            fields.Need("limit", Values.Whole(0, 10_000), 0),
            fields.Need("of", StepReader.ReadCount, DayCount.WorkingDays),
            fields.FindText("owes"),
            fields.FindText("what-to-write"))
        {
            EndsAt = ends?.Event,
            EndsAtStep = ends?.Step,
            Sum = fields.Find<ClockSum?>("sum", (node, _) => desk.One(node, "a sum", Sum), null),
            Letter = desk.FindReference(fields, "letter", Kinds.Letter),
        };
    }

    private static ClockSum Sum(Fields fields) => new(
        fields.Need("amount", Amount, Quantity.Number(0)),
        fields.Need("for", ReadFor, SumFor.Failure),
        fields.Need("as-at", Values.Date, default));

    private static Quantity Amount(Node node, FaultList faults)
    {
        var text = Values.Single(node, faults) ?? "";
        return QuantityText.Read(text, Unit.Of(text.StartsWith('€') ? "€" : "£"), node.Place, faults)?.Quantity ?? Quantity.Number(0);
    }

    private (LogKind Event, string? Step) Happening(Fields fields) => (
        fields.Need("event", Values.OneOf(LogWords.Happenings), LogKind.Noted),
        desk.FindReference(fields, "step", Kinds.Step));
}
