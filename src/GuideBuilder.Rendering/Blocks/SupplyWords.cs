using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What there is of electricity while a crew works: three words, because a dark house can be live.</summary>
internal static class SupplyWords
{
    /// <summary>Whether something is already live in this turn of a day, though the house is without supply.</summary>
    internal static bool IsLive(Bindery bindery, IReadOnlyList<MeetingTurn> turns, int index) =>
        turns[index].SupplyOff && turns.Take(index + 1).Any(t => PutsSupplyOn(bindery, t.Step));

    /// <summary>The word for a turn of a day.</summary>
    internal static string Of(Bindery bindery, IReadOnlyList<MeetingTurn> turns, int index) =>
        bindery.Say(!turns[index].SupplyOff ? "supply-on" : IsLive(bindery, turns, index) ? "supply-live" : "supply-off");

    /// <summary>The word for a step: that of its turn, where it has one.</summary>
    internal static string Of(Bindery bindery, Step step)
    {
        var turns = bindery.Plan.Schedule.Meetings.Select(m => m.Turns).FirstOrDefault(t => t.Any(s => s.Step == step.Id), []);
        return turns.IsEmpty ? bindery.Say(step.PutsSupplyOn ? "supply-live" : "supply-off") : Of(bindery, turns, turns.ToList().FindIndex(t => t.Step == step.Id));
    }

    private static bool PutsSupplyOn(Bindery bindery, string step) => bindery.Items.Step(step)?.Step.Item.PutsSupplyOn == true;
}
