using System.Text.RegularExpressions;

namespace GuideBuilder.Reading;

/// <summary>Whether each emergency number was read in a source that somebody has opened, and on a day that is known.</summary>
internal static partial class NumberChecks
{
    private const string Urgent = "emergency";

    /// <summary>Adds a fault for each number that a nation prints without having read it.</summary>
    public static void Run(Guidance guidance, FaultList faults)
    {
        foreach (var nation in guidance.Nations)
        {
            var read = nation.Numbers.Where(n => IsRead(guidance, n)).Select(n => n.Number).ToFrozenSet(StringComparer.Ordinal);
            foreach (var number in nation.Numbers.Where(n => !read.Contains(n.Number)))
            {
                faults.Add(ReadingFaults.NumberFromMemory(number.Place, number.Number, number.Source));
            }

            foreach (var (words, number) in Printed(nation).Where(p => nation.Numbers.All(n => n.Number != p.Number)))
            {
                faults.Add(ReadingFaults.NumberWithoutSource(words.Place, number));
            }
        }
    }

    private static bool IsRead(Guidance guidance, EmergencyNumber number) =>
        guidance.Sources.FirstOrDefault(s => s.Id == number.Source) is null or { Mark: Mark.Read, Checked: not null };

    private static IEnumerable<(LocalText Words, string Number)> Printed(Nation nation) =>
        from body in nation.Bodies.OrderBy(b => b.Key, StringComparer.Ordinal)
        where body.Key.Contains(Urgent, StringComparison.Ordinal)
        from Match found in Digits().Matches(body.Value.Words)
        select (body.Value, found.Value);

    [GeneratedRegex(@"\d[\d ]*\d")]
    private static partial Regex Digits();
}
