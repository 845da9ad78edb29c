namespace GuideBuilder.Rendering.Wording;

/// <summary>Writes answers and facts as a reader sees them, and keeps back what may not be printed.</summary>
internal sealed class AnswerWords
{
    private readonly Phrases _phrases;
    private readonly Dates _dates;
    private readonly Discretion _may;

    internal AnswerWords(Phrases phrases, Dates dates, Discretion may) => (_phrases, _dates, _may) = (phrases, dates, may);

    /// <summary>Whether an answer of that class may be printed here.</summary>
    internal bool MayPrint(DataClass data) => _may.Allows(data);

    /// <summary>The words of a known answer or fact that may be printed; null for any other.</summary>
    internal string? Of(Given given) => given switch
    {
        { Standing: not Standing.Known } or { Value: null } => null,
        _ when !_may.Allows(given) => null,
        Given.Answered answered => Say(answered.Value!, answered.Question),
        _ => Say(given.Value!, null),
    };

    /// <summary>The words of a value; the question, if there is one, gives the wording of its options.</summary>
    internal string Say(Value value, Question? question) => value switch
    {
        Value.Option option => Option(option.Id, question),
        Value.Several { Ids.IsEmpty: true } => _phrases.Say("answer-none"),
        Value.Several several => string.Join("; ", several.Ids.Select(i => Option(i, question))),
        Value.Amount amount => Amount(amount),
        Value.Spread spread => _phrases.Say("from-to", ("0", spread.Lowest.ToString()), ("1", spread.Highest.ToString())),
        Value.Day day => _dates.Long(day.Date),
        Value.Days days => string.Join("; ", days.Spans.Select(s => _dates.Span(s.Start, s.End).PlainWords)),
        Value.Words words => words.Text,
        Value.NumberName number => number.Text,
        _ => throw new UnreachableException(),
    };

    private string Option(string id, Question? question)
    {
        var wording = question?.Options.FirstOrDefault(o => o.Id == id)?.Wording;
        return wording is { IsEmpty: false } ? _phrases.Mark(wording)
            : id is "yes" or "no" ? _phrases.Say($"answer-{id}")
            : id.Replace('-', ' ');
    }

    private string Amount(Value.Amount amount)
    {
        var words = amount.Quantity.Unit.Dimension is Dimension.Pounds or Dimension.Euros
            ? Figures.Exact(amount.Quantity.Amount, amount.Quantity.Unit)
            : (amount.Quantity with { Amount = decimal.Round(amount.Quantity.Amount, 2) }).ToString();
        return amount.Vat == VatBasis.NotStated ? words : $"{words} {_phrases.Say(VatName(amount.Vat))}";
    }

    private static string VatName(VatBasis basis) => basis switch
    {
        VatBasis.Including => "inc-vat",
        VatBasis.Excluding => "ex-vat",
        VatBasis.Outside => "outside-vat",
        _ => throw new UnreachableException(),
    };
}
