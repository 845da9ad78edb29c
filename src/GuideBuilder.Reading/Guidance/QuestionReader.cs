namespace GuideBuilder.Reading;

/// <summary>Reads one question. Keys that its kind has no use for are unknown keys.</summary>
internal sealed class QuestionReader(string section, Desk desk)
{
    private FaultList Faults => desk.Faults;

    /// <summary>The question in an entry.</summary>
    public Question Read(Fields fields)
    {
        var id = fields.Need("id", Values.Id, "");
        var name = $"{section}.{id}";
        var kind = fields.Need("kind", Values.OneOf(QuestionWords.Kinds), QuestionKind.Text);
        var earlier = ConditionScope.Earlier(desk.Registry.Names.TryGetValue(name, out var named) ? named.Order : 0);
        var options = Options(fields, kind);
        var range = kind == QuestionKind.Quantity ? Range(fields) : null;
        var ifUnknown = range is null ? [] : desk.List(fields.Node("if-unknown"), "a value with its weight", f => Weighted(f, range));
        CheckAssumed(fields, kind, options, ifUnknown);
        return new(
            section,
            id,
            fields.NeedText("label"),
            fields.NeedText("wording"),
            fields.FindText("how-to-find-out"),
            fields.FindText("what-it-decides"),
            fields.FindText("who-can-tell"),
            kind,
            fields.Need("data-class", Values.OneOf(QuestionWords.DataClasses), DataClass.None),
            fields.Need("ease", Values.OneOf(QuestionWords.Eases), Ease.Visit),
            options,
            range,
            ifUnknown,
            options.IsEmpty ? [] : desk.List(fields.Node("weights-if"), "weights for a case", f => Weights(f, options, earlier)),
            desk.Condition(fields, "ask-if", earlier),
            desk.Basis(fields, required: HasWeights(fields)),
            fields.Place);
    }

    private static bool HasOptions(QuestionKind kind) => kind is QuestionKind.Choice or QuestionKind.Several or QuestionKind.YesNo;

    private static bool HasWeights(Fields fields) =>
        fields.Peek("if-unknown") is not null
        || fields.Peek("weights-if") is not null
        || (fields.Peek("options") is Mapping options && options.Entries.Any(e => e.Value is Mapping option && option["weight"] is not null));

    private ImmutableArray<QuestionOption> Options(Fields fields, QuestionKind kind)
    {
        if (!HasOptions(kind))
        {
            return [];
        }

        var written = kind == QuestionKind.YesNo ? fields.Node("options") : fields.Need<Node?>("options", (node, _) => node, null);
        if (written is not (Mapping or null))
        {
            Faults.Add(ReadingFaults.NotAMapping(written.Place, "options"));
        }

        var options = written is Mapping mapping ? mapping.Entries.Select(e => Option(e, kind)).ToImmutableArray() : [];
        return kind == QuestionKind.YesNo ? YesAndNo(options, fields.Place) : options;
    }

    private QuestionOption Option(Entry entry, QuestionKind kind)
    {
        var id = entry.Key.Text;
        var isYesNo = kind == QuestionKind.YesNo;
        if (isYesNo ? !QuestionWords.YesAndNo.Contains(id) : !Ids.IsId(id) || id == AnswerWords.Unknown)
        {
            Faults.Add(ReadingFaults.NotAnOptionId(entry.Key.Place, id));
        }

        return desk.One(entry.Value, "an option", f => new QuestionOption(
            id,
            isYesNo ? f.FindText("wording") : f.NeedText("wording"),
            f.Find("weight", Weight, 1m),
            f.Find("assume", Values.YesNo, false),
            entry.Key.Place));
    }

    private static ImmutableArray<QuestionOption> YesAndNo(ImmutableArray<QuestionOption> written, Place place) =>
        [.. QuestionWords.YesAndNo.Select(id => written.FirstOrDefault(o => o.Id == id) ?? new(id, LocalText.Empty, 1m, false, place))];

    private static decimal Weight(Node node, FaultList faults)
    {
        var weight = Values.Number(node, faults);
        if (weight < 0)
        {
            faults.Add(ReadingFaults.WeightBelowNothing(node.Place));
        }

        return weight;
    }

    private QuantityRange Range(Fields fields)
    {
        var unit = fields.Find("unit", Desk.ReadUnit, Unit.One);
        var range = new QuantityRange(unit, fields.Need("least", Desk.AmountIn(unit), 0m), fields.Need("most", Desk.AmountIn(unit), decimal.MaxValue));
        if (range.Least > range.Most)
        {
            Faults.Add(ReadingFaults.EndsReversed(fields.Place));
        }

        return range;
    }

    private static WeightedQuantity Weighted(Fields fields, QuantityRange range) => new(
        new Quantity(fields.Need("value", Desk.AmountIn(range.Unit), 0m), range.Unit),
        fields.Find("weight", Weight, 1m),
        fields.Find("assume", Values.YesNo, false));

    private WeightRule Weights(Fields fields, ImmutableArray<QuestionOption> options, ConditionScope earlier)
    {
        if (!fields.Has("when"))
        {
            Faults.Add(ReadingFaults.MissingKey(fields.Place, fields.What, "when"));
        }

        var weights = options.Where(o => fields.Has(o.Id)).ToFrozenDictionary(o => o.Id, o => fields.Find(o.Id, Weight, 1m), StringComparer.Ordinal);
        return new(desk.Condition(fields, "when", earlier), weights, fields.Place);
    }

    private void CheckAssumed(Fields fields, QuestionKind kind, ImmutableArray<QuestionOption> options, ImmutableArray<WeightedQuantity> values)
    {
        var assumed = options.Count(o => o.Assume) + values.Count(v => v.Assume);
        if (assumed != 1 && (kind is QuestionKind.Choice or QuestionKind.YesNo || !values.IsEmpty))
        {
            Faults.Add(ReadingFaults.NotOneAssumed(fields.Place, assumed));
        }

        if (kind is QuestionKind.Choice or QuestionKind.YesNo && !options.IsEmpty && options.All(o => o.Weight == 0))
        {
            Faults.Add(ReadingFaults.NoWeightAtAll(fields.Place));
        }
    }
}
