namespace GuideBuilder.Reading;

/// <summary>Finds the right word that a person most probably meant.</summary>
internal static class Nearest
{
    private const int LongestCompared = 80;

    /// <summary>The candidate with the fewest slips (a letter too many, missing, wrong, or two swapped) from the word, if they are few for its length; the ordinal first among equals; else null.</summary>
    public static string? To(string word, IEnumerable<string> candidates)
    {
        var most = Math.Max(1, word.Length / 3);
        return word.Length > LongestCompared
            ? null
            : candidates
                .Where(c => Math.Abs(c.Length - word.Length) <= most)
                .Select(c => (Word: c, Slips: Slips(word.ToLowerInvariant(), c.ToLowerInvariant())))
                .Where(c => c.Slips <= most)
                .OrderBy(c => c.Slips).ThenBy(c => c.Word, StringComparer.Ordinal)
                .Select(c => c.Word)
                .FirstOrDefault();
    }

    /// <summary>Damerau-Levenshtein distance in its restricted form (no piece is changed twice). Source: Damerau, Communications of the ACM 7 (3), 1964 (from memory).</summary>
    public static int Slips(string one, string other)
    {
        var d = new int[one.Length + 1, other.Length + 1];
        for (var i = 0; i <= one.Length; i++)
        {
            for (var j = 0; j <= other.Length; j++)
            {
                d[i, j] = i == 0 || j == 0 ? i + j : Step(d, one, other, i, j);
            }
        }

        return d[one.Length, other.Length];
    }

    private static int Step(int[,] d, string one, string other, int i, int j)
    {
        var wrong = d[i - 1, j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1);
        var best = Math.Min(wrong, Math.Min(d[i - 1, j], d[i, j - 1]) + 1);
        var swapped = i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1];
        return swapped ? Math.Min(best, d[i - 2, j - 2] + 1) : best;
    }
}
