using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The joint hole in section and plan, to scale, with a boot to measure by. The cable is a hatched band across the whole hole, never a line.</summary>
internal static class HoleDrawing
{
    private const decimal GroundLine = 78;
    private const decimal BootLength = 0.3m;

    /// <summary>The drawing and its table; a sentence where the size is not known.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        if (Measures.Of(bindery, "ground.hole-depth") is not { } depth || Measures.Of(bindery, "ground.hole-surface") is not { } surface || depth <= 0 || surface <= 0)
        {
            return [Make.Say(bindery, "hole-unknown")];
        }

        var side = (decimal)Math.Round(Math.Sqrt((double)surface), 2);
        return
        [
            new Block.Drawing("drawing-hole", bindery.Say("drawing-hole"), bindery.Say("drawing-hole-words", ("0", Measures.Metres(side)), ("1", Measures.Metres(depth))), Draw(bindery, side, depth)),
            .. Make.Grid(bindery, "hole-caption", ["column-what", "column-value"],
            [
                Make.Row(null, Phrase.Of(bindery.Say("hole-side")), Phrase.Of(Measures.Metres(side))),
                Make.Row(null, Phrase.Of(bindery.Say("hole-depth")), Phrase.Of(Measures.Metres(depth))),
                Make.Row(null, Phrase.Of(bindery.Say("hole-cable")), Phrase.Of(bindery.Say("hole-cable-where"))),
            ]),
        ];
    }

    private static Picture Draw(Bindery bindery, decimal side, decimal depth)
    {
        var sketch = new Sketch();
        var scale = 180 / Math.Max(side, depth);
        var (left, right, bottom) = (60m, 60 + (side * scale), GroundLine + (depth * scale));
        sketch.Say(0, 16, bindery.Say("hole-section"), "cap").Across(left, right, GroundLine - 18, Measures.Metres(side));
        sketch.Box(0, GroundLine, left, bottom - GroundLine + 24, "", Hatch.Dotted).Box(right, GroundLine, 40, bottom - GroundLine + 24, "", Hatch.Dotted).Box(left, bottom, right - left, 24, "", Hatch.Dotted);
        sketch.Box(left, GroundLine, right - left, bottom - GroundLine, "", Owners.HatchOf("network-operator"));
        sketch.Shape(false, "thick", Hatch.None, (0, GroundLine), (left, GroundLine), (left, bottom), (right, bottom), (right, GroundLine), (right + 40, GroundLine));
        sketch.Down(right + 48, GroundLine, bottom, Measures.Metres(depth));
        Boot(sketch, 8, GroundLine, BootLength * scale);
        Cable(bindery, sketch, left, right, (GroundLine + bottom) / 2);

        var plan = bottom + 60;
        sketch.Say(0, plan - 14, bindery.Say("hole-plan"), "cap").Box(left, plan, right - left, side * scale, "thick", Owners.HatchOf("network-operator"));
        Cable(bindery, sketch, left, right, plan + (side * scale / 2));
        sketch.Down(right + 12, plan, plan + (side * scale), Measures.Metres(side));
        return sketch.Finish(plan + (side * scale) + 8);
    }

    private static void Cable(Bindery bindery, Sketch sketch, decimal left, decimal right, decimal middle)
    {
        var centre = (left + right) / 2;
        sketch.Box(left + 6, middle - 18, right - left - 12, 36, "paper")
            .Say(centre, middle - 4, bindery.Say("hole-cable-here"), "small", Anchoring.Middle)
            .Say(centre, middle + 11, bindery.Say("hole-cable-depth"), "small", Anchoring.Middle);
    }

    private static void Boot(Sketch sketch, decimal x, decimal ground, decimal length) => sketch.Shape(
        true,
        "outline",
        Hatch.None,
        (x, ground),
        (x, ground - (length * 0.9m)),
        (x + (length * 0.42m), ground - (length * 0.9m)),
        (x + (length * 0.45m), ground - (length * 0.42m)),
        (x + (length * 0.92m), ground - (length * 0.26m)),
        (x + length, ground));
}
