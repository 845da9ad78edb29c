using GuideBuilder.Rendering.Blocks;

namespace GuideBuilder.Rendering.Pages;

/// <summary>The home page of a hazard: the panel, the controls in order of the hierarchy, the scores before and after, and who has read it.</summary>
internal static class HazardPage
{
    internal static ImmutableArray<Block> Of(Bindery bindery, PlannedHazard planned)
    {
        var hazard = planned.Hazard.Item;
        var text = bindery.Read(hazard.Cause).AddRange(bindery.Read(hazard.Harm)).AddRange(HazardPanels.Stop(bindery, hazard));
        return
        [
            new Block.DangerPanel(null, hazard.Word, HazardPanels.Signal(bindery, hazard.Word), 1, Phrase.Of(bindery.Say("hazard-what")), text),
            new Block.Entry(null, 1, Phrase.Empty, Scores(bindery, hazard), Lines(bindery, planned)),
            .. Make.Under(bindery, "hazard-controls", Controls(bindery, hazard)),
            .. Make.Under(bindery, "hazard-steps", Make.List(Steps(bindery, hazard))),
            .. Reviewed(bindery, hazard),
        ];
    }

    private static ImmutableArray<Block> Scores(Bindery bindery, Hazard hazard) =>
    [
        Make.Say(bindery, "hazard-before", ("score", HazardPanels.Score(bindery, hazard.Before))),
        Make.Say(bindery, "hazard-after", ("score", HazardPanels.Score(bindery, hazard.After))),
    ];

    private static ImmutableArray<SideLine> Lines(Bindery bindery, PlannedHazard planned)
    {
        var hazard = planned.Hazard.Item;
        var ways = planned.Ways.Length < bindery.Plan.Ways.Count(w => w.Way.IsPresent) && planned.Ways.Length > 0
            ? [Sides.Line(bindery, "left-ways", Phrase.Join(", ", planned.Ways.Select(bindery.Link)))]
            : ImmutableArray<SideLine>.Empty;
        return
        [
            Sides.Line(bindery, "left-who", bindery.ReadLine(hazard.People)),
            Sides.Line(bindery, "left-when", bindery.ReadLine(hazard.WhenItArises)),
            .. ways,
            .. Sides.Of(bindery, planned.Hazard),
        ];
    }

    private static ImmutableArray<Block> Controls(Bindery bindery, Hazard hazard) => hazard.Controls.IsEmpty ? [] : Make.Grid(
        bindery,
        "controls-caption",
        ["column-control", "column-by", "column-level"],
        hazard.Controls.OrderBy(c => c.Level).Select(c => Make.Row(null, bindery.ReadLine(c.What), bindery.Link(c.By), Phrase.Of(bindery.Say($"level-{Marks.NameOf(c.Level)}")))));

    private static IEnumerable<Phrase> Steps(Bindery bindery, Hazard hazard) =>
        StepBlocks.InOrder(bindery.Plan).Where(s => s.Step.Item.Hazards.Contains(hazard.Id)).Select(s => bindery.Link(s.Step.Item.Id));

    private static ImmutableArray<Block> Reviewed(Bindery bindery, Hazard hazard) => hazard switch
    {
        { ReviewedBy: { } review } => [new Block.Prose(bindery.Labels.Compose("hazard-reviewed", ("role", bindery.Words(review.Role)), ("date", bindery.Dates.SayOfGuidance(review.On))))],
        { Before.Severity: 5 } => [Make.Say(bindery, "hazard-not-reviewed")],
        _ => [],
    };
}
