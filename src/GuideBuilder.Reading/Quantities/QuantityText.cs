using System.Text.RegularExpressions;

namespace GuideBuilder.Reading;

/// <summary>Quantities as people write them: 4 m, 13 ft, 5 ft 6 in, 90 days, £1,180 inc VAT; a bare number is in the unit that was asked for.</summary>
internal static partial class QuantityText
{
    /// <summary>The quantity in a text, or null with the fault added. Two parts (5 ft 6 in) come out in the smaller unit, which is exact.</summary>
    public static Value.Amount? Read(string text, Unit asked, Place place, FaultList faults)
    {
        var trimmed = text.Trim();
        if (trimmed.Length > 0 && Unit.Find(trimmed[..1]) is { Dimension: Dimension.Pounds or Dimension.Euros } currency)
        {
            return Money.Read(trimmed[1..], currency, asked, place, faults);
        }

        var parts = Split(trimmed);
        if (parts.Count == 0)
        {
            faults.Add(ReadingFaults.NotAQuantity(place, text, asked));
            return null;
        }

        var read = parts.Select(p => Part(p.Number, p.Unit, parts.Count == 1, asked, place, faults)).ToList();
        return read.Contains(null) ? null : Join([.. read.Select(r => r!)], text, place, faults);
    }

    /// <summary>The quantity in a text that may be anything, in whichever unit it names; null when it is not one.</summary>
    public static Quantity? TryRead(string text)
    {
        var trimmed = text.Trim();
        var parts = Split(trimmed);
        var unit = trimmed.Length > 0 && Unit.Find(trimmed[..1]) is { } currency && Money.IsMoney(currency) ? currency
            : parts.Count > 0 ? Unit.Find(parts[^1].Unit)
            : null;
        return unit is null ? null : Read(trimmed, unit, Place.None, new FaultList())?.Quantity;
    }

    private static Value.Amount? Part(string number, string unit, bool alone, Unit asked, Place place, FaultList faults)
    {
        if (alone && Money.IsMoney(asked) && (unit.Length == 0 || Money.Basis(unit) is not null))
        {
            return Money.Read($"{number} {unit}", asked, asked, place, faults);
        }

        var amount = Numbers.Read(number, out var right);
        var found = unit.Length == 0 && alone ? asked : Unit.Find(unit);
        if (amount is null)
        {
            faults.Add(ReadingFaults.NotANumber(place, number, right));
        }

        if (found is null || (unit.Length == 0 && !alone))
        {
            faults.Add(ReadingFaults.UnknownUnit(place, unit, asked));
        }
        else if (found.Dimension != asked.Dimension)
        {
            faults.Add(ReadingFaults.WrongDimension(place, found, asked));
        }
        else if (amount is not null)
        {
            return new(new Quantity(amount.Value, found));
        }

        return null;
    }

    // 5 ft 6 in: units of one kind, each smaller than the one before, the smaller part not making up a larger unit.
    private static Value.Amount? Join(ImmutableArray<Value.Amount> parts, string text, Place place, FaultList faults)
    {
        var quantities = parts.Select(p => p.Quantity).ToList();
        for (var i = 1; i < quantities.Count; i++)
        {
            var (larger, smaller) = (quantities[i - 1], quantities[i]);
            if (larger.Amount != decimal.Truncate(larger.Amount) || larger.Amount < 0 || smaller.Amount < 0 || smaller.Base >= larger.Unit.InBase)
            {
                faults.Add(ReadingFaults.PartsDoNotJoin(place, text));
                return null;
            }
        }

        var last = quantities[^1].Unit;
        return quantities.Count == 1 ? parts[0] : new(new Quantity(decimal.Round(quantities.Sum(q => q.Base) / last.InBase, 9), last));
    }

    // A number runs as far as its own signs; a unit runs to the next digit, and may itself end in one (m2, mm2, m3).
    private static List<(string Number, string Unit)> Split(string text)
    {
        var parts = new List<(string, string)>();
        for (var at = 0; at < text.Length;)
        {
            var number = NumberAt().Match(text, at, text.Length - at);
            var unit = UnitAt().Match(text, at + number.Length, text.Length - at - number.Length);
            if (!number.Success || !unit.Success)
            {
                return [];
            }

            parts.Add((number.Value, unit.Value.Trim()));
            at += number.Length + unit.Length;
        }

        return parts;
    }

    [GeneratedRegex(@"\G(?:[-+]?0[xXoObB][0-9a-fA-F]+|[-+]?[0-9.]+[eE][-+]?[0-9]+|[-+]?\.(?:nan|inf)|[-+]?[0-9.][0-9,._:]*)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex NumberAt();

    [GeneratedRegex(@"\G\s*(?:m?m[23](?![0-9])\s*|[^0-9]*)")]
    private static partial Regex UnitAt();
}
