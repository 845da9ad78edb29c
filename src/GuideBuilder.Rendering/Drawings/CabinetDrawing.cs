using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The cabinet on the wall, seen from in front: its height over the ground and its distance from the gas meter, where these are known.</summary>
internal static class CabinetDrawing
{
    private const decimal Ground = 220;

    /// <summary>The drawing and its table.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var height = Said(Measures.Of(bindery, "operator.cabinet-height") ?? Measures.Of(bindery, "place.height"), bindery.Say("cabinet-height-ask"));
        var near = Measures.Of(bindery, "place.gas-distance");
        var gas = Said(near, bindery.Say("common-ask"));
        var measured = near is null ? gas : bindery.Say("cabinet-gas-measured", ("0", gas));
        return
        [
            new Block.Drawing("drawing-cabinet", bindery.Say("drawing-cabinet"), bindery.Say("drawing-cabinet-words", ("0", height), ("1", gas)), Draw(bindery, height, gas)),
            .. Make.Grid(bindery, "cabinet-caption", ["column-what", "column-value"],
            [
                Make.Row(null, Phrase.Of(bindery.Say("cabinet-height")), Phrase.Of(height)),
                Make.Row(null, Phrase.Of(bindery.Say("cabinet-gas")), Phrase.Of(measured)),
            ]),
        ];
    }

    private static string Said(decimal? length, string otherwise) => length is { } known ? Measures.Metres(known) : otherwise;

    // Not to scale: the cabinet's own size is the operator's to say.
    private static Picture Draw(Bindery bindery, string height, string gas)
    {
        var sketch = new Sketch();
        sketch.Box(0, 10, Sketch.Width, Ground - 10, "edge").Line(0, Ground, Sketch.Width, Ground, "thick").Box(0, Ground, Sketch.Width, 14, "", Hatch.Dotted);
        sketch.Box(40, 70, 84, 110, "thick", Hatch.None).Say(82, 128, bindery.Say("part-cabinet"), "small", Anchoring.Middle);
        sketch.Box(75, Ground, 14, 14, "", Hatch.Rising).Line(75, 180, 75, Ground, "line").Line(89, 180, 89, Ground, "line").Say(128, 205, bindery.Say("part-duct"), "small").Line(90, 201, 125, 201, "fine");
        sketch.Box(236, 110, 66, 70, "outline", Hatch.None).Say(269, 148, bindery.Say("part-gas-meter"), "small", Anchoring.Middle);
        sketch.Across(124, 236, 98, gas);
        sketch.Down(12, 180, Ground, height);
        return sketch.Finish(Ground + 16);
    }
}
