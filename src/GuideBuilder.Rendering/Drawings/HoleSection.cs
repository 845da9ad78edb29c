using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The hole cut through: soil, dimension lines, support, a boot. The cable is a hatched band over the whole hole from the surface down; a line only where it has been laid bare.</summary>
internal static class HoleSection
{
    private const decimal GroundLine = 78;
    private const decimal Left = 92;
    private const decimal Room = 156;
    private const decimal Under = 22;
    private const decimal Letter = 6;
    private const decimal Board = 7;

    /// <summary>Draws it and gives the height at which it ends.</summary>
    internal static decimal Draw(Bindery bindery, Sketch sketch, HoleSize hole)
    {
        var scale = Room / Math.Max(hole.Length, hole.Depth);
        var (right, bottom) = (Left + (hole.Length * scale), GroundLine + (hole.Depth * scale));
        var soil = HoleDrawing.HatchOf(hole);
        sketch.Say(0, 16, bindery.Say("hole-section"), "cap").Across(Left, right, GroundLine - 22, Measures.Metres(hole.Length));
        sketch.Box(0, GroundLine, Left, bottom - GroundLine + Under, "", soil).Box(right, GroundLine, Sketch.Width - right, bottom - GroundLine + Under, "", soil).Box(Left, bottom, right - Left, Under, "", soil);
        Cable(bindery, sketch, hole, (Left, right, bottom), scale);
        sketch.Shape(false, "thick", Hatch.None, (0, GroundLine), (Left, GroundLine), (Left, bottom), (right, bottom), (right, GroundLine), (Sketch.Width, GroundLine));
        Support(sketch, hole, (Left, right, bottom));
        FootingLine(sketch, right, bottom);
        var (middle, depth) = ((GroundLine + bottom) / 2, Measures.Metres(hole.Depth));
        sketch.Box(Left - 24 - (Letter * depth.Length), middle - 10, (Letter * depth.Length) + 8, 18, "paper").Down(Left - 14, GroundLine, bottom).Say(Left - 20, middle + 4, depth, "small", Anchoring.End);
        Boot(sketch, 10, GroundLine, scale);
        sketch.Say(10 + (BootLength * scale) + 6, GroundLine - 6, bindery.Say("hole-boot", ("0", Measures.Metres(BootLength))), "small");
        return Notes(bindery, sketch, hole, bottom + Under + 16);
    }

    /// <summary>The length of a boot, by which a reader judges the rest.</summary>
    internal const decimal BootLength = 0.3m;

    private static void Cable(Bindery bindery, Sketch sketch, HoleSize hole, (decimal Left, decimal Right, decimal Bottom) at, decimal scale)
    {
        if (hole.Cable == CablePosition.AsExposed)
        {
            var y = at.Bottom - (hole.Gap * scale);
            sketch.Line(at.Left, y, at.Right, y, "thick").Say((at.Left + at.Right) / 2, y - 8, bindery.Say("hole-cable-bare"), "small", Anchoring.Middle).Down(at.Left + 10, y, at.Bottom, Measures.Metres(hole.Gap));
            return;
        }

        sketch.Box(at.Left, GroundLine, at.Right - at.Left, at.Bottom - GroundLine, "", Owners.HatchOf("network-operator"));
        HereSomewhere(bindery, sketch, at.Left, at.Right, GroundLine, at.Bottom);
    }

    /// <summary>The words in the band, on paper so that they can be read.</summary>
    internal static void HereSomewhere(Bindery bindery, Sketch sketch, decimal left, decimal right, decimal top, decimal bottom)
    {
        var (centre, middle) = ((left + right) / 2, (top + bottom) / 2);
        sketch.Box(centre - 59, middle - 21, 118, 42, "paper")
            .Say(centre, middle - 8, bindery.Say("hole-cable-name"), "small", Anchoring.Middle)
            .Say(centre, middle + 5, bindery.Say("hole-cable-here"), "small", Anchoring.Middle)
            .Say(centre, middle + 18, bindery.Say("hole-cable-depth"), "small", Anchoring.Middle);
    }

    // Nothing that stands on the ground may have its footing within a line at 45 degrees from the bottom.
    private static void FootingLine(Sketch sketch, decimal right, decimal bottom)
    {
        var reach = Math.Min(bottom - GroundLine, Sketch.Width - right);
        sketch.Line(right, bottom, right + reach, bottom - reach);
    }

    // Boards along both sides: who puts them in, and how, is the firm's.
    private static void Support(Sketch sketch, HoleSize hole, (decimal Left, decimal Right, decimal Bottom) at)
    {
        if (hole.IsSupported)
        {
            sketch.Box(at.Left, GroundLine - 4, Board, at.Bottom - GroundLine + 4, "outline").Box(at.Right - Board, GroundLine - 4, Board, at.Bottom - GroundLine + 4, "outline");
        }
    }

    private static decimal Notes(Bindery bindery, Sketch sketch, HoleSize hole, decimal top)
    {
        sketch.Box(0, top - 10, 22, 13, "outline", HoleDrawing.HatchOf(hole)).Say(28, top + 1, bindery.Say("hole-key-soil"), "small");
        if (hole.Cable != CablePosition.AsExposed)
        {
            sketch.Box(0, top + 8, 22, 13, "outline", Owners.HatchOf("network-operator")).Say(28, top + 19, bindery.Say("hole-key-band"), "small");
            top += 18;
        }

        sketch.Line(0, top + 16, 22, top + 16).Say(28, top + 20, bindery.Say("hole-key-footing"), "small");
        top += 18;
        if (!hole.IsSupported)
        {
            return top + 30;
        }

        sketch.Box(8, top + 9, Board, 14, "outline").Say(28, top + 20, bindery.Say("hole-key-support"), "small");
        return top + 50;
    }

    private static void Boot(Sketch sketch, decimal x, decimal ground, decimal scale)
    {
        var length = BootLength * scale;
        sketch.Shape(
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
}
