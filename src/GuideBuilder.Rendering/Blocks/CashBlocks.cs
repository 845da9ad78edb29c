using GuideBuilder.Rendering.Drawings;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What leaves the account when, what comes back if the household stops, and what may be owed to it.</summary>
internal static class CashBlocks
{
    /// <summary>A drawing of the steps, a table of the payments in order of date, what comes back from each party, and what a late firm owes.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var due = bindery.Plan.Costs.Where(c => c is { Cost.IsPresent: true, Added: true, Due: not null } && c.Gross.Likely > 0).OrderBy(c => c.Due).ToList();
        if (due.Count == 0)
        {
            return [Make.Say(bindery, bindery.Plan.IsBeyond ? "figure-beyond" : "none-here")];
        }

        return
        [
            Make.Say(bindery, "cash-words"),
            .. bindery.Plan.Occasion.Edition == EditionKind.Public ? ImmutableArray<Block>.Empty : [CashSteps.Of(bindery, due)],
            .. Table(bindery, due),
            .. Make.Under(bindery, "cash-stop", Stops(bindery, due)),
            .. Make.Under(bindery, "cash-owed", Owed(bindery)),
        ];
    }

    private static ImmutableArray<Block> Table(Bindery bindery, List<PlannedCost> due)
    {
        var currency = bindery.Plan.Money.Currency;
        var running = 0m;
        return Make.Grid(bindery, "cash-caption", ["column-due", "column-line", "column-to", "column-gross#", "column-so-far#"], due.Select(c => Make.Row(
            null,
            bindery.Dates.Say(c.Due!.Value),
            bindery.Link(c.Cost.Item.Id),
            bindery.Link(c.Cost.Item.InvoicedBy),
            Phrase.Of(Figures.Exact(c.Gross.Likely, currency)),
            Phrase.Of(Figures.Exact(running += c.Gross.Likely, currency)))).ToList());
    }

    private static ImmutableArray<Block> Stops(Bindery bindery, List<PlannedCost> due)
    {
        var paid = due.Select(c => c.Cost.Item.InvoicedBy).Distinct(StringComparer.Ordinal).ToList();
        var parties = paid.Select(id => bindery.Plan.Parties.FirstOrDefault(p => p.Item.Id == id)?.Item).OfType<Party>().Where(p => !p.IfYouStop.IsEmpty).ToList();
        return parties.Count == 0 ? [] :
        [
            .. Make.Grid(bindery, "cash-stop-caption", ["column-to", "column-comes-back"], parties.Select(p => Make.Row(null, bindery.Link(p.Id), bindery.ReadLine(p.IfYouStop)))),
            Make.Say(bindery, "cash-cooling-off"),
        ];
    }

    private static ImmutableArray<Block> Owed(Bindery bindery) =>
        Make.List(bindery.Plan.Clocks.Where(c => c.IsPresent && !c.Item.Owes.IsEmpty).Select(c => bindery.Link(c.Item.Id) + Phrase.Of(": ") + bindery.ReadLine(c.Item.Owes)));
}
