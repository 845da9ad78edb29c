using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>Mistakes in an answers file are all told at once, where they stand, and cost nobody the handbook they had.</summary>
public sealed class FaultTests
{
    private const string ElevenMistakes = """
        handbook:
          format: 1
        home:
          nation: englnd
          built: 010
          kinds: semi
          heritage: no
        people:
          telecare: maybe
          telecare: yes
        intake:
          signs: [buzing]
          fuse-rating: 60 kg
        wish:
          moves: [cutout, meter]
          way:
        place:
          distance: 1:30
        dates:
          needed-by: 15/03/2027
        papers:
          - kind: quotation
            amount: £1,18
        """;

    private static readonly string[] Places = ["4:11", "5:10", "6:3", "7:13", "9:13", "10:3", "12:11", "13:16", "16:7", "18:13", "20:14", "23:13"];

    [Fact]
    public async Task Every_mistake_is_told_at_its_place_in_one_run()
    {
        using var folder = new Folder();
        var answers = folder.Put("home.yaml", ElevenMistakes);

        var bound = await Handbooks.BindAsync(answers, folder.At("book"));

        Assert.Equal((1, ""), (bound.Exit, bound.Output));
        Assert.Equal(Places.Select(place => $"{answers}:{place}: "), bound.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line[..(line.IndexOf(": ", StringComparison.Ordinal) + 2)]));
        Assert.False(Directory.Exists(folder.At("book")));
    }

    [Fact]
    public async Task A_faulty_answers_file_leaves_the_earlier_handbook_as_it_was()
    {
        using var folder = new Folder();
        var answers = folder.Put("home.yaml", Small("handbook: {format: 1}"));
        Assert.Equal(0, (await Handbooks.BindAsync(answers, folder.At("book"))).Exit);
        var before = Bytes.Of(folder.Path);

        folder.Put("home.yaml", Small("handbook: {format: 2}"));
        Assert.Equal(1, (await Handbooks.BindAsync(answers, folder.At("book"))).Exit);

        folder.Put("home.yaml", Small("handbook: {format: 1}"));
        Assert.Equal(before, Bytes.Of(folder.Path));
    }

    [Theory]
    [InlineData("bind", "--nope")]
    [InlineData("bind", "home.yaml", "--nope", "--to", "book")]
    [InlineData("bind", "-x", "--to", "book")]
    [InlineData("bind", "home.yaml")]
    [InlineData("bind", "home.yaml", "--to", "book", "--today", "24/11/2026")]
    [InlineData("bind", "home.yaml", "--to", "book", "--seed", "minus")]
    [InlineData("plan")]
    [InlineData("unbind")]
    public async Task Wrong_use_is_told_on_standard_error_without_a_page_of_help(params string[] arguments)
    {
        var used = await Tool.GuideBuilderAsync(arguments);

        Assert.Equal((2, ""), (used.Exit, used.Output));
        Assert.All(used.Errors.TrimEnd('\n').Split('\n'), line => Assert.StartsWith("guidebuilder: ", line, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_file_that_is_not_there_ends_with_3()
    {
        var used = await Tool.GuideBuilderAsync("plan", "no-such-home.yaml");

        Assert.Equal((3, ""), (used.Exit, used.Output));
        Assert.Contains("no-such-home.yaml", used.Errors, StringComparison.Ordinal);
    }

    /// <summary>The least that binds, after the handbook's own section.</summary>
    internal static string Small(string handbook) => handbook + "\nhome: {nation: england}\nwish: {moves: [cutout, meter]}\n";
}
