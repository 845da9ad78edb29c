using GuideBuilder.Rendering.Blocks;

namespace GuideBuilder.Rendering.Pages;

/// <summary>The home page of a party: what it owns, does, will not do and charges, how to reach it, what to have ready, and its steps.</summary>
internal static class PartyPage
{
    internal static ImmutableArray<Block> Of(Bindery bindery, Planned<Party> planned)
    {
        var party = planned.Item;
        return
        [
            new Block.Entry(null, 1, Phrase.Empty, bindery.Read(party.Does), Sides.Of(bindery, planned)),
            .. Make.Under(bindery, "party-owns", party.Owns),
            .. Make.Under(bindery, "party-will-not", party.WillNotDo),
            .. Make.Under(bindery, "party-charges", party.Charges),
            .. Make.Under(bindery, "party-reach", party.HowToReach),
            .. Make.Under(bindery, "party-ready", party.HaveReady),
            .. Make.Under(bindery, "party-steps", Make.List(Steps(bindery, party))),
            .. Make.Under(bindery, "party-costs", Make.List(Costs(bindery, party))),
        ];
    }

    private static IEnumerable<Phrase> Steps(Bindery bindery, Party party) =>
        StepBlocks.InOrder(bindery.Plan).Where(s => s.Step.Item.Party == party.Id).Select(s => bindery.Link(s.Step.Item.Id));

    private static IEnumerable<Phrase> Costs(Bindery bindery, Party party) =>
        bindery.Plan.Costs.Where(c => c.Cost.IsPresent && c.Cost.Item.InvoicedBy == party.Id).Select(c => bindery.Link(c.Cost.Item.Id) + Phrase.Of(": " + bindery.Money(c.Gross)));
}
