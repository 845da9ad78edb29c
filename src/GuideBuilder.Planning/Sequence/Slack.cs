namespace GuideBuilder.Planning.Sequence;

/// <summary>Counts how far things can slip.</summary>
internal static class Slack
{
    /// <summary>Total and free float of every activity, and the shared days of every group.</summary>
    public static Floats Of(Forward forward, Latest latest)
    {
        var net = forward.Compiled;
        if (forward.Timings.IsEmpty)
        {
            return new([], []);
        }

        var end = net.Horizon.Day(forward.Finish!.Value);
        var floats = new ActivityFloat[net.Count];
        for (var cell = 0; cell < net.Cells.Count; cell++)
        {
            var free = FreeStart(net, cell, forward, end);
            foreach (var m in net.Cells.Members[cell])
            {
                var (early, table) = (forward.Starts[m], net.Tables[m]);
                floats[m] = new(net.Id(m), table.Rank(latest.Starts[m]) - table.Rank(early), Math.Max(0, table.Rank(free) - table.Rank(early)));
            }
        }

        return new([.. floats], [.. Enumerable.Range(0, net.Cells.Count).Select(c => GroupOf(net, c, forward, latest)).OfType<GroupFloat>()]);
    }

    private static int FreeStart(CompiledNetwork net, int cell, Forward forward, int end)
    {
        var members = net.Cells.Members[cell];
        if (net.Cells.Fixed[cell] != CompiledNetwork.Free)
        {
            return forward.Starts[members[0]];
        }

        var cap = int.MaxValue;
        foreach (var m in members)
        {
            cap = Math.Min(cap, BackwardPass.CapOf(net, m, forward.Starts, forward.Finishes, end));
        }

        return net.Cells.Tables[cell].OnOrBefore(cap);
    }

    private static GroupFloat? GroupOf(CompiledNetwork net, int cell, Forward forward, Latest latest)
    {
        var first = net.Cells.Members[cell][0];
        if (net.Network.Activities[first].Group is not { } group || net.IsDone[first])
        {
            return null;
        }

        var days = Enumerable.Range(forward.Starts[first] + 1, Math.Max(0, latest.Starts[first] - forward.Starts[first]));
        return new(group, [.. days.Where(net.Cells.Tables[cell].IsOpen).Select(net.Horizon.Date)]);
    }
}
