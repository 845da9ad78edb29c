using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The hole from above, with its barrier, the heap at its set-back, and a boot's sole: how much room the work takes.</summary>
internal static class HolePlan
{
    private const decimal Left = 38;
    private const decimal Room = 264;
    private const decimal RoomForWords = 52;

    /// <summary>Draws it from that height down and gives the height at which it ends.</summary>
    internal static decimal Draw(Bindery bindery, Sketch sketch, HoleSize hole, decimal top)
    {
        var scale = Room / Math.Max(hole.Length + (2 * hole.Barrier), hole.HeapLength);
        var (margin, boot) = (hole.Barrier * scale, HoleSection.BootLength * scale);
        var (left, upper) = (Left + margin, top + 14 + margin);
        var (right, lower) = (left + (hole.Length * scale), upper + (hole.Width * scale));
        sketch.Say(0, top, bindery.Say("hole-plan"), "cap").Box(left - margin, upper - margin, right - left + (2 * margin), lower - upper + (2 * margin), "dash");
        Hole(bindery, sketch, hole, (left, right, upper, lower));
        sketch.Across(left, right, upper - 8, Measures.Metres(hole.Length)).Line(left - 10, upper, left - 10, lower, "fine").Line(left - 14, upper, left - 6, upper).Line(left - 14, lower, left - 6, lower).Say(left - (margin < RoomForWords ? margin + 4 : 16), ((upper + lower) / 2) + 4, Measures.Metres(hole.Width), "small", Anchoring.End);
        Sole(sketch, right + 8, upper + 6, boot);
        var heap = lower + (hole.SetBack * scale);
        SetBack(bindery, sketch, hole, ((left + right) / 2, lower, margin, heap));
        Heap(bindery, sketch, hole, ((left + right) / 2, heap), scale);
        return Key(bindery, sketch, hole, heap + (hole.Heap * scale) + 20);
    }

    private static void Hole(Bindery bindery, Sketch sketch, HoleSize hole, (decimal Left, decimal Right, decimal Upper, decimal Lower) at)
    {
        var bare = hole.Cable == CablePosition.AsExposed;
        sketch.Box(at.Left, at.Upper, at.Right - at.Left, at.Lower - at.Upper, "thick", bare ? Hatch.None : Owners.HatchOf("network-operator"));
        if (bare)
        {
            var y = (at.Upper + at.Lower) / 2;
            sketch.Line(at.Left, y, at.Right, y, "thick").Say((at.Left + at.Right) / 2, y - 8, bindery.Say("hole-cable-bare"), "small", Anchoring.Middle);
        }
        else
        {
            HoleSection.HereSomewhere(bindery, sketch, at.Left, at.Right, at.Upper, at.Lower);
        }
    }

    // The words stand between the hole and the barrier, so that no line runs through them.
    private static void SetBack(Bindery bindery, Sketch sketch, HoleSize hole, (decimal X, decimal Lower, decimal Margin, decimal Heap) at) =>
        sketch.Down(at.X, at.Lower, at.Heap).Say(at.X + 7, at.Lower + (at.Margin / 2) + 4, bindery.Say("hole-set-back", ("0", Measures.Metres(hole.SetBack))), "small");

    private static void Heap(Bindery bindery, Sketch sketch, HoleSize hole, (decimal Centre, decimal Top) at, decimal scale)
    {
        var (width, length) = (hole.Heap * scale, hole.HeapLength * scale);
        var middle = at.Top + (width / 2);
        sketch.Box(at.Centre - (length / 2), at.Top, length, width, "outline", HoleDrawing.HatchOf(hole)).Line(at.Centre - (length / 2), middle, at.Centre + (length / 2), middle, "fine");
        sketch.Box(at.Centre - 62, middle - 11, 124, 18, "paper").Say(at.Centre, middle + 3, bindery.Say("hole-heap", ("0", Measures.Metres(hole.HeapLength)), ("1", Measures.Metres(hole.Heap))), "small", Anchoring.Middle);
    }

    private static void Sole(Sketch sketch, decimal x, decimal y, decimal length) => sketch.Shape(
        true,
        "outline",
        Hatch.None,
        (x, y),
        (x + (length * 0.34m), y),
        (x + (length * 0.4m), y + (length * 0.45m)),
        (x + (length * 0.3m), y + (length * 0.6m)),
        (x + (length * 0.3m), y + length),
        (x + (length * 0.04m), y + length),
        (x + (length * 0.04m), y + (length * 0.6m)));

    private static decimal Key(Bindery bindery, Sketch sketch, HoleSize hole, decimal top)
    {
        sketch.Line(0, top, 22, top, "dash").Say(28, top + 4, bindery.Say("hole-key-barrier", ("0", Measures.Metres(hole.Barrier))), "small");
        return top + 14;
    }
}
