using GuideBuilder.Rendering.Blocks;

namespace GuideBuilder.Rendering.Pages;

/// <summary>Makes the page of each line of the outline.</summary>
internal static class PageMaker
{
    /// <summary>The page: an editor's chapter or letter, or the home page of an item.</summary>
    internal static Page Make(Bindery bindery, OutlineLine line) => new(line.Id, line.Kind, line.Number, line.Title, Whole(In(bindery, line), line)) { Language = line.Language };

    private static Bindery In(Bindery bindery, OutlineLine line) => bindery.Speak(line.Language, Discretion.OfPage(bindery.Plan, bindery.Guidance, line.Id));

    // While a stop sign stands each page begins with it, but for letters, which go to others, and for what deals with the sign.
    private static ImmutableArray<Block> Whole(Bindery bindery, OutlineLine line)
    {
        var blocks = Blocks(bindery, line);
        return line.Kind == PageKind.Letter || bindery.Plan.StopSteps.Contains(line.Id) || ShowsSigns(bindery, line) ? blocks : [.. HazardPanels.Notice(bindery), .. blocks];
    }

    private static bool ShowsSigns(Bindery bindery, OutlineLine line) =>
        bindery.Plan.StopSigns.Any(h => h.Hazard.Item.Id == line.Id) || bindery.Guidance.Pages.Any(p => p.Id == line.Id && p.Text.Words.Contains("block \"stop-signs\"", StringComparison.Ordinal));

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
