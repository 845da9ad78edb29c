using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The electrical arrangement now and afterwards, side by side from the street down to the consumer unit: main fuse, meter, switch, tails and where the earth comes from. Not to scale; what is not known says so.</summary>
internal static class Arrangement
{
    private const decimal BoxWidth = 122;
    private const decimal BoxHeight = 34;
    private const int Letters = 26;
    private const int SwitchLetters = 18;

    private static readonly ImmutableArray<decimal> Rows = [58, 116, 174, 256, 318];

    /// <summary>The drawing and its table.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var sketch = new Sketch();
        Column(bindery, sketch, 84, Supply.Now(bindery));
        Column(bindery, sketch, 256, Supply.After(bindery));
        sketch.Line(Sketch.Width / 2, 22, Sketch.Width / 2, 432, "fine");
        return
        [
            new Block.Drawing("drawing-arrangement", bindery.Say("drawing-arrangement"), bindery.Say("drawing-arrangement-words"), sketch.Finish(440)),
            .. Table(bindery, Supply.Now(bindery), Supply.After(bindery)),
        ];
    }

    private static ImmutableArray<Block> Table(Bindery bindery, Supply now, Supply after) => Make.Grid(bindery, "arrangement-caption", ["column-part", "drawing-now", "drawing-after"],
    [
        Row(bindery, "arrangement-place", now.Place, after.Place),
        Row(bindery, "arrangement-fuse", now.Fuse, after.Fuse),
        Row(bindery, "arrangement-switch", now.Switch, after.Switch),
        Row(bindery, "part-tails", now.Tails, after.Tails),
        Row(bindery, "arrangement-board", now.Board, after.Board),
        Row(bindery, "arrangement-earth", now.Earth, after.Earth),
    ]);

    private static GridRow Row(Bindery bindery, string label, string now, string after) => Make.Row(null, Phrase.Of(bindery.Say(label)), Phrase.Of(now), Phrase.Of(after));

    private static void Column(Bindery bindery, Sketch sketch, decimal centre, Supply supply)
    {
        var left = centre - (BoxWidth / 2);
        sketch.Say(centre, 16, supply.Title, "heavy", Anchoring.Middle);
        sketch.Box(centre - 5, 26, 10, Rows[0] - 26, "outline", Owners.HatchOf("network-operator")).Say(centre + 10, 40, bindery.Say("part-service-cable"), "small");
        var frame = Rows[supply.MovesFrom] - 8;
        sketch.Box(left - 8, frame, BoxWidth + 16, Rows[2] + BoxHeight - frame + 38, "dash").Wrap(centre, Rows[2] + BoxHeight + 17, 22, supply.Place);
        Pair(sketch, centre, Rows[0] + BoxHeight, Rows[1]).Box(left, Rows[0], BoxWidth, BoxHeight, "outline", Hatch.None);
        sketch.Box(left, Rows[0], 10, BoxHeight, "outline", Owners.HatchOf("network-operator")).Say(centre + 5, Rows[0] + 14, bindery.Say("part-cutout"), "small", Anchoring.Middle).Say(centre + 5, Rows[0] + 27, supply.FuseShort, "small", Anchoring.Middle);
        Pair(sketch, centre, Rows[1] + BoxHeight, Rows[2]).Box(left, Rows[1], BoxWidth, BoxHeight, "outline").Box(left, Rows[1], 10, BoxHeight, "outline", Owners.HatchOf("supplier")).Say(centre + 5, Rows[1] + 20, bindery.Say("part-meter"), "small", Anchoring.Middle);
        sketch.Box(left, Rows[2], BoxWidth, BoxHeight, supply.SwitchLook).Wrap(centre, Rows[2] + (supply.SwitchShort.Length > SwitchLetters ? 14 : 21), SwitchLetters, supply.SwitchShort);
        Pair(sketch, centre, Rows[2] + BoxHeight + 38, Rows[4] - 20).Wrap(centre + 10, Rows[3] + 22, 12, supply.TailsShort, "small", Anchoring.Start);
        sketch.Box(left, Rows[4] - 20, BoxWidth, BoxHeight, "outline").Say(centre, Rows[4], bindery.Say("part-board"), "small", Anchoring.Middle);
        Earth(bindery, sketch, left, centre, supply);
    }

    private static Sketch Pair(Sketch sketch, decimal centre, decimal top, decimal bottom) => sketch.Line(centre - 4, top, centre - 4, bottom, "thick").Line(centre + 4, top, centre + 4, bottom);

    // The earth runs beside the rest, from the cutout or from a rod, to the terminal under the consumer unit.
    private static void Earth(Bindery bindery, Sketch sketch, decimal left, decimal centre, Supply supply)
    {
        var terminal = Rows[4] + 34;
        sketch.Line(centre, Rows[4] + 14, centre, terminal, "dash").Box(left + 10, terminal, BoxWidth - 20, 20, "outline").Say(centre, terminal + 14, bindery.Say("arrangement-terminal"), "small", Anchoring.Middle);
        if (supply.FromNetwork)
        {
            sketch.Shape(false, "dash", Hatch.None, (left, Rows[0] + 26), (left - 14, Rows[0] + 26), (left - 14, terminal + 10), (left + 10, terminal + 10));
        }
        else if (supply.FromRod)
        {
            sketch.Shape(false, "dash", Hatch.None, (left + 10, terminal + 10), (left - 14, terminal + 10), (left - 14, terminal + 40)).Line(left - 22, terminal + 40, left - 6, terminal + 40).Line(left - 19, terminal + 44, left - 9, terminal + 44).Line(left - 16, terminal + 48, left - 12, terminal + 48);
        }

        sketch.Wrap(centre, terminal + 36, Letters, supply.Earth);
    }
}
