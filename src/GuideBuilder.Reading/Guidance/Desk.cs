namespace GuideBuilder.Reading;

/// <summary>What every reader of guidance entries has before it: the ids of the whole guidance, the faults so far, and the day against which review dates are judged.</summary>
internal sealed class Desk(Registry registry, FaultList faults, LocalDate today)
{
    private static readonly Read<Mark> ReadMark = Values.OneOf(("read", Mark.Read), ("memory", Mark.Memory), ("judged", Mark.Judged));

    /// <summary>Every id and name.</summary>
    public Registry Registry => registry;

    /// <summary>The day on which the guidance is read.</summary>
    public LocalDate Today => today;

    /// <summary>The faults so far.</summary>
    public FaultList Faults => faults;

    /// <summary>Reads each entry of a file's list and makes a fault of each key that nobody read.</summary>
    public ImmutableArray<T> Entries<T>(ContentFile? file, string what, Func<Fields, T> read) =>
        file?.Root is { } root ? List(root, what, read) : [];

    /// <summary>Reads each item of a list of mappings.</summary>
    public ImmutableArray<T> List<T>(Node? node, string what, Func<Fields, T> read) =>
        node is null ? [] : Values.ListOf((item, _) => One(item, what, read))(node, faults);

    /// <summary>Reads one mapping.</summary>
    public T One<T>(Node node, string what, Func<Fields, T> read)
    {
        var fields = new Fields(node, what, faults);
        var value = read(fields);
        fields.Close();
        return value;
    }

    /// <summary>The keys that every entry of a plan shares.</summary>
    public RuleHead Head(Fields fields, string kind, ConditionScope scope)
    {
        var id = fields.Need("id", Values.Id, "");
        var title = fields.NeedText("title");
        return new(kind, id, title, Condition(fields, "applies-if", scope), fields.NeedText("because"), Basis(fields, required: true), fields.Place);
    }

    /// <summary>A condition that may be left out, and then always holds.</summary>
    public Condition Condition(Fields fields, string key, ConditionScope scope) =>
        fields.Node(key) is { } node ? new ConditionReader(registry, faults).Read(node, scope) : Model.Condition.Always;

    /// <summary>What an entry rests on. A review day that has passed is a warning.</summary>
    public Basis Basis(Fields fields, bool required)
    {
        var read = Values.ListOf(Reference(Kinds.Source));
        var sources = required ? fields.Need("source", read, []) : fields.Find("source", read, []);
        if (sources.IsEmpty && fields.Node("source") is Sequence empty)
        {
            faults.Add(ReadingFaults.EmptyValue(empty.Place));
        }

        return new(sources, fields.Find("mark", ReadMark, Mark.Judged), fields.FindDate("as-at"), ReviewBy(fields));
    }

    /// <summary>A day by which figures need another look.</summary>
    public LocalDate? ReviewBy(Fields fields)
    {
        var before = faults.Count;
        var day = fields.FindDate("review-by");
        if (day < today && faults.Count == before)
        {
            faults.Add(ReadingFaults.ReviewIsDue(fields.Node("review-by")!.Place, day.Value));
        }

        return day;
    }

    /// <summary>A reference that must be there, to an entry of one of the kinds.</summary>
    public string NeedReference(Fields fields, string key, params string[] kinds) => fields.Need(key, Reference(kinds), "");

    /// <summary>A reference that may be left out.</summary>
    public string? FindReference(Fields fields, string key, params string[] kinds) => fields.Find<string?>(key, Reference(kinds), null);

    /// <summary>A list of references that may be left out; none twice.</summary>
    public ImmutableArray<string> References(Fields fields, string key, params string[] kinds) =>
        fields.Find(key, Values.ListOf(Reference(kinds)), []);

    /// <summary>Reads a reference to an entry of one of the kinds.</summary>
    public Read<string> Reference(params string[] kinds) => (node, _) =>
    {
        var id = Values.Single(node, faults);
        if (id is not null && registry.IsComplete && !registry.Has(id, kinds))
        {
            faults.Add(ReadingFaults.UnknownReference(node.Place, id, kinds[0], kinds.SelectMany(registry.Ids)));
        }

        return id ?? "";
    };

    /// <summary>Low, likely and high of one mapping, in order and none below nothing.</summary>
    public ThreePoint ThreePoint(Fields fields, Read<decimal> read)
    {
        var before = faults.Count;
        var (low, likely, high) = (fields.Need("low", read, 0m), fields.Need("likely", read, 0m), fields.Need("high", read, 0m));
        if (faults.Count == before && (low < 0 || Model.ThreePoint.Of(low, likely, high) is null))
        {
            faults.Add(ReadingFaults.PointsOutOfOrder(fields.Place));
        }

        return Model.ThreePoint.Of(low, likely, high) ?? Model.ThreePoint.Zero;
    }

    /// <summary>Reads a unit by its symbol; "" is the unit of plain numbers.</summary>
    public static Unit ReadUnit(Node node, FaultList faults)
    {
        if (node is Scalar { Text: "", Form: ScalarForm.Quoted })
        {
            return Unit.One;
        }

        var symbol = Values.Single(node, faults);
        if (symbol is not null && Unit.Find(symbol) is null)
        {
            faults.Add(ReadingFaults.NotAUnit(node.Place, symbol));
        }

        return Unit.Find(symbol ?? "") ?? Unit.One;
    }

    /// <summary>Reads the name of an amount that a world gives: of a question, a fact or a calculator.</summary>
    public string QuantityName(Node node, FaultList faults)
    {
        var name = Values.Single(node, faults) ?? "";
        var amounts = Registry.Names.Values.Where(n => n.Kind == QuestionKind.Quantity && n.From != NameSource.FinishedPlan).Select(n => n.Name).ToList();
        if (name.Length > 0 && Registry.IsComplete && !amounts.Contains(name))
        {
            faults.Add(ReadingFaults.UnknownReference(node.Place, name, "quantity", amounts));
        }

        return name;
    }

    /// <summary>Reads a quantity that is in, or can be put into, a unit; gives its amount there.</summary>
    public static Read<decimal> AmountIn(Unit unit) => (node, faults) =>
        Values.Single(node, faults) is { } text && QuantityText.Read(text, unit, node.Place, faults) is { } amount ? amount.Quantity.In(unit).Amount : 0m;
}
