using System.Runtime.CompilerServices;

namespace GuideBuilder.Planning.Electrical;

/// <summary>The rows of the electrical table, by id and cell. A row or cell that is missing or of another kind gives null, and whatever needs it stays not known.</summary>
public sealed class ElectricalFigures
{
    /// <summary>The name of the table: content/tables/electrical.yaml.</summary>
    public const string Table = "electrical";

    private static readonly ConditionalWeakTable<Tables, ElectricalFigures> Kept = [];

    private readonly FrozenDictionary<string, TableRow> _byId;

    private ElectricalFigures(ImmutableArray<TableRow> rows)
    {
        Rows = rows;
        _byId = rows.DistinctBy(r => r.Id, StringComparer.Ordinal).ToFrozenDictionary(r => r.Id, StringComparer.Ordinal);
    }

    /// <summary>The rows, in written order.</summary>
    public ImmutableArray<TableRow> Rows { get; }

    /// <summary>The electrical rows among all tables. Kept for as long as the tables are, because facts are worked out for thousands of worlds.</summary>
    public static ElectricalFigures From(Tables tables) => Kept.GetValue(tables, t => new([.. t.Rows.Where(r => r.Table == Table)]));

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

    /// <summary>A cell's share as a part of one, or null.</summary>
    public decimal? Share(string row, string cell) => Row(row).Share(cell);
}
