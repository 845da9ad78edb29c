namespace GuideBuilder.Planning.Electrical;

/// <summary>Whether a fused switch must stand near the meter.</summary>
public enum SwitchFuse
{
    /// <summary>The length or the limit is not known.</summary>
    NotKnown,

    /// <summary>The tails are short enough without.</summary>
    NotNeeded,

    /// <summary>Near the limit, or over what some operators allow: ask.</summary>
    Ask,

    /// <summary>Over the limit. A plain isolator does not do: it has no fuse.</summary>
    Needed,
}

/// <summary>The customer's tails between meter and fuse box. Source: BS 7671 regulations 433.2.2, 433.3.1 and 434.2.1 as read by the trade; operators set their own limit.</summary>
public static class Tails
{
    /// <summary>Whether tails of that length of route (0 to 1,000 m) need a fused switch. The operator's own limit, where it is known, is held against with the margin of row close-margin; else row tails-limit-usual counts, with its lower length from which to ask.</summary>
    public static SwitchFuse Need(ElectricalFigures figures, Quantity? length, Quantity? operatorsLimit)
    {
        var verdict = Limits.AtMost(figures, figures.Metres(length).Of("m"), operatorsLimit is null ? Usual(figures) : figures.Metres(operatorsLimit).Of("m"));
        var ask = operatorsLimit is null ? length?.AmountIn("m") > figures.In("tails-limit-usual", "ask-above", "m") : verdict == LimitVerdict.TooCloseToCall;
        return verdict switch
        {
            LimitVerdict.NotKnown => SwitchFuse.NotKnown,
            LimitVerdict.Over => SwitchFuse.Needed,
            _ => ask ? SwitchFuse.Ask : SwitchFuse.NotNeeded,
        };
    }

    /// <summary>The usual limit in metres: confirm it with the operator.</summary>
    public static Quantity? Usual(ElectricalFigures figures) => figures.Quantity("tails-limit-usual", "length");

    /// <summary>Whether tails of that size carry what the main fuse lets through, laid in that way: true, false, or null where the table has no rating or the fuse is out of range. Equality counts.</summary>
    public static bool? Carry(ElectricalFigures figures, Quantity size, LayingMethod method, Phases phases, Quantity fuse) =>
        (figures.Amps(fuse), new Cable(CableFamily.Tails, size).Rating(figures, method, phases)?.AmountIn("A")) is ({ } wanted, { } carried) ? wanted <= carried : null;
}
