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

    // A small letter is about six units wide.
    private static bool Fits(PictureMark.Words words, Picture picture)
    {
        var length = words.Text.Length * 5.6m;
        var start = words.From switch
        {
            Anchoring.Middle => words.X - (length / 2),
            Anchoring.End => words.X - length,
            _ => words.X,
        };
        return start >= -4 && start + length <= picture.Width + 4 && words.Y <= picture.Height;
    }

    private static Block.Drawing Drawing(string answers, string page, string id)
    {
        var home = Support.Home.Given(Home + answers);
        return home.Made.Single(p => p.Id == page).Blocks.OfType<Block.Drawing>().Single(d => d.Id == id);
    }
}
