using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using GuideBuilder.Planning.Chance;

namespace GuideBuilder.Planning.Trials;

/// <summary>
/// The draws of items, which are the same in every way and in every handbook that is planned by one guidance: each is made once, and kept as long as the guidance is.
/// Arrays may be longer than was asked for, and must stay as they are. Safe from several threads.
/// </summary>
internal sealed class CommonDraws
{
    private static readonly ConditionalWeakTable<Tables, CommonDraws> ByTables = [];
    private readonly ConcurrentDictionary<(ulong Seed, string Item, string Purpose), uint[]> _draws = new();
    private readonly ConcurrentDictionary<(ulong Seed, string Item, ThreePoint Takes, DayCount Unit), DrawnDuration> _durations = new();
    private readonly ConcurrentDictionary<(ulong Seed, string Item, ThreePoint Hours), DrawnHours> _hours = new();

    /// <summary>The draws under that guidance.</summary>
    public static CommonDraws Of(Guidance guidance) => ByTables.GetValue(guidance.Tables, _ => new());

    /// <summary>At least so many draws of an item and purpose.</summary>
    public uint[] Of(ulong seed, string item, string purpose, int trials) =>
        _draws.AddOrUpdate((seed, item, purpose), k => Draws.Of(k.Seed, k.Item, k.Purpose, trials), (k, known) => known.Length >= trials ? known : Draws.Of(k.Seed, k.Item, k.Purpose, trials));

    /// <summary>An item's duration in at least so many trials.</summary>
    public DrawnDuration Duration(Model.Duration takes, ulong seed, string item, int trials) =>
        _durations.AddOrUpdate((seed, item, takes.Amount, takes.Unit), _ => Make(takes, seed, item, trials), (_, known) => known.Trials >= trials ? known : Make(takes, seed, item, trials));

    /// <summary>An item's hours in at least so many trials.</summary>
    public DrawnHours Hours(ThreePoint hours, ulong seed, string item, int trials) =>
        _hours.AddOrUpdate((seed, item, hours), _ => new(hours, Of(seed, item, "hours", trials)), (_, known) => known.Trials >= trials ? known : new(hours, Of(seed, item, "hours", trials)));

    private DrawnDuration Make(Model.Duration takes, ulong seed, string item, int trials) => new(takes, Of(seed, item, "duration", trials));
}
