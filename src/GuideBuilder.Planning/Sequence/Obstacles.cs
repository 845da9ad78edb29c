namespace GuideBuilder.Planning.Sequence;

/// <summary>What stands against the earliest dates: bounds that they break, and dates given that they cannot meet.</summary>
internal static class Obstacles
{
    /// <summary>Why a cell found no day: two calendars that never meet, or a horizon used up.</summary>
    public static Obstacle Stuck(CompiledNetwork net, int cell, Func<int, ImmutableArray<Timing>> chainTo)
    {
        var members = net.Cells.Members[cell];
        foreach (var (first, second) in from a in members from b in members where a < b select (a, b))
        {
            if (net.Horizon.Shared([net.Tables[first], net.Tables[second]]).OnOrAfter(net.Horizon.StartDay) >= DayTable.Never)
            {
                return new(ObstacleKind.NeverMeet, net.Id(first), net.Id(second), null, null, chainTo(first));
            }
        }

        return new(ObstacleKind.Horizon, net.Id(members[0]), null, null, net.Horizon.End, chainTo(members[0]));
    }

    /// <summary>Every finish-by day that is missed, and every activity that starts too long after another that the log holds fast.</summary>
    public static IEnumerable<Obstacle> Broken(CompiledNetwork net, int[] starts, int[] finishes, Func<int, Timing> timingOf, Func<int, ImmutableArray<Timing>> chainTo)
    {
        for (var i = 0; i < net.Count; i++)
        {
            if (!net.IsDone[i] && finishes[i] > net.FinishBy[i])
            {
                yield return new(ObstacleKind.FinishBy, net.Id(i), null, timingOf(i).Finish, net.Network.Activities[i].FinishBy, chainTo(i));
            }
        }

        foreach (var b in net.Bounds.Where(b => b.Kind == BoundKind.Within && !net.IsDone[b.From] && net.Cells.Fixed[net.Cells.Of[b.To]] != CompiledNetwork.Free))
        {
            var latest = b.Table.LatestWithin(finishes[b.To], b.Lag);
            if (starts[b.From] > latest)
            {
                yield return new(ObstacleKind.TooLate, net.Id(b.From), net.Id(b.To), timingOf(b.From).Start, net.Horizon.Date(latest), chainTo(b.From));
            }
        }
    }

    /// <summary>Dates given that come too early, fall on a day closed to their party or a member of their group, or differ within a group.</summary>
    public static IEnumerable<Conflict> Conflicts(CompiledNetwork net, int[] starts, int[] finishes, Func<int, ImmutableArray<Timing>> chainTo)
    {
        for (var i = 0; i < net.Count; i++)
        {
            var cell = net.Cells.Of[i];
            if (net.Cells.Fixed[cell] == CompiledNetwork.Free || net.IsDone[i])
            {
                continue;
            }

            var (most, from) = Asked(net, i, starts, finishes);
            if (most > starts[i])
            {
                var earliest = net.Tables[i].OnOrAfter(most);
                yield return new(net.Id(i), net.Horizon.Date(starts[i]), earliest >= DayTable.Never ? null : net.Horizon.Date(earliest), from < 0 ? [] : chainTo(from));
            }
            else if (!net.Tables[i].IsOpen(starts[i]) || OtherDay(net, i, starts))
            {
                yield return new(net.Id(i), net.Horizon.Date(starts[i]), null, []);
            }
        }
    }

    private static (int Day, int From) Asked(CompiledNetwork net, int activity, int[] starts, int[] finishes)
    {
        var given = net.Network.Activities[activity];
        var (most, from) = (given.NotBefore is { } d ? net.Horizon.Day(d) : int.MinValue, -1);
        foreach (var b in net.Incoming[activity])
        {
            var bound = net.Bounds[b];
            var asked = bound.Kind == BoundKind.Within ? int.MinValue : bound.Raise(starts[bound.From], finishes[bound.From], net.Tables[activity], net.Days[activity]);
            (most, from) = asked > most ? (asked, bound.From) : (most, from);
        }

        return (most, from);
    }

    private static bool OtherDay(CompiledNetwork net, int activity, int[] starts)
    {
        var group = net.Network.Activities[activity].Group;
        return group is not null && Enumerable.Range(0, net.Count).Any(i => net.Network.Activities[i].Group == group && !net.IsDone[i] && starts[i] != starts[activity]);
    }
}
