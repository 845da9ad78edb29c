using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>How likely it is to be finished by a day: a rising line, and a table that says the same. A judgement, so never in the public edition.</summary>
internal static class FinishChances
{
    private const decimal Top = 26;
    private const decimal Height = 140;
    private const double LeastShare = 0.1;
    private const int MostDeciders = 10;

    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var plan = bindery.Plan;
        if (plan.Chances is not { FinishByTenths: { Length: > 0 } days } chances || plan.Occasion.Edition == EditionKind.Public)
        {
            return [];
        }

        return
        [
            Make.Say(bindery, "finish-chances-words"),
            .. plan.Schedule.NeededBy is { } needed && chances.MeetsDate is { } share
                ? [new Block.Prose(bindery.Labels.Compose("finish-chances-needed", ("date", bindery.Dates.Say(needed)), ("chance", Phrase.Of(EventBlocks.Chance(bindery, share)))))]
                : ImmutableArray<Block>.Empty,
            new Block.Drawing("drawing-finish-chances", bindery.Say("drawing-finish-chances"), bindery.Say("drawing-finish-chances-words"), Draw(bindery, days)),
            .. Make.Grid(bindery, "finish-chances-caption", ["column-finished-by", "column-chance"], Rows(bindery, days)),
            .. Make.Grid(bindery, "decides-caption", ["column-step", "column-how-often"], Deciders(chances).Select(d => Make.Row(null, bindery.Link(d.Step), Phrase.Of(EventBlocks.Chance(bindery, d.Share))))),
        ];
    }

    private static Picture Draw(Bindery bindery, ImmutableArray<LocalDate> days)
    {
        var axis = new TimeAxis(days[0].PlusDays(-7), days[^1].PlusDays(7));
        var sketch = new Sketch();
        axis.Draw(bindery, sketch, Top, Top + Height);
        decimal At(int tenths) => Top + Height - (tenths * Height / days.Length);
        sketch.Shape(false, "line", Hatch.None, [.. days.Select((d, i) => (axis.AfterDay(d), At(i + 1)))]);
        for (var i = 0; i < days.Length - 1; i++)
        {
            sketch.Dot(axis.AfterDay(days[i]), At(i + 1), 3, "solid");
            if (i % 2 == 0)
            {
                sketch.Say(axis.AfterDay(days[i]) + 6, At(i + 1) + 12, Figures.Plain(i + 1), "small");
            }
        }

        if (bindery.Plan.Schedule.NeededBy is { } needed && needed > days[0].PlusDays(-7) && needed < days[^1].PlusDays(7))
        {
            sketch.Line(axis.AfterDay(needed), Top, axis.AfterDay(needed), Top + Height, "dash");
        }

        return sketch.Finish(Top + Height + 6);
    }

    // The steps that stand in the deciding chain most often; those that decide hardly ever are left out.
    private static IEnumerable<(string Step, double Share)> Deciders(Chances chances) => chances.Deciding
        .Where(d => d.Value >= LeastShare)
        .OrderByDescending(d => d.Value)
        .ThenBy(d => d.Key, StringComparer.Ordinal)
        .Take(MostDeciders)
        .Select(d => (d.Key, d.Value));

    // Every second tenth is enough to read off.
    private static IEnumerable<GridRow> Rows(Bindery bindery, ImmutableArray<LocalDate> days) =>
        Enumerable.Range(0, days.Length - 1).Where(i => i % 2 == 0).Select(i => Make.Row(null, bindery.Dates.Say(days[i]), Phrase.Of(EventBlocks.Chance(bindery, (i + 1) / 10.0))));
}
