using System.Globalization;
using System.Text.RegularExpressions;

namespace GuideBuilder.Reading;

/// <summary>Numbers as a careful person writes them: ordinary digits, a point for decimals, commas only between groups of three.</summary>
internal static partial class Numbers
{
    /// <summary>The number, or null and what would be right.</summary>
    public static decimal? Read(string text, out string right)
    {
        right = "";
        if (Plain().IsMatch(text))
        {
            return decimal.Parse(text.Replace(",", "", StringComparison.Ordinal), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        }

        right = WhatIsRight(text);
        return null;
    }

    private static string WhatIsRight(string text) => text switch
    {
        _ when TooManyDigits().IsMatch(text) => "At most 12 digits before the point and 9 after it are read.",
        _ when LeadingZero().IsMatch(text) => "Write it without the zero in front.",
        _ when Underscores().IsMatch(text) => $"Write {text.Replace("_", "", StringComparison.Ordinal)}.",
        _ when Colons().IsMatch(text) => "Write one number; for a time of two units, say 1 hour 30 minutes.",
        _ when OtherBase().IsMatch(text) => "Write it in ordinary digits.",
        _ when Exponent().IsMatch(text) => "Write it out in full, without e.",
        _ when NotFinite().IsMatch(text) => "Write an ordinary number.",
        _ when DecimalComma().IsMatch(text) => $"Write {text.Replace(',', '.')} with a point, or commas between groups of three digits.",
        _ when BarePoint().IsMatch(text) => "Write a digit on both sides of the point.",
        _ when PlusSign().IsMatch(text) => $"Write {text[1..]} without the sign.",
        _ => "Write it in digits, such as 12 or 12.5.",
    };

    [GeneratedRegex(@"\A-?(0|[1-9][0-9]{0,11}|[1-9][0-9]{0,2}(,[0-9]{3}){1,3})(\.[0-9]{1,9})?\z")]
    private static partial Regex Plain();

    [GeneratedRegex(@"\A-?[0-9,]{13,}(\.[0-9]*)?\z|\A-?[0-9,]+\.[0-9]{10,}\z")]
    private static partial Regex TooManyDigits();

    [GeneratedRegex(@"\A-?0[0-9]+(\.[0-9]+)?\z")]
    private static partial Regex LeadingZero();

    [GeneratedRegex(@"\A-?[0-9][0-9_]*_[0-9_]*\z")]
    private static partial Regex Underscores();

    [GeneratedRegex(@"\A-?[0-9]+(:[0-9]+)+\z")]
    private static partial Regex Colons();

    [GeneratedRegex(@"\A-?0[xXoObB][0-9a-fA-F]+\z")]
    private static partial Regex OtherBase();

    [GeneratedRegex(@"\A[-+]?[0-9.]+[eE][-+]?[0-9]+\z")]
    private static partial Regex Exponent();

    [GeneratedRegex(@"\A[-+]?\.?(nan|inf|infinity)\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex NotFinite();

    [GeneratedRegex(@"\A-?[0-9]+,[0-9]+\z")]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"\A-?([0-9]+\.|\.[0-9]+)\z")]
    private static partial Regex BarePoint();

    [GeneratedRegex(@"\A\+[0-9]+(\.[0-9]+)?\z")]
    private static partial Regex PlusSign();
}
