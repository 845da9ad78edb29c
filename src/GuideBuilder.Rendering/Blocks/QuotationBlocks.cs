using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Each quotation held against our own range for what it stands for, and what to ask.</summary>
internal static class QuotationBlocks
{
    /// <summary>A line for each quotation: inside, below or above the range, what to ask, and what it leaves out.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery) =>
    [
        .. bindery.Plan.QuotationChecks.Select(c => new Block.Entry(null, 1, Title(bindery, c.Paper), [new Block.Prose(Phrase.Of(Said(bindery, c)))], Lines(bindery, c))),
    ];

    /// <summary>The same for Money, where it is read before anything is paid; nothing in the public edition.</summary>
    internal static ImmutableArray<Block> OnMoney(Bindery bindery) =>
        bindery.Plan.Occasion.Edition == EditionKind.Public ? [] : Make.Under(bindery, "quotations-head", Of(bindery));

    /// <summary>For the cover: each quotation outside our range, in a sentence.</summary>
    internal static ImmutableArray<Block> Outside(Bindery bindery) => bindery.Plan.Occasion.Edition == EditionKind.Public ? [] :
    [
        .. bindery.Plan.QuotationChecks.Where(c => c.Position != RangePosition.Inside).Select(c => new Block.Prose(Title(bindery, c.Paper) + Phrase.Of(": " + Said(bindery, c)))),
    ];

    private static Phrase Title(Bindery bindery, Paper paper) =>
        bindery.Labels.Compose("quotation-from", ("from", paper.From is { } from ? bindery.Link(from) : Phrase.Of(bindery.Say("paper-quotation"))));

    private static string Said(Bindery bindery, QuotationCheck check)
    {
        var position = check.Position switch
        {
            RangePosition.Below => "quotation-below",
            RangePosition.Inside => "quotation-inside",
            RangePosition.Above => "quotation-above",
            _ => throw new UnreachableException(),
        };
        var currency = bindery.Plan.Money.Currency;
        return bindery.Say(position, ("sum", Figures.Exact(check.Gross, currency)), ("range", bindery.Ranges.Total(check.Range, currency)));
    }

    private static ImmutableArray<SideLine> Lines(Bindery bindery, QuotationCheck check)
    {
        var left = check.Paper.LeavesOut.Select(c => bindery.Link(c.Value)).ToList();
        var beside = bindery.Plan.Costs.Where(c => c is { Added: true, Quotation: null } && check.Paper.LeavesOut.All(l => l.Value != c.Cost.Item.Id)).Select(c => bindery.Link(c.Cost.Item.Id)).ToList();
        return
        [
            Sides.Line(bindery, "quotation-covers", Phrase.Join(", ", check.Lines.Select(bindery.Link))),
            .. check.Paper.Goods is null ? ImmutableArray<SideLine>.Empty : [Sides.Line(bindery, "quotation-vat", Phrase.Of(Figures.Percent(bindery.Items.Cost(check.Lines[0])!.VatShare)))],
            .. left.Count == 0 ? ImmutableArray<SideLine>.Empty : [Sides.Line(bindery, "quotation-leaves-out", Phrase.Join(", ", left))],
            .. beside.Count == 0 ? ImmutableArray<SideLine>.Empty : [Sides.Line(bindery, "quotation-still-to-pay", Phrase.Join(", ", beside))],
        ];
    }
}
