namespace GuideBuilder.Planning.Sequence;

/// <summary>Numbers in rows laid end to end: for each activity or cell, the bounds or cells that belong to it, in their order.</summary>
internal sealed class Rows
{
    private readonly int[] _starts;
    private readonly int[] _items;

    private Rows(int[] starts, int[] items) => (_starts, _items) = (starts, items);

    public ReadOnlySpan<int> this[int row] => _items.AsSpan(_starts[row].._starts[row + 1]);

    /// <summary>The indices of items by the row that a function gives; a negative row leaves an item out.</summary>
    public static Rows Of<T>(int rows, IReadOnlyList<T> items, Func<T, int> rowOf)
    {
        var starts = new int[rows + 1];
        for (var i = 0; i < items.Count; i++)
        {
            if (rowOf(items[i]) is >= 0 and var row)
            {
                starts[row + 1]++;
            }
        }

        for (var row = 0; row < rows; row++)
        {
            starts[row + 1] += starts[row];
        }

        var next = starts.ToArray();
        var placed = new int[starts[^1]];
        for (var i = 0; i < items.Count; i++)
        {
            if (rowOf(items[i]) is >= 0 and var row)
            {
                placed[next[row]++] = i;
            }
        }

        return new(starts, placed);
    }
}
