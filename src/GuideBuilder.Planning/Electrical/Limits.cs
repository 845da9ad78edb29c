namespace GuideBuilder.Planning.Electrical;

/// <summary>Holds indicative figures against limits.</summary>
public static class Limits
{
    /// <summary>Verdict on a value that should not be more than a limit of the same dimension. Over is over; a value nearer below than the margin (row close-margin) is too close to call. NotKnown if either is null or they measure different things.</summary>
    public static LimitVerdict AtMost(ElectricalFigures figures, Quantity? value, Quantity? limit) =>
        (value, limit, figures.Share("close-margin", "share")) switch
        {
            ({ } v, { } l, { } margin) when v.Unit.Dimension == l.Unit.Dimension => Judge(v.Base, l.Base, margin),
            _ => LimitVerdict.NotKnown,
        };

    private static LimitVerdict Judge(decimal value, decimal limit, decimal margin) =>
        value > limit ? LimitVerdict.Over : value > limit * (1 - margin) ? LimitVerdict.TooCloseToCall : LimitVerdict.Within;
}
