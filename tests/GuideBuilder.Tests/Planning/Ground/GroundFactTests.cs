using GuideBuilder.Model;
using GuideBuilder.Planning.Ground;
using static GuideBuilder.Tests.Planning.Ground.Home;

namespace GuideBuilder.Tests.Planning.Ground;

public sealed class GroundFactTests
{
    public static TheoryData<string> Names => [.. CalculatedFact.All.Where(f => f.Kind == QuestionKind.Quantity && GroundFacts.ByName.ContainsKey(f.Name)).Select(f => f.Name).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Everything_known_gives_a_figure(string name) => Assert.True(Amount(name, With())!.Amount > 0);

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_known_gives_none(string name) => Assert.Null(Amount(name, Of()));

    [Theory]
    [MemberData(nameof(Names))]
    public void No_ground_opened_is_nothing_dug_whatever_else_is_unknown(string name) => Assert.Equal(0, Amount(name, Of(("joint-outside", "no"), ("breaks-ground", "no")))!.Amount);

    [Theory]
    [InlineData("ground.spoil-loose", "ground.soil")]
    [InlineData("ground.hole-volume", "operator.hole-depth")]
    [InlineData("ground.dig-hours", "ground.who-digs")]
    [InlineData("ground.fill-hours", "operator.who-fills")]
    [InlineData("ground.trench-volume", "ground.length")]
    [InlineData("ground.sand-bags", "operator.duct-bore")]
    public void An_answer_that_is_missing_leaves_the_figure_open(string fact, string question) => Assert.Null(Amount(fact, With((question, null))));

    [Theory]
    [InlineData("operator")]
    [InlineData("contractor")]
    [InlineData("household")]
    public void The_whole_hole_counts_whoever_digs_it(string digger)
    {
        var lookup = With(("ground.who-digs", digger));

        Assert.Equal(1.152m, Amount("ground.hole-volume", lookup)!.Amount);
        Assert.Equal((1.152m + 0.45m) * 1.35m, Amount("ground.spoil-loose", lookup)!.Amount);
    }

    [Fact]
    public void A_household_takes_longer_than_a_labourer() =>
        Assert.Equal(1.75m, decimal.Round(Amount("ground.dig-hours", With())!.Amount / Amount("ground.dig-hours", With(("ground.who-digs", "contractor")))!.Amount, 6));

    [Fact]
    public void The_hours_of_the_hole_and_of_the_trench_are_those_of_the_digging()
    {
        var (hole, trench) = (Amount("ground.hole-hours", With())!.Amount, Amount("ground.trench-hours", With())!.Amount);

        Assert.Equal(hole + trench, Amount("ground.dig-hours", With())!.Amount);
        Assert.Equal(1.5m * 1.75m * 1.152m / 0.35m, hole, 6);
        Assert.Equal(1.75m * 0.45m / 0.46m, trench, 6);
    }

    [Fact]
    public void The_trench_takes_hours_by_its_length_and_the_hole_does_not()
    {
        var twice = With(("ground.length", Metres(6)));

        Assert.Equal(2 * Amount("ground.trench-hours", With())!.Amount, Amount("ground.trench-hours", twice)!.Amount, 6);
        Assert.Equal(Amount("ground.hole-hours", With()), Amount("ground.hole-hours", twice));
    }

    [Theory]
    [InlineData("ground.hole-hours", "ground.length", true)]
    [InlineData("ground.trench-hours", "operator.hole-depth", true)]
    [InlineData("ground.hole-hours", "operator.hole-depth", false)]
    [InlineData("ground.trench-hours", "ground.length", false)]
    public void What_is_missing_about_the_one_leaves_the_other_known(string fact, string question, bool known) =>
        Assert.Equal(known, Amount(fact, With((question, null))) is not null);

    [Theory]
    [InlineData("0.5", null, null, "look")]
    [InlineData("0.8", "clay", "no", "look")]
    [InlineData("0.8", "clay", "yes", "support")]
    [InlineData("0.8", "loam", null, "support")]
    [InlineData("0.8", "clay", null, null)]
    [InlineData("0.8", null, "yes", null)]
    [InlineData("1", null, null, "support")]
    [InlineData("1.2", null, null, "firm")]
    [InlineData(null, "clay", "no", null)]
    public void The_sides_of_the_hole_are_known_as_soon_as_nothing_else_could_change_them(string? depth, string? soil, string? wet, string? asks)
    {
        object? metres = depth is null ? null : Metres(decimal.Parse(depth, System.Globalization.CultureInfo.InvariantCulture));
        var lookup = With(("operator.hole-depth", metres), ("ground.soil", soil), ("ground.wet", wet));

        Assert.Equal(asks, (GroundFacts.ByName["ground.hole-sides"](lookup, Home.Tables) as Value.Option)?.Id);
    }

    [Fact]
    public void A_home_without_a_hole_has_no_sides_to_hold_up() =>
        Assert.Equal(new Value.Option("look"), GroundFacts.ByName["ground.hole-sides"](Of(("joint-outside", "no")), Home.Tables));

    [Fact]
    public void Water_and_roots_never_make_it_quicker()
    {
        var dry = Amount("ground.dig-hours", With())!.Amount;

        Assert.True(Amount("ground.dig-hours", With(("ground.wet", "yes")))!.Amount > dry);
        Assert.True(Amount("ground.dig-hours", With(("ground.trees", "yes")))!.Amount > dry);
    }

    [Theory]
    [InlineData("own-land", "household", Digger.Household)]
    [InlineData("own-land", null, Digger.Ask)]
    [InlineData("footway", "household", Digger.Operator)]
    [InlineData("road", "contractor", Digger.Operator)]
    [InlineData("neighbour-land", "household", Digger.Operator)]
    [InlineData(null, "household", Digger.Ask)]
    public void A_street_and_a_neighbours_land_are_never_the_households(string? place, string? digs, Digger digger) =>
        Assert.Equal(digger, MayDig.For(DigPart.Ground, With(("ground.joint-place", place), ("ground.who-digs", digs))));

    [Theory]
    [InlineData("household", "yes", Digger.Household)]
    [InlineData("household", "no", Digger.Operator)]
    [InlineData("household", null, Digger.Operator)]
    [InlineData(null, "yes", Digger.Operator)]
    [InlineData("trained-contractor", "no", Digger.TrainedContractor)]
    public void The_household_uncovers_only_where_letter_and_cable_allow_it(string? who, string? may, Digger digger) =>
        Assert.Equal(digger, MayDig.For(DigPart.Uncovering, With(("ground.who-uncovers", who), ("household-may-uncover", may))));

    [Fact]
    public void In_a_street_the_household_uncovers_nothing() =>
        Assert.Equal(Digger.Operator, MayDig.For(DigPart.Uncovering, With(("ground.joint-place", "footway"), ("ground.who-uncovers", "household"), ("household-may-uncover", "yes"))));
}
