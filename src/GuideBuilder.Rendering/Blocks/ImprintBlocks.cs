using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What the customer's edition adds: who hands it out, what is in the price and what is not, and what is handed over.</summary>
internal static class ImprintBlocks
{
    /// <summary>Name, address, registration and contact, with the logo, and the opening words.</summary>
    internal static ImmutableArray<Block> Head(Bindery bindery)
    {
        if (bindery.Guidance.Imprint is not { } imprint)
        {
            return [];
        }

        var lines = new[]
        {
            ("imprint-address", imprint.Address), ("imprint-registration", imprint.Registration), ("imprint-telephone", imprint.Contact.Telephone), ("imprint-email", imprint.Contact.Email),
            ("imprint-website", imprint.Contact.Website),
        }.Where(l => !l.Item2.IsEmpty).Select(l => new SideLine(bindery.Say(l.Item1), Phrase.Of(bindery.Mark(l.Item2).ReplaceLineEndings(", ")))).ToImmutableArray();
        return
        [
            .. imprint.Logo is { } logo ? [new Block.Logo(logo, imprint.Name.Words)] : ImmutableArray<Block>.Empty,
            new Block.Entry(null, 1, bindery.Words(imprint.Name), bindery.Read(imprint.Opening), lines),
        ];
    }

    /// <summary>The closing words.</summary>
    internal static ImmutableArray<Block> Closing(Bindery bindery) => bindery.Guidance.Imprint is { } imprint ? bindery.Read(imprint.Closing) : [];

    /// <summary>The terms, or a blank where the imprint has none.</summary>
    internal static ImmutableArray<Block> Terms(Bindery bindery) =>
        bindery.Guidance.Imprint is { Terms.IsEmpty: false } imprint ? bindery.Read(imprint.Terms) : [new Block.Prose(Phrase.Of(new Inline.Gap(bindery.Say("imprint-terms-blank"))))];

    /// <summary>The lines that the firm has priced itself, in its imprint or in a quotation.</summary>
    internal static ImmutableArray<Block> InPrice(Bindery bindery) => Prices(bindery, "scope-ours-caption", "column-price", c => IsPriced(bindery, c));

    /// <summary>The lines of the firm's own parties that it has not priced: the range is not its own.</summary>
    internal static ImmutableArray<Block> ToBePriced(Bindery bindery) => Prices(bindery, "scope-unpriced-caption", "column-range-not-ours", c => !IsPriced(bindery, c));

    /// <summary>What was taken where nobody has answered, as far as a line with the firm's price or a date of the plan rests on it.</summary>
    internal static ImmutableArray<Block> RestsOn(Bindery bindery)
    {
        var ours = Present(bindery).Where(c => IsOurs(bindery, c) && c.Added && IsPriced(bindery, c)).Select(c => c.Cost.Item.Id)
            .Concat(bindery.Plan.Steps.Where(s => s.Dates is not null).Select(s => s.Step.Item.Id)).ToFrozenSet(StringComparer.Ordinal);
        return Make.Grid(
            bindery,
            "assumptions-caption",
            ["column-question", "column-assumed", "column-rests-on-it"],
            bindery.Plan.Assumptions.Select(a => (Taken: a, Items: a.Brings.Where(i => ours.Contains(i.Id)).ToList())).Where(a => a.Items.Count > 0)
                .Select(a => Make.Row(null, bindery.Link(a.Taken.Question), Phrase.Of(bindery.Answers.Say(a.Taken.Value, a.Taken.Question)), Phrase.Join(", ", a.Items.Select(i => bindery.Link(i.Id))))));
    }

    /// <summary>What others do, and who sends the bill.</summary>
    internal static ImmutableArray<Block> ByOthers(Bindery bindery) => Make.Grid(
        bindery, "scope-others-caption", ["column-line", "column-invoiced-by"], Present(bindery).Where(c => !IsOurs(bindery, c)).Select(c => Make.Row(null, bindery.Link(c.Cost.Item.Id), bindery.Link(c.Cost.Item.InvoicedBy))));

    /// <summary>Own lines that may apply and are not in the price, and what the firm's quotations leave out.</summary>
    internal static ImmutableArray<Block> NotIncluded(Bindery bindery)
    {
        var open = Present(bindery).Where(c => IsOurs(bindery, c) && !c.Added).Select(c => c.Cost.Item.Id);
        var leftOut = bindery.Plan.Answers.Papers.Where(p => p.From is { } from && IsOurs(bindery, from)).SelectMany(p => p.LeavesOut).Select(s => s.Value);
        var all = open.Concat(leftOut).Distinct(StringComparer.Ordinal).ToList();
        return all.Count == 0 ? [Make.Say(bindery, "none-here")] : Make.List(all.Select(bindery.Link));
    }

    /// <summary>Until when the prices hold, or a blank.</summary>
    internal static ImmutableArray<Block> PricesHold(Bindery bindery) => bindery.Guidance.Imprint?.PricesHoldDays is { } days
        ? [new Block.Prose(bindery.Labels.Compose("prices-hold", ("date", bindery.Dates.Say(bindery.Plan.Occasion.Today.PlusDays(days)))))]
        : [new Block.Prose(Phrase.Of(new Inline.Gap(bindery.Say("prices-hold-blank"))))];

    /// <summary>The certificates that are due, from whom, and by when.</summary>
    internal static ImmutableArray<Block> Certificates(Bindery bindery) => Make.Grid(
        bindery,
        "certificates-caption",
        ["column-what", "column-who", "column-when"],
        bindery.Plan.Consents.Where(c => c.IsPresent && c.Item.Kind == ConsentKind.Certificate).Select(c => Make.Row(null, bindery.Words(c.Item.Title), bindery.ReadLine(c.Item.WhoGives), Due(bindery, c.Item))));

    private static Phrase Due(Bindery bindery, Consent consent) =>
        consent.Gates is { } step && bindery.Items.Step(step)?.Dates is { } dates ? bindery.Dates.Say(dates.EarliestFinish) : bindery.ReadLine(consent.WhenNeeded);

    private static IEnumerable<PlannedCost> Present(Bindery bindery) => bindery.Plan.Costs.Where(c => c.Cost.IsPresent);

    private static ImmutableArray<Block> Prices(Bindery bindery, string caption, string column, Func<PlannedCost, bool> which) => Make.Grid(
        bindery, caption, ["column-line", column], Present(bindery).Where(c => IsOurs(bindery, c) && c.Added && which(c)).Select(c => Make.Row(null, bindery.Link(c.Cost.Item.Id), Phrase.Of(bindery.Money(c.Gross)))));

    private static bool IsPriced(Bindery bindery, PlannedCost cost) =>
        bindery.Guidance.Imprint?.OwnPrices.Contains(cost.Cost.Item.Id) == true || (cost.Quotation?.From is { } from && IsOurs(bindery, from));

    private static bool IsOurs(Bindery bindery, PlannedCost cost) => IsOurs(bindery, cost.Cost.Item.InvoicedBy);

    private static bool IsOurs(Bindery bindery, string party) => bindery.Guidance.Imprint?.Parties.Contains(party) == true;
}
