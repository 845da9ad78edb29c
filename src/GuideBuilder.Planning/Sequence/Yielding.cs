namespace GuideBuilder.Planning.Sequence;

/// <summary>A longest wait that no dates can keep, and by how many of its days it gives way so that it delays nothing.</summary>
public sealed record BrokenLimit(Maximal Asked, int Extra)
{
    /// <summary>The wait as the dates keep it.</summary>
    public Maximal Kept => Asked with { Days = Asked.Days + Extra };
}

/// <summary>Why a longest wait cannot be kept: from its earlier activity to its later one what waits for what, and the smallest single change with which it could be; null where none alone would do.</summary>
public sealed record LimitReason(ImmutableArray<string> Chain, Change? Change);

/// <summary>
/// Lets longest waits give way where they contradict what else a network asks: a wait has to pass, a limit can be broken.
/// In the order of the network each limit is kept if it can be beside those before it; one that cannot is kept as nearly as delays nothing.
/// </summary>
public static class Yielding
{
    /// <summary>The network that has dates, and the limits that gave way; the network as it is where the limits are not to blame.</summary>
    public static (Network Network, ImmutableArray<BrokenLimit> Broken) Of(Network network, Horizon horizon)
    {
        var kept = network with { Maximals = [] };
        if (HasDates(network, horizon) || !HasDates(kept, horizon))
        {
            return (network, []);
        }

        var broken = ImmutableArray.CreateBuilder<BrokenLimit>();
        foreach (var limit in network.Maximals)
        {
            var extra = HasDates(Beside(kept, limit), horizon) ? 0 : Extra(kept, limit, horizon);
            kept = Beside(kept, limit with { Days = limit.Days + extra });
            if (extra > 0)
            {
                broken.Add(new(limit, extra));
            }
        }

        return (kept, broken.ToImmutable());
    }

    /// <summary>Why a limit gave way in that network, in which it and the others have.</summary>
    public static LimitReason ReasonOf(Network kept, BrokenLimit broken, Horizon horizon)
    {
        var asked = kept with { Maximals = kept.Maximals.Replace(broken.Kept, broken.Asked) };
        var chain = Sequencer.Compile(asked, horizon).Ring is { } ring ? Around(ring, broken.Asked) : Between(kept, broken.Asked, horizon);
        return new(chain, Relaxation.Smallest(asked, chain, n => HasDates(n, horizon)));
    }

    private static Network Beside(Network network, Maximal limit) => network with { Maximals = network.Maximals.Add(limit) };

    private static bool HasDates(Network network, Horizon horizon) => LastDay(network, horizon) is not null;

    private static int? LastDay(Network network, Horizon horizon)
    {
        var net = Sequencer.Compile(network, horizon);
        return Sequencer.ForwardDays(net, net.Durations, new int[net.Count], new int[net.Count]);
    }

    // The fewest days more, found by halving, with which everything ends as if there were no such limit.
    private static int Extra(Network kept, Maximal limit, Horizon horizon)
    {
        var (best, low, high) = (LastDay(kept, horizon), 1, horizon.LastDay);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = LastDay(Beside(kept, limit with { Days = limit.Days + middle }), horizon) <= best ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    // The ring from the limit's earlier end round to its later one.
    private static ImmutableArray<string> Around(Ring ring, Maximal limit)
    {
        var last = Enumerable.Range(0, ring.Links.Length).FirstOrDefault(i => ring.Links[i] is { IsWithin: true } link && link.From == limit.Later && link.To == limit.Earlier);
        return [.. Enumerable.Range(1, ring.Links.Length).Select(i => ring.Links[(last + i) % ring.Links.Length].From).Prepend(limit.Earlier).Distinct(StringComparer.Ordinal)];
    }

    // Where only calendars stand against it: what decides the later end, from the earlier one on.
    private static ImmutableArray<string> Between(Network kept, Maximal limit, Horizon horizon)
    {
        var chain = Sequencer.ChainTo(Sequencer.Forward(Sequencer.Compile(kept, horizon)), limit.Later).Select(t => t.Id).ToImmutableArray();
        var from = chain.IndexOf(limit.Earlier);
        return from < 0 ? [limit.Earlier, limit.Later] : chain[from..];
    }
}
