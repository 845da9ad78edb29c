using GuideBuilder.Model;

namespace GuideBuilder.Tests.Reading;

public sealed class ConditionReaderTests
{
    [Fact]
    public void A_condition_says_what_it_means_in_words()
    {
        var condition = Assert.IsType<Condition.AllOf>(Read(
            "{all-of: [{home.kind: {is: flat}}, {any-of: [{home.signs: {is-one-of: [wet, none]}}, {place.distance: {over: 13 ft}}]}, {none-of: [{dates.needed-by: {under: 2027-01-01}}, {place.distance: {between: [2, 5 m]}}]}]}"));

        Assert.Equal(["home.kind", "home.signs", "place.distance", "dates.needed-by", "place.distance"], condition.Names);
        var any = Assert.IsType<Condition.AnyOf>(condition.Parts[1]);
        Assert.Equal(["wet", "none"], Assert.IsType<Comparison.IsOneOf>(Assert.IsType<Condition.Asks>(any.Parts[0]).Comparison).Options);
        Assert.Equal(new Comparison.Within(new(Quantity.Of(13, "ft"), null, false), null), Assert.IsType<Condition.Asks>(any.Parts[1]).Comparison);
        var none = Assert.IsType<Condition.NoneOf>(condition.Parts[2]);
        Assert.Equal(new Comparison.Within(null, new(null, new(2027, 1, 1), false)), Assert.IsType<Condition.Asks>(none.Parts[0]).Comparison);
        Assert.Equal(new Comparison.Within(new(Quantity.Of(2, "m"), null, true), new(Quantity.Of(5, "m"), null, true)), Assert.IsType<Condition.Asks>(none.Parts[1]).Comparison);
    }

    [Theory]
    [InlineData("«home.kind»", "HB1060")]
    [InlineData("«[{home.kind: {is: flat}}]»", "HB1060")]
    [InlineData("«{home.kind: {is: flat}, home.looped: {is: yes}}»", "HB1060")]
    [InlineData("«{}»", "HB1060")]
    [InlineData("{all-of: «{home.kind: {is: flat}}»}", "HB1024")]
    [InlineData("{any-of: [«flat»]}", "HB1060")]
    [InlineData("{«home.kynd»: {is: flat}}", "HB1061")]
    [InlineData("{«kind»: {is: flat}}", "HB1061")]
    [InlineData("{«allof»: [{home.kind: {is: flat}}]}", "HB1061")]
    [InlineData("{home.kind: «flat»}", "HB1063")]
    [InlineData("{home.kind: «{is: flat, is-one-of: [boat]}»}", "HB1063")]
    [InlineData("{home.kind: {«over»: 3}}", "HB1064")]
    [InlineData("{place.distance: {«is»: 3 m}}", "HB1064")]
    [InlineData("{home.kind: {«not»: flat}}", "HB1064")]
    [InlineData("{home.address: «{is: here}»}", "HB1065")]
    [InlineData("{dates.away: «{over: 2027-01-01}»}", "HB1065")]
    [InlineData("{home.supply-number: «{is: 5}»}", "HB1065")]
    [InlineData("{home.kind: {is: «castle»}}", "HB1066")]
    [InlineData("{home.kind: {is: «unknown»}}", "HB1066")]
    [InlineData("{home.kind: {is: «none»}}", "HB1066")]
    [InlineData("{home.kind: {is: «[flat]»}}", "HB1025")]
    [InlineData("{home.kind: {is-one-of: «flat»}}", "HB1024")]
    [InlineData("{home.kind: {is-one-of: «[]»}}", "HB1022")]
    [InlineData("{home.kind: {is-one-of: [flat, «castle»]}}", "HB1066")]
    [InlineData("{home.looped: {is: «true»}}", "HB1066")]
    [InlineData("{place.distance: {over: «3 kg»}}", "HB1038")]
    [InlineData("{place.distance: {over: «1e3»}}", "HB1026")]
    [InlineData("{place.distance: {between: «3 m»}}", "HB1067")]
    [InlineData("{place.distance: {between: «[1 m, 2 m, 3 m]»}}", "HB1067")]
    [InlineData("{place.distance: {between: «[5 m, 2 m]»}}", "HB1068")]
    [InlineData("{dates.needed-by: {over: «3 days»}}", "HB1030")]
    [InlineData("{way: {is: «kiosk»}}", "HB1066")]
    [InlineData("{ground.hole-volume: {over: «1 m»}}", "HB1038")]
    public void What_is_no_condition_is_found_where_it_stands(string condition, string code) =>
        SmallGuidance.Finds("consents.yaml", $"- {{id: c, title: T, because: B., source: [common-practice], kind: permission, applies-if: {condition}}}", code);

    [Theory]
    [InlineData("{home.kynd: {is: flat}}", "home.kind")]
    [InlineData("{ground.hole-volum: {over: 1}}", "ground.hole-volume")]
    [InlineData("{home.kind: {is: flta}}", "flat")]
    [InlineData("{place.distance: {at-lest: 1}}", "at-least")]
    public void The_nearest_right_word_is_offered(string condition, string near) => Assert.Contains($"`{near}`", Assert.Single(Reading(condition).Faults).Right, StringComparison.Ordinal);

    private static Condition Read(string condition) => Reading(condition).Value!.Consents[0].Head.AppliesIf;

    private static Staged<Guidance> Reading(string condition) =>
        SmallGuidance.With("consents.yaml", $"- {{id: c, title: T, because: B., source: [common-practice], kind: permission, applies-if: {condition}}}");
}
