using System.Text.RegularExpressions;

namespace GuideBuilder.Rendering.Collating;

/// <summary>
/// Looks through texts for two mistakes that could kill: a household that is to do what only licensed people may do, and a claim that something is safe.
/// The words stand in tables/words.yaml. A sentence that denies is no mistake; the check is a net and not a judge.
/// </summary>
internal sealed partial class WordCheck
{
    private const string Table = "words";
    private const int Reach = 6;
    private const int Near = 4;

    private readonly FrozenSet<string> _deeds, _things, _claims, _denials, _doers, _writers, _beginnings;
    private readonly ImmutableArray<string> _allowed;

    internal WordCheck(Guidance guidance)
    {
        (_deeds, _things, _claims, _denials) = (Row(guidance, "deeds"), Row(guidance, "things"), Row(guidance, "claims"), Row(guidance, "denials"));
        (_doers, _writers, _beginnings) = (Row(guidance, "doers"), Row(guidance, "writers"), Row(guidance, "beginnings"));
        _allowed = [.. guidance.Tables.Rows.Where(r => r.Table == Table && r.Id.StartsWith("allowed-", StringComparison.Ordinal)).Select(r => r.Cells["words"].Words)];
    }

    /// <summary>What is wrong with a text.</summary>
    internal IEnumerable<Finding> Of(GuidanceText text)
    {
        var where = $"{text.Kind} {text.Id} ({text.Text.Place})";
        foreach (var sentence in SentenceEnd().Split(Plain(text.Text.Words)).Where(s => s.Trim().Length > 0))
        {
            var words = Word().Matches(sentence.ToLowerInvariant()).Select(m => m.Value).ToList();
            if (IsDeed(words, text))
            {
                yield return new(Severity.Error, "household-as-doer", where, $"The household seems to be told to do what only licensed people may do: {sentence.Trim()}");
            }

            if (words.Any(_claims.Contains) && !words.Any(_denials.Contains))
            {
                yield return new(Severity.Error, "claim", where, $"This claims what nobody here can know: {sentence.Trim()}");
            }
        }
    }

    // A deed with a thing after it, done by the reader (or, in a letter, by its writer), and not denied before it.
    private bool IsDeed(List<string> words, GuidanceText text)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (_deeds.Contains(words[i])
                && words.Skip(i + 1).Take(Reach).Any(_things.Contains)
                && !words.Take(i).Any(_denials.Contains)
                && (text.Kind == GuidanceTexts.Letter ? Before(words, i, _writers) : Before(words, i, _doers) || (text.IsToHousehold && IsOrder(words, i))))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Before(List<string> words, int at, FrozenSet<string> doers) => words.Skip(Math.Max(0, at - Near)).Take(Math.Min(at, Near)).Any(doers.Contains);

    private bool IsOrder(List<string> words, int at) => at == 0 || words.Take(at).All(_beginnings.Contains);

    // Templates, links and marks of CommonMark are no words; a phrase that is allowed is taken out.
    private string Plain(string words)
    {
        var plain = Link().Replace(Braces().Replace(words, " "), "$1");
        return _allowed.Aggregate(plain, (all, next) => all.Replace(next, " ", StringComparison.OrdinalIgnoreCase));
    }

    private static FrozenSet<string> Row(Guidance guidance, string id) =>
        guidance.Tables.Rows.Where(r => r.Table == Table && r.Id == id)
            .SelectMany(r => r.Cells["words"].Words.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            .ToFrozenSet(StringComparer.Ordinal);

    [GeneratedRegex(@"\{\{.*?\}\}", RegexOptions.Singleline)]
    private static partial Regex Braces();

    [GeneratedRegex(@"\[([^\]]*)\]\([^)]*\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"[.!?;:|]+(?=\s|$)|\n\s*(?:[-*#]|\d+\.)|\n\s*\n|\*\*")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex("[a-z][a-z'’-]*")]
    private static partial Regex Word();
}
