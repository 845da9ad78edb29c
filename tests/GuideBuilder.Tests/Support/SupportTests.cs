namespace GuideBuilder.Tests.Support;

public sealed class SupportTests
{
    [Theory]
    [InlineData("write", null, true)]
    [InlineData("write", "", true)]
    [InlineData("write", "true", false)]
    [InlineData("yes", null, false)]
    [InlineData(null, null, false)]
    public void A_golden_file_is_written_only_where_a_person_asks(string? golden, string? ci, bool written) =>
        Assert.Equal(written, Golden.Accepts(golden, ci));

    [Fact]
    public void The_root_is_the_folder_of_the_solution() => Assert.True(File.Exists(Repository.At("GuideBuilder.sln")));

    [Fact]
    public void Every_size_can_be_looked_up() => Assert.InRange(Sizes.Of("networks"), 100, 2000);
}
