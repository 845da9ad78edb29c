using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

/// <summary>Cases 1 to 13 on supply numbers. Every number is a published sample or made up; none is a home's.</summary>
public sealed class SupplyNumberChecks
{
    private const string Subject = "supply-numbers";
    private const string Rule = "Check-digit routines for supply numbers, weights 3 to 43 without 11 (public collection), worked out apart";
    private const string Sample = "Check-digit routines for supply numbers: published samples (public collection and its README)";
    private const string Areas = "What is an MPAN? (energy advisers); Meter Point Administration Number (encyclopaedia)";
    private const string OldTop = "Meter Point Administration Number (encyclopaedia): top line of 21";
    private const string NewTop = "The top line of the supply number has changed (Inspired)";
    private const string North = "Connections, frequently asked questions (NIE Networks)";
    private const string Gas = "Meter numbers for gas and electricity (Child Poverty Action Group)";

    private static SupplyNumber Read(string text, string nation = "england") => SupplyNumbers.Read(text, nation, Content.Guidance.Tables)!;

    private static void IsRight(string text, int remainder, string area)
    {
        var number = Read(text);

        Assert.Equal((SupplyNumberKind.ElectricityGreatBritain, SupplyNumberFlaw.None, area, remainder), (number.Kind, number.Flaw, number.Area, number.Check!.Remainder));
    }

    private static void IsWrong(string text, SupplyNumberFlaw flaw) => Assert.Equal((SupplyNumberKind.NotASupplyNumber, flaw), (Read(text).Kind, Read(text).Flaw));

    [Fact, PublishedCheck(Subject, 1, Sample, CheckMark.Read)]
    public void The_sample_of_area_13_adds_up_to_1349()
    {
        IsRight("1312345678907", 7, "13");
        Assert.Equal(new CheckDigit(1349, 7, 7), Read("1312345678907").Check);
    }

    [Fact, PublishedCheck(Subject, 2, Sample, CheckMark.Read)]
    public void The_sample_of_area_20_adds_up_to_1435()
    {
        IsRight("2012345678385", 5, "20");
        Assert.Equal(1435, Read("2012345678385").Check!.Sum);
    }

    [Fact, PublishedCheck(Subject, 3, Rule, CheckMark.Derived)]
    public void A_last_digit_of_7_where_9_follows_is_wrong()
    {
        IsWrong("2012345678987", SupplyNumberFlaw.CheckDigit);
        Assert.Equal(9, Read("2012345678987").Check!.Digit);
    }

    [Fact, PublishedCheck(Subject, 4, Rule, CheckMark.Derived)]
    public void A_remainder_of_10_gives_0() => IsRight("2300000000000", 10, "23");

    [Fact, PublishedCheck(Subject, 5, Rule, CheckMark.Derived)]
    public void A_remainder_of_0_gives_0() => IsRight("1612345678900", 0, "16");

    [Fact, PublishedCheck(Subject, 6, Rule, CheckMark.Derived)]
    public void One_wrong_digit_may_go_unseen() => IsRight("2300001000000", 0, "23");

    [Fact, PublishedCheck(Subject, 7, Areas, CheckMark.Read)]
    public void From_24_on_the_network_is_independent_and_names_no_region()
    {
        var number = Read("2499999999991");

        Assert.Equal((SupplyNumberKind.ElectricityGreatBritain, true), (number.Kind, number.IsIndependent));
        Assert.Equal(["england", "wales", "scotland"], number.Nations);
    }

    [Fact, PublishedCheck(Subject, 8, Areas, CheckMark.Read)]
    public void A_number_below_10_or_of_12_or_14_digits_is_none()
    {
        IsWrong("0912345678900", SupplyNumberFlaw.UnusedArea);
        IsWrong("131234567890", SupplyNumberFlaw.Length);
        IsWrong("13123456789071", SupplyNumberFlaw.Length);
    }

    [Fact, PublishedCheck(Subject, 9, OldTop, CheckMark.Read)]
    public void The_old_top_line_is_taken_apart() =>
        Assert.Equal(("2012345678385", new TopLine("01", "801", "100", false)), (Read("S 01 801 100 20 1234 5678 385").Core, Read("S 01 801 100 20 1234 5678 385").Top));

    [Fact, PublishedCheck(Subject, 10, NewTop, CheckMark.Read)]
    public void The_new_top_line_is_taken_apart() =>
        Assert.Equal(("2012345678385", new TopLine("01", "0393", "100", false)), (Read("01 0393 100 2012345678385").Core, Read("01 0393 100 2012345678385").Top));

    [Fact, PublishedCheck(Subject, 11, OldTop, CheckMark.Read)]
    public void The_loss_class_may_hold_letters() => Assert.Equal(("A1X", SupplyNumberFlaw.None), (Read("01801A1X2012345678385").Top!.Tariff, Read("01801A1X2012345678385").Flaw));

    [Fact, PublishedCheck(Subject, 12, North, CheckMark.Read)]
    public void In_Northern_Ireland_a_number_begins_with_81()
    {
        Assert.Equal(SupplyNumberKind.ElectricityNorthernIreland, Read("81123456789", "northern-ireland").Kind);
        Assert.Equal((SupplyNumberKind.NotASupplyNumber, SupplyNumberFlaw.Beginning), (Read("80123456789", "northern-ireland").Kind, Read("80123456789", "northern-ireland").Flaw));
    }

    [Fact, PublishedCheck(Subject, 13, Gas, CheckMark.Read)]
    public void Ten_digits_look_like_a_gas_number() => Assert.Equal(SupplyNumberKind.Gas, Read("8123456789").Kind);

    [Theory]
    [InlineData("12", "scotland", true)]
    [InlineData("12", "england", false)]
    [InlineData("13", "wales", false)]
    [InlineData("18", "england", false)]
    [InlineData("21", "england", true)]
    public void The_area_is_held_against_the_nation(string area, string nation, bool outside)
    {
        var twelve = area + "1234567890";
        var core = twelve + SupplyNumbers.CheckDigitOf(twelve, Content.Guidance.Tables)!.Digit;

        Assert.Equal(outside, Read(core, nation).IsOutside(nation));
    }

    [Theory]
    [InlineData("")]
    [InlineData("S")]
    [InlineData("no number at all")]
    [InlineData("131234567890X")]
    [InlineData("99 801 100 20 1234 5678 385")]
    [InlineData("١٣١٢٣٤٥٦٧٨٩٠٧")]
    public void Anything_else_is_none(string text) => Assert.Equal(SupplyNumberKind.NotASupplyNumber, Read(text).Kind);
}
