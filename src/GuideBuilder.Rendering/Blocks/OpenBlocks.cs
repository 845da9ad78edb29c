using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What is not known yet: what to find out, what was not asked, what is assumed meanwhile.</summary>
internal static class OpenBlocks
{
    private const int Shown = 3;
    private const int Named = 3;
    private const int OnFirstPage = 40;

    /// <summary>The unknown answers that matter most, three of them; while a stop sign stands, that this waits.</summary>
    internal static ImmutableArray<Block> FindOutFirst(Bindery bindery) => bindery.Plan.IsSuspended ? [Make.Say(bindery, "stop-finding-out")] :
    [
        .. bindery.Plan.FindOutFirst.Take(Shown).Select(f => new Block.Entry(
            null,
            1,
            Bindery.Link(f.Question.Name, bindery.ReadLine(f.Question.Wording)),
            [.. bindery.Read(f.Question.HowToFindOut), .. bindery.Read(f.Question.WhatItDecides)],
            [.. Teller(bindery, f.Question)])),
    ];

    /// <summary>The open questions that matter most, at home here, and in one line what changes nothing.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        var entries = Entries(bindery).Take(OnFirstPage).Select(e => e()).ToImmutableArray();
        return [.. entries.IsEmpty ? [Make.Say(bindery, "none-here")] : entries, .. Idle(bindery)];
    }

    /// <summary>The open questions that change less, at home here.</summary>
    internal static ImmutableArray<Block> More(Bindery bindery)
    {
        var entries = Entries(bindery).Skip(OnFirstPage).Select(e => e()).ToImmutableArray();
        return entries.IsEmpty ? [Make.Say(bindery, "none-here")] : entries;
    }

    // What matters most first; those with no answers to choose among at the end.
    private static IEnumerable<Func<Block>> Entries(Bindery bindery)
    {
        var first = bindery.Plan.FindOutFirst.Select(f => f.Question.Name).ToHashSet(StringComparer.Ordinal);
        return bindery.Plan.FindOutFirst.Select(f => (Func<Block>)(() => Entry(bindery, f.Open, FindOutTable.Of(bindery, f))))
            .Concat(bindery.Plan.OpenQuestions.Where(q => !first.Contains(q.Question.Name)).Select(q => (Func<Block>)(() => Entry(bindery, q, []))));
    }

    /// <summary>The questions that the answers make needless.</summary>
    internal static ImmutableArray<Block> Unasked(Bindery bindery) =>
        Make.List(bindery.Guidance.Questions.Where(q => bindery.Plan.Answers[q.Name].Standing == Standing.NotAsked).Select(q => bindery.Words(q.Label)));

    /// <summary>What the plan takes for each unanswered question meanwhile.</summary>
    internal static ImmutableArray<Block> Assumptions(Bindery bindery) => Make.Grid(
        bindery,
        "assumptions-caption",
        ["column-question", "column-assumed"],
        bindery.Plan.Assumptions.Where(a => !Outranking(bindery).Contains(a.Question.Name)).Select(a => Make.Row(null, bindery.Link(a.Question), Phrase.Of(bindery.Answers.Say(a.Value, a.Question)))));

    // Where such an answer is missing the plan takes the common figure of the link itself, which its step tells.
    private static FrozenSet<string> Outranking(Bindery bindery) => bindery.Guidance.Steps.SelectMany(s => s.After.Select(l => l.Or).Concat(s.NoLaterThan.Select(l => l.Or)))
        .Concat(bindery.Guidance.Meetings.SelectMany(m => m.Crews).Select(c => c.Or))
        .OfType<string>()
        .ToFrozenSet(StringComparer.Ordinal);

    private static ImmutableArray<Block> Idle(Bindery bindery) => bindery.Plan.Idle.IsEmpty
        ? []
        : [new Block.Prose(bindery.Labels.Compose("idle-questions", ("questions", Phrase.Join(", ", bindery.Plan.Idle.Select(q => bindery.Words(q.Label))))))];

    private static Block.Entry Entry(Bindery bindery, OpenQuestion open, ImmutableArray<Block> table)
    {
        var question = open.Question;
        return new Block.Entry(
            question.Name,
            1,
            bindery.ReadLine(question.Wording),
            [.. bindery.Read(question.HowToFindOut), .. bindery.Read(question.WhatItDecides), .. table],
            [.. Teller(bindery, question), Decides(bindery, open)]);
    }

    private static IEnumerable<SideLine> Teller(Bindery bindery, Question question) =>
        question.WhoCanTell.IsEmpty ? [] : [Sides.Line(bindery, "left-who-can-tell", bindery.ReadLine(question.WhoCanTell))];

    // Few items by name; many only by their kinds, since the table beside it names what matters.
    private static SideLine Decides(Bindery bindery, OpenQuestion open)
    {
        var kinds = open.WouldSettle.CountBy(i => i.Kind, StringComparer.Ordinal).Select(k => bindery.Labels.Count("settles-" + k.Key, k.Value));
        return Sides.Line(bindery, "left-settles", open.WouldSettle.Length switch
        {
            0 => Phrase.Of(bindery.Say("settles-nothing")),
            <= Named => Phrase.Join(", ", open.WouldSettle.Select(i => bindery.Link(i.Id))),
            _ => Phrase.Of(string.Join(", ", kinds)),
        });
    }
}
