using System.Text.RegularExpressions;

namespace GuideBuilder.Rendering.Pages;

/// <summary>The two colours of an imprint as rules of the stylesheet, each brought to enough contrast with the paper, which is said.</summary>
internal static partial class ImprintLook
{
    // WCAG 2.2, 1.4.3 and 1.4.11.
    private const double ForText = 4.5;
    private const double ForMarks = 3;

    /// <summary>The rules; nothing where there is no imprint or it names no colour.</summary>
    internal static string Of(Guidance guidance, FaultList faults)
    {
        if (guidance.Imprint?.Colours is not { } colours || (colours.Links ?? colours.Rules) is null)
        {
            return "";
        }

        // The look names its paper twice: in light, then in dark.
        var papers = Paper().Matches(guidance.Look.Files["stylesheet.css"].Words).Select(m => m.Groups[1].Value).Take(2).ToList();
        if (papers.Count < 2)
        {
            faults.Add(RenderingFaults.PaperNotNamed());
            return "";
        }

        return $$"""

            :root {
            {{Rules(colours, papers[0], faults)}}}

            @media screen and (prefers-color-scheme: dark) {
              :root {
            {{Rules(colours, papers[1], null)}}  }
            }

            """.ReplaceLineEndings("\n");
    }

    // What is put right for dark screens needs no telling: every colour that is chosen for white paper is.
    private static string Rules(ImprintColours colours, string paper, FaultList? faults) =>
        Rule("link", colours.Links, paper, ForText, faults) + Rule("rule", colours.Rules, paper, ForMarks, faults);

    private static string Rule(string name, Sourced<string>? colour, string paper, double least, FaultList? faults)
    {
        if (colour is null)
        {
            return "";
        }

        var enough = Contrast.Enough(colour.Value, paper, least);
        if (enough != colour.Value)
        {
            faults?.Add(RenderingFaults.ColourPutRight(colour.Place, colour.Value, Contrast.Ratio(colour.Value, paper), enough));
        }

        return $"  --{name}: {enough};\n";
    }

    [GeneratedRegex("--paper: (#[0-9a-f]{6});")]
    private static partial Regex Paper();
}
