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
                ? [new Block.Prose(bindery.Labels.Compose(plan.Schedule.NeededFor == NeededFor.PlaceFree ? "finish-chances-place" : "finish-chances-needed", ("date", bindery.Dates.Say(needed)), ("chance", Phrase.Of(EventBlocks.Chance(bindery, share)))))]
                : ImmutableArray<Block>.Empty,
            new Block.Drawing("drawing-finish-chances", bindery.Say("drawing-finish-chances"), bindery.Say("drawing-finish-chances-words"), Draw(bindery, days)),
            .. Make.Grid(bindery, "finish-chances-caption", ["column-finished-by", "column-chance"], Rows(bindery, days)),
            .. Make.Grid(bindery, "decides-caption", ["column-step", "column-how-often"], Deciders(chances).Select(d => Make.Row(null, bindery.Link(d.Step), Phrase.Of(EventBlocks.Chance(bindery, d.Share))))),
        ];
    }

    private static Picture Draw(Bindery bindery, ImmutableArray<FinishBy> days)
    {
        var (first, last) = (days[0].Day.PlusDays(-7), days[^1].Day.PlusDays(7));
        var axis = new TimeAxis(first, last);
        var sketch = new Sketch();
        axis.Draw(bindery, sketch, Top, Top + Height);
        decimal At(double share) => Top + Height - ((decimal)share * Height);
        sketch.Shape(false, "line", Hatch.None, [.. days.Select(d => (axis.AfterDay(d.Day), At(d.Share)))]);
        foreach (var day in days.Where(d => d != days[^1]))
        {
            sketch.Dot(axis.AfterDay(day.Day), At(day.Share), 3, "solid");
        }

        foreach (var day in Told(days))
        {
            sketch.Say(axis.AfterDay(day.Day) + 6, At(day.Share) + 12, Figures.Plain(Tenths(day.Share)), "small");
        }

        if (bindery.Plan.Schedule.NeededBy is { } needed && needed > first && needed < last)
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

    private static IEnumerable<GridRow> Rows(Bindery bindery, ImmutableArray<FinishBy> days) =>
        Told(days).Select(d => Make.Row(null, bindery.Dates.Say(d.Day), Phrase.Of(EventBlocks.Chance(bindery, d.Share))));

    // Of the days that read alike the first; about every second tenth is enough to read off.
    private static IEnumerable<FinishBy> Told(ImmutableArray<FinishBy> days) =>
        days.Where(d => d.Share < 1 || days.Length == 1).DistinctBy(d => Tenths(d.Share)).Where((_, i) => i % 2 == 0);

    private static decimal Tenths(double share) => (decimal)Math.Round(share * 10, MidpointRounding.AwayFromZero);
}
