using System.Text.RegularExpressions;

namespace GuideBuilder.Tests.Support;

/// <summary>How hard a text is to read by the counts of Flesch and Kincaid. Syllables are counted by rule and not by dictionary, so a grade is a warning and no more.</summary>
internal static partial class ReadingGrade
{
    private static readonly string[] Silent = ["es", "ed", "e"];

    /// <summary>School years in the United States: 0.39 words a sentence + 11.8 syllables a word - 15.59.</summary>
    public static double Of(int words, int sentences, int syllables) => (0.39 * words / sentences) + (11.8 * syllables / words) - 15.59;

    /// <summary>Reading ease: 206.835 - 1.015 words a sentence - 84.6 syllables a word.</summary>
    public static double EaseOf(int words, int sentences, int syllables) => 206.835 - (1.015 * words / sentences) - (84.6 * syllables / words);

    /// <summary>Words, sentences and syllables of a text. A colon and a semicolon end a sentence too; a figure, and whatever stands in for a name, is one word of one syllable.</summary>
    public static (int Words, int Sentences, int Syllables) Count(string text)
    {
        var words = Word().Matches(text).Select(m => m.Value).ToArray();
        return (words.Length, SentenceEnd().Split(text).Count(s => Word().IsMatch(s)), words.Sum(Syllables));
    }

    /// <summary>Groups of vowels, less an end that is not spoken.</summary>
    public static int Syllables(string word)
    {
        var letters = NoLetter().Replace(word.ToLowerInvariant(), "");
        if (letters.Length <= 3 || word.Any(char.IsDigit))
        {
            return 1;
        }

        var spoken = Silent.FirstOrDefault(s => letters.EndsWith(s, StringComparison.Ordinal) && !Spoken(letters, s)) is { } end ? letters[..^end.Length] : letters;
        return Math.Max(1, Vowels().Count(spoken));
    }

    // "le" after a consonant, "ted" and "ded", and "es" after a hiss are heard.
    private static bool Spoken(string letters, string end) => end switch
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
