using System.Globalization;
using System.Text;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>What a world makes of a way: which steps there are, and which lines of money with which numbers. The keys are the same for worlds that make the same of it.</summary>
internal sealed record WorldContent(string StepKey, string LineKey, Func<ImmutableArray<Step>> Steps, Func<ImmutableArray<(Cost Cost, decimal Quantity)>> Lines);

/// <summary>Reads the contents of worlds.</summary>
internal sealed class WorldContents(WayCase way, ImmutableArray<Planned<Step>> steps, ImmutableArray<Planned<Cost>> costs)
{
    private readonly ImmutableArray<Planned<Step>> _steps = [.. steps.Where(s => s.IsPresent)];
    private readonly ImmutableArray<(Planned<Cost> Cost, bool Named)> _costs =
        [.. costs.Where(c => c.IsPresent && CostPlanner.IsInOurMoney(c.Item, way)).Select(c => (c, Quotations.Names(way.Facts.Answers, c.Item.Id, way.Occasion.Today)))];

    /// <summary>The contents of a world as it stands; the world may then go on to another.</summary>
    public WorldContent Of(DefiniteWorld world)
    {
        var isIn = new bool[_steps.Length];
        var numbers = new decimal?[_costs.Length];
        for (var i = 0; i < isIn.Length; i++)
        {
            isIn[i] = IsIn(_steps[i], world);
        }

        for (var i = 0; i < numbers.Length; i++)
        {
            numbers[i] = NumberOf(_costs[i], world);
        }

        return new(
            string.Create(isIn.Length, isIn, (key, flags) => Write(key, flags)),
            KeyOf(numbers),
            () => [.. _steps.Where((_, i) => isIn[i]).Select(s => s.Item)],
            () => [.. _costs.Select((c, i) => (c.Cost.Item, numbers[i])).Where(c => c.Item2 is not null).Select(c => (c.Item, c.Item2!.Value))]);
    }

    private static void Write(Span<char> key, bool[] flags)
    {
        for (var i = 0; i < flags.Length; i++)
        {
            key[i] = flags[i] ? '1' : '0';
        }
    }

    private static string KeyOf(decimal?[] numbers)
    {
        var key = new StringBuilder(numbers.Length * 2);
        foreach (var number in numbers)
        {
            key.Append(' ').Append(number switch
            {
                null => "",
                1 => "1",
                { } other => other.ToString(CultureInfo.InvariantCulture),
            });
        }

        return key.ToString();
    }

    private static bool IsIn<T>(Planned<T> item, DefiniteWorld world)
        where T : Rule => item.State == ItemState.Settled || world.Holds(item.Item.Head.AppliesIf);

    private decimal? NumberOf((Planned<Cost> Cost, bool Named) line, DefiniteWorld world) =>
        line.Named || IsIn(line.Cost, world) ? Quantities.Of(line.Cost.Item, world.ValueOf, way.Guidance) : null;
}
