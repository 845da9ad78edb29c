using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The measurements of the joint hole as the ground sheet has them, in metres, and the words that go with each.</summary>
internal sealed record HoleSize(decimal Length, decimal Width, decimal Depth)
{
    /// <summary>The lines and the words of the sheet that they come from.</summary>
    internal required ImmutableArray<SheetRow> Rows { get; init; }

    /// <summary>How the cable may be shown.</summary>
    internal required CablePosition Cable { get; init; }

    /// <summary>How far the heap stands back.</summary>
    internal decimal SetBack => Of("set-back") ?? 0;

    /// <summary>How wide the heap is.</summary>
    internal decimal Heap => Of("heap-width") ?? 0;

    /// <summary>How long the heap is.</summary>
    internal decimal HeapLength => Figure("heap-width", "heap") ?? 0;

    /// <summary>Whether the sides must be held up.</summary>
    internal bool IsSupported => Row("hole-case")?.Result is Value.Option { Id: not "case-upright" };

    /// <summary>The clear room that the jointer wants under the cable.</summary>
    internal decimal Gap => Figure("counted-depth", "joint-hole") ?? 0;

    /// <summary>How far the barrier stands out, worked back from its length.</summary>
    internal decimal Barrier => Of("barrier") is { } round ? ((round / 2) - Length - Width) / 4 : 0;

    /// <summary>The size, or null where there is no hole or a side is not known.</summary>
    internal static HoleSize? Of(Bindery bindery)
    {
        if (bindery.Plan.Ground is not { } sheet || sheet.Rows.FirstOrDefault(r => r.Id == "hole-volume") is not { Inputs: [var length, var width, _] })
        {
            return null;
        }

        var depth = Metres(sheet.Rows.FirstOrDefault(r => r.Id == "hole-depth")?.Result);
        return (Metres(length.Worth), Metres(width.Worth), depth) is ({ } l and > 0, { } w and > 0, { } d and > 0)
            ? new HoleSize(l, w, d) { Rows = sheet.Rows, Cable = sheet.Cable }
            : null;
    }

    /// <summary>The line of that id, or null.</summary>
    internal SheetRow? Row(string id) => Rows.FirstOrDefault(r => r.Id == id);

    private decimal? Of(string line) => Metres(Row(line)?.Result);

    private decimal? Figure(string line, string figure) => Metres(Row(line)?.Inputs.FirstOrDefault(f => f.Name == figure)?.Worth);

    private static decimal? Metres(Value? value) => value is Value.Amount amount && amount.Quantity.Unit.Dimension == Dimension.Length ? amount.Quantity.Base : null;
}
