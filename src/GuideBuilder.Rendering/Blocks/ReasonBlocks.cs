using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>How this was worked out: each item's rule, the answers behind it and its sources; and the method as a whole.</summary>
internal static class ReasonBlocks
{
    /// <summary>Every item that the plan judged, also those left out, kind after kind.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery) =>
    [
        .. bindery.Items.InOrder.Select(bindery.Items.Reason).OfType<Because>()
            .GroupBy(b => b.RuleKind)
            .SelectMany(g => Kind(bindery, g.Key, g)),
        .. Answered(bindery),
    ];

    /// <summary>What the plan was made from.</summary>
    internal static ImmutableArray<Block> Method(Bindery bindery)
    {
        var (plan, head) = (bindery.Plan, bindery.Guidance.Head);
        var isPublic = plan.Occasion.Edition == EditionKind.Public;
        return Make.Grid(bindery, "method-caption", ["column-what", "column-value"],
        [
            Row("method-guidance", bindery.Words(head.Title)),
            Row("method-edited", bindery.Dates.SayOfGuidance(head.EditionDate)),
            Row("method-review", bindery.Dates.SayOfGuidance(head.ReviewBy)),
            .. isPublic ? [] : new[] { Row("method-today", bindery.Dates.Say(plan.Occasion.Today)) },
            Row("method-seed", Phrase.Of(Invariant($"{plan.Occasion.Seed}"))),
            Row("method-nation", bindery.Words(plan.Nation.Title)),
            Row("method-answers", Phrase.Of(isPublic ? bindery.Say("method-not-printed") : plan.Answers.FileName)),
        ]);

        GridRow Row(string label, Phrase says) => Make.Row(null, Phrase.Of(bindery.Say(label)), says);
    }

    private static IEnumerable<Block> Kind(Bindery bindery, string kind, IEnumerable<Because> reasons) =>
    [
        new Block.Heading(1, null, Phrase.Of(bindery.Say($"kind-{kind}"))),
        new Block.Definitions([.. reasons.Select(b => One(bindery, b))]),
    ];

    private static Definition One(Bindery bindery, Because because)
    {
        var state = bindery.Items.State(because.RuleId);
        var title = state == ItemState.RuledOut ? bindery.Words(bindery.Items.Find(because.RuleId)!.Title) : bindery.Link(because.RuleId);
        return new(
            Addresses.ReasonPrefix + because.RuleId,
            title + Phrase.Of($" ({bindery.Say($"state-{Marks.NameOf(state)}")})"),
            [
                .. because.Reason.IsEmpty ? [] : bindery.Read(Sides.ReasonOf(bindery, because)),
                .. Make.List(because.Deciding.Select(l => Leaf(bindery, l))),
                new Block.Prose(bindery.Labels.Compose("because-rule", ("rule", Phrase.Of(new Inline.Exact(because.RuleId))), ("file", Phrase.Of(new Inline.Exact(FileOf(because.Place)))), ("sources", Sources(bindery, because)))),
            ]);
    }

    private static Phrase Leaf(Bindery bindery, Leaf leaf) => leaf.Given switch
    {
        Given.Answered answered => bindery.Labels.Compose("leaf-answer", ("question", bindery.Words(answered.Question.Label)), ("answer", Phrase.Of(Said(bindery, answered)))),
        Given.Derived derived => bindery.Labels.Compose("leaf-fact", ("fact", Fact(bindery, derived)), ("value", Phrase.Of(bindery.Answers.Of(derived) ?? bindery.Say(bindery.May.Allows(derived) ? "answer-unknown" : "answer-kept-back")))),
        Given.Set set => bindery.Labels.Compose("leaf-fact", ("fact", Phrase.Of(bindery.Say($"fact-{set.Name.Replace('.', '-')}"))), ("value", Way(bindery, set))),
        _ => throw new UnreachableException(),
    };

    private static Phrase Way(Bindery bindery, Given.Set set) =>
        set.Value is Value.Option option && bindery.Items.Find(option.Id) is { } way ? bindery.Words(way.Title) : Phrase.Of(bindery.Answers.Say(set.Value!, null));

    private static Phrase Fact(Bindery bindery, Given.Derived fact) => bindery.Items.Find(fact.Name) is { } rule ? bindery.Words(rule.Title) : Phrase.Of(bindery.Say($"fact-{fact.Name.Replace('.', '-')}"));

    // Of an answer that is kept back nobody is told whether there is one.
    private static string Said(Bindery bindery, Given.Answered answered) => answered.Standing switch
    {
        _ when !bindery.Answers.MayPrint(answered.Question.Data) => bindery.Say("answer-kept-back"),
        Standing.Unknown => bindery.Say("answer-unknown"),
        Standing.NotAsked => bindery.Say("answer-not-asked"),
        _ => bindery.Answers.Of(answered) ?? bindery.Say("answer-kept-back"),
    };

    private static Phrase Sources(Bindery bindery, Because because) =>
        Phrase.Join(", ", because.Sources.Select(s => Bindery.Link(s, bindery.Guidance.Sources.Where(x => x.Id == s).Select(x => Source(bindery, x)).FirstOrDefault(Phrase.Of(s)))));

    // Two publications of one title are told apart by who published them, then by section, edition and year.
    private static Phrase Source(Bindery bindery, Source source)
    {
        var parts = new List<string>();
        foreach (var part in new Func<Source, string>[] { s => s.Publisher, s => s.Section, s => s.Edition, s => s.Year, s => s.Id })
        {
            var told = parts.ToArray();
            if (bindery.Guidance.Sources.Count(s => s.Title.Words == source.Title.Words && told.All(t => Parts(s).Contains(t))) <= 1)
            {
                break;
            }

            parts.Add(part(source));
        }

        var said = parts.Where(p => p.Length > 0).ToList();
        return said.Count == 0 ? bindery.Words(source.Title) : bindery.Words(source.Title) + Phrase.Of($" ({string.Join(", ", said)})");
    }

    private static string[] Parts(Source source) => [source.Publisher, source.Section, source.Edition, source.Year, source.Id];

    private static string FileOf(Place place) => place.Path[(place.Path.LastIndexOf('/') + 1)..];

    // Answers that no other block is the home of.
    private static ImmutableArray<Block> Answered(Bindery bindery)
    {
        var open = bindery.Plan.OpenQuestions.Select(q => q.Question.Name).ToHashSet(StringComparer.Ordinal);
        return Make.Under(bindery, "answers-heading", Make.Grid(
            bindery,
            "answers-caption",
            ["column-question", "column-answer"],
            bindery.Guidance.Questions.Where(q => !open.Contains(q.Name)).Select(q => Make.Row(q.Name, bindery.Words(q.Label), Phrase.Of(Said(bindery, bindery.Plan.Answers[q.Name]))))));
    }
}
