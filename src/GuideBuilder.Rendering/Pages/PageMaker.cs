namespace GuideBuilder.Rendering.Pages;

/// <summary>Makes the page of each line of the outline.</summary>
internal static class PageMaker
{
    /// <summary>The page: an editor's chapter or letter, or the home page of an item.</summary>
    internal static Page Make(Bindery bindery, OutlineLine line) => new(line.Id, line.Kind, line.Number, line.Title, Blocks(In(bindery, line), line)) { Language = line.Language };

    private static Bindery In(Bindery bindery, OutlineLine line) => bindery.Speak(line.Language, Discretion.OfPage(bindery.Plan, bindery.Guidance, line.Id));

    private static ImmutableArray<Block> Blocks(Bindery bindery, OutlineLine line) => line.Kind switch
    {
        PageKind.Cover or PageKind.Chapter => bindery.ReadPage(PageTitle.Rest(bindery.Guidance.Pages.First(p => p.Id == line.Id))),
        PageKind.Letter => [new Block.Sheet(bindery.ReadLetter(bindery.Guidance.Letters.First(l => l.Id == line.Id)))],
        PageKind.Step => StepPage.Of(bindery, bindery.Items.Step(line.Id)!),
        PageKind.Hazard => HazardPage.Of(bindery, bindery.Plan.Hazards.First(h => h.Hazard.Item.Id == line.Id)),
        PageKind.Party => PartyPage.Of(bindery, bindery.Plan.Parties.First(p => p.Item.Id == line.Id)),
        PageKind.Way => WayPage.Of(bindery, bindery.Plan.Ways.First(w => w.Way.Item.Id == line.Id)),
        _ => throw new UnreachableException(),
    };
}
