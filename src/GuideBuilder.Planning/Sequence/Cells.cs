namespace GuideBuilder.Planning.Sequence;

/// <summary>The starts that must be found: one for each activity, one for all members of a same-day group that are not done.</summary>
internal sealed class Cells
{
    public Cells(CompiledNetwork compiled)
    {
        var activities = compiled.Network.Activities;
        var groups = new Dictionary<(string Group, LocalDate? Own), int>();
        var given = activities.Where(a => a is { Group: not null, IsGiven: true }).ToLookup(a => a.Group!, a => a.PinnedStart!.Value, StringComparer.Ordinal);
        Of = new int[activities.Length];
        var count = 0;
        for (var i = 0; i < activities.Length; i++)
        {
            var a = activities[i];
            if (a.Group is null || a.IsDone || !groups.TryGetValue((a.Group, OwnDay(a, given)), out Of[i]))
            {
                Of[i] = count++;
            }

            if (a.Group is not null && !a.IsDone)
            {
                groups[(a.Group, OwnDay(a, given))] = Of[i];
            }
        }

        var rows = Rows.Of(count, Of, cell => cell);
        Members = [.. Enumerable.Range(0, count).Select(c => rows[c].ToArray())];
        Tables = [.. Members.Select(m => TableOf(compiled, m))];
        Fixed = [.. Members.Select(m => FixedDay(compiled, m))];
        Release = [.. Members.Select(m => ReleaseOf(compiled, m))];
        ReleaseDriver = [.. Members.Select((m, c) => DriverOf(compiled, m, Release[c]))];
    }

    /// <summary>A cell of which only those members are present; at least one.</summary>
    public static CellPart Part(CompiledNetwork compiled, int[] members)
    {
        var release = ReleaseOf(compiled, members);
        return new(members, TableOf(compiled, members), release, DriverOf(compiled, members, release));
    }

    /// <summary>The cell of each activity.</summary>
    public int[] Of { get; }

    /// <summary>The activities of each cell, in the network's order.</summary>
    public int[][] Members { get; }

    /// <summary>The days on which each cell may start.</summary>
    public DayTable[] Tables { get; }

    /// <summary>The day on which each cell starts because the log says so, or Free.</summary>
    public int[] Fixed { get; }

    /// <summary>The first day on which each cell may start, bounds aside.</summary>
    public int[] Release { get; }

    /// <summary>What decides that day: Release, or -2 less the member whose not-before day it is.</summary>
    public int[] ReleaseDriver { get; }

    /// <summary>How many there are.</summary>
    public int Count => Members.Length;

    /// <summary>The day given to a member when another member was given a later one, so that they cannot share a cell; else null.</summary>
    private static LocalDate? OwnDay(Activity a, ILookup<string, LocalDate> given) =>
        a.PinnedStart is { } day && day != given[a.Group!].Max() ? day : null;

    private static int ReleaseOf(CompiledNetwork compiled, int[] members)
    {
        var release = 0;
        foreach (var m in members)
        {
            release = Math.Max(release, compiled.Release[m]);
        }

        return release;
    }

    private static int DriverOf(CompiledNetwork compiled, int[] members, int release) =>
        release == compiled.Horizon.StartDay ? ForwardPass.Release : -2 - ReleasedOn(compiled, members, release);

    private static int ReleasedOn(CompiledNetwork compiled, int[] members, int release) => Array.Find(members, m => compiled.Release[m] == release);

    private static DayTable TableOf(CompiledNetwork compiled, int[] members)
    {
        if (members.Length == 1)
        {
            return compiled.Tables[members[0]];
        }

        return TableOfSeveral(compiled, members);
    }

    private static DayTable TableOfSeveral(CompiledNetwork compiled, int[] members)
    {
        var distinct = members.Select(m => compiled.Tables[m]).Distinct().ToArray();
        return distinct.Length == 1 ? distinct[0] : compiled.Horizon.Shared(distinct);
    }

    private static int FixedDay(CompiledNetwork compiled, int[] members)
    {
        foreach (var m in members)
        {
            var a = compiled.Network.Activities[m];
            if ((a.PinnedStart ?? a.PinnedFinish) is { } day)
            {
                return compiled.Horizon.Day(day);
            }
        }

        return CompiledNetwork.Free;
    }
}

/// <summary>The members of a cell that are present, the days on which all of them can start, the first day on which they may, and what decides that day.</summary>
internal readonly record struct CellPart(int[] Members, DayTable Table, int Release, int Driver);
