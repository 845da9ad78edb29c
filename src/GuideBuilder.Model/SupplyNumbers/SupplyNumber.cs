namespace GuideBuilder.Model;

/// <summary>A supply number as somebody wrote it, taken apart. That it adds up does not show that it is the right home's.</summary>
public sealed record SupplyNumber(SupplyNumberKind Kind, SupplyNumberFlaw Flaw)
{
    /// <summary>The digits that name the supply, without spaces or the top line; empty when there are none.</summary>
    public string Core { get; init; } = "";

    /// <summary>The first two digits of a number of Great Britain: whose network it was when numbers were given out.</summary>
    public string Area { get; init; } = "";

    /// <summary>Whether the area is that of an independent network, from which no region follows.</summary>
    public bool IsIndependent { get; init; }

    /// <summary>Whether a network with that area is known to us. Only a warning, because new ones are given out.</summary>
    public bool IsKnownArea { get; init; } = true;

    /// <summary>The nations (ids) in which such a number is given out; empty when it does not say.</summary>
    public ImmutableArray<string> Nations { get; init; } = [];

    /// <summary>The line printed above the core, or null.</summary>
    public TopLine? Top { get; init; }

    /// <summary>The check digit worked out from the other digits, or null where the kind has none.</summary>
    public CheckDigit? Check { get; init; }

    /// <summary>Whether it begins as most of its kind do. Only a warning where the rule could not be read.</summary>
    public bool BeginsAsUsual { get; init; } = true;

    /// <summary>Whether the number belongs to another nation than the home: a warning, because the answer on the nation wins.</summary>
    public bool IsOutside(string nation) => !Nations.IsEmpty && !Nations.Contains(nation);
}

/// <summary>The line above the core: profile class, then the timeswitch code of three digits (old) or the settlement configuration of four (new), then the loss or tariff class, whose three places may hold letters.</summary>
public sealed record TopLine(string ProfileClass, string Configuration, string Tariff, bool IsBusiness);

/// <summary>How a check digit comes about: the weighted sum of the twelve digits, its remainder, and the digit.</summary>
public sealed record CheckDigit(int Sum, int Remainder, int Digit);

/// <summary>What a number turns out to be.</summary>
public enum SupplyNumberKind
{
    /// <summary>None of the others.</summary>
    NotASupplyNumber,

    /// <summary>An electricity number of Great Britain.</summary>
    ElectricityGreatBritain,

    /// <summary>An electricity number of Northern Ireland.</summary>
    ElectricityNorthernIreland,

    /// <summary>An electricity number of Ireland.</summary>
    ElectricityIreland,

    /// <summary>As long as a gas number.</summary>
    Gas,
}

/// <summary>The first thing wrong with a number.</summary>
public enum SupplyNumberFlaw
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Not as long as any supply number.</summary>
    Length,

    /// <summary>A sign that is no digit where only digits stand.</summary>
    NotDigits,

    /// <summary>First two digits that no network has.</summary>
    UnusedArea,

    /// <summary>A last digit that does not follow from the others.</summary>
    CheckDigit,

    /// <summary>A top line that begins with no known class.</summary>
    ProfileClass,

    /// <summary>The length of a number of Northern Ireland or Ireland, and another beginning.</summary>
    Beginning,
}
