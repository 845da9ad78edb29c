using System.Globalization;
using System.Text;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>What a world makes of a way's steps and lines of money.</summary>
internal sealed class WorldContents(WayCase way, ImmutableArray<Planned<Step>> steps, ImmutableArray<Planned<Cost>> costs)
{
    private readonly ImmutableArray<Planned<Step>> _steps = [.. steps.Where(s => s.IsPresent)];
    private readonly ImmutableArray<(Planned<Cost> Cost, bool Named)> _costs =
        [.. costs.Where(c => c.IsPresent && CostPlanner.IsInOurMoney(c.Item, way)).Select(c => (c, Quotations.Names(way.Facts.Answers, c.Item.Id, way.Occasion.Today)))];

    /// <summary>A key that is the same for worlds of one class: which steps and lines there are, and the numbers of the lines.</summary>
    public string KeyOf(DefiniteWorld world)
    {
        var key = new StringBuilder();
        foreach (var step in _steps)
        {
            key.Append(IsIn(step, world) ? '1' : '0');
        }

        foreach (var cost in _costs)
        {
            key.Append(' ').Append(NumberOf(cost, world)?.ToString(CultureInfo.InvariantCulture));
        }

        return key.ToString();
    }

    /// <summary>The class of a world, without trials yet.</summary>
    public WorldClass ClassOf(DefiniteWorld world) => new(
        [.. _steps.Where(s => IsIn(s, world)).Select(s => s.Item)],
        [.. _costs.Select(c => (c.Cost.Item, Number: NumberOf(c, world))).Where(c => c.Number is not null).Select(c => (c.Item, c.Number!.Value))],
        [],
        0,
        false);

    private static bool IsIn<T>(Planned<T> item, DefiniteWorld world)
        where T : Rule => item.State == ItemState.Settled || world.Holds(item.Item.Head.AppliesIf);

    private decimal? NumberOf((Planned<Cost> Cost, bool Named) line, DefiniteWorld world) =>
        line.Named || IsIn(line.Cost, world) ? Quantities.Of(line.Cost.Item, world.ValueOf, way.Guidance) : null;
}
