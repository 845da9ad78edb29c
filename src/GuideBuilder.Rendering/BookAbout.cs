namespace GuideBuilder.Rendering;

/// <summary>
/// What a catalogue tells of a handbook: its edition, nation, building and way (ids), for whom it is (empty in the public edition), and the marks of the cautions
/// and emergency numbers in it, by which it can be recalled when one of them has changed.
/// </summary>
public sealed record BookAbout(EditionKind Edition, string Nation, string Building, string Way, string For, ImmutableArray<KeyValuePair<string, string>> Cautions)
{
    /// <summary>The days in it; none in the public edition.</summary>
    public BookDays Days { get; init; } = BookDays.None;

    /// <summary>Tells nothing.</summary>
    public static BookAbout Nothing { get; } = new(EditionKind.Householder, "", "", "", "", []);

    /// <summary>The question that says what kind of building it is.</summary>
    internal const string BuildingQuestion = "home.kind";

    private static readonly ImmutableArray<string> Who = ["people.name", "home.address"];

    /// <summary>What a plan tells, with answers that its edition may print only.</summary>
    internal static BookAbout Of(Plan plan, Guidance guidance)
    {
        var may = Discretion.OfPage(plan, guidance, "");
        return new(
            plan.Occasion.Edition,
            plan.Nation.Id,
            Known(BuildingQuestion) is Value.Option kind ? kind.Id : "",
            plan.ChosenWay.Item.Id,
            string.Join(", ", Who.Select(Known).OfType<Value.Words>().Select(w => w.Text)),
            CautionMarks.Of(plan))
        {
            Days = plan.Occasion.Edition == EditionKind.Public ? BookDays.None : new(plan.Occasion.Today, Work(plan)?.Day, Work(plan)?.IsHeld == true, plan.Schedule.NeededBy),
        };

        static MeetingDay? Work(Plan plan) => plan.Schedule.Meetings.FirstOrDefault();
        Value? Known(string name) => plan.Answers.ByName.GetValueOrDefault(name) is { Standing: Standing.Known } given && may.Allows(given) ? given.Value : null;
    }
}

/// <summary>The days that a private list tells of a handbook: when it was bound, the first day on which crews meet in it (null where there is none), whether that day may not be fixed yet, and by when the work is needed.</summary>
public sealed record BookDays(LocalDate? Bound, LocalDate? Work, bool IsHeld, LocalDate? NeededBy)
{
    /// <summary>No days.</summary>
    public static BookDays None { get; } = new(null, null, false, null);
}
