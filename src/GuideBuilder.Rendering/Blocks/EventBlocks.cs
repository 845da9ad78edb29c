using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What may happen besides, with what it would cost and how long it would take more.</summary>
internal static class EventBlocks
{
    // Below this a chance is not told as one in ten.
    private const double LeastTold = 0.065;

    /// <summary>A table of the chance events; how likely each is stands there in words, and not in the public edition.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var isPublic = bindery.Plan.Occasion.Edition == EditionKind.Public;
        ImmutableArray<string> heads = ["column-what", "column-step", .. isPublic ? ImmutableArray<string>.Empty : ["column-chance"], "column-takes-more", "column-costs-then"];
        var events = bindery.Plan.Events.Where(e => e.Share > 0).ToList();
        return events.Count == 0 ? [] : [.. Make.Grid(bindery, "events-caption", heads, events.Select(e => Row(bindery, e, isPublic)))];
    }

    /// <summary>A chance that rests on judgement, in words and with no more than one figure.</summary>
    internal static string Chance(Bindery bindery, double share) => share switch
    {
        < LeastTold => bindery.Say("chance-small"),
        > 1 - LeastTold => bindery.Say("chance-great"),
        _ => bindery.Say("chance-about", ("n", Figures.Plain((decimal)Math.Round(share * 10, MidpointRounding.AwayFromZero)))),
    };

    private static GridRow Row(Bindery bindery, PlannedEvent e, bool isPublic) => new(null,
    [
        bindery.Words(e.Event.Title),
        bindery.Link(e.Step),
        .. isPublic ? ImmutableArray<Phrase>.Empty : [Phrase.Of(Chance(bindery, (double)e.Event.Chance))],
        Phrase.Of(e.Event.TakesMore is { } more ? bindery.Ranges.Of(more) : bindery.Say("no-change")),
        e.Cost is { } cost ? Bindery.Link(cost.Cost.Item.Id, Phrase.Of(bindery.Money(cost.Gross))) : Phrase.Of(bindery.Say(e.Event.Costs.IsEmpty ? "no-change" : "cost-not-known")),
    ]);
}
