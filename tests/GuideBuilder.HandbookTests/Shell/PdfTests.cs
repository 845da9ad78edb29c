using System.Text;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>The paper editions as PDF, printed by a browser that is installed, or a clear word that there is none.</summary>
public sealed class PdfTests
{
    private static readonly string Answers = Repository.At("answers/" + Handbooks.Homes[0] + ".yaml");

    [Fact]
    public async Task The_paper_edition_is_printed_with_tags_and_an_outline()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/chromium"), "no Chromium is installed");
        using var folder = new Folder();

        var bound = await Tool.GuideBuilderAsync("bind", Answers, "--to", folder.At("book"), "--today", Handbooks.Today, "--pdf");

        Assert.True(bound.Exit == 0, bound.Errors);
        var pdf = Encoding.Latin1.GetString(File.ReadAllBytes(folder.At("book", "paper.pdf")));
        Assert.Contains("/StructTreeRoot", pdf, StringComparison.Ordinal);
        Assert.Contains("/Outlines", pdf, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.At("book", "short-edition.pdf")));
        Assert.Contains(" paper.pdf\n", File.ReadAllText(folder.At("book", "bound-files.txt")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3, "HB4016", "--pdf", "--browser", "/no/such/browser")]
    [InlineData(2, "HB4020", "--browser", "chromium")]
    public async Task A_browser_that_cannot_print_is_told_before_anything_is_written(int exit, string code, params string[] options)
    {
        using var folder = new Folder();

        var bound = await Tool.GuideBuilderAsync(["bind", Answers, "--to", folder.At("book"), .. options]);

        Assert.Equal(exit, bound.Exit);
        Assert.Contains(code, bound.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.At("book")));
    }

    [Fact]
    public async Task A_machine_without_a_browser_says_so()
    {
        using var folder = new Folder();

        var bound = await Tool.RunWithAsync(new() { ["PATH"] = folder.Path }, Tool.GuideBuilder, "bind", Answers, "--to", folder.At("book"), "--pdf");

        Assert.Equal(3, bound.Exit);
        Assert.Contains("HB4017", bound.Errors, StringComparison.Ordinal);
    }
}
