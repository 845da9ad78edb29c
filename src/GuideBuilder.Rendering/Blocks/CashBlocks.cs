using GuideBuilder.Rendering.Drawings;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What leaves the account when, what comes back if the household stops, and what may be owed to it.</summary>
internal static class CashBlocks
{
    /// <summary>A drawing of the steps, a table of the payments in order of date, what comes back from each party, and what a late firm owes.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var payments = bindery.Plan.Payments;
        if (payments.IsEmpty)
        {
            return [new Block.Prose(Phrase.Of(bindery.Plan.IsCounted ? bindery.Say("none-here") : bindery.NotTold))];
        }

        return
        [
            Make.Say(bindery, "cash-words"),
            .. bindery.Plan.Occasion.Edition == EditionKind.Public ? [] : ByMonth(bindery),
            .. Table(bindery, payments),
            .. Make.Under(bindery, "cash-stop", Stops(bindery, payments)),
            .. Make.Under(bindery, "cash-owed", Owed(bindery)),
        ];
    }

    private static ImmutableArray<Block> ByMonth(Bindery bindery)
    {
        Phrase Sum(decimal sum) => Phrase.Of(Figures.Exact(Figures.Near(sum), bindery.Plan.Money.Currency));
        return bindery.Plan.PaidBy.IsEmpty ? [] :
        [
            CashSteps.Of(bindery, bindery.Plan.PaidBy),
            .. Make.Grid(bindery, "paid-by-caption", ["column-by-end-of", "column-half-paid#", "column-most-paid#"], bindery.Plan.PaidBy.Select(p => Make.Row(null, bindery.Dates.Say(p.Day), Sum(p.Middle), Sum(p.High)))),
        ];
    }

    private static ImmutableArray<Block> Table(Bindery bindery, ImmutableArray<Payment> payments)
    {
        Phrase Sum(decimal sum) => Phrase.Of(Figures.Exact(sum, bindery.Plan.Money.Currency));
        return Make.Grid(bindery, "cash-caption", ["column-due", "column-line", "column-to", "column-gross#", "column-may-come-back#"], payments.Select(p => Make.Row(
            null,
            bindery.Dates.Say(p.Day),
            bindery.Link(p.Line.Cost.Item.Id),
            MoneyBlocks.Invoicer(bindery, p.Line.Cost.Item),
            Sum(p.Sum),
            Sum(p.MayComeBack))));
    }

    private static ImmutableArray<Block> Stops(Bindery bindery, ImmutableArray<Payment> payments)
    {
        var paid = payments.Select(p => p.Line.Cost.Item.InvoicedBy).Distinct(StringComparer.Ordinal).ToList();
        var parties = paid.Select(id => bindery.Plan.Parties.FirstOrDefault(p => p.Item.Id == id)?.Item).OfType<Party>().Where(p => !p.IfYouStop.IsEmpty).ToList();
        return parties.Count == 0 ? [] :
        [
            .. Make.Grid(bindery, "cash-stop-caption", ["column-to", "column-comes-back"], parties.Select(p => Make.Row(null, bindery.Link(p.Id), bindery.ReadLine(p.IfYouStop)))),
            .. CoolingOff(bindery),
        ];
    }

    private static IEnumerable<Block> CoolingOff(Bindery bindery) => bindery.Guidance.Tables.Rows
        .Where(r => r.Table == "rights" && r.Cells["nations"].Words.Split(' ').Contains(bindery.Plan.Nation.Id))
        .Select(r => new Block.Prose(bindery.Labels.Compose(
            "cash-cooling-off",
            ("time", Phrase.Of(bindery.Answers.Say(new Value.Amount(r.Quantity("time")), null))),
            ("sources", Phrase.Join("; ", r.Basis.Sources.Select(id => bindery.Guidance.Sources.First(s => s.Id == id)).Select(s => Bindery.Link(s.Id, bindery.Words(s.Title))))))));

    private static ImmutableArray<Block> Owed(Bindery bindery) =>
        Make.List(bindery.Plan.Clocks.Where(c => c.IsPresent && !c.Item.Owes.IsEmpty).Select(c => bindery.Link(c.Item.Id) + Phrase.Of(": ") + bindery.ReadLine(c.Item.Owes)));
}
