using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The published time limits: those that run first, with what is owed by the text as it stood, then all that may run.</summary>
internal static class ClockBlocks
{
    /// <summary>An entry for each time limit that runs or has run, then one for each that may.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        var running = bindery.Plan.Occasion.Edition == EditionKind.Public ? [] : bindery.Plan.Whereabouts.Clocks;
        ImmutableArray<Block> all = [.. Make.Under(bindery, "clocks-running", [.. running.Select(c => (Block)Running(bindery, c))]), .. bindery.Plan.Clocks.Where(c => c.IsPresent).Select(c => Entry(bindery, c))];
        return all.IsEmpty ? [Make.Say(bindery, "none-here")] : all;
    }

    /// <summary>One line on a time limit that runs: whose, when it fell due, how late it is.</summary>
    internal static Phrase Line(Bindery bindery, RunningClock clock) => bindery.Labels.Compose(
        "clock-line",
        ("clock", bindery.Link(clock.Clock.Id)),
        ("party", bindery.Link(clock.Clock.Party)),
        ("date", bindery.Dates.Say(clock.Due)),
        ("days", Days(bindery, clock)));

    private static Block.Entry Running(Bindery bindery, RunningClock clock) => new(
        null,
        1,
        bindery.Link(clock.Clock.Id),
        [
            .. Owed(bindery, clock),
            .. bindery.Read(clock.Clock.Owes),
            .. Make.Under(bindery, "clock-write", clock.Clock.WhatToWrite, 2),
            .. clock.Clock.Letter is { } letter && !bindery.LeftOut.Contains(letter) ? [new Block.Prose(bindery.Labels.Compose("clock-letter", ("letter", CoverBlocks.LetterLink(bindery, letter))))] : ImmutableArray<Block>.Empty,
        ],
        [
            Sides.Who(bindery, clock.Clock.Party),
            Sides.Line(bindery, "left-started", LogWords.Of(bindery, clock.Started)),
            Sides.Line(bindery, "left-day-zero", bindery.Dates.Say(clock.DayZero)),
            Sides.Line(bindery, "left-due", bindery.Dates.Say(clock.Due)),
            .. clock.Ended is { } end ? [Sides.Line(bindery, "left-ended", bindery.Dates.Say(end))] : ImmutableArray<SideLine>.Empty,
            Sides.Line(bindery, "left-days-late", Days(bindery, clock)),
        ]);

    private static ImmutableArray<Block> Owed(Bindery bindery, RunningClock clock) => clock is { Owed: { } owed, Clock.Sum: { } sum }
        ? [new Block.Prose(bindery.Labels.Compose("clock-owed", ("sum", Phrase.Of(Figures.Exact(owed.Amount, owed.Unit))), ("date", bindery.Dates.SayShort(sum.AsAt)), ("today", bindery.Dates.SayShort(bindery.Plan.Occasion.Today))))]
        : [];

    private static Phrase Days(Bindery bindery, RunningClock clock) =>
        Phrase.Of(clock.DaysLate == 0 ? bindery.Say("clock-in-time") : $"{Figures.Plain(clock.DaysLate)} {bindery.Labels.Count(UnitOf(clock.Clock.Of), clock.DaysLate)}");

    private static Block.Entry Entry(Bindery bindery, Planned<Clock> planned)
    {
        var clock = planned.Item;
        var starts = Starts(bindery, clock);
        return new Block.Entry(
            clock.Id,
            1,
            bindery.Words(clock.Title),
            [.. bindery.Read(clock.Owes), .. Make.Under(bindery, "clock-write", clock.WhatToWrite, 2)],
            [
                Sides.Who(bindery, clock.Party),
                Sides.Line(bindery, "left-limit", Phrase.Of($"{Figures.Plain(clock.Limit)} {bindery.Labels.Count(UnitOf(clock.Of), clock.Limit)}")),
                Sides.Line(bindery, "left-counted-from", starts),
                .. Sides.Of(bindery, planned),
            ]);
    }

    private static Phrase Starts(Bindery bindery, Clock clock) => (clock.StartsAt, clock.StartsAtStep) switch
    {
        (LogKind.Missed, _) => Phrase.Of(bindery.Say("clock-from-missed")),
        (LogKind.Refused, null) => Phrase.Of(bindery.Say("clock-from-refused")),
        (_, { } step) => bindery.Link(step),
        _ => Phrase.Of(bindery.Say("clock-from-event")),
    };

    private static string UnitOf(DayCount count) => count switch
    {
        DayCount.WorkingDays => "unit-working-day",
        DayCount.CalendarDays => "unit-calendar-day",
        DayCount.Hours => "unit-hour",
        _ => throw new UnreachableException(),
    };
}
