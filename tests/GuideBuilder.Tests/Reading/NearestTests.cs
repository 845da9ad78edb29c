using GuideBuilder.Reading;

namespace GuideBuilder.Tests.Reading;

public sealed class NearestTests
{
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("a", "", 1)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("saturday", "sunday", 3)]
    [InlineData("teh", "the", 1)]
    [InlineData("ca", "abc", 3)]
    public void Slips_are_counted_as_published(string one, string other, int slips)
    {
        // kitten/sitting and saturday/sunday are the customary examples; ca/abc is 3 in the restricted form and 2 in the full one (from memory).
        Assert.Equal(slips, Nearest.Slips(one, other));
        Assert.Equal(slips, Nearest.Slips(other, one));
    }

    [Theory]
    [InlineData("natoin", "nation")]
    [InlineData("Nation", "nation")]
    [InlineData("kynd", "kind")]
    [InlineData("zzz", null)]
    [InlineData("", null)]
    [InlineData("kin", "kind")]
    public void The_nearest_word_is_the_one_with_fewest_slips(string word, string? nearest) =>
        Assert.Equal(nearest, Nearest.To(word, ["nation", "kind", "tenure"]));

    [Fact]
    public void Among_equals_the_ordinal_first_is_taken_whatever_the_order() =>
        Assert.Equal(Nearest.To("cat", ["bat", "hat"]), Nearest.To("cat", ["hat", "bat"]));

    [Fact]
    public void A_word_of_a_megabyte_is_not_compared() => Assert.Null(Nearest.To(new string('x', 1 << 20), ["x", new string('x', 1 << 20)]));
}
