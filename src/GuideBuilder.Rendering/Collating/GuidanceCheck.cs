using GuideBuilder.Rendering.Markup;

namespace GuideBuilder.Rendering.Collating;

/// <summary>What a publisher should look at in the guidance: sources, review days, what nobody uses, words that are missing, reading grade, cautions that have changed since they were read.</summary>
public static class GuidanceCheck
{
    private const double HighestGrade = 8;
    private const int FewestWords = 100;

    /// <summary>The findings on a guidance, and on each translation of it.</summary>
    public static ImmutableArray<Finding> Of(Guidance guidance, IEnumerable<Guidance> translations, LocalDate today)
    {
        var words = new WordCheck(guidance);
        var texts = GuidanceTexts.Of(guidance).ToList();
        return
        [
            .. texts.SelectMany(words.Of),
            .. Cautions(guidance),
            .. Reviews(guidance, today),
            .. Sources(guidance),
            .. Unused(guidance, texts),
            .. Grades(guidance),
            .. translations.SelectMany(t => Missing(t)),
        ];
    }

    /// <summary>The words of an imprint, which are held to the same rules as the guidance's own.</summary>
    public static ImmutableArray<Finding> OfImprint(Guidance guidance)
    {
        var words = new WordCheck(guidance);
        return [.. GuidanceTexts.Of(guidance).Where(t => t.Kind == GuidanceTexts.Imprint).SelectMany(words.Of)];
    }

    private static IEnumerable<Finding> Cautions(Guidance guidance) => guidance.Hazards.Where(h => h.Before.Severity == CautionMarks.Fatal).Select(Caution).OfType<Finding>();

    private static Finding? Caution(Hazard hazard)
    {
        var (mark, place) = (CautionMarks.Of(hazard), $"hazard {hazard.Id} ({hazard.Head.Place})");
        return hazard.ReviewedBy switch
        {
            null => new(Severity.Warning, "caution-not-reviewed", place, $"Nobody qualified has read this text, whose mark is {mark}."),
            { Of: null } => new(Severity.Warning, "caution-review-without-mark", place, $"The review does not say which text was read. If it was this one, add of: {mark}."),
            { Of: var read, On: var day } when read != mark => new(Severity.Error, "caution-changed", place, Invariant($"The text has changed since it was read on {day:uuuu-MM-dd}: its mark was {read} and is {mark}.")),
            _ => null,
        };
    }

    private static IEnumerable<Finding> Reviews(Guidance guidance, LocalDate today)
    {
        if (guidance.Head.ReviewBy < today)
        {
            yield return new(Severity.Error, "review-due", "guidance", Invariant($"The whole guidance was to be reviewed by {guidance.Head.ReviewBy:uuuu-MM-dd}."));
        }

        var dated = KnownIds.Rules(guidance).Select(r => (r.Id, r.Head.Basis, r.Head.Place))
            .Concat(guidance.Tables.Prices.Select(p => (p.Id, p.Basis, p.Place)))
            .Concat(guidance.Tables.Rows.Select(r => (Id: $"{r.Table}/{r.Id}", r.Basis, r.Place)));
        foreach (var (id, basis, place) in dated.Where(d => d.Basis.ReviewBy < today))
        {
            yield return new(Severity.Warning, "review-due", $"{id} ({place})", Invariant($"This was to be reviewed by {basis.ReviewBy:uuuu-MM-dd}."));
        }
    }

    private static IEnumerable<Finding> Sources(Guidance guidance) =>
        from source in guidance.Sources
        where source.Mark == Mark.Memory
        select new Finding(Severity.Warning, "source-from-memory", $"source {source.Id} ({source.Place})", "Nobody has looked this source up: every rule that rests on it does so from memory.");

    private static IEnumerable<Finding> Unused(Guidance guidance, List<GuidanceText> texts)
    {
        var named = Uses.Of(guidance, texts);
        return from item in Uses.Items(guidance)
               where !named.Contains(item.Id)
               select new Finding(Severity.Warning, $"unused-{item.Kind}", $"{item.Kind} {item.Id} ({item.Place})", item.Kind == "term" ? "No text links to this term or says it." : "Nothing uses it.");
    }

    private static IEnumerable<Finding> Grades(Guidance guidance) =>
        from page in guidance.Pages
        let read = ReadingGrade.Of(PlainWords.Of(page.Text))
        where read.Words >= FewestWords && read.Grade > HighestGrade
        select new Finding(Severity.Warning, "reading-grade", $"page {page.Id} ({page.Text.Place})", Invariant($"It reads at school grade {read.Grade:0.0}, above {HighestGrade:0}."));

    private static IEnumerable<Finding> Missing(Guidance guidance)
    {
        var language = guidance.Language.Id;
        if (guidance.Language.ReviewedBy is null)
        {
            yield return new(Severity.Warning, "translation-not-reviewed", $"language {language}", "No native reader has checked these words.");
        }

        foreach (var kind in GuidanceTexts.Of(guidance).GroupBy(t => t.Kind, StringComparer.Ordinal))
        {
            var missing = kind.Count(t => t.Text.Language != language);
            if (missing > 0)
            {
                yield return new(Severity.Warning, "words-missing", $"language {language}, {kind.Key}", Invariant($"{missing} of {kind.Count()} texts are not translated."));
            }
        }
    }
}
