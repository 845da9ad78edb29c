using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Situations;

/// <summary>Holds a statement against the handbook of a home.</summary>
internal static class Handbooks
{
    /// <summary>What the handbook fails to say.</summary>
    public static IEnumerable<string> Missing(this Home home, Statement statement) =>
    [
        .. statement.Present.Where(i => !home.Items.IsPresent(i)).Select(i => $"{i} is not in the plan"),
        .. statement.Settled.Concat(statement.Open).Concat(statement.RuledOut).Where(i => home.Items.Find(i) is null).Select(i => $"{i} is no item"),
        .. Wrong(home, statement.Settled, ItemState.Settled),
        .. Wrong(home, statement.Open, ItemState.Open),
        .. Wrong(home, statement.RuledOut, ItemState.RuledOut),
        .. statement.InOrder.Where(i => !home.Items.IsPresent(i)).Select(i => $"{i} is not in the plan"),
        .. statement.InOrder.Zip(statement.InOrder.Skip(1)).Where(p => !Follows(p.Second, p.First, [])).Select(p => $"{p.Second} does not wait for {p.First}"),
        .. statement.On.Where(o => !home.Words(o.Page).Contains(o.Words, StringComparison.OrdinalIgnoreCase)).Select(o => $"{o.Page} does not say: {o.Words}"),
        .. statement.Nowhere.SelectMany(w => home.PagesWith(w).Select(p => $"{p} says {w}")),
    ];

    private static IEnumerable<string> Wrong(Home home, IEnumerable<string> ids, ItemState wanted) =>
        ids.Where(i => home.Items.State(i) != wanted).Select(i => $"{i} is {home.Items.State(i)} and not {wanted}");

    // A link to a step that is left out is bridged to what that step waits for, so a way through any steps of the guidance will do.
    private static bool Follows(string step, string earlier, HashSet<string> seen) =>
        Content.Guidance.Steps.FirstOrDefault(s => s.Id == step) is { } found
        && found.After.Where(l => l.Kind == LinkKind.FinishToStart).Any(l => l.Step == earlier || (seen.Add(l.Step) && Follows(l.Step, earlier, seen)));
}
