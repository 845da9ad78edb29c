using System.Globalization;

namespace GuideBuilder.Rendering.Html;

/// <summary>Contrast of two colours (#rrggbb) after WCAG 2.2, and the nearest colour that has enough of it.</summary>
internal static class Contrast
{
    private const int Steps = 64;

    /// <summary>The ratio, from 1 to 21. Source: WCAG 2.2, relative luminance and contrast ratio.</summary>
    internal static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>The colour, or the nearest mixture of it with black or white that stands out enough from the paper.</summary>
    internal static string Enough(string colour, string paper, double least)
    {
        var end = Luminance(paper) > 0.18 ? 0 : 255;
        for (var step = 0; step < Steps; step++)
        {
            var mixed = Mixed(colour, end, step);
            if (Ratio(mixed, paper) >= least)
            {
                return mixed;
            }
        }

        return Mixed(colour, end, Steps);
    }

    private static string Mixed(string colour, int end, int step) =>
        "#" + string.Concat(Channels(colour).Select(c => (c + ((end - c) * step / Steps)).ToString("x2", CultureInfo.InvariantCulture)));

    private static double Luminance(string colour) => Channels(colour).Select(Linear).Zip([0.2126, 0.7152, 0.0722], (c, share) => c * share).Sum();

    private static double Linear(int channel)
    {
        var share = channel / 255d;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }

    private static int[] Channels(string colour) => [.. Enumerable.Range(0, 3).Select(i => int.Parse(colour.AsSpan(1 + (i * 2), 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture))];
}
