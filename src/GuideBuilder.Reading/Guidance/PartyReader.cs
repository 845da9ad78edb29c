namespace GuideBuilder.Reading;

/// <summary>Reads parties and ways.</summary>
internal sealed class PartyReader(Desk desk)
{
    private static readonly ImmutableArray<IsoDayOfWeek> MondayToFriday =
        [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday];

    private static readonly Read<ImmutableArray<IsoDayOfWeek>> ReadDays = Values.ListOf(Values.OneOf(
        ("monday", IsoDayOfWeek.Monday),
        ("tuesday", IsoDayOfWeek.Tuesday),
        ("wednesday", IsoDayOfWeek.Wednesday),
        ("thursday", IsoDayOfWeek.Thursday),
        ("friday", IsoDayOfWeek.Friday),
        ("saturday", IsoDayOfWeek.Saturday),
        ("sunday", IsoDayOfWeek.Sunday)));

    /// <summary>The party in an entry.</summary>
    public Party Read(Fields fields) => new(
        desk.Head(fields, Kinds.Party, ConditionScope.Rules),
        fields.FindText("owns"),
        fields.FindText("does"),
        fields.FindText("will-not-do"),
        fields.FindText("charges"),
        fields.FindText("how-to-reach"),
        fields.FindText("have-ready"),
        Days(fields),
        fields.Find("keeps-holidays", Values.YesNo, true))
    {
        IsForHire = fields.Find("for-hire", Values.YesNo, false),
        IfYouStop = fields.FindText("if-you-stop"),
    };

    /// <summary>The way in an entry.</summary>
    public Way ReadWay(Fields fields) => new(
        desk.Head(fields, Kinds.Way, ConditionScope.Ways),
        fields.FindText("about"),
        fields.FindText("trades"),
        fields.FindText("when-ruled-out"))
    {
        MeetsWishIf = desk.Condition(fields, "meets-wish-if", ConditionScope.Ways),
    };

    private ImmutableArray<IsoDayOfWeek> Days(Fields fields)
    {
        var days = fields.Find("works", ReadDays, MondayToFriday);
        if (days.IsEmpty)
        {
            desk.Faults.Add(ReadingFaults.EmptyValue(fields.Node("works")!.Place));
        }

        return days;
    }
}
