using GuideBuilder.Model;

namespace GuideBuilder.Tests.Model.Truths;

/// <summary>The strong tables of Kleene, Introduction to Metamathematics (1952), section 64 (from memory): t, f and u are Holds, Fails and Open.</summary>
public sealed class KleeneTests
{
    private static readonly Dictionary<char, Truth> Letters = new() { ['t'] = Truth.Holds, ['f'] = Truth.Fails, ['u'] = Truth.Open };

    [Theory]
    [InlineData("tt", 't', 't')]
    [InlineData("tf", 'f', 't')]
    [InlineData("tu", 'u', 't')]
    [InlineData("ft", 'f', 't')]
    [InlineData("ff", 'f', 'f')]
    [InlineData("fu", 'f', 'u')]
    [InlineData("ut", 'u', 't')]
    [InlineData("uf", 'f', 'u')]
    [InlineData("uu", 'u', 'u')]
    public void And_and_or_are_as_published(string operands, char and, char or)
    {
        var (left, right) = (Letters[operands[0]], Letters[operands[1]]);

        Assert.Equal(Letters[and], left.And(right));
        Assert.Equal(Letters[or], left.Or(right));
        Assert.Equal(Letters[and], new[] { left, right }.All());
        Assert.Equal(Letters[or], new[] { left, right }.Any());
    }

    [Theory]
    [InlineData('t', 'f')]
    [InlineData('f', 't')]
    [InlineData('u', 'u')]
    public void Not_is_as_published(char operand, char not) => Assert.Equal(Letters[not], Letters[operand].Not());

    [Fact]
    public void Of_nothing_all_holds_and_any_fails()
    {
        Assert.Equal(Truth.Holds, Array.Empty<Truth>().All());
        Assert.Equal(Truth.Fails, Array.Empty<Truth>().Any());
    }
}
