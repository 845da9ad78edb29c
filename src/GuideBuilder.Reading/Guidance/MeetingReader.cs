namespace GuideBuilder.Reading;

/// <summary>Reads one meeting.</summary>
internal sealed class MeetingReader(Desk desk)
{
    private const int MostDays = 100;

    /// <summary>The meeting in an entry.</summary>
    public Meeting Read(Fields fields) => new(
        fields.Need("id", Values.Id, ""),
        fields.NeedText("title"),
        fields.Find<MeetingHold?>("hold", (node, _) => desk.One(node, "a hold", Hold), null),
        desk.List(fields.Node("crews"), "a crew", Crew),
        desk.List(fields.Node("mishaps"), "a mishap", Mishap),
        desk.Basis(fields, required: true),
        fields.Place);

    private MeetingHold Hold(Fields fields) => new(
        desk.Condition(fields, "if", ConditionScope.Rules),
        desk.References(fields, "done", Kinds.Step),
        desk.References(fields, "answered", Kinds.Question));

    private Crew Crew(Fields fields) => new(
        desk.NeedReference(fields, "party", Kinds.Party),
        fields.Need("free-until", Values.Whole(0, MostDays), 0),
        desk.FindReference(fields, "or", Kinds.Question),
        desk.References(fields, "costs", Kinds.Cost));

    private Mishap Mishap(Fields fields) => new(
        fields.Need("id", Values.Id, ""),
        fields.NeedText("title"),
        desk.References(fields, "turns", Kinds.Step),
        fields.NeedText("what-to-do"),
        fields.NeedText("who-pays"));
}
