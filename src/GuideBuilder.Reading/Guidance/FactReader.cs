namespace GuideBuilder.Reading;

/// <summary>Reads one derived fact.</summary>
internal sealed class FactReader(Desk desk)
{
    private static readonly Read<QuestionKind> ReadKind =
        Values.OneOf([.. QuestionWords.Kinds.Where(k => k.Means is QuestionKind.YesNo or QuestionKind.Choice or QuestionKind.Quantity)]);

    /// <summary>The fact in an entry.</summary>
    public FactRule Read(Fields fields)
    {
        var head = desk.Head(fields, Kinds.Fact, ConditionScope.Rules);
        var kind = fields.Need("kind", ReadKind, QuestionKind.YesNo);
        var options = kind switch
        {
            QuestionKind.YesNo => QuestionWords.YesAndNo,
            QuestionKind.Choice => fields.Need("options", Values.ListOf<string>(Values.Id), []),
            _ => [],
        };
        var unit = kind == QuestionKind.Quantity ? fields.Find("unit", Desk.ReadUnit, Unit.One) : null;
        var value = ReadValue(head.Id, options, unit);
        var rows = desk.List(fields.Need<Node?>("rows", (node, _) => node, null), "a row", f => Row(f, value));
        return new(head, kind, options, unit, rows, fields.Find<Value?>("otherwise", value, null));
    }

    private FactRow Row(Fields fields, Read<Value> value)
    {
        if (!fields.Has("when"))
        {
            desk.Faults.Add(ReadingFaults.MissingKey(fields.Place, fields.What, "when"));
        }

        return new(desk.Condition(fields, "when", ConditionScope.Rules), fields.Need("value", value, Value.YesNo(false)), fields.Place);
    }

    private static Read<Value> ReadValue(string id, ImmutableArray<string> options, Unit? unit) => (node, faults) =>
    {
        var text = Values.Single(node, faults);
        if (unit is not null)
        {
            return text is not null && QuantityText.Read(text, unit, node.Place, faults) is { } amount ? amount : new Value.Amount(new Quantity(0, unit));
        }

        if (text is not null && !options.Contains(text))
        {
            faults.Add(ReadingFaults.UnknownOption(node.Place, text, id, options));
        }

        return new Value.Option(text ?? "");
    };
}
