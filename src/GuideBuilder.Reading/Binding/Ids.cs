namespace GuideBuilder.Reading;

/// <summary>The form of ids: lower-case words of a to z and 0 to 9, joined by single hyphens, at most 64 characters.</summary>
internal static class Ids
{
    private const int Longest = 64;

    // Windows keeps these for its devices, whatever the ending; ids become names of files.
    private static readonly FrozenSet<string> Devices = new[] { "con", "prn", "aux", "nul" }
        .Concat(Enumerable.Range(0, 10).SelectMany(n => new[] { Invariant($"com{n}"), Invariant($"lpt{n}") }))
        .ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a word is an id.</summary>
    public static bool IsId(string word) =>
        word.Length is > 0 and <= Longest
        && word[0] != '-' && word[^1] != '-'
        && !word.Contains("--", StringComparison.Ordinal)
        && word.All(c => c is '-' or (>= 'a' and <= 'z') or (>= '0' and <= '9'))
        && !Devices.Contains(word);

    /// <summary>The nearest thing to a word that is an id; may be empty.</summary>
    public static string From(string word, int longest = Longest)
    {
        var letters = word.ToLowerInvariant().Select(c => c is (>= 'a' and <= 'z') or (>= '0' and <= '9') ? c : '-').ToArray();
        var joined = string.Join('-', new string(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
        return joined.Length <= longest ? joined : joined[..longest].Trim('-');
    }
}
