using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Where the money stands today: what has been paid, and what falls due next.</summary>
internal static class PaidBlocks
{
    /// <summary>The range of the whole, what has been paid, and the next payment with its day and whom it goes to.</summary>
    internal static ImmutableArray<Block> SoFar(Bindery bindery)
    {
        var paid = bindery.Plan.Payments.Where(p => IsPaid(bindery, p)).ToList();
        var next = bindery.Plan.Payments.FirstOrDefault(p => !IsPaid(bindery, p));
        return
        [
            new Block.Definitions(
            [
                FigureBlocks.Cost(bindery),
                .. bindery.Plan.Occasion.Edition == EditionKind.Public ? ImmutableArray<Definition>.Empty : [One(bindery, "paid-so-far", Phrase.Of(Sum(bindery, paid.Sum(p => p.Sum))))],
                .. next is null ? ImmutableArray<Definition>.Empty : [One(bindery, "paid-next", Next(bindery, next))],
            ]),
        ];
    }

    private static Definition One(Bindery bindery, string label, Phrase says) => new(null, Phrase.Of(bindery.Say(label)), [new Block.Prose(says)]);

    private static string Sum(Bindery bindery, decimal sum) => Figures.Exact(sum, bindery.Plan.Money.Currency);

    private static Phrase Next(Bindery bindery, Payment payment) => bindery.Labels.Compose(
        "paid-next-words",
        ("sum", Phrase.Of(Sum(bindery, payment.Sum))),
        ("line", bindery.Link(payment.Line.Cost.Item.Id)),
        ("party", MoneyBlocks.Invoicer(bindery, payment.Line.Cost.Item)),
        ("date", bindery.Dates.SayShort(payment.Day)));

    // What is not logged as done lies ahead, so a day before today has been.
    private static bool IsPaid(Bindery bindery, Payment payment) =>
        payment.Day < bindery.Plan.Occasion.Today || (payment.Line.Cost.Item.DueAt is { } step && bindery.Items.Step(step) is { Dates.Done: true });
}
