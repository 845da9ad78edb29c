using System.Collections.Concurrent;

namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// A compiled network of which parts are dated: activities that are left out hand on to what they come after, without a wait of their own.
/// What all parts share, made once. Safe from several threads.
/// </summary>
internal sealed class PartNetwork
{
    private const int MostKept = 64;
    private readonly CellPart[] _cells;
    private readonly ConcurrentDictionary<(int Cell, ulong Present), CellPart> _known = new();

    /// <summary>Shares a whole; no activity that is pinned may be left out.</summary>
    public PartNetwork(CompiledNetwork whole)
    {
        Bound[] Into(int to, bool limits) => [.. whole.Incoming[to].ToArray().Select(b => whole.Bounds[b]).Where(b => (b.Kind == BoundKind.Within) == limits)];
        Whole = whole;
        this.Into = [.. Enumerable.Range(0, whole.Count).Select(i => Into(i, false))];
        Limits = [.. Enumerable.Range(0, whole.Count).Select(i => Into(i, true))];
        AlongLinks = [.. whole.Cells.Members.Select(Along)];
        _cells = [.. Enumerable.Range(0, whole.Cells.Count).Select(c => new CellPart(whole.Cells.Members[c], whole.Cells.Tables[c], whole.Cells.Release[c], whole.Cells.ReleaseDriver[c]))];
    }

    /// <summary>The whole; numbers of activities and cells are its own.</summary>
    public CompiledNetwork Whole { get; }

    /// <summary>What each activity comes after.</summary>
    public Bound[][] Into { get; }

    /// <summary>The limits that hold each activity near a later one.</summary>
    public Bound[][] Limits { get; }

    /// <summary>The members of each cell, each after those of them that it comes after.</summary>
    public int[][] AlongLinks { get; }

    /// <summary>A cell with the members that are present; without any, its table says nothing.</summary>
    public CellPart Cell(int cell, bool[] present)
    {
        var all = _cells[cell].Members;
        var (key, count) = (0UL, 0);
        for (var i = 0; i < all.Length; i++)
        {
            key |= present[all[i]] ? 1UL << i : 0;
            count += present[all[i]] ? 1 : 0;
        }

        return count == all.Length ? _cells[cell]
            : count == 0 ? _cells[cell] with { Members = [] }
            : all.Length > MostKept ? Make(all, present)
            : _known.TryGetValue((cell, key), out var known) ? known
            : _known[(cell, key)] = Make(all, present);
    }

    private CellPart Make(int[] all, bool[] present) => Cells.Part(Whole, Array.FindAll(all, m => present[m]));

    private int[] Along(int[] members)
    {
        var (seen, placed) = (new HashSet<int>(), new List<int>());
        void Place(int member)
        {
            if (!seen.Add(member))
            {
                return;
            }

            foreach (var earlier in Into[member].Select(b => b.From).Where(members.Contains))
            {
                Place(earlier);
            }

            placed.Add(member);
        }

        Array.ForEach(members, Place);
        return [.. placed];
    }
}
