using System.Security.Cryptography;
using System.Text;

namespace GuideBuilder.Rendering;

/// <summary>Short marks of the texts that keep people alive. A text that is changed has another mark.</summary>
public static class CautionMarks
{
    /// <summary>The severity at which somebody can die.</summary>
    public const int Fatal = 5;

    private const int Digits = 8;

    private static readonly ImmutableArray<string> Numbers = ["network-emergency", "emergency-services", "gas-emergency", "supplier-meter-emergency", "independent-network-emergency"];

    /// <summary>The mark of a hazard's whole text.</summary>
    public static string Of(Hazard hazard) => Of(
    [
        hazard.Title, hazard.Cause, hazard.Harm, hazard.People, hazard.WhenItArises, hazard.StopWhen, .. hazard.Controls.Select(c => c.What),
    ]);

    /// <summary>The mark of an emergency number of a nation; of a number that it has not, that of no words.</summary>
    public static string Of(Nation nation, string body) => Of([nation.Bodies.GetValueOrDefault(body, LocalText.Empty)]);

    /// <summary>The names of the emergency numbers.</summary>
    public static ImmutableArray<string> Bodies => Numbers;

    /// <summary>The marks of a plan: of its hazards that can kill, by id, then of its nation's emergency numbers.</summary>
    internal static ImmutableArray<KeyValuePair<string, string>> Of(Plan plan) =>
    [
        .. plan.Hazards.Where(h => h.Hazard.IsPresent && h.Hazard.Item.Before.Severity == Fatal).Select(h => KeyValuePair.Create(h.Hazard.Item.Id, Of(h.Hazard.Item))),
        .. Numbers.Where(plan.Nation.Bodies.ContainsKey).Select(n => KeyValuePair.Create($"{plan.Nation.Id}/{n}", Of(plan.Nation, n))),
    ];

    private static string Of(IEnumerable<LocalText> texts) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', texts.Select(t => t.Words)))))[..Digits];
}
