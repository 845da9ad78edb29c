using System.Runtime.CompilerServices;

namespace GuideBuilder.Planning.Ground;

/// <summary>The rows of the tables soils and networks, by id and cell. A row or cell that is missing or of another kind gives null, and whatever needs it stays not known.</summary>
public sealed class GroundFigures
{
    /// <summary>The names of the tables: content/tables/soils.yaml and networks.yaml. No id stands in both.</summary>
    public static ImmutableArray<string> Names { get; } = ["soils", "networks"];

    // Trials ask thousands of times for the same tables.
    private static readonly ConditionalWeakTable<Tables, GroundFigures> Seen = [];

    private readonly FrozenDictionary<string, TableRow> _byId;

    private GroundFigures(ImmutableArray<TableRow> rows)
    {
        Rows = rows;
        _byId = rows.DistinctBy(r => r.Id, StringComparer.Ordinal).ToFrozenDictionary(r => r.Id, StringComparer.Ordinal);
    }

    /// <summary>The rows, in written order.</summary>
    public ImmutableArray<TableRow> Rows { get; }

    /// <summary>The ground and network rows among all tables.</summary>
    public static GroundFigures From(Tables tables) => Seen.GetValue(tables, t => new([.. t.Rows.Where(r => Names.Contains(r.Table))]));

    /// <summary>The row of that id, or null.</summary>
    public TableRow? Row(string id) => _byId.GetValueOrDefault(id);

    /// <summary>The rows whose id begins so, in written order.</summary>
    public IEnumerable<TableRow> Group(string beginning) => Rows.Where(r => r.Id.StartsWith(beginning, StringComparison.Ordinal));

    /// <summary>A cell's quantity, or null.</summary>
    public Quantity? Quantity(string row, string cell) => Row(row)?.Find(cell);

    /// <summary>A cell's amount in a unit, or null.</summary>
    public decimal? In(string row, string cell, string unit) => Row(row).In(cell, unit);

    /// <summary>A cell's plain number, or null.</summary>
    public decimal? Number(string row, string cell) => In(row, cell, "");

    /// <summary>The amount in a unit if it lies within the range of that name (row range-…), ends included; else null, as if not known.</summary>
    internal decimal? Within(string range, Quantity? quantity, string unit)
    {
        var amount = quantity?.AmountIn(unit);
        return amount >= In("range-" + range, "least", unit) && amount <= In("range-" + range, "most", unit) ? amount : null;
    }
}
