namespace GuideBuilder.Model;

/// <summary>Takes supply numbers apart by the rows supply-… of the table networks. Source: published explanations of the number and of its check digit; NIE Networks; CRU.</summary>
public static class SupplyNumbers
{
    private const string Table = "networks";

    /// <summary>The number in a text with or without spaces, hyphens, a leading S and its top line, for a home in that nation (null: not known). Null where the tables lack the rules.</summary>
    public static SupplyNumber? Read(string text, string? nation, Tables tables)
    {
        var row = (string id) => tables.Rows.FirstOrDefault(r => r.Table == Table && r.Id == id);
        if (row("supply-gb") is not { } britain || row("supply-northern-ireland") is not { } north || row("supply-ireland") is not { } ireland || row("supply-gas") is not { } gas)
        {
            return null;
        }

        var written = Tidy(text);
        if (written.Length == Number(north, "digits") && written.All(char.IsAsciiDigit))
        {
            return OfIsland(written, nation, north, ireland);
        }

        return IsLengthOf(britain, written) ? OfBritain(written, britain, row)
            : new(written.All(char.IsAsciiDigit) && written.Length >= Number(gas, "least-digits") && written.Length <= Number(gas, "most-digits") ? SupplyNumberKind.Gas : SupplyNumberKind.NotASupplyNumber, SupplyNumberFlaw.Length);
    }

    /// <summary>The check digit of the first twelve digits of a core: each times its weight, the sum's remainder, and its last digit. Null unless there are twelve digits or more and as many weights.</summary>
    public static CheckDigit? CheckDigitOf(string core, Tables tables) =>
        tables.Rows.FirstOrDefault(r => r.Table == Table && r.Id == "supply-gb") is { } row ? CheckDigitOf(core, row) : null;

    private static string Tidy(string text)
    {
        var kept = string.Concat(text.Where(c => !char.IsWhiteSpace(c) && c is not ('-' or '.' or '/'))).ToUpperInvariant();
        return kept.StartsWith('S') ? kept[1..] : kept;
    }

    private static bool IsLengthOf(TableRow britain, string written) =>
        written.Length == Number(britain, "digits") || written.Length == Number(britain, "old-length") || written.Length == Number(britain, "new-length");

    // Eleven digits belong to Northern Ireland or to Ireland: the home's nation decides, else the beginning.
    private static SupplyNumber OfIsland(string written, string? nation, TableRow north, TableRow ireland)
    {
        var beginsNorth = written.StartsWith(Words(north, "begins"), StringComparison.Ordinal);
        var isNorth = nation == "northern-ireland" || (nation != "ireland" && beginsNorth);
        return isNorth && !beginsNorth
            ? new(SupplyNumberKind.NotASupplyNumber, SupplyNumberFlaw.Beginning)
            : new(isNorth ? SupplyNumberKind.ElectricityNorthernIreland : SupplyNumberKind.ElectricityIreland, SupplyNumberFlaw.None)
            {
                Core = written,
                Nations = List(beginsNorth ? north : ireland, "nations"),
                BeginsAsUsual = isNorth || written.StartsWith(Words(ireland, "usually-begins"), StringComparison.Ordinal),
            };
    }

    private static SupplyNumber OfBritain(string written, TableRow britain, Func<string, TableRow?> row)
    {
        var core = written[^(int)Number(britain, "digits")!.Value..];
        if (!core.All(char.IsAsciiDigit))
        {
            return new(SupplyNumberKind.NotASupplyNumber, SupplyNumberFlaw.NotDigits);
        }

        var (top, area, check) = (TopOf(written[..^core.Length], britain), core[..2], CheckDigitOf(core, britain));
        var flaw = Digits(area) < Number(britain, "least-area") ? SupplyNumberFlaw.UnusedArea
            : check?.Digit != core[^1] - '0' ? SupplyNumberFlaw.CheckDigit
            : top is not null && !List(britain, "profile-classes").Contains(top.ProfileClass) ? SupplyNumberFlaw.ProfileClass
            : top is not null && !top.Configuration.All(char.IsAsciiDigit) ? SupplyNumberFlaw.NotDigits
            : SupplyNumberFlaw.None;
        var isIndependent = Digits(area) >= Number(britain, "first-independent");
        return new(flaw == SupplyNumberFlaw.None ? SupplyNumberKind.ElectricityGreatBritain : SupplyNumberKind.NotASupplyNumber, flaw)
        {
            Core = core,
            Area = area,
            IsIndependent = isIndependent,
            IsKnownArea = !(Digits(area) > Number(britain, "last-independent")),
            Nations = row("area-" + area) is { } known && !isIndependent ? List(known, "nations") : List(britain, "nations"),
            Top = top,
            Check = check,
        };
    }

    private static TopLine? TopOf(string line, TableRow britain) =>
        line.Length == 0 ? null : new(line[..2], line[2..^3], line[^3..], List(britain, "business-classes").Contains(line[..2]));

    private static CheckDigit? CheckDigitOf(string core, TableRow britain)
    {
        var weights = List(britain, "weights").Select(Digits).ToArray();
        if (core.Length < weights.Length || !core.Take(weights.Length).All(char.IsAsciiDigit) || Number(britain, "modulus") is not { } modulus)
        {
            return null;
        }

        var sum = weights.Select((weight, at) => weight * (core[at] - '0')).Sum();
        var remainder = sum % (int)modulus;
        return new(sum, remainder, remainder % 10);
    }

    private static string Words(TableRow row, string cell) => row.Cells.GetValueOrDefault(cell)?.Words ?? "";

    private static ImmutableArray<string> List(TableRow row, string cell) => [.. Words(row, cell).Split(' ', StringSplitOptions.RemoveEmptyEntries)];

    private static decimal? Number(TableRow row, string cell) => row.Cells.GetValueOrDefault(cell)?.Quantity?.Amount;

    private static int Digits(string digits) => digits.Aggregate(0, (number, digit) => (10 * number) + digit - '0');
}
