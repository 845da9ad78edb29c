using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;
using GuideBuilder.Rendering.Sheets;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The joint hole in section and plan, to scale, with a boot to measure by, and a table that says the same.</summary>
internal static class HoleDrawing
{
    private const string Soil = "ground.soil";

    private static readonly ImmutableArray<string> AlsoTold = ["sides", "hole-case", "heap-width", "set-back", "barrier"];

    /// <summary>The drawing and its table; a sentence where the size is not known.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        if (HoleSize.Of(bindery) is not { } hole)
        {
            return [Make.Say(bindery, "hole-unknown")];
        }

        var sketch = new Sketch();
        var end = HolePlan.Draw(bindery, sketch, hole, HoleSection.Draw(bindery, sketch, hole));
        var words = bindery.Say("drawing-hole-words", ("0", Measures.Metres(hole.Length)), ("1", Measures.Metres(hole.Width)), ("2", Measures.Metres(hole.Depth)), ("3", CableWords(bindery, hole)));
        return [new Block.Drawing("drawing-hole", bindery.Say("drawing-hole"), words, sketch.Finish(end)), .. Table(bindery, hole)];
    }

    /// <summary>Where the cable is, as far as anybody can tell.</summary>
    internal static string CableWords(Bindery bindery, HoleSize hole) => bindery.Say(hole.Cable == CablePosition.AsExposed ? "hole-cable-exposed" : "hole-cable-where");

    /// <summary>The hatch of the ground: level for what holds together, dots for what runs, falling lines for made and stony ground.</summary>
    internal static Hatch HatchOf(HoleSize hole) => (SoilFigure(hole)?.Worth as Value.Option)?.Id switch
    {
        "clay" or "chalk" => Hatch.Level,
        "stony" or "made-ground" => Hatch.Falling,
        _ => Hatch.Dotted,
    };

    /// <summary>The soil as a figure of the sheet.</summary>
    internal static SheetFigure? SoilFigure(HoleSize hole) => hole.Row("slope")?.Inputs.FirstOrDefault(f => f.Name == Soil);

    private static ImmutableArray<Block> Table(Bindery bindery, HoleSize hole)
    {
        var words = new SheetWords(bindery, "ground");
        var sides = hole.Row("hole-volume")!.Inputs;
        return Make.Grid(bindery, "hole-caption", ["column-what", "column-value"],
        [
            Row("hole-length", Figure(sides[0])),
            Row("hole-width", Figure(sides[1])),
            Row("hole-depth", hole.Row("hole-depth") is { Inputs: [var depth, ..] } row ? Figure(depth with { Worth = depth.Worth ?? row.Result }) : Phrase.Empty),
            .. hole.Row("counted-depth") is { } counted ? [Row("ground-line-counted-depth", Phrase.Of(words.Result(counted)))] : ImmutableArray<GridRow>.Empty,
            Row("hole-soil", SoilFigure(hole) is { } soil ? Figure(soil) : Phrase.Of(bindery.Say("answer-unknown"))),
            .. AlsoTold.Select(hole.Row).OfType<SheetRow>().Select(r => Make.Row(null, Phrase.Of(words.Line(r)), Phrase.Of(words.Result(r)))),
            Row("hole-cable", Phrase.Of(CableWords(bindery, hole))),
        ]);

        GridRow Row(string label, Phrase says) => Make.Row(null, Phrase.Of(bindery.Say(label)), says);
        Phrase Figure(SheetFigure figure) => bindery.Labels.Compose("sheet-worth", ("worth", Phrase.Of(words.Worth(figure.Worth, figure.Name))), ("origin", Phrase.Of(words.Origin(figure))));
    }
}
