using System.Text.RegularExpressions;

namespace GuideBuilder.Reading;

/// <summary>Sums of money: whole, or with two places, and whether VAT is in them.</summary>
internal static partial class Money
{
    private static readonly FrozenDictionary<string, VatBasis> Words = new Dictionary<string, VatBasis>(StringComparer.OrdinalIgnoreCase)
    {
        ["inc VAT"] = VatBasis.Including, ["incl VAT"] = VatBasis.Including, ["inc. VAT"] = VatBasis.Including, ["incl. VAT"] = VatBasis.Including,
        ["including VAT"] = VatBasis.Including, ["ex VAT"] = VatBasis.Excluding, ["excl VAT"] = VatBasis.Excluding, ["excl. VAT"] = VatBasis.Excluding,
        ["excluding VAT"] = VatBasis.Excluding, ["plus VAT"] = VatBasis.Excluding, ["+ VAT"] = VatBasis.Excluding, ["outside VAT"] = VatBasis.Outside,
        ["no VAT"] = VatBasis.Outside,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether a unit is a currency.</summary>
    public static bool IsMoney(Unit unit) => unit.Dimension is Dimension.Pounds or Dimension.Euros;

    /// <summary>What the words after a sum say of VAT, or null when they say something else.</summary>
    public static VatBasis? Basis(string words) => Words.TryGetValue(words.Trim(), out var basis) ? basis : null;

    /// <summary>The sum in what follows the currency sign, or null with the fault added.</summary>
    public static Value.Amount? Read(string text, Unit currency, Unit asked, Place place, FaultList faults)
    {
        var match = NumberAndWords().Match(text.Trim());
        var number = match.Groups["number"].Value;
        var words = match.Groups["words"].Value;
        var before = faults.Count;
        var amount = Numbers.Read(number, out var right);
        if (amount is null)
        {
            faults.Add(ReadingFaults.NotANumber(place, number, right));
        }
        else if (currency != asked)
        {
            faults.Add(ReadingFaults.WrongDimension(place, currency, asked));
        }
        else if (number.IndexOf('.', StringComparison.Ordinal) is var point && point >= 0 && number.Length - point != 3)
        {
            faults.Add(ReadingFaults.PenceNotTwo(place, text.Trim()));
        }

        if (words.Length > 0 && Basis(words) is null)
        {
            faults.Add(ReadingFaults.NotAVatBasis(place, words));
        }

        return faults.Count == before ? new(new Quantity(amount!.Value, currency), Basis(words) ?? VatBasis.NotStated) : null;
    }

    [GeneratedRegex(@"\A(?<number>\S*)\s*(?<words>.*)\z", RegexOptions.Singleline)]
    private static partial Regex NumberAndWords();
}
