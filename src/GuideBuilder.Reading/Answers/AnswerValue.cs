namespace GuideBuilder.Reading;

/// <summary>Reads the value of one answer in the form that its question asks for.</summary>
internal sealed class AnswerValue(Question question, FaultList faults)
{
    private const int DaysOfAYear = 366;

    /// <summary>The value, or null with the fault added.</summary>
    public Value? Read(Node node)
    {
        var before = faults.Count;
        Value? value = question.Kind switch
        {
            QuestionKind.Choice => Option(node) is { } id ? new Value.Option(id) : null,
            QuestionKind.YesNo => Value.YesNo(Values.YesNo(node, faults)),
            QuestionKind.Several => Several(node),
            QuestionKind.Quantity => Amount(node),
            QuestionKind.Date => new Value.Day(Values.Date(node, faults)),
            QuestionKind.Days => Days(node),
            QuestionKind.Text => new Value.Words(Values.Words(node, faults)),
            QuestionKind.NumberName => new Value.NumberName(Values.Line(node, faults)),
            _ => throw new UnreachableException(),
        };
        return faults.Count == before ? value : null;
    }

    private string? Option(Node node)
    {
        var option = Values.Single(node, faults);
        if (option is not null && question.Options.All(o => o.Id != option))
        {
            faults.Add(ReadingFaults.UnknownOption(node.Place, option, question.Name, question.Options.Select(o => o.Id).Append(AnswerWords.Unknown)));
        }

        return option;
    }

    private Value.Several? Several(Node node)
    {
        if (IsNone(node))
        {
            return new(question.Options.Any(o => o.Id == Value.Several.None) ? [Value.Several.None] : []);
        }

        var written = Items(node).Select(item => (Id: Option(item), item.Place)).ToList();
        foreach (var twice in written.GroupBy(w => w.Id, StringComparer.Ordinal).SelectMany(g => g.Skip(1)).Where(w => w.Id is not null))
        {
            faults.Add(ReadingFaults.Repeated(twice.Place, twice.Id!));
        }

        var chosen = written.Select(w => w.Id).ToHashSet(StringComparer.Ordinal);
        return new([.. question.Options.Select(o => o.Id).Where(chosen.Contains)]);
    }

    private Value.Amount? Amount(Node node)
    {
        var (unit, least, most) = (question.Range!.Unit, question.Range.Least, question.Range.Most);
        if (Values.Single(node, faults) is not { } text || QuantityText.Read(text, unit, node.Place, faults) is not { } amount)
        {
            return null;
        }

        var (from, to) = (new Quantity(least, unit), new Quantity(most, unit));
        if (amount.Quantity.Against(from) < 0 || amount.Quantity.Against(to) > 0)
        {
            faults.Add(ReadingFaults.OutOfRange(node.Place, text, from, to));
        }

        return amount;
    }

    private Value.Days Days(Node node)
    {
        var spans = ImmutableArray.CreateBuilder<DateInterval>();
        var days = 0L;
        foreach (var item in IsNone(node) ? [] : Items(node))
        {
            if (Values.Single(item, faults) is { } text && Dates.ReadSpan(text, item.Place, faults) is { } span)
            {
                spans.Add(span);
                CheckSum(days, days += span.Length, item.Place, text);
            }
        }

        return new(spans.ToImmutable());
    }

    // Told once, of the span that is too much.
    private void CheckSum(long before, long days, Place place, string text)
    {
        if (before <= DaysOfAYear && days > DaysOfAYear)
        {
            faults.Add(ReadingFaults.MoreThanAYear(place, text, days, DaysOfAYear));
        }
    }

    private static bool IsNone(Node node) => node is Scalar { Text: Value.Several.None };

    private ImmutableArray<Node> Items(Node node)
    {
        switch (node)
        {
            case Sequence { Items.IsEmpty: false } list:
                return list.Items;
            case Sequence:
                faults.Add(ReadingFaults.EmptyList(node.Place));
                return [];
            case Scalar { IsEmpty: true }:
                faults.Add(ReadingFaults.EmptyValue(node.Place));
                return [];
            default:
                faults.Add(ReadingFaults.NotAList(node.Place));
                return [];
        }
    }
}
