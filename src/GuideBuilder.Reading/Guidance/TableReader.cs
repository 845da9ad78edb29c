namespace GuideBuilder.Reading;

/// <summary>Reads the tables of figures other than prices.</summary>
internal sealed class TableReader(Desk desk)
{
    private static readonly Unit Percent = Unit.Of("%");

    /// <summary>The VAT rate in an entry: a share for each nation where it arises.</summary>
    public VatRate ReadVat(Fields fields)
    {
        var nations = desk.Registry.Ids(Kinds.Nation).Where(fields.Has).ToList();
        return new(
            fields.Need("id", Values.Id, ""),
            fields.NeedText("title"),
            nations.ToFrozenDictionary(n => n, n => fields.Find(n, Desk.AmountIn(Percent), 0m) * Percent.InBase, StringComparer.Ordinal),
            desk.Basis(fields, required: true),
            fields.Place)
        {
            Goods = fields.Find<GoodsRule?>("goods-rule", (node, _) => desk.One(node, "a rule on goods", Goods), null),
        };
    }

    private GoodsRule Goods(Fields fields) => new(
        desk.NeedReference(fields, "nation", Kinds.Nation),
        fields.Need("most", Values.Whole(1, 99), 1),
        fields.Need("of", Values.Whole(1, 99), 1),
        desk.NeedReference(fields, "then", Kinds.Vat));

    /// <summary>The price index in an entry.</summary>
    public PriceIndex ReadIndex(Fields fields) => new(
        fields.Need("id", Values.Id, ""),
        fields.NeedText("title"),
        fields.Need("years", (node, _) => Years(node), FrozenDictionary<int, decimal>.Empty),
        desk.Basis(fields, required: true),
        fields.Place);

    /// <summary>The region factors in an entry.</summary>
    public RegionFactor ReadRegions(Fields fields) => new(
        fields.Need("id", Values.Id, ""),
        fields.Need("factors", (node, _) => Factors(node), FrozenDictionary<string, decimal>.Empty),
        desk.Basis(fields, required: true),
        fields.Place)
    {
        Together = fields.Find("together", Desk.AmountIn(Percent), 0m) * Percent.InBase,
    };

    /// <summary>The holiday list in an entry.</summary>
    public HolidayList ReadHolidays(Fields fields)
    {
        var list = new HolidayList(
            fields.Need("id", Values.Id, ""),
            desk.List(fields.Need<Node?>("days", (node, _) => node, null), "a holiday", f => new Holiday(f.Need("date", Values.Date, default), f.NeedText("name"))),
            fields.Need("known-until", Values.Date, default),
            desk.Basis(fields, required: true),
            fields.Place);
        if (list.KnownFrom is { } from && (desk.Today < from || desk.Today > list.KnownUntil))
        {
            desk.Faults.Add(ReadingFaults.HolidaysByRule(fields.Place, from, list.KnownUntil));
        }

        return list;
    }

    /// <summary>The row in an entry of a free table: every key that is not about the row itself is a cell.</summary>
    public TableRow ReadRow(string table, Node node)
    {
        var fields = new Fields(node, "a row", desk.Faults);
        var id = fields.Need("id", Values.Id, "");
        var basis = desk.Basis(fields, required: true);
        var cells = new Dictionary<string, Cell>(StringComparer.Ordinal);
        foreach (var entry in node is Mapping row ? row.Entries.Where(e => !IsAboutTheRow(e.Key.Text)) : [])
        {
            cells[entry.Key.Text] = Cell(entry.Value);
        }

        return new(table, id, cells.ToFrozenDictionary(StringComparer.Ordinal), basis, fields.Place)
        {
            When = fields.Has("for-answer") ? desk.Condition(fields, "for-answer", ConditionScope.Rules) : null,
        };
    }

    private static bool IsAboutTheRow(string key) => key is "id" or "for-answer" or "source" or "mark" or "as-at" or "review-by";

    private Cell Cell(Node node)
    {
        var words = Values.Words(node, desk.Faults);
        return new(node is Scalar { Form: ScalarForm.Plain } ? QuantityText.TryRead(words) : null, words, node.Place);
    }

    private FrozenDictionary<int, decimal> Years(Node node)
    {
        var years = new Dictionary<int, decimal>();
        foreach (var entry in Entries(node, "years"))
        {
            years[Values.Whole(1950, 2199)(entry.Key, desk.Faults)] = Positive(entry.Value);
        }

        return years.ToFrozenDictionary();
    }

    private FrozenDictionary<string, decimal> Factors(Node node)
    {
        var regions = desk.Registry.Names.TryGetValue("home.region", out var question) ? question.Options : [];
        var factors = new Dictionary<string, decimal>(StringComparer.Ordinal);
        foreach (var entry in Entries(node, "factors"))
        {
            factors[entry.Key.Text] = Positive(entry.Value);
            if (!regions.Contains(entry.Key.Text) && desk.Registry.IsComplete)
            {
                desk.Faults.Add(ReadingFaults.UnknownOption(entry.Key.Place, entry.Key.Text, "home.region", regions));
            }
        }

        return factors.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private ImmutableArray<Entry> Entries(Node node, string what)
    {
        if (node is Mapping mapping)
        {
            return mapping.Entries;
        }

        desk.Faults.Add(ReadingFaults.NotAMapping(node.Place, what));
        return [];
    }

    private decimal Positive(Node node)
    {
        var before = desk.Faults.Count;
        var number = Values.Number(node, desk.Faults);
        if (number <= 0 && desk.Faults.Count == before)
        {
            desk.Faults.Add(ReadingFaults.NotAboveNothing(node.Place));
        }

        return number;
    }
}
