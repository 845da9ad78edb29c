namespace GuideBuilder.Reading;

internal static partial class ReadingFaults
{
    /// <summary>A number as long as a gas number. Example: <c>supply-number: 8123456789</c>.</summary>
    public static Fault LooksLikeGas(Place place) =>
        Warning("HB1100", place, "This looks like a gas number.", "Copy the number from the electricity bill: 13 digits, or 11 in Northern Ireland and Ireland.");

    /// <summary>A number that no electricity supply has. Example: <c>supply-number: 2012345678987</c>, whose last digit is wrong.</summary>
    public static Fault NotASupplyNumber(Place place, SupplyNumberFlaw flaw) =>
        Warning("HB1101", place, $"This is not an electricity supply number: {Wrong(flaw)}.", "Copy it again from the bill. That a number adds up does not show that it is this home's.");

    /// <summary>A number of Ireland that begins otherwise than most. Example: <c>supply-number: 99123456789</c>.</summary>
    public static Fault UnusualBeginning(Place place) =>
        Warning("HB1102", place, "Supply numbers in Ireland usually begin with 10.", "Check it against the bill.");

    /// <summary>A number of another nation than the home. Example: <c>nation: scotland</c> and a number that begins with 12.</summary>
    public static Fault OtherNation(Place place, IEnumerable<string> nations, string nation) =>
        Warning("HB1103", place, $"Numbers that begin so are given out in {string.Join(", ", nations)}, and the home is in {nation}.", "Check both. The nation that is answered counts.");

    /// <summary>First two digits that belong to no network known to us. Example: <c>supply-number: 9912345678906</c>.</summary>
    public static Fault UnknownArea(Place place) =>
        Warning("HB1104", place, "No network with these first two digits is known to us.", "Copy the number again from the bill. If it is right, the supplier can say which network it is.");

    private static string Wrong(SupplyNumberFlaw flaw) => flaw switch
    {
        SupplyNumberFlaw.Length => "it is too long or too short",
        SupplyNumberFlaw.NotDigits => "it holds a sign that is no digit",
        SupplyNumberFlaw.UnusedArea => "no network has its first two digits",
        SupplyNumberFlaw.CheckDigit => "its last digit does not follow from the others",
        SupplyNumberFlaw.ProfileClass => "its first line begins with no known class",
        SupplyNumberFlaw.Beginning => "numbers in Northern Ireland begin with 81",
        _ => throw new UnreachableException(),
    };
}
