using GuideBuilder.Rendering.Data;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What has changed since an earlier binding, each with its cause: an answer, a happening, the guidance, or time.</summary>
internal static class SinceBlocks
{
    private const int Shown = 10;
    private const int AnswersNamed = 3;

    /// <summary>The changes, the totals first; nothing without an earlier plan, and nothing in the public edition.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        if (bindery.Earlier is not { } earlier || bindery.Plan.Occasion.Edition == EditionKind.Public)
        {
            return [];
        }

        var changed = Answers(bindery, earlier);
        var lines = Totals(bindery, earlier, changed).Concat(Items(bindery, earlier, changed)).ToList();
        var more = lines.Count - Shown;
        return
        [
            new Block.Heading(1, null, bindery.Labels.Compose("since-heading", ("date", bindery.Dates.SayShort(earlier.Today)))),
            .. lines.Count == 0 ? [Make.Say(bindery, "since-nothing")] : Make.List(lines.Take(Shown)),
            .. more > 0 ? [new Block.Prose(Phrase.Of(bindery.Labels.Count("since-more", more)))] : ImmutableArray<Block>.Empty,
        ];
    }

    private static HashSet<string> Answers(Bindery bindery, EarlierPlan earlier) =>
    [
        .. bindery.Guidance.Questions.Where(q => bindery.Plan.Answers.ByName.TryGetValue(q.Name, out var given) && bindery.Answers.MayPrint(q.Data) && bindery.Answers.Of(given) != earlier.Answers.GetValueOrDefault(q.Name)).Select(q => q.Name),
    ];

    private static IEnumerable<Phrase> Totals(Bindery bindery, EarlierPlan earlier, HashSet<string> changed)
    {
        var plan = bindery.Plan;
        var cause = Whole(bindery, earlier, changed);
        if (earlier.Way != plan.ChosenWay.Item.Id)
        {
            yield return bindery.Labels.Compose("since-way", ("old", Title(bindery, earlier.Way)), ("new", bindery.Link(plan.ChosenWay.Item.Id))) + cause;
        }

        if (plan.IsCounted && earlier.Cost is { } cost && cost != plan.Money.Gross.Likely)
        {
            yield return bindery.Labels.Compose("since-cost", ("old", Sum(cost)), ("new", Sum(plan.Money.Gross.Likely))) + cause;
        }

        if (plan.IsCounted && earlier.Finish is { } finish && finish != plan.Schedule.Finish.Likely)
        {
            yield return bindery.Labels.Compose("since-finish", ("old", bindery.Dates.SayShort(finish)), ("new", bindery.Dates.SayShort(plan.Schedule.Finish.Likely))) + cause;
        }

        Phrase Sum(decimal sum) => Phrase.Of(Figures.Rough(sum, plan.Money.Currency));
    }

    private static IEnumerable<Phrase> Items(Bindery bindery, EarlierPlan earlier, HashSet<string> changed) =>
        from id in bindery.Items.InOrder
        let label = LabelOf(bindery, earlier, id)
        where label is not null
        select bindery.Labels.Compose(label, ("item", bindery.Items.IsPresent(id) ? bindery.Link(id) : Title(bindery, id))) + One(bindery, earlier, changed, id);

    private static string? LabelOf(Bindery bindery, EarlierPlan earlier, string id)
    {
        var (old, now) = (earlier.States.GetValueOrDefault(id), bindery.Items.State(id));
        return bindery.Items.Step(id) is { Dates.Done: true } && !earlier.Done.Contains(id) ? "since-done"
            : (old, now) switch
            {
                (null or "ruled-out", not ItemState.RuledOut) => "since-in",
                ("open" or "settled", ItemState.RuledOut) => "since-out",
                ("open", ItemState.Settled) => "since-settled",
                ("settled", ItemState.Open) => "since-open",
                _ => null,
            };
    }

    // A total moves for everything that changed; time is named where nothing else did.
    private static Phrase Whole(Bindery bindery, EarlierPlan earlier, HashSet<string> changed)
    {
        ImmutableArray<Phrase> causes = [.. Named(bindery, changed), .. Happened(bindery, earlier, _ => true), .. Edited(bindery, earlier)];
        return Cause(bindery, causes.IsEmpty ? [Time(bindery)] : causes);
    }

    private static Phrase One(Bindery bindery, EarlierPlan earlier, HashSet<string> changed, string id)
    {
        var under = bindery.Items.Reason(id) is { } because ? Under(because).ToHashSet(StringComparer.Ordinal) : [];
        ImmutableArray<Phrase> own = [.. Named(bindery, under.Where(changed.Contains)), .. Happened(bindery, earlier, e => e.Step == id)];
        return own.IsEmpty ? Whole(bindery, earlier, changed) : Cause(bindery, own);
    }

    private static IEnumerable<string> Under(Because because) => because.Deciding.SelectMany(l => l.Given switch
    {
        Given.Answered answered => [answered.Question.Name],
        Given.Derived { Because: { } inner } => Under(inner),
        _ => Enumerable.Empty<string>(),
    });

    private static IEnumerable<Phrase> Named(Bindery bindery, IEnumerable<string> names)
    {
        var questions = bindery.Guidance.Questions.Where(q => names.Contains(q.Name)).Take(AnswersNamed).Select(bindery.Link).ToList();
        return questions.Count == 0 ? [] : [bindery.Labels.Compose("since-cause-answer", ("questions", Phrase.Join(", ", questions)))];
    }

    private static IEnumerable<Phrase> Happened(Bindery bindery, EarlierPlan earlier, Func<LogEvent, bool> which) =>
        bindery.Plan.Answers.Log.Skip(earlier.Happenings).Where(which).Reverse().Take(1).Select(e => LogWords.Of(bindery, e with { Note = null }));

    private static IEnumerable<Phrase> Edited(Bindery bindery, EarlierPlan earlier) => earlier.Guidance == bindery.Guidance.Head.EditionDate
        ? []
        : [bindery.Labels.Compose("since-cause-guidance", ("date", bindery.Dates.SayShort(bindery.Guidance.Head.EditionDate)))];

    private static Phrase Time(Bindery bindery) => Phrase.Of(bindery.Say("since-cause-time"));

    private static Phrase Cause(Bindery bindery, IEnumerable<Phrase> causes) => Phrase.Of(" ") + bindery.Labels.Compose("since-cause", ("cause", Phrase.Join("; ", causes)));

    private static Phrase Title(Bindery bindery, string id) => bindery.Items.Find(id) is { } rule ? bindery.Words(rule.Title) : Phrase.Of(id);
}
