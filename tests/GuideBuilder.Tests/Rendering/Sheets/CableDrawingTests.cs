using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering.Sheets;

/// <summary>How the hole and the supply are drawn.</summary>
public sealed class CableDrawingTests
{
    private const string Home = "home: {nation: england, kind: semi}\nwish: {moves: [cutout, meter], reason: [room-needed], way: outside-cabinet}\n";

    [Theory]
    [InlineData("no")]
    [InlineData("unknown")]
    [InlineData("yes")]
    public void The_cable_is_a_band_over_the_whole_hole_until_it_has_been_laid_bare(string exposed)
    {
        var picture = Drawing($"ground: {{joint-place: own-land, soil: clay, cable-exposed: {exposed}}}\n", "ground-sheet", "drawing-hole").Picture;
        var bands = picture.Marks.OfType<PictureMark.Box>().Where(b => b.Hatch == Hatch.Rising && b.Width > 40).ToArray();
        var lines = picture.Marks.OfType<PictureMark.Line>().Where(l => l.Look == "thick").ToArray();

        Assert.Equal(exposed == "yes" ? 0 : 2, bands.Length);
        Assert.Equal(exposed == "yes" ? 2 : 0, lines.Length);
    }

    [Theory]
    [InlineData("ground-sheet", "drawing-hole")]
    [InlineData("electrical-sheet", "drawing-arrangement")]
    [InlineData("your-part", "drawing-cabinet")]
    public void Every_drawing_has_words_and_a_table_beside_it_and_no_word_leaves_the_paper(string page, string id)
    {
        var drawing = Drawing("place: {kind: outside-box, near: [gas-meter, window], height: 0.9 m, gas-distance: 700 mm}\nground: {joint-place: own-land}\n", page, id);

        Assert.NotEqual("", drawing.InWords);
        Findings.AreNone(from words in drawing.Picture.Marks.OfType<PictureMark.Words>() where !Fits(words, drawing.Picture) select words.Text);
    }

    [Theory]
    [InlineData("ground-sheet", "drawing-hole", "operator: {hole-size: 0.6 m, hole-depth: 0.5 m}\n")]
    [InlineData("ground-sheet", "drawing-hole", "operator: {hole-size: 3 m, hole-depth: 1.5 m}\n")]
    [InlineData("ground-sheet", "drawing-hole", "")]
    [InlineData("electrical-sheet", "drawing-arrangement", "")]
    [InlineData("your-part", "drawing-cabinet", "")]
    [InlineData("your-part", "drawing-cabinet", "operator: {cabinet-height: 1.2 m}\n")]
    public void No_line_runs_through_words(string page, string id, string answers)
    {
        var picture = Drawing("place: {kind: outside-box, near: [gas-meter, window], gas-distance: 700 mm}\nground: {joint-place: own-land, soil: clay}\n" + answers, page, id).Picture;
        var papers = picture.Marks.OfType<PictureMark.Box>().Where(b => b.Look == "paper").ToArray();

        Findings.AreNone(
            from words in picture.Marks.OfType<PictureMark.Words>()
            let room = Room(words)
            where !papers.Any(p => p.X <= room.Left + 4 && p.X + p.Width >= room.Right - 4 && p.Y <= room.Top + 2 && p.Y + p.Height >= room.Bottom - 2)
            from line in Upright(picture).Concat(Level(picture))
            where line.Left < room.Right && line.Right > room.Left && line.Top < room.Bottom && line.Bottom > room.Top
            select $"{words.Text}: {line}");
    }

    private static IEnumerable<(decimal Left, decimal Right, decimal Top, decimal Bottom)> Upright(Picture picture) =>
        picture.Marks.OfType<PictureMark.Line>().Where(l => l.X1 == l.X2).Select(l => (l.X1, l.X2, Math.Min(l.Y1, l.Y2), Math.Max(l.Y1, l.Y2)))
            .Concat(Outlines(picture).SelectMany(b => new[] { (b.X, b.X, b.Y, b.Y + b.Height), (b.X + b.Width, b.X + b.Width, b.Y, b.Y + b.Height) }));

    private static IEnumerable<(decimal Left, decimal Right, decimal Top, decimal Bottom)> Level(Picture picture) =>
        picture.Marks.OfType<PictureMark.Line>().Where(l => l.Y1 == l.Y2).Select(l => (Math.Min(l.X1, l.X2), Math.Max(l.X1, l.X2), l.Y1, l.Y2))
            .Concat(Outlines(picture).SelectMany(b => new[] { (b.X, b.X + b.Width, b.Y, b.Y), (b.X, b.X + b.Width, b.Y + b.Height, b.Y + b.Height) }));

    private static IEnumerable<PictureMark.Box> Outlines(Picture picture) => picture.Marks.OfType<PictureMark.Box>().Where(b => b.Look is "thick" or "outline" or "dash");

    // A small letter is about six units wide, and eight high.
    private static (decimal Left, decimal Right, decimal Top, decimal Bottom) Room(PictureMark.Words words)
    {
        var length = words.Text.Length * 5.6m;
        var start = words.From switch
        {
            Anchoring.Middle => words.X - (length / 2),
            Anchoring.End => words.X - length,
            _ => words.X,
        };
        return (start, start + length, words.Y - 8, words.Y + 1);
    }

    private static bool Fits(PictureMark.Words words, Picture picture)
    {
        var (left, right, _, bottom) = Room(words);
        return left >= -4 && right <= picture.Width + 4 && bottom <= picture.Height + 1;
    }

    private static Block.Drawing Drawing(string answers, string page, string id)
    {
        var home = Support.Home.Given(Home + answers);
        return home.Made.Single(p => p.Id == page).Blocks.OfType<Block.Drawing>().Single(d => d.Id == id);
    }
}
