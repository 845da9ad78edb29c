namespace GuideBuilder.Planning.Derived;

/// <summary>The known inputs of a calculator, by name, and the tables of figures. A member gives null for an input that was not asked.</summary>
internal sealed record Inputs(Lookup Lookup, Tables Tables)
{
    /// <summary>The quantity of that name.</summary>
    public Quantity? Quantity(string name) => (Lookup(name).Value as Value.Amount)?.Quantity;

    /// <summary>The option of that name, by id.</summary>
    public string? Option(string name) => (Lookup(name).Value as Value.Option)?.Id;

    /// <summary>Whether the answer is yes; no when not asked.</summary>
    public bool IsYes(string name) => Option(name) == "yes";

    /// <summary>The options that apply; none when not asked.</summary>
    public ImmutableArray<string> Several(string name) => (Lookup(name).Value as Value.Several)?.Ids ?? [];

    /// <summary>The words or digits of that name.</summary>
    public string? Words(string name) => Lookup(name).Value switch
    {
        Value.Words words => words.Text,
        Value.NumberName number => number.Text,
        _ => null,
    };

    /// <summary>The row of a free table, or null.</summary>
    public TableRow? Row(string table, string id) => Tables.Rows.FirstOrDefault(r => r.Table == table && r.Id == id);
}
