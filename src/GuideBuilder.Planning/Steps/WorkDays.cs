using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Steps;

/// <summary>Steps whose days follow from hours of work.</summary>
internal static class WorkDays
{
    /// <summary>The step with the days, and a duty with the hours, that those facts give; as it is stated where they give none.</summary>
    public static Step In(Step step, Facts facts) =>
        step.Work is { } work && Hours([.. work.Names.Select(name => Derivation.FindIn(facts, name).Value)]) is { } hours
            ? step with { Takes = Days(step, hours), Hours = step.IsDuty ? hours : step.Hours }
            : step;

    /// <summary>The least, likely and most hours among those values; null where one is missing or they are out of order.</summary>
    public static ThreePoint? Hours(ReadOnlySpan<Value?> values) =>
        values is [Value.Amount low, Value.Amount likely, Value.Amount high] ? ThreePoint.Of(InHours(low), InHours(likely), InHours(high)) : null;

    /// <summary>The whole working days that so many hours fill.</summary>
    public static Model.Duration Days(Step step, ThreePoint hours) =>
        step.Takes with { Amount = hours.Map(h => decimal.Ceiling(h / step.Work!.ADay)), Unit = DayCount.WorkingDays };

    /// <summary>Why its hours are still open, a reason for each of its amounts that is not known yet.</summary>
    public static IEnumerable<Because> Reasons(Step step, Ways.WayCase way) =>
        (step.Work?.Names ?? []).Select(name => Costs.Quantities.Reason(step.Head, name, way)).OfType<Because>();

    private static decimal InHours(Value.Amount amount) => amount.Quantity.In(Unit.Of("hours")).Amount;
}
