using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>From the street to the board, now and afterwards: whose each part is, and which parts move.</summary>
internal static class WhoseIsIt
{
    private const decimal PanelHeight = 150;

    /// <summary>The drawing, and a table that says the same.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var parts = Owners.Parts(bindery);
        var sketch = new Sketch();
        Panel(bindery, sketch, parts, 0, "drawing-now", _ => false);
        Panel(bindery, sketch, parts, PanelHeight, "drawing-after", p => Moves(bindery, p) == "answer-yes");
        Key(bindery, sketch, PanelHeight * 2);
        return
        [
            new Block.Drawing("drawing-whose", bindery.Say("drawing-whose"), bindery.Say("drawing-whose-words"), sketch.Finish((PanelHeight * 2) + 78)),
            .. Make.Grid(bindery, "whose-caption", ["column-part", "column-owner", "column-moves"], parts.Select(p => Make.Row(null, Phrase.Of(Name(bindery, p.Part)), bindery.Link(p.Owner), Phrase.Of(bindery.Say(Moves(bindery, p.Part)))))),
            .. PartyBlocks.Owners(bindery),
        ];
    }

    private static string Name(Bindery bindery, string part) => bindery.Say($"part-{part}");

    // What the wish says moves; tails go where their ends go, and the cable follows the cutout.
    private static string Moves(Bindery bindery, string part)
    {
        var given = bindery.Plan.Answers.ByName.GetValueOrDefault("wish.moves");
        if (given is not { Standing: Standing.Known, Value: Value.Several moves })
        {
            return "answer-unknown";
        }

        var moving = part switch
        {
            "service-cable" => moves.Ids.Contains("cutout"),
            "tails-before" => moves.Ids.Contains("cutout") || moves.Ids.Contains("meter"),
            "tails-after" => !moves.Ids.IsEmpty,
            _ => moves.Ids.Contains(part),
        };
        return moving ? "answer-yes" : "answer-no";
    }

    private static void Panel(Bindery bindery, Sketch sketch, ImmutableArray<(string Part, string Owner)> parts, decimal top, string title, Func<string, bool> moved)
    {
        sketch.Say(0, top + 16, bindery.Say(title), "heavy");
        var middle = top + 70;
        foreach (var (part, x, width, height) in Places)
        {
            var owner = parts.First(p => p.Part == part).Owner;
            sketch.Box(x, middle - (height / 2), width, height, moved(part) ? "thick" : "outline", Owners.HatchOf(owner));
        }

        var (before, tails) = (moved("tails-before") ? "thick" : "line", moved("tails-after") ? "thick" : "line");
        sketch.Line(134, middle - 4, 154, middle - 4, before).Line(134, middle + 5, 154, middle + 5, before).Line(206, middle - 4, 248, middle - 4, tails).Line(206, middle + 5, 248, middle + 5, tails);
        sketch.Say(0, middle - 14, Name(bindery, "service-cable"), "small").Say(109, middle + 44, Name(bindery, "cutout"), "small", Anchoring.Middle)
            .Say(180, middle + 44, Name(bindery, "meter"), "small", Anchoring.Middle).Say(227, middle - 12, bindery.Say("part-tails"), "small", Anchoring.Middle)
            .Say(293, middle + 44, Name(bindery, "board"), "small", Anchoring.Middle);
        sketch.Line(0, top + PanelHeight - 14, Sketch.Width, top + PanelHeight - 14, "fine");
    }

    private static ImmutableArray<(string Part, decimal X, decimal Width, decimal Height)> Places { get; } =
        [("service-cable", 0, 84, 14), ("cutout", 84, 50, 56), ("meter", 154, 52, 56), ("board", 248, 90, 56)];

    private static void Key(Bindery bindery, Sketch sketch, decimal top)
    {
        var owners = Owners.Parts(bindery).Select(p => p.Owner).Distinct().ToList();
        for (var i = 0; i < owners.Count; i++)
        {
            sketch.Box(0, top + (i * 20), 24, 14, "outline", Owners.HatchOf(owners[i])).Say(32, top + 11 + (i * 20), bindery.Items.Find(owners[i])?.Title.Words ?? owners[i]);
        }

        sketch.Box(190, top, 24, 14, "thick").Say(222, top + 11, bindery.Say("drawing-key-moves"));
    }
}
