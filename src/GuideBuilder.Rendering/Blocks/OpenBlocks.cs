using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What is not known yet: what to find out, what was not asked, what is assumed meanwhile.</summary>
internal static class OpenBlocks
{
    private const int Shown = 3;
    private const int Named = 3;

    /// <summary>The questions whose answers would settle most, three of them.</summary>
    internal static ImmutableArray<Block> FindOutFirst(Bindery bindery) =>
    [
        .. bindery.Plan.OpenQuestions.OrderByDescending(q => q.WouldSettle.Length).Take(Shown).Select(q => new Block.Entry(
            null,
            1,
            bindery.Link(q.Question),
            [.. bindery.Read(q.Question.HowToFindOut)],
            [Decides(bindery, q)])),
    ];

    /// <summary>Every open question, at home here.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        ImmutableArray<Block> entries = [.. bindery.Plan.OpenQuestions.Select(q => Entry(bindery, q))];
        return entries.IsEmpty ? [Make.Say(bindery, "none-here")] : entries;
    }

    /// <summary>The questions that the answers make needless.</summary>
    internal static ImmutableArray<Block> Unasked(Bindery bindery) =>
        Make.List(bindery.Guidance.Questions.Where(q => bindery.Plan.Answers[q.Name].Standing == Standing.NotAsked).Select(q => bindery.Words(q.Label)));

    /// <summary>What the plan takes for each unanswered question meanwhile.</summary>
    internal static ImmutableArray<Block> Assumptions(Bindery bindery) => Make.Grid(
        bindery,
        "assumptions-caption",
        ["column-question", "column-assumed"],
        bindery.Plan.Assumptions.Select(a => Make.Row(null, bindery.Link(a.Question), Phrase.Of(bindery.Answers.Say(a.Value, a.Question)))));

    private static Block.Entry Entry(Bindery bindery, OpenQuestion open)
    {
        var question = open.Question;
        ImmutableArray<SideLine> tell = question.WhoCanTell.IsEmpty ? [] : [Sides.Line(bindery, "left-who-can-tell", bindery.ReadLine(question.WhoCanTell))];
        return new Block.Entry(
            question.Name,
            1,
            bindery.Words(question.Label),
            [.. bindery.Read(question.Wording), .. bindery.Read(question.HowToFindOut), .. bindery.Read(question.WhatItDecides)],
            [.. tell, Decides(bindery, open)]);
    }

    private static SideLine Decides(Bindery bindery, OpenQuestion open)
    {
        var more = open.WouldSettle.Length - Named;
        var named = Phrase.Join(", ", open.WouldSettle.Take(Named).Select(i => bindery.Link(i.Id)));
        var rest = more > 0 ? Phrase.Of(bindery.Labels.Count("settles-more", more)) : Phrase.Empty;
        return Sides.Line(bindery, "left-settles", named.IsEmpty ? Phrase.Of(bindery.Say("settles-nothing")) : named + rest);
    }
}
