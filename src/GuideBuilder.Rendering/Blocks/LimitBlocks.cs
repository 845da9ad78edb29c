using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What no dates can keep: limits between steps, and steps for which no day is left.</summary>
internal static class LimitBlocks
{
    /// <summary>Each with the chain of reasons and the smallest change; nothing where everything can be kept.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        var schedule = bindery.Plan.Schedule;
        return
        [
            .. schedule.Stuck.IsEmpty ? [] : ImmutableArray.Create<Block>(new Block.Prose(bindery.Labels.Compose("no-day-left", ("steps", Steps(bindery, schedule.Stuck))))),
            .. schedule.EarlyWorks is { } early ? [EarlyWorks(bindery, early)] : ImmutableArray<Block>.Empty,
            .. Make.Under(bindery, "limits-head", Make.List(schedule.Limits.Select(l => Line(bindery, l)))),
        ];
    }

    private static Block.Prose EarlyWorks(Bindery bindery, EarlyWorks early) => new(bindery.Labels.Compose(
        "works-too-early",
        ("starts", bindery.Dates.Say(early.Starts)),
        ("free", bindery.Dates.Say(early.Free)),
        ("chance", Phrase.Of(EventBlocks.Chance(bindery, early.ShareByThen)))));

    private static Phrase Line(Bindery bindery, LimitConflict limit) => bindery.Labels.Compose(
        "limit-broken",
        ("step", bindery.Link(limit.Step)),
        ("other", bindery.Link(limit.Other)),
        ("most", Days(bindery, limit.Most, limit.Of)),
        ("least", Days(bindery, limit.Least, limit.Of)),
        ("chain", Phrase.Join("; ", limit.Chain.Select(bindery.Link)))) + Phrase.Of(" ") + ProspectBlocks.Change(bindery, limit.Change, "limit-change-none");

    private static Phrase Days(Bindery bindery, int days, DayCount of) =>
        Phrase.Of($"{Figures.Plain(days)} {bindery.Labels.Count(of == DayCount.WorkingDays ? "unit-working-day" : "unit-day", days)}");

    private static Phrase Steps(Bindery bindery, ImmutableArray<string> steps) => Phrase.Join("; ", steps.Select(bindery.Link));
}
