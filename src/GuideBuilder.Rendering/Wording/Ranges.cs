namespace GuideBuilder.Rendering.Wording;

/// <summary>Writes uncertain amounts: always from a low to a high, with the likely between.</summary>
internal sealed class Ranges
{
    private readonly Phrases _phrases;

    internal Ranges(Phrases phrases) => _phrases = phrases;

    /// <summary>From £1,400 to £3,100, most likely £2,050.</summary>
    internal string Money(ThreePoint sums, Unit currency) => Say("", sums, s => Figures.Rough(s, currency));

    /// <summary>From £1,400 to £3,100, where the likely sum stands beside it.</summary>
    internal string Ends(ThreePoint sums, Unit currency) => sums.Low == sums.High
        ? Figures.Rough(sums.Low, currency)
        : _phrases.Say("from-to", ("0", Figures.Rough(sums.Low, currency)), ("1", Figures.Rough(sums.High, currency)));

    /// <summary>What trials come to, rounded outward to two figures: from £1,400 to £3,100, as likely under £2,100 as over it. One sum where it is certain.</summary>
    internal string Total(ThreePoint sums, Unit currency) => sums.Low == sums.High ? Figures.Exact(sums.Low, currency) : _phrases.Say(
        "figure-chance",
        ("from", Figures.Exact(Figures.Down(sums.Low), currency)),
        ("to", Figures.Exact(Figures.Up(sums.High), currency)),
        ("middle", Figures.Exact(Figures.Near(sums.Likely), currency)));

    /// <summary>The same in few words, for a cell of a table: from £1,400 to £3,100, half of them under £2,100.</summary>
    internal string Half(ThreePoint sums, Unit currency) => sums.Low == sums.High ? Figures.Exact(sums.Low, currency) : _phrases.Say(
        "figure-half",
        ("from", Figures.Exact(Figures.Down(sums.Low), currency)),
        ("to", Figures.Exact(Figures.Up(sums.High), currency)),
        ("middle", Figures.Exact(Figures.Near(sums.Likely), currency)));

    /// <summary>From 3¼ to 10½ hours, most likely 5.</summary>
    internal string Hours(ThreePoint hours) => Say("hour", hours, Figures.Hours);

    /// <summary>An amount of days or hours in whichever unit it is counted.</summary>
    internal string Of(Model.Duration takes) => Say(UnitName(takes.Unit), takes.Amount, takes.Unit == DayCount.Hours ? Figures.Hours : Figures.Plain);

    private static string UnitName(DayCount unit) => unit switch
    {
        DayCount.WorkingDays => "working-day",
        DayCount.CalendarDays => "calendar-day",
        DayCount.Hours => "hour",
        _ => throw new UnreachableException(),
    };

    // The unit stands after the range's own figures: from 3 to 6 hours, most likely 4.
    private string Say(string unit, ThreePoint amount, Func<decimal, string> write)
    {
        var (low, likely, high) = (write(amount.Low), write(amount.Likely), write(amount.High));
        var name = unit.Length == 0 ? "" : " " + _phrases.Count($"unit-{unit}", amount.High);
        return low == high ? low + name
            : likely == low || likely == high ? _phrases.Say("from-to", ("0", low), ("1", high + name))
            : _phrases.Say("range-likely", ("from", low), ("to", high + name), ("likely", likely));
    }
}
