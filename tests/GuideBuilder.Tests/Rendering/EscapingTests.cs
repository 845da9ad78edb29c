using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Markup;
using GuideBuilder.Rendering.Templates;
using GuideBuilder.Tests.Support;
using Scriban.Runtime;

namespace GuideBuilder.Tests.Rendering;

public sealed class EscapingTests
{
    private static readonly string[] Awkward = ["*", "_", "`", "[", "](", "<b>", "&amp;", "&#42;", "\\", "|", "#", "1.", "- ", "  ", "\t", "{{", "}}", "http://x", "~~", "$", "!", "> ", "===", "\u00a0", "é", "£"];

    private static readonly Gen<string> OneLine =
        Gen.OneOf(Gen.String[Gen.Char[' ', '~'], 0, 12], Gen.String[Gen.Char[' ', '\ud7ff'].Where(c => !char.IsControl(c) && c is not '\u2028' and not '\u2029'), 0, 8], Gen.Int[0, Awkward.Length - 1].Select(i => Awkward[i]))
            .List[0, 6].Select(parts => string.Concat(parts));

    [Theory]
    [InlineData("before {{ v }} after")]
    [InlineData("{{ v }}")]
    [InlineData("- {{ v }}")]
    [InlineData("> {{ v }}")]
    [InlineData("**before {{ v }} after**")]
    [InlineData("[before {{ v }} after](https://example.org)")]
    [InlineData("| head |\n|---|\n| x{{ v }}x |")]
    public void Any_words_of_one_line_read_in_a_text_as_they_were_written(string template) =>
        OneLine.Sample(words => Read(template, words).Contains(words, StringComparison.Ordinal), iter: Sizes.Of("escaping"));

    [Fact]
    public void Line_breaks_become_spaces() => Assert.Equal("a b c", Read("{{ v }}", "a\nb\r\nc"));

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("{{ 7 * 6 }} {% x %}")]
    [InlineData("a & b \"c\" 'd' `e` *f*")]
    public void Hostile_words_arrive_as_text_everywhere(string words)
    {
        var staged = Bound.With("At {{ answer \"home.address\" }}.\n", SamplePlan.For(words));
        Findings.AreNone(staged.Faults.Select(f => f.ToString()));

        Assert.Contains("At " + Escaping.Html(words) + ".", staged.Value!.File("extra.html"), StringComparison.Ordinal);
        Assert.All(staged.Value!.Files, f => Assert.DoesNotContain("<script>", staged.Value!.File(f.Name), StringComparison.Ordinal));
    }

    private static string Read(string template, string words)
    {
        var faults = new FaultList();
        var text = Sample.Text(template);
        var pieces = TemplateRunner.CommonMark(text, new ScriptObject { ["v"] = words }, faults);
        var blocks = new MarkupReader(text, "en-GB", new KnownIds([]), faults, 0).Read(pieces[0].Text);
        Findings.AreNone(faults.All.Select(f => f.ToString()));
        return string.Concat(blocks.Select(Words));
    }

    private static string Words(Block block) => block switch
    {
        Block.Prose prose => prose.Words.PlainWords,
        Block.Listing listing => string.Concat(listing.Items.SelectMany(i => i).Select(Words)),
        Block.Quotation quotation => string.Concat(quotation.Inside.Select(Words)),
        Block.Grid grid => string.Concat(grid.Rows.SelectMany(r => r.Cells).Select(c => c.PlainWords)),
        _ => $"not a paragraph: {block}",
    };
}
