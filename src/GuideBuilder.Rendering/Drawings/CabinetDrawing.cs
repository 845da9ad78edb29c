using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The cabinet on the wall, from in front and from above: its height, its distance from the gas meter and the clear space before it, to scale where they are known.</summary>
internal static class CabinetDrawing
{
    private const decimal Ground = 214;
    private const decimal Scale = 84;
    private const decimal Left = 92;
    private const string Height = "place.height";
    private const string OperatorHeight = "operator.cabinet-height";

    /// <summary>The drawing and its table.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var (height, gas, clear) = (Measures.Of(bindery, OperatorHeight) ?? Measures.Of(bindery, Height), Measures.Of(bindery, "place.gas-distance"), Measures.Of(bindery, "place.clear-space"));
        var sketch = new Sketch();
        var outline = Outline(bindery);
        FromInFront(bindery, sketch, outline, height, gas);
        FromAbove(bindery, sketch, outline, clear);
        var words = bindery.Say("drawing-cabinet-words", ("0", Said(bindery, height)), ("1", Said(bindery, gas)), ("2", Said(bindery, clear)));
        return [new Block.Drawing("drawing-cabinet", bindery.Say("drawing-cabinet"), words, sketch.Finish(Ground + 176)), .. Table(bindery, height, gas, clear)];
    }

    private static ImmutableArray<Block> Table(Bindery bindery, decimal? height, decimal? gas, decimal? clear) => Make.Grid(bindery, "cabinet-caption", ["column-what", "column-value"],
    [
        Row(bindery, "cabinet-height", Quoted(bindery, height)),
        Row(bindery, "cabinet-gas", gas is null ? Said(bindery, gas) : bindery.Say("cabinet-gas-measured", ("0", Said(bindery, gas)))),
        Row(bindery, "cabinet-clear", Said(bindery, clear)),
        Row(bindery, "cabinet-size", bindery.Say("cabinet-size-ask")),
        .. bindery.Plan.Siting.Where(v => v.Asks == "place.near" && v.Outcome is SitingOutcome.Ask or SitingOutcome.Conflicts).Select(v => Make.Row(null, Phrase.Of(v.Rule.Cells["title"].Words), Phrase.Of(bindery.Say(v.Outcome == SitingOutcome.Ask ? "siting-ask" : "siting-conflicts")))),
    ]);

    private static GridRow Row(Bindery bindery, string label, string says) => Make.Row(null, Phrase.Of(bindery.Say(label)), Phrase.Of(says));

    private static string Quoted(Bindery bindery, decimal? height) =>
        Measures.Of(bindery, OperatorHeight) is { } said ? $"{bindery.Say("operator-says")}: {Measures.Metres(said)}" : height is null ? bindery.Say("cabinet-height-ask") : Said(bindery, height);

    private static string Said(Bindery bindery, decimal? length) => length is { } known ? Measures.Metres(known) : bindery.Say("common-ask");

    // Only the picture needs a size: which cabinet it is, the operator says.
    private static (decimal Width, decimal Height, decimal Depth) Outline(Bindery bindery)
    {
        var row = bindery.Guidance.Tables.Rows.FirstOrDefault(r => r.Id == "cabinet-drawn");
        return row is null ? (0, 0, 0) : (row.Quantity("width").Base, row.Quantity("height").Base, row.Quantity("depth").Base);
    }

    private static void FromInFront(Bindery bindery, Sketch sketch, (decimal Width, decimal Height, decimal Depth) box, decimal? height, decimal? gas)
    {
        var bottom = Ground - ((height ?? box.Height) * Scale);
        var (top, right) = (bottom - (box.Height * Scale), Left + (box.Width * Scale));
        sketch.Say(0, 16, bindery.Say("cabinet-front"), "cap").Box(0, 24, Sketch.Width, Ground - 24, "edge").Line(0, Ground, Sketch.Width, Ground, "thick").Box(0, Ground, Sketch.Width, 14, "", Hatch.Dotted);
        sketch.Box(Left, top, right - Left, bottom - top, "thick").Say((Left + right) / 2, top - 6, bindery.Say("part-cabinet"), "small", Anchoring.Middle);
        Heights(bindery, sketch);
        var duct = (Left + right) / 2;
        sketch.Box(duct - 5, bottom, 10, Ground - bottom + 14, "outline", Owners.HatchOf("network-operator")).Say(duct + 10, Ground - 8, bindery.Say("part-duct"), "small");
        sketch.Line(62, bottom, Left, bottom, "fine").Line(70, bottom, 70, Ground, "fine").Line(66, bottom, 74, bottom).Line(66, Ground, 74, Ground).Wrap(34, height is null ? bottom + 14 : ((bottom + Ground) / 2) + 4, 9, Said(bindery, height));
        if (Near(bindery, "gas-meter"))
        {
            var meter = Math.Min(right + ((gas ?? box.Width) * Scale), Sketch.Width - 62);
            sketch.Box(meter, bottom - 40, 58, 40, "outline", Hatch.Falling).Box(meter + 8, bottom - 32, 42, 28, "paper").Wrap(meter + 29, bottom - 20, 6, bindery.Say("part-gas-meter")).Across(right, meter, bottom - 8, Said(bindery, gas));
        }

        if (Near(bindery, "window"))
        {
            sketch.Box(8, 32, 64, 40, "dash").Line(40, 32, 40, 72, "dash").Say(40, 86, bindery.Say("part-window"), "small", Anchoring.Middle);
        }
    }

    // The heights between which nobody asks, by the rule that holds here; none where the operator has said its own.
    private static void Heights(Bindery bindery, Sketch sketch)
    {
        if (bindery.Plan.Siting.FirstOrDefault(v => v.Asks == Height) is not { OperatorSays: null } rule)
        {
            return;
        }

        foreach (var (bound, below) in new[] { ("ask-over", -5m), ("ask-under", 12m) })
        {
            if (rule.Rule.Cells.TryGetValue(bound, out var cell) && cell.Quantity is { } limit)
            {
                var y = Ground - (limit.Base * Scale);
                sketch.Line(236, y, Sketch.Width, y, "dash").Say(Sketch.Width - 4, y + below, bindery.Say($"siting-bound-{bound}", ("0", Measures.Metres(limit.Base))), "small", Anchoring.End);
            }
        }
    }

    private static void FromAbove(Bindery bindery, Sketch sketch, (decimal Width, decimal Height, decimal Depth) box, decimal? clear)
    {
        const decimal Wall = Ground + 52;
        var (right, front) = (Left + (box.Width * Scale), Wall + 8 + (box.Depth * Scale));
        var end = front + ((clear ?? box.Height) * Scale);
        sketch.Say(0, Wall - 14, bindery.Say("cabinet-above"), "cap").Box(0, Wall, Sketch.Width, 8, "outline", Hatch.Falling);
        sketch.Box(Left, Wall + 8, right - Left, front - Wall - 8, "thick").Box(Left - 8, front, right - Left + 16, end - front, "dash");
        sketch.Down(right + 18, front, end, Said(bindery, clear)).Wrap((Left + right) / 2, ((front + end) / 2) - 4, 8, bindery.Say("cabinet-clear-short"));
    }

    private static bool Near(Bindery bindery, string thing) => bindery.Plan.Answers.ByName.GetValueOrDefault("place.near") is { Standing: Standing.Known, Value: Value.Several several } && several.Ids.Contains(thing);
}
