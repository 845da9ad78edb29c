namespace GuideBuilder.Reading;

/// <summary>Reads one hazard.</summary>
internal sealed class HazardReader(Desk desk)
{
    private const int Gravest = 5;

    private static readonly Read<SignalWord> ReadWord = Values.OneOf(
        ("danger", SignalWord.Danger), ("warning", SignalWord.Warning), ("caution", SignalWord.Caution), ("notice", SignalWord.Notice));

    private static readonly Read<ControlLevel> ReadLevel = Values.OneOf(
        ("eliminate", ControlLevel.Eliminate),
        ("substitute", ControlLevel.Substitute),
        ("engineer", ControlLevel.Engineer),
        ("administrative", ControlLevel.Administrative),
        ("protective-equipment", ControlLevel.ProtectiveEquipment));

    /// <summary>The hazard in an entry.</summary>
    public Hazard Read(Fields fields)
    {
        var head = desk.Head(fields, Kinds.Hazard, ConditionScope.Hazards);
        var before = Score(fields, "before");
        var after = Score(fields, "after");
        if (after.Score > before.Score)
        {
            desk.Faults.Add(ReadingFaults.WorseAfterControls(fields.Place));
        }

        var grave = before.Severity == Gravest;
        var stops = fields.Find("stop-sign", Values.YesNo, false);
        return new(
            head,
            fields.Need("signal-word", ReadWord, SignalWord.Danger),
            fields.NeedText("cause"),
            fields.NeedText("harm"),
            fields.FindText("people"),
            fields.FindText("when"),
            desk.List(fields.Need<Node?>("controls", (node, _) => node, null), "a control", Control),
            grave ? fields.NeedText("stop-when") : fields.FindText("stop-when"),
            before,
            after,
            stops,
            grave ? fields.Need("reviewed-by", new ReviewReader(desk).Read, null) : fields.Find("reviewed-by", new ReviewReader(desk).Read, null))
        {
            Until = stops ? desk.NeedReference(fields, "until", Kinds.Step) : null,
            ComesFirst = fields.Find("comes-first", Values.YesNo, false),
        };
    }

    private HazardControl Control(Fields fields) => new(
        fields.Need("level", ReadLevel, ControlLevel.Eliminate),
        fields.NeedText("what"),
        desk.NeedReference(fields, "by", Kinds.Party));

    private RiskScore Score(Fields fields, string key) => fields.Need(key, (node, _) => desk.One(node, "a score", OneScore), new RiskScore(1, 1));

    private static RiskScore OneScore(Fields fields) => new(
        fields.Need("severity", Values.Whole(1, Gravest), 1),
        fields.Need("likelihood", Values.Whole(1, Gravest), 1));
}
