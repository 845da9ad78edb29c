namespace GuideBuilder.Reading;

/// <summary>Reads what is asked of one name, in the words that its kind allows.</summary>
internal sealed class ComparisonReader(Named named, FaultList faults)
{
    private static readonly string[] OfOptions = ["is", "is-one-of"];
    private static readonly string[] OfAmounts = ["over", "under", "at-least", "at-most", "between"];

    private string[] Words => named.Kind switch
    {
        QuestionKind.Choice or QuestionKind.YesNo or QuestionKind.Several => OfOptions,
        QuestionKind.Quantity or QuestionKind.Date => OfAmounts,
        _ => [],
    };

    /// <summary>The comparison, or null with the fault added.</summary>
    public Comparison? Read(Node node)
    {
        if (Words.Length == 0)
        {
            faults.Add(ReadingFaults.NothingToAsk(node.Place, named.Name));
            return null;
        }

        if (node is not Mapping { Entries: [var entry] })
        {
            faults.Add(ReadingFaults.NotAComparison(node.Place, named.Name, Words));
            return null;
        }

        if (!Words.Contains(entry.Key.Text, StringComparer.Ordinal))
        {
            faults.Add(ReadingFaults.WrongComparison(entry.Key.Place, entry.Key.Text, named.Name, Words));
            return null;
        }

        return Words == OfOptions ? Options(entry) : Limits(entry);
    }

    private Comparison.IsOneOf? Options(Entry entry)
    {
        var before = faults.Count;
        var nodes = entry.Key.Is("is") ? [entry.Value] : Values.ListOf((node, _) => node)(entry.Value, faults);
        var options = nodes.Select(Option).ToImmutableArray();
        if (faults.Count == before && options.IsEmpty)
        {
            faults.Add(ReadingFaults.EmptyValue(entry.Value.Place));
        }

        return faults.Count == before ? new(options) : null;
    }

    private string Option(Node node)
    {
        var option = Values.Single(node, faults);
        var allowed = named.Kind == QuestionKind.Several ? named.Options.Append(Value.Several.None) : named.Options;
        if (option is not null && !allowed.Contains(option, StringComparer.Ordinal))
        {
            faults.Add(ReadingFaults.UnknownOption(node.Place, option, named.Name, allowed));
        }

        return option ?? "";
    }

    private Comparison.Within? Limits(Entry entry)
    {
        switch (entry.Key.Text)
        {
            case "over":
                return Limit(entry.Value, included: false) is { } over ? new(over, null) : null;
            case "at-least":
                return Limit(entry.Value, included: true) is { } least ? new(least, null) : null;
            case "under":
                return Limit(entry.Value, included: false) is { } under ? new(null, under) : null;
            case "at-most":
                return Limit(entry.Value, included: true) is { } most ? new(null, most) : null;
            default:
                return Between(entry.Value);
        }
    }

    private Comparison.Within? Between(Node node)
    {
        if (node is not Sequence { Items: [var first, var second] })
        {
            faults.Add(ReadingFaults.NotTwoEnds(node.Place));
            return null;
        }

        if (Limit(first, included: true) is not { } from || Limit(second, included: true) is not { } to)
        {
            return null;
        }

        if (from.Quantity?.Against(to.Quantity!) > 0 || from.Date > to.Date)
        {
            faults.Add(ReadingFaults.EndsReversed(node.Place));
        }

        return new(from, to);
    }

    private Limit? Limit(Node node, bool included)
    {
        if (Values.Single(node, faults) is not { } text)
        {
            return null;
        }

        if (named.Kind == QuestionKind.Date)
        {
            return Dates.Read(text, node.Place, faults) is { } date ? new(null, date, included) : null;
        }

        return QuantityText.Read(text, named.Unit ?? Unit.One, node.Place, faults) is { } amount ? new(amount.Quantity, null, included) : null;
    }
}
