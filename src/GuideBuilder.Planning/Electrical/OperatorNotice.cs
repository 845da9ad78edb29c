namespace GuideBuilder.Planning.Electrical;

/// <summary>What the network operator wants before a charger or a heat pump is fitted.</summary>
public enum OperatorNotice
{
    /// <summary>The demand is not known.</summary>
    NotKnown,

    /// <summary>Fit it, and tell the operator within the days of row notify-threshold.</summary>
    TellAfterwards,

    /// <summary>Something about the service is in doubt, or the demand is over the main fuse: ask before fitting.</summary>
    AskFirst,

    /// <summary>Apply, and fit it only after the answer.</summary>
    ApplyFirst,
}

/// <summary>Decides which notice falls due.</summary>
public static class OperatorNotices
{
    /// <summary>The notice for a new demand in amps on the most loaded line. A main fuse, loop or worry that is not known (null) counts as in doubt. The threshold itself still counts as under it. Source: process of one operator and the form of the Energy Networks Association, row notify-threshold.</summary>
    public static OperatorNotice For(ElectricalFigures figures, Quantity? demand, Quantity? fuse, bool? looped, bool? worryAboutEquipment)
    {
        var (amps, mainFuse, threshold) = (figures.Amps(demand), figures.Amps(fuse), figures.In("notify-threshold", "apply-above", "A"));
        return amps is null || threshold is null ? OperatorNotice.NotKnown
            : amps > threshold ? OperatorNotice.ApplyFirst
            : mainFuse is null || amps > mainFuse || looped != false || worryAboutEquipment != false ? OperatorNotice.AskFirst
            : OperatorNotice.TellAfterwards;
    }
}
