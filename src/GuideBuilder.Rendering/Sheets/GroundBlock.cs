using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Drawings;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Sheets;

/// <summary>The ground sheet: what it comes to in barrows, bags and hours, the hole drawn, who may dig what, when to stop, and how each figure was worked out.</summary>
internal static class GroundBlock
{
    private static readonly ImmutableArray<string> InShort =
    [
        "hole-volume", "trench-volume", "sides", "sloped-volume", "dig-hours-range", "barrow-hours", "hours-alone", "hours-with-helper", "fill-hours", "spoil-mass-range", "barrow-loads", "bulk-bags", "skip", "surplus-bags",
        "heap-width", "heap-height", "set-back", "sand-bags", "layers", "tape-depth", "separation", "barrier", "rain",
    ];

    private static readonly ImmutableArray<string> Never = ["never-street", "never-neighbour", "never-cable"];

    private static readonly ImmutableArray<(string Part, ImmutableArray<string> Lines)> Parts =
    [
        ("letter", ["letter-"]),
        ("hole", ["counted-depth", "hole-", "sides", "slope", "slope-", "sloped-", "footing-line", "barrier", "rain"]),
        ("trench", ["trench-", "separation", "bend", "tape-depth", "tree"]),
        ("spoil", ["layer-", "spoil-", "heap-", "set-back", "barrow-loads", "bulk-bags", "skip", "surplus", "surplus-"]),
        ("hours", ["dig-", "barrow-hours", "hours-", "fill-hours"]),
        ("filling", ["sand-", "layers", "passes-"]),
    ];

    /// <summary>The whole sheet; a sentence where no ground is opened.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        if (bindery.Plan.Ground is not { } sheet)
        {
            return [Make.Say(bindery, "ground-none")];
        }

        var words = new SheetWords(bindery, "ground");
        return
        [
            .. Make.Grid(bindery, "ground-caption", ["column-what", "column-indicative"], InShort.SelectMany(id => sheet.Rows.Where(r => r.Id == id)).Select(r => Make.Row(null, Phrase.Of(words.Short(r.Id)), Phrase.Of(words.Coarsely(r.Result))))),
            .. WhoDigs(words, sheet),
            .. HoleDrawing.Of(bindery),
            .. Make.Under(bindery, "ground-stop", Stops(words, sheet)),
            .. SheetLines.InParts(words, sheet.Rows, Parts),
        ];
    }

    private static ImmutableArray<Block> WhoDigs(SheetWords words, GroundSheet sheet) => Make.Under(
        words.Bindery,
        "ground-part-who",
        [
            .. Make.Grid(words.Bindery, "ground-who-caption", ["column-part", "column-who"], sheet.Rows.Where(r => r.Formula == "who-digs").Select(r => Make.Row(null, Phrase.Of(words.Line(r.Id)), Phrase.Of(words.Worth(r.Result))))),
            .. Make.List(Never.Select(n => Phrase.Of(words.Say(n)))),
        ]);

    private static ImmutableArray<Block> Stops(SheetWords words, GroundSheet sheet) => sheet.Stops.IsEmpty ? [] :
    [
        .. Make.List(sheet.Stops.Select(s => Phrase.Of(s.Cells.TryGetValue("when", out var when) ? when.Words : ""))),
        new Block.Prose(words.Bindery.Labels.Compose("sheet-sources", ("sources", words.Sources(sheet.Stops.SelectMany(s => s.Basis.Sources).Distinct(StringComparer.Ordinal))))),
    ];
}
