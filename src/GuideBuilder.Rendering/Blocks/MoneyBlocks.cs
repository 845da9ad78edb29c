using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The money of the chosen way.</summary>
internal static class MoneyBlocks
{
    /// <summary>Every line of cost; those that may apply are listed and not added.</summary>
    internal static ImmutableArray<Block> Costs(Bindery bindery)
    {
        var present = bindery.Plan.Costs.Where(c => c.Cost.IsPresent).ToList();
        var added = present.Where(c => c.Added).ToList();
        var open = present.Where(c => !c.Added && !bindery.Guidance.ChanceCosts.Contains(c.Cost.Item.Id)).ToList();
        var rows = added.Select(c => Row(bindery, c)).ToList();
        return
        [
            .. Make.Grid(bindery, "costs-caption", ["column-line", "column-invoiced-by", "column-net#", "column-vat#", "column-gross#", "column-range"], rows.Count == 0 || !bindery.Plan.IsCounted ? rows : [.. rows, Sum(bindery, added)]),
            .. rows.Count == 0 || bindery.Plan is not { IsCounted: true, Chances.Cost: { } cost } || cost.P10 == cost.P90 ? ImmutableArray<Block>.Empty : [SumWords(bindery, cost)],
            .. Make.Under(bindery, "costs-open", Open(bindery, open)),
            .. Make.Under(bindery, "events-head", EventBlocks.Of(bindery)),
            .. added.Where(c => !c.Cost.Item.About.IsEmpty).Select(c => About(bindery, c)),
        ];
    }

    /// <summary>The papers that the household holds, then those that must come, each with a box to tick.</summary>
    internal static ImmutableArray<Block> Papers(Bindery bindery) =>
    [
        .. bindery.Plan.Occasion.Edition == EditionKind.Public ? [] : Held(bindery),
        .. bindery.Plan.Occasion.Edition == EditionKind.Public ? [] : QuotationBlocks.Of(bindery),
        .. Make.Under(bindery, "papers-awaited", Awaited(bindery)),
    ];

    private static ImmutableArray<Block> Held(Bindery bindery) => bindery.Plan.Answers.Papers.IsEmpty ? [Make.Say(bindery, "papers-none")] : Make.Grid(
        bindery,
        "papers-caption",
        ["column-paper", "column-from", "column-dated", "column-valid-until", "column-amount#"],
        bindery.Plan.Answers.Papers.Select(p => Paper(bindery, p)));

    private static ImmutableArray<Block> Awaited(Bindery bindery)
    {
        var ticks = bindery.Plan.Consents.Where(c => c.IsPresent && c.Item.Kind is ConsentKind.Certificate or ConsentKind.Notification)
            .Select(c => new Tick($"paper-{c.Item.Id}", bindery.Link(c.Item.Id))).ToImmutableArray();
        return ticks.IsEmpty ? [] : [new Block.Ticks(ticks)];
    }

    private static GridRow Row(Bindery bindery, PlannedCost cost)
    {
        var currency = bindery.Plan.Money.Currency;
        return Make.Row(
            cost.Cost.Item.Id,
            Name(bindery, cost),
            Invoicer(bindery, cost.Cost.Item),
            Phrase.Of(Figures.Exact(cost.Net.Likely, currency)),
            Phrase.Of(Figures.Exact(cost.Gross.Likely - cost.Net.Likely, currency)),
            Phrase.Of(Figures.Exact(cost.Gross.Likely, currency)),
            Phrase.Of(cost.Quotation is null ? bindery.Ranges.Ends(cost.Gross, currency) : bindery.Say("cost-quoted")));
    }

    /// <summary>Who sends the invoice; for what the household buys or orders itself, whomever it chooses.</summary>
    internal static Phrase Invoicer(Bindery bindery, Cost cost) =>
        cost.InvoicedBy == Party.Household ? Phrase.Of(bindery.Say("invoice-own-choice")) : bindery.Link(cost.InvoicedBy);

    // A line that is counted says how many, and what one comes to.
    private static Phrase Name(Bindery bindery, PlannedCost cost)
    {
        var title = bindery.Words(cost.Cost.Item.Title);
        if (cost.Cost.Item.Quantity is null || cost.Quotation is not null || cost.Quantity is 0 or 1)
        {
            return title;
        }

        var (n, price) = (Figures.Plain(cost.Quantity), Figures.Rough(cost.Gross.Likely / cost.Quantity, bindery.Plan.Money.Currency));
        var times = UnitOf(cost.CountedIn) is { } unit
            ? bindery.Say("cost-times", ("n", n), ("unit", bindery.Labels.Count(unit, cost.Quantity)), ("price", price))
            : bindery.Say("cost-times-plain", ("n", n), ("price", price));
        return title + Phrase.Of($" ({times})");
    }

    private static string? UnitOf(Unit? unit) => unit?.Symbol switch
    {
        "m" => "unit-metre",
        "m²" => "unit-square-metre",
        "m³" => "unit-cubic-metre",
        _ => null,
    };

    // Why the sum of the table is another than the middle of the range, and which of the two to have at hand.
    private static Block SumWords(Bindery bindery, QuantileRange<decimal> cost)
    {
        var currency = bindery.Plan.Money.Currency;
        return Make.Say(bindery, bindery.Plan.Money.Base > cost.P90 ? "cost-sum-words-dear" : "cost-sum-words", ("middle", Figures.Exact(Figures.Near(cost.P50), currency)), ("high", Figures.Exact(Figures.Up(cost.P90), currency)), ("year", Invariant($"{PriceYear(bindery)}")));
    }

    // The year in whose money the lines are: the newest of their indices.
    private static int PriceYear(Bindery bindery) => bindery.Plan.Costs.Where(c => c.Added)
        .Select(c => bindery.Guidance.Tables.Indexes.Where(i => i.Id == c.Price.Index).SelectMany(i => i.ByYear.Keys).DefaultIfEmpty(c.Price.Year).Max())
        .DefaultIfEmpty(0)
        .Min();

    private static GridRow Sum(Bindery bindery, List<PlannedCost> added)
    {
        var currency = bindery.Plan.Money.Currency;
        var (net, gross) = (added.Sum(c => c.Net.Likely), added.Sum(c => c.Gross.Likely));
        return Make.Row(null, Phrase.Of(bindery.Say("cost-sum")), Phrase.Empty, Phrase.Of(Figures.Exact(net, currency)), Phrase.Of(Figures.Exact(gross - net, currency)), Phrase.Of(Figures.Exact(gross, currency)), Phrase.Empty) with { IsSum = true };
    }

    private static ImmutableArray<Block> Open(Bindery bindery, List<PlannedCost> open) => open.Count == 0 ? [] : Make.Grid(
        bindery,
        "costs-open-caption",
        ["column-line", "column-invoiced-by", "column-range", "column-settled-by"],
        open.Select(c => Make.Row(c.Cost.Item.Id, Name(bindery, c), Invoicer(bindery, c.Cost.Item), Phrase.Of(c.MayBeNil ? bindery.Say("range-nil", ("range", bindery.Money(c.Gross))) : bindery.Money(c.Gross)), Sides.Settling(bindery, c.Cost.Because))));

    private static Block.Entry About(Bindery bindery, PlannedCost cost)
    {
        var item = cost.Cost.Item;
        ImmutableArray<SideLine> due = cost.Due is { } day ? [Sides.Line(bindery, "left-due", bindery.Dates.Say(day))] : [];
        return new Block.Entry(null, 1, bindery.Words(item.Title), bindery.Read(item.About), [new SideLine(bindery.Say("left-who"), Invoicer(bindery, item)), .. due, Basis(bindery, cost), .. Sides.Of(bindery, cost.Cost)]);
    }

    private static SideLine Basis(Bindery bindery, PlannedCost cost) =>
        Sides.Line(bindery, "left-figure", Phrase.Of(cost.Quotation is null ? $"{bindery.Say(Marks.LabelOf(cost.Price.Basis.Mark))}. {bindery.Say("prices-of-year", ("0", Invariant($"{cost.Price.Year}")))}" : bindery.Say("cost-quoted")));

    // A quotation past its term that nothing in the plan stands on any more.
    private static bool IsRunOut(Bindery bindery, Paper paper) =>
        paper is { Kind: PaperKind.Quotation, ValidUntil: { } last } && last < bindery.Plan.Occasion.Today && bindery.Plan.QuotationChecks.All(c => c.Paper != paper);

    private static GridRow Paper(Bindery bindery, Paper paper) => Make.Row(
        null,
        Phrase.Of(bindery.Say($"paper-{Marks.NameOf(paper.Kind)}") + (paper.Reference is { Length: > 0 } reference ? " " + reference : "")),
        paper.From is { } from ? bindery.Link(from) : Phrase.Empty,
        paper.Dated is { } dated ? bindery.Dates.Say(dated) : Phrase.Empty,
        paper.ValidUntil is { } until ? IsRunOut(bindery, paper) ? bindery.Labels.Compose("paper-run-out", ("date", bindery.Dates.Say(until))) : bindery.Dates.Say(until) : Phrase.Empty,
        Phrase.Of(paper.Amount is { } amount ? bindery.Answers.Say(amount, null) : ""));
}
