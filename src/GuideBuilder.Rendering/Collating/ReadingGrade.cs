using System.Text.RegularExpressions;

namespace GuideBuilder.Rendering.Collating;

/// <summary>How hard a text is to read, in school years by the counts of Flesch and Kincaid. Syllables are counted by rule and not by dictionary, so a grade is a hint and no more.</summary>
internal static partial class ReadingGrade
{
    private static readonly ImmutableArray<string> Silent = ["es", "ed", "e"];

    /// <summary>The grade and how many words it rests on: 0.39 words a sentence + 11.8 syllables a word - 15.59. Source: Kincaid and others, Research Branch Report 8-75, 1975 (from memory).</summary>
    internal static (double Grade, int Words) Of(string text)
    {
        var words = Word().Matches(text).Select(m => m.Value).ToArray();
        var sentences = SentenceEnd().Split(text).Count(s => Word().IsMatch(s));
        return words.Length == 0 ? (0, 0) : ((0.39 * words.Length / sentences) + (11.8 * words.Sum(Syllables) / words.Length) - 15.59, words.Length);
    }

    // Groups of vowels, less an end that is not spoken; a figure is one syllable.
    private static int Syllables(string word)
    {
        var letters = NoLetter().Replace(word.ToLowerInvariant(), "");
        if (letters.Length <= 3 || word.Any(char.IsDigit))
        {
            return 1;
        }

        var spoken = Silent.FirstOrDefault(s => letters.EndsWith(s, StringComparison.Ordinal) && !IsSpoken(letters, s)) is { } end ? letters[..^end.Length] : letters;
        return Math.Max(1, Vowels().Count(spoken));
    }

    // "le" after a consonant, "ted" and "ded", and "es" after a hiss are heard.
    private static bool IsSpoken(string letters, string end) => end switch
    {
        "e" => HeardE().IsMatch(letters),
        "ed" => letters.EndsWith("ted", StringComparison.Ordinal) || letters.EndsWith("ded", StringComparison.Ordinal),
        _ => HeardEs().IsMatch(letters),
    };

    [GeneratedRegex(@"[\p{L}\p{N}][\p{L}\p{N}'’£€.,/-]*[\p{L}\p{N}]|[\p{L}\p{N}]")]
    private static partial Regex Word();

    [GeneratedRegex(@"[.!?:;]+(?=\s|$)|\n")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex("[^a-z]")]
    private static partial Regex NoLetter();

    [GeneratedRegex("[aeiouy]+")]
    private static partial Regex Vowels();

    [GeneratedRegex("[^aeiouy]le$")]
    private static partial Regex HeardE();

    [GeneratedRegex("([sxz]|ch|sh|c|g|[^aeiouy]l)es$")]
    private static partial Regex HeardEs();
}
