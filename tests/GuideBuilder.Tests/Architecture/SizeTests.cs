using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Architecture;

public sealed class SizeTests
{
    private const int MostLinesOfAFile = 250;
    private const int MostLinesOfAMethod = 40;

    [Fact]
    public void No_file_is_longer_than_a_reader_can_hold() =>
        Findings.AreNone(from file in SourceFile.All where file.Lines > MostLinesOfAFile select $"{file.Name} has {file.Lines} lines");

    [Fact]
    public void No_method_is_longer_than_a_screen() =>
        Findings.AreNone(
            from file in SourceFile.All
            from method in file.Methods()
            where method.Lines > MostLinesOfAMethod
            select $"{method.Name} has {method.Lines} lines");

    [Fact]
    public void Methods_are_measured_without_comments_and_attributes()
    {
        const string Source = """
            class C
            {
                /// <summary>Not counted.</summary>
                [Obsolete]
                [CLSCompliant(false)]
                int F(
                    int x)
                {
                    // Counted, as is {
                    return Local();
                    int Local() => '{' + x;
                }

                int P { get => 1; set { } }
            }
            """;

        Assert.Equal([("c.cs:6", 7), ("c.cs:11", 1), ("c.cs:14", 1), ("c.cs:14", 1)], SourceFile.Parse("c.cs", Source).Methods());
    }

    [Fact]
    public void Lines_are_counted_as_an_editor_counts_them() =>
        Assert.Equal([1, 1, 2], new[] { "a", "a\n", "a\nb" }.Select(text => SourceFile.Parse("c.cs", text).Lines));
}
