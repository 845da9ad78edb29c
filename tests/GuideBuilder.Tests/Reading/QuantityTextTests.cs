using System.Globalization;
using GuideBuilder.Model;
using GuideBuilder.Reading;

namespace GuideBuilder.Tests.Reading;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("4 m", "m", "4", "m")]
    [InlineData("4m", "m", "4", "m")]
    [InlineData("4", "m", "4", "m")]
    [InlineData(" 4.25  m ", "m", "4.25", "m")]
    [InlineData("13 ft", "m", "13", "ft")]
    [InlineData("400 mm", "m", "400", "mm")]
    [InlineData("5 ft 6 in", "m", "66", "in")]
    [InlineData("5' 6\"", "m", "66", "in")]
    [InlineData("5'6\"", "m", "66", "in")]
    [InlineData("1 m 20 cm", "m", "120", "cm")]
    [InlineData("90 days", "days", "90", "days")]
    [InlineData("1 day", "days", "1", "days")]
    [InlineData("2 weeks 3 days", "days", "17", "days")]
    [InlineData("1 hour 30 minutes", "hours", "90", "minutes")]
    [InlineData("5 working days", "working days", "5", "working days")]
    [InlineData("25 mm2", "mm²", "25", "mm²")]
    [InlineData("12m2", "m²", "12", "m²")]
    [InlineData("12 m²", "m²", "12", "m²")]
    [InlineData("1,250 mm", "m", "1250", "mm")]
    [InlineData("-2 m", "m", "-2", "m")]
    [InlineData("60 A", "A", "60", "A")]
    [InlineData("0.35 ohm", "Ω", "0.35", "Ω")]
    [InlineData("7 mΩ/m", "mΩ/m", "7", "mΩ/m")]
    [InlineData("20 %", "%", "20", "%")]
    [InlineData("20%", "%", "20", "%")]
    [InlineData("1954", "", "1954", "")]
    public void A_quantity_is_read_as_a_person_writes_it(string text, string asked, string amount, string unit) =>
        Assert.Equal(new Value.Amount(Quantity.Of(decimal.Parse(amount, CultureInfo.InvariantCulture), unit)), Read(text, asked, out _));

    [Theory]
    [InlineData("£1,180 inc VAT", "£", "1180", VatBasis.Including)]
    [InlineData("£1,180 incl. VAT", "£", "1180", VatBasis.Including)]
    [InlineData("£1,180.50", "£", "1180.50", VatBasis.NotStated)]
    [InlineData("£ 0.50", "£", "0.50", VatBasis.NotStated)]
    [InlineData("€700 ex VAT", "€", "700", VatBasis.Excluding)]
    [InlineData("£700 plus VAT", "£", "700", VatBasis.Excluding)]
    [InlineData("£700 + vat", "£", "700", VatBasis.Excluding)]
    [InlineData("£95 outside VAT", "£", "95", VatBasis.Outside)]
    [InlineData("1180", "£", "1180", VatBasis.NotStated)]
    [InlineData("1,180 inc VAT", "£", "1180", VatBasis.Including)]
    public void Money_says_how_it_was_stated_and_nothing_is_inferred(string text, string asked, string amount, VatBasis basis) =>
        Assert.Equal(new Value.Amount(Quantity.Of(decimal.Parse(amount, CultureInfo.InvariantCulture), asked), basis), Read(text, asked, out _));

    [Theory]
    [InlineData("010 m", "m", "HB1026")]
    [InlineData("1_000 m", "m", "HB1026")]
    [InlineData("1:30", "hours", "HB1026")]
    [InlineData("0x1", "m", "HB1026")]
    [InlineData("0b11", "m", "HB1026")]
    [InlineData("0o17", "m", "HB1026")]
    [InlineData(".nan", "m", "HB1026")]
    [InlineData("-.inf", "m", "HB1026")]
    [InlineData("1e3 m", "m", "HB1026")]
    [InlineData("1e3", "m", "HB1026")]
    [InlineData("+5 m", "m", "HB1026")]
    [InlineData("5. m", "m", "HB1026")]
    [InlineData(".5 m", "m", "HB1026")]
    [InlineData("1,5 m", "m", "HB1026")]
    [InlineData("12,34 m", "m", "HB1026")]
    [InlineData("1234,567 m", "m", "HB1026")]
    [InlineData("1,,000 m", "m", "HB1026")]
    [InlineData("1.2.3 m", "m", "HB1026")]
    [InlineData("12345678901234567890123456789012345 m", "m", "HB1026")]
    [InlineData("1.12345678901234567890 m", "m", "HB1026")]
    [InlineData("far", "m", "HB1036")]
    [InlineData("m 4", "m", "HB1036")]
    [InlineData("about 4 m", "m", "HB1036")]
    [InlineData("4 yards", "m", "HB1037")]
    [InlineData("4 M", "m", "HB1037")]
    [InlineData("5 ft 6", "m", "HB1037")]
    [InlineData("4 kg", "m", "HB1038")]
    [InlineData("4 m", "", "HB1038")]
    [InlineData("4 days", "working days", "HB1038")]
    [InlineData("£4", "m", "HB1038")]
    [InlineData("€700", "£", "HB1038")]
    [InlineData("700 m", "£", "HB1038")]
    [InlineData("5 ft 14 in", "m", "HB1039")]
    [InlineData("6 in 5 ft", "m", "HB1039")]
    [InlineData("5.5 ft 6 in", "m", "HB1039")]
    [InlineData("5 m 5 m", "m", "HB1039")]
    [InlineData("£1,180.5", "£", "HB1040")]
    [InlineData("£1,180.505", "£", "HB1040")]
    [InlineData("£11,80", "£", "HB1026")]
    [InlineData("£500 or so", "£", "HB1041")]
    [InlineData("£", "£", "HB1026")]
    public void Anything_else_is_a_fault(string text, string asked, string code)
    {
        Assert.Null(Read(text, asked, out var faults));
        Assert.Equal(code, Assert.Single(faults).Code);
    }

    [Theory]
    [InlineData("010", "without the zero")]
    [InlineData("1_000", "Write 1000.")]
    [InlineData("1:30", "1 hour 30 minutes")]
    [InlineData("1,5", "1.5")]
    [InlineData("1e3", "in full")]
    [InlineData("0x1", "ordinary digits")]
    public void A_fault_says_what_would_be_right(string text, string right)
    {
        Read(text, "m", out var faults);

        Assert.Contains(right, faults[0].Right, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_of_another_kind_names_the_units_that_fit()
    {
        Read("4 kg", "m", out var faults);

        Assert.Equal("The units that fit are `mm`, `cm`, `m`, `in`, `ft`.", faults[0].Right);
    }

    [Theory]
    [InlineData("1.8 t", "1.8 t")]
    [InlineData("£600", "£600")]
    [InlineData("60", "60")]
    [InlineData("stands well when dry", null)]
    [InlineData("", null)]
    [InlineData("010", null)]
    public void A_cell_may_be_a_quantity_or_words(string text, string? quantity) => Assert.Equal(quantity, QuantityText.TryRead(text)?.ToString());

    private static Value.Amount? Read(string text, string asked, out IReadOnlyList<Fault> faults)
    {
        var list = new FaultList();
        var amount = QuantityText.Read(text, Unit.Of(asked), new("f", 1, 1), list);
        faults = list.Found;
        return amount;
    }
}
