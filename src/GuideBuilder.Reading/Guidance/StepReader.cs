namespace GuideBuilder.Reading;

/// <summary>Reads one step.</summary>
internal sealed class StepReader(Desk desk)
{
    private const int MostDays = 3650;
    private const int MostHours = 24;
    // Outside a meeting hours are work spread over the days that the step takes.
    private const int MostWork = 400;

    private static readonly (string Word, DayCount Means)[] DayWords = [("working days", DayCount.WorkingDays), ("calendar days", DayCount.CalendarDays)];
    private static readonly Read<DayCount> ReadDays = Values.OneOf(DayWords);

    /// <summary>Reads in what a duration is counted.</summary>
    public static Read<DayCount> ReadCount { get; } = Values.OneOf([.. DayWords, ("hours", DayCount.Hours)]);

    private FaultList Faults => desk.Faults;

    /// <summary>The step in an entry.</summary>
    public Step Read(Fields fields)
    {
        var head = desk.Head(fields, Kinds.Step, ConditionScope.Rules);
        var meeting = fields.Find<string?>("meeting", Values.Id, null);
        return new(
            head,
            desk.NeedReference(fields, "party", Kinds.Party),
            Takes(fields, head.Basis),
            desk.List(fields.Node("after"), "a link", Link),
            desk.List(fields.Node("no-later-than"), "a latest link", Latest),
            meeting,
            Order(fields, meeting),
            Hours(fields, meeting),
            fields.Find("supply-off", Values.YesNo, false),
            fields.FindText("about"),
            fields.FindText("how-to"),
            fields.FindText("done-when"),
            fields.FindText("if-it-goes-wrong"),
            fields.FindText("who-instead"),
            desk.References(fields, "pays", Kinds.Cost),
            desk.References(fields, "watch-for", Kinds.Hazard),
            desk.References(fields, "needs", Kinds.Step, Kinds.Consent, Kinds.Made),
            fields.Find("makes", Values.ListOf<string>(Values.Id), []),
            desk.FindReference(fields, "letter", Kinds.Letter))
        {
            OnDaysOf = desk.References(fields, "on-days-of", Kinds.Party),
            DoneWith = desk.References(fields, "done-with", Kinds.Step),
            ApartAfter = desk.References(fields, "apart-after", Kinds.Step),
            InsteadPays = desk.References(fields, "instead-pays", Kinds.Cost),
            PutsSupplyOn = fields.Find("puts-supply-on", Values.YesNo, false),
            EachTime = fields.Find("each-time", Values.YesNo, false),
            FreesPlace = fields.Find("frees-place", Values.YesNo, false),
            LoggedAs = fields.Find<LoggedAs?>("logged-as", (node, _) => desk.One(node, "a happening", Logged), null),
            MayHappen = desk.List(fields.Node("may-happen"), "a chance event", f => Event(f, head.Basis)),
            Work = fields.Find<HandWork?>("work", (node, _) => desk.One(node, "hours of work", Work), null),
            Again = fields.Find<Model.Duration?>("again", (node, _) => desk.One(node, "a duration", f => OneDuration(f, head.Basis)), null),
        };
    }

    private HandWork Work(Fields fields) => new(
        fields.Need("low", desk.QuantityName, ""),
        fields.Need("likely", desk.QuantityName, ""),
        fields.Need("high", desk.QuantityName, ""),
        fields.Need("a-day", Values.Whole(1, MostHours), 1));

    private LoggedAs Logged(Fields fields) =>
        new(fields.Need("event", Values.OneOf(LogWords.Happenings), LogKind.Noted), desk.NeedReference(fields, "with", Kinds.Party));

    private ChanceEvent Event(Fields fields, Basis ofStep)
    {
        var basis = desk.Basis(fields, required: false);
        return new(
            fields.Need("id", Values.Id, ""),
            fields.NeedText("title"),
            desk.Condition(fields, "applies-if", ConditionScope.Rules),
            fields.Need("chance", Chance, 0m),
            fields.Find<Model.Duration?>("takes-more", (node, _) => desk.One(node, "a duration", f => OneDuration(f, basis)), null),
            desk.References(fields, "costs", Kinds.Cost),
            fields.NeedText("because"),
            basis.Sources.IsEmpty ? ofStep : basis,
            fields.Place);
    }

    private static decimal Chance(Node node, FaultList faults)
    {
        var share = Desk.AmountIn(Unit.Of("%"))(node, faults) / 100;
        if (share is < 0 or > 1)
        {
            faults.Add(ReadingFaults.OutOfRange(node.Place, Invariant($"{share:0.###}"), Quantity.Of(0, "%"), Quantity.Of(100, "%")));
        }

        return share;
    }

    private static int Order(Fields fields, string? meeting) =>
        meeting is null ? 0 : fields.Need("order", Values.Whole(1, 99), 1);

    private ThreePoint? Hours(Fields fields, string? meeting)
    {
        ThreePoint? Read(Node node, FaultList faults) => desk.One(node, "hours", f => desk.ThreePoint(f, Within(meeting is null ? MostWork : MostHours)));
        return meeting is null ? fields.Find<ThreePoint?>("hours", Read, null) : fields.Need<ThreePoint?>("hours", Read, null);
    }

    private Model.Duration Takes(Fields fields, Basis basis) =>
        fields.Need("takes", (node, _) => desk.One(node, "a duration", f => OneDuration(f, basis)), new Model.Duration(ThreePoint.Zero, DayCount.WorkingDays, basis));

    /// <summary>Low, likely and high, and in what they are counted.</summary>
    public Model.Duration OneDuration(Fields fields, Basis basis)
    {
        var unit = fields.Need("unit", ReadCount, DayCount.WorkingDays);
        var read = unit == DayCount.Hours ? Within(MostDays) : (node, faults) => Values.Whole(0, MostDays)(node, faults);
        return new(desk.ThreePoint(fields, read), unit, basis);
    }

    private static Read<decimal> Within(int most) => (node, faults) =>
    {
        var number = Values.Number(node, faults);
        if (number < 0 || number > most)
        {
            faults.Add(ReadingFaults.OutOfRange(node.Place, Invariant($"{number}"), Quantity.Number(0), Quantity.Number(most)));
        }

        return number;
    };

    private Link Link(Fields fields)
    {
        var step = desk.NeedReference(fields, "step", Kinds.Step);
        var kind = fields.Find("kind", Values.OneOf(("finish-to-start", LinkKind.FinishToStart), ("start-to-start", LinkKind.StartToStart)), LinkKind.FinishToStart);
        var lag = fields.Find("lag", Values.Whole(0, MostDays), 0);
        var of = lag == 0 ? fields.Find("of", ReadDays, DayCount.CalendarDays) : fields.Need("of", ReadDays, DayCount.CalendarDays);
        return new(step, kind, lag, of, Whose(fields, of), fields.Find("same-day", Values.YesNo, false), fields.Place)
        {
            Or = Or(fields),
            If = desk.Condition(fields, "if", ConditionScope.Rules),
            NotOnceBegun = fields.Find("not-once-begun", Values.YesNo, false),
        };
    }

    private LatestLink Latest(Fields fields)
    {
        var step = desk.NeedReference(fields, "step", Kinds.Step);
        var before = fields.Need("before", Values.Whole(0, MostDays), 0);
        var of = fields.Need("of", ReadDays, DayCount.CalendarDays);
        return new(step, before, of, Whose(fields, of), fields.Place) { Or = Or(fields), WherePossible = fields.Find("where-possible", Values.YesNo, false) };
    }

    private string? Or(Fields fields) => desk.FindReference(fields, "or", Kinds.Question);

    // Working days are somebody's; calendar days are everybody's, so that naming a party would say nothing.
    private string? Whose(Fields fields, DayCount of)
    {
        if (of == DayCount.WorkingDays)
        {
            return desk.NeedReference(fields, "whose", Kinds.Party);
        }

        if (fields.Node("whose") is { } node)
        {
            Faults.Add(ReadingFaults.NobodysDays(node.Place));
        }

        return null;
    }
}
