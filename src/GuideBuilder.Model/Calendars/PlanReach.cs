namespace GuideBuilder.Model;

/// <summary>How far from its own day a plan can look, and the answers by which it is led there.</summary>
public static class PlanReach
{
    /// <summary>How many years a plan reaches to either side of its first day.</summary>
    public const int Years = 3;

    /// <summary>The questions (section.id) whose days bind the plan.</summary>
    public static ImmutableArray<string> Binding { get; } = [NeededBy, RoomNeededBy, StartFrom];

    /// <summary>By which day the household needs it.</summary>
    public const string NeededBy = "dates.needed-by";

    /// <summary>By which day the builder needs the room.</summary>
    public const string RoomNeededBy = "works.room-needed-by";

    /// <summary>On which day the other works start.</summary>
    public const string WorksStart = "works.starts";

    /// <summary>Before which day nothing starts.</summary>
    public const string StartFrom = "dates.start-from";

    /// <summary>The days that a plan of that day can reach, ends included.</summary>
    public static DateInterval Of(LocalDate day) => new(day.PlusYears(-Years), day.PlusYears(Years));
}
