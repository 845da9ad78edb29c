namespace GuideBuilder.Model;

/// <summary>What an answer or a fact can be worth: a closed set.</summary>
public abstract record Value
{
    private Value()
    {
    }

    /// <summary>One option of a choice, by id; yes-no questions have the options yes and no.</summary>
    public sealed record Option(string Id) : Value;

    /// <summary>The options that apply, in the question's order; an empty list, written none, is a real answer.</summary>
    public sealed record Several(ImmutableArray<string> Ids) : Value
    {
        /// <summary>The word for an empty list, in answers files and in conditions.</summary>
        public const string None = "none";
    }

    /// <summary>A quantity; for money also how it was stated.</summary>
    public sealed record Amount(Quantity Quantity, VatBasis Vat = VatBasis.NotStated) : Value;

    /// <summary>A quantity known only to lie between two values of one dimension, ends included; read off the finished plan.</summary>
    public sealed record Spread(Quantity Lowest, Quantity Highest) : Value;

    /// <summary>A calendar date.</summary>
    public sealed record Day(LocalDate Date) : Value;

    /// <summary>Spans of days, ends included, in written order.</summary>
    public sealed record Days(ImmutableArray<DateInterval> Spans) : Value;

    /// <summary>A person's own words, one line or more, never markup.</summary>
    public sealed record Words(string Text) : Value;

    /// <summary>A number that is a name (a supply number, a reference): digits kept as written.</summary>
    public sealed record NumberName(string Text) : Value;

    /// <summary>Yes or no as an option.</summary>
    public static Value YesNo(bool yes) => new Option(yes ? "yes" : "no");
}
