using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Consents and letters.</summary>
internal static class PaperworkBlocks
{
    /// <summary>An entry for each permission, notice, certificate and legal duty.</summary>
    internal static ImmutableArray<Block> Consents(Bindery bindery) => Or(bindery, bindery.Plan.Consents.Where(c => c.IsPresent).Select(c => Consent(bindery, c)));

    /// <summary>A list of the letters.</summary>
    internal static ImmutableArray<Block> Letters(Bindery bindery) => Make.List(bindery.Guidance.Letters.Where(l => !bindery.LeftOut.Contains(l.Id)).Select(l => CoverBlocks.LetterLink(bindery, l.Id)));

    private static ImmutableArray<Block> Or(Bindery bindery, IEnumerable<Block> entries)
    {
        ImmutableArray<Block> all = [.. entries];
        return all.IsEmpty ? [Make.Say(bindery, "none-here")] : all;
    }

    private static Block.Entry Consent(Bindery bindery, Planned<Consent> planned)
    {
        var consent = planned.Item;
        ImmutableArray<SideLine> gate = consent.Gates is { } step ? [Sides.Line(bindery, "left-before", bindery.Link(step))] : [];
        return new Block.Entry(
            consent.Id,
            1,
            bindery.Words(consent.Title),
            bindery.Read(consent.About),
            [
                Sides.Line(bindery, "left-kind", Phrase.Of(bindery.Say($"consent-{Marks.NameOf(consent.Kind)}"))),
                Sides.Line(bindery, "left-who", bindery.ReadLine(consent.WhoGives)),
                Sides.Line(bindery, "left-when", bindery.ReadLine(consent.WhenNeeded)),
                .. gate,
                .. Sides.Of(bindery, planned),
            ]);
    }
}
