using System.Collections.Immutable;
using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Reading.Answers;

public sealed class SupplyNumberTests
{
    private static ImmutableArray<Fault> Faults(string nation, string number)
    {
        var text = $"handbook:\n  format: 1\n  id: number\nhome:\n  nation: {nation}\n  supply-number: {number}\nwish:\n  moves: [meter]\n";
        return AnswerReader.Read(new("number.yaml", Encoding.UTF8.GetBytes(text)), Content.Guidance).Faults;
    }

    [Theory]
    [InlineData("england", "8123456789", "HB1100")]
    [InlineData("england", "2012345678987", "HB1101")]
    [InlineData("england", "12345", "HB1101")]
    [InlineData("northern-ireland", "80123456789", "HB1101")]
    [InlineData("ireland", "99123456789", "HB1102")]
    [InlineData("england", "9912345678906", "HB1104")]
    [InlineData("scotland", "8112345678907", "HB1104")]
    [InlineData("scotland", "2012345678385", "HB1103")]
    [InlineData("wales", "81123456789", "HB1103")]
    public void An_odd_supply_number_is_warned_of_and_stops_nothing(string nation, string number, string code)
    {
        var fault = Assert.Single(Faults(nation, number));

        Assert.Equal((code, Severity.Warning, 6), (fault.Code, fault.Severity, fault.Place.Line));
        Assert.DoesNotContain(number, fault.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("england", "20 1234 5678 385")]
    [InlineData("scotland", "2499999999991")]
    [InlineData("northern-ireland", "81123456789")]
    [InlineData("ireland", "10123456789")]
    [InlineData("england", "unknown")]
    public void A_supply_number_that_may_be_right_is_passed_over(string nation, string number) => Assert.Empty(Faults(nation, number));
}
