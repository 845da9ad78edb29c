using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Why the chosen way is the chosen one.</summary>
internal static class WayReasons
{
    /// <summary>How it came to be chosen, what brings it in, how it stands to the others, and which of them would cost least.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var chosen = bindery.Plan.ChosenWay;
        return Make.List(
        [
            Phrase.Of(bindery.Say(IsWished(bindery, chosen.Item.Id) ? "way-why-asked" : Why(chosen.Because.Truth))),
            bindery.ReadLine(chosen.Because.Reason),
            Phrase.Of(Beside(bindery, chosen.Item.Id)),
            .. Cheaper(bindery, chosen.Item.Id),
        ]);
    }

    private static string Why(Truth meetsWish) => meetsWish switch
    {
        Truth.Holds => "way-why-settled",
        Truth.Open => "way-why-open",
        _ => "way-why-left",
    };

    private static bool IsWished(Bindery bindery, string way) =>
        bindery.Plan.Answers.ByName.GetValueOrDefault("wish.way") is { Standing: Standing.Known, Value: Value.Option wished } && wished.Id == way;

    private static string Beside(Bindery bindery, string chosen)
    {
        var all = bindery.Plan.Ways.Where(w => w.Figures is not null).ToList();
        var others = all.Where(w => w.Way.Item.Id != chosen).Select(w => w.Figures!).ToList();
        if (others.Count == 0 || !bindery.Plan.IsCounted)
        {
            return others.Count == 0 ? bindery.Say("way-why-alone") : bindery.NotTold;
        }

        var own = all.First(w => w.Way.Item.Id == chosen).Figures!;
        return bindery.Say(
            "way-why-figures",
            ("n", Figures.Plain(others.Count)),
            ("cheaper", Count(bindery, others.Count(o => o.Cost.Likely < own.Cost.Likely))),
            ("sooner", Count(bindery, others.Count(o => o.Finish.Likely < own.Finish.Likely))));
    }

    // The cheapest of those that would meet the wish too, where it costs less by more than the figures can hide.
    private static ImmutableArray<Phrase> Cheaper(Bindery bindery, string chosen)
    {
        var all = bindery.Plan.Ways.Where(w => w.Figures is not null && (w.Way.Item.Id == chosen || w.Way.Because.Truth != Truth.Fails)).ToList();
        return bindery.Plan.IsCounted && all.Find(w => w.Way.Item.Id == chosen) is { Figures.Cost.Likely: var own } && all.MinBy(w => w.Figures!.Cost.Likely) is { } least && Figures.Near(own) - Figures.Near(least.Figures!.Cost.Likely) is > 0 and var less
            ? [bindery.Labels.Compose("way-why-cheaper", ("way", bindery.Link(least.Way.Item.Id)), ("sum", Phrase.Of(Figures.Exact(less, bindery.Plan.Money.Currency))))]
            : [];
    }

    private static string Count(Bindery bindery, int number) => number == 0 ? bindery.Say("none-of-them") : Figures.Plain(number);
}
