using GuideBuilder.Model;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

/// <summary>What the electrical checks share: the figures of content/, short ways to write quantities, and the sources they cite.</summary>
internal static class ElectricalCase
{
    public const string Subject = "electrical";
    public const string TradeBodyDemand = "A trade body's answer to a question on maximum demand (Voltimum)";
    public const string CircuitList = "An electrician's list of circuits, complete and consistent in its sums (discussion among electricians)";
    public const string DoubleDiversity = "A worked cable selection whose writer diversifies twice: its arithmetic only (discussion among electricians)";
    public const string Contractor = "How we design (Birmingham Electrics)";
    public const string ElectriciansGuide = "The Electrician's Guide, 5th edition, example 6.1";
    public const string TableH2 = "Table H2 of IET Guidance Note 1, worked out apart";
    public const string Notice = "Heat pump and vehicle installation process (Northern Powergrid, Energy Networks Association)";
    public const string Ohm = "Ohm's law at the nominal voltages";
    public const string Textbook = "Basic Electrical Installation Work, 17th edition, pages 251 to 302";
    public const string Factors = "Summary and tables of the wiring regulations, 1992";
    public const string Table4D1A = "Table 4D1A of BS 7671";
    public const string Table4D4A = "Table 4D4A of BS 7671";
    public const string Table4D5 = "Table 4D5 of BS 7671";
    public const string Table4E4A = "Tables 4E4A and 4E4B of BS 7671 (RM Electrical; catalogue of Electric Center)";
    public const string Drop = "Voltage drop, 17th edition (AA Electrical Services)";
    public const string Iec60228 = "IEC 60228 (UE Cables), against table 4E4B";
    public const string Cooler = "BS 7671 appendix 4, section 6.1";
    public const string Guide2008 = "Guide to the Wiring Regulations, 17th edition, appendices 3 and 4";
    public const string TestNotes = "Useful information for inspection and testing, an R1 + R2 example (discussion among electricians)";
    public const string LoopSum = "Zs = Ze + R1 + R2 over tabled resistances, worked out apart";
    public const string Article100 = "Maximum Zs for a 100 A BS 88-3 main fuse (The Regs, 2018)";
    public const string FuseStandards = "New fuse standards and the maximum Zs tables (My Local Electrician; Wiring Matters, spring 2011)";
    public const string EightyPerCent = "Connections, spring 2015, page 61 (NICEIC)";
    public const string ArmourTalk = "Armour as protective conductor (discussion among electricians)";
    public const string AdiabaticTalk = "Adiabatic calculation confirmed (discussion among electricians)";
    public const string AdiabaticSum = "Regulation 543.1.3 with k of pocket guide 14 (NICEIC), worked out apart";
    public const string Tables547 = "Protective conductor sizes, tables 54.7 and 54.8 (The Regs; study notes on chapter 54)";
    public const string Pocket13 = "Pocket guide 13, main bonding (NICEIC)";
    public const string TestingAdvice = "Advice on testing of own-rod earthing (discussion among electricians)";
    public const string OnSiteGuide78 = "On-Site Guide, page 78, as quoted (discussion on electrodes)";
    public const string Bs7430 = "BS 7430, a rod in even soil";
    public const string OpenNeutralSum = "Circuit analysis of a broken combined neutral, worked out apart";
    public const string LawsonFuses = "Application guidance on discrimination (Lawson Fuses)";
    public const string TailsAdvice = "Connections, autumn 2017, page 43 (NICEIC), with common advice on 2 m";

    public static readonly ElectricalFigures Figures = ElectricalFigures.From(Content.Guidance.Tables);

    public static Quantity Amps(decimal amount) => Quantity.Of(amount, "A");

    public static Quantity Kilowatts(decimal amount) => Quantity.Of(amount, "kW");

    public static Quantity Metres(decimal amount) => Quantity.Of(amount, "m");

    public static Quantity Size(decimal amount) => Quantity.Of(amount, "mm²");

    public static Quantity Ohms(decimal amount) => Quantity.Of(amount, "Ω");

    public static Quantity Volts(decimal amount) => Quantity.Of(amount, "V");

    public static Quantity PerMetre(decimal amount) => Quantity.Of(amount, "mΩ/m");

    public static Quantity OfPower(decimal kilowatts, decimal volts = 230) => Power.Current(Figures, Kilowatts(kilowatts), Phases.One, Volts(volts))!;

    /// <summary>What loads of one kind count for.</summary>
    public static Quantity? Counts(LoadKind kind, bool socket, params decimal[] amps) =>
        Diversity.Allowance(Figures, Premises.Household, kind, amps.Select((a, i) => new Load("load", kind, Amps(a), socket && i == 0)));

    public static Load Of(LoadKind kind, decimal amps, Line line = Line.First, bool socket = false) => new(kind.ToString(), kind, Amps(amps), socket, line);

    /// <summary>Within a tolerance, in the unit of the quantity.</summary>
    public static void Near(decimal expected, Quantity? actual, decimal tolerance)
    {
        Assert.NotNull(actual);
        Near(expected, actual.Amount, tolerance);
    }

    public static void Near(decimal expected, decimal? actual, decimal tolerance)
    {
        Assert.NotNull(actual);
        Assert.InRange(actual.Value, expected - tolerance, expected + tolerance);
    }
}
