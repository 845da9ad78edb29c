using System.Collections.Immutable;
using GuideBuilder.Model;

namespace GuideBuilder.Tests.Reading;

public sealed class FactRowTests
{
    [Theory]
    [InlineData("{home.kind: {is: flat}}", "{home.kind: {is-one-of: [boat, flat]}}", "home.kind is flat")]
    [InlineData("{place.distance: {over: 3 m}}", "{place.distance: {under: 13 ft}}", "place.distance is 3.4812 m")]
    [InlineData("{place.distance: {at-least: 3 m}}", "{place.distance: {at-most: 3 m}}", "place.distance is 3 m")]
    [InlineData("{home.signs: {is: wet}}", "{home.signs: {is: smoke}}", "home.signs is smoke and wet")]
    [InlineData("{none-of: [{home.block-stair: {is: single}}]}", "{none-of: [{home.block-stair: {is: more}}]}", "home.block-stair is not asked")]
    [InlineData("{dates.needed-by: {under: 2027-01-01}}", "{dates.needed-by: {at-most: 2026-12-01}}", "dates.needed-by is 2026-11-30")]
    [InlineData("{far: {is: yes}}", "{place.distance: {over: 50 m}}", "place.distance is 51 m")]
    [InlineData("{all-of: []}", "{home.looped: {is: no}}", "home.looped is no")]
    [InlineData("{ground.hole-volume: {over: 1}}", "{ground.hole-volume: {over: 2}}", "ground.hole-volume is 3 m³")]
    public void Rows_that_can_hold_together_are_found_with_an_example(string one, string other, string example)
    {
        var fault = Assert.Single(Faults(one, other));

        Assert.Equal("HB1092", fault.Code);
        Assert.Contains(example, fault.Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{home.kind: {is: flat}}", "{home.kind: {is-one-of: [boat, detached]}}")]
    [InlineData("{place.distance: {over: 3 m}}", "{place.distance: {at-most: 3000 mm}}")]
    [InlineData("{place.distance: {over: 3 m}}", "{far: {is: no}}")]
    [InlineData("{home.signs: {is: none}}", "{home.signs: {is-one-of: [smoke, wet, rust]}}")]
    [InlineData("{home.block-stair: {is: single}}", "{home.kind: {is: boat}}")]
    [InlineData("{none-of: [{home.block-stair: {is: single}}, {home.block-stair: {is: more}}]}", "{home.kind: {is: flat}}")]
    [InlineData("{dates.needed-by: {under: 2027-01-01}}", "{dates.needed-by: {at-least: 2027-01-01}}")]
    public void Rows_that_cannot_hold_together_are_none_the_worse(string one, string other) => Assert.Empty(Faults(one, other));

    [Theory]
    [InlineData("{home.kind: {is: flat}}", "{home.kind: {is: boat}}", "home.kind is detached")]
    [InlineData("{place.distance: {over: 3 m}}", "{place.distance: {under: 3 m}}", "place.distance is 3 m")]
    public void A_gap_is_found_where_there_is_no_otherwise(string one, string other, string example)
    {
        var fault = Assert.Single(Faults(one, other, otherwise: ""));

        Assert.Equal("HB1093", fault.Code);
        Assert.Contains(example, fault.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_that_leave_no_gap_need_no_otherwise() =>
        Assert.Empty(Faults("{place.distance: {over: 3 m}}", "{place.distance: {at-most: 3 m}}", otherwise: ""));

    [Fact]
    public void Rows_about_too_much_to_try_every_case_need_an_otherwise()
    {
        string[] figures = ["barrow-loads", "bulk-bags", "dig-hours", "fill-hours", "hole-depth", "hole-surface", "hole-volume", "sand-volume"];
        var open = string.Join(", ", figures.Select(f => $"{{any-of: [{{ground.{f}: {{over: 1}}}}, {{ground.{f}: {{at-most: 1}}}}]}}"));
        var never = "{ground.trench-volume: {over: 1}}, {ground.trench-volume: {at-most: 1}}";
        var always = $"{{none-of: [{{all-of: [{open}, {never}]}}]}}";

        Assert.Equal("HB1094", Assert.Single(Faults(always, $"{{all-of: [{never}]}}", otherwise: "")).Code);
        Assert.Empty(Faults(always, $"{{all-of: [{never}]}}"));
    }

    [Fact]
    public void Facts_that_need_one_another_are_named_as_a_circle()
    {
        var faults = SmallGuidance.Adding("facts.yaml", Fact("b", "{c: {is: yes}}") + Fact("c", "{d: {is: yes}}") + Fact("d", "{b: {is: yes}}")).Faults;

        Assert.Equal("HB1090", Assert.Single(faults).Code);
        Assert.Contains("b → c → d → b", faults[0].Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fact_about_the_way_on_which_the_ways_depend_is_a_circle()
    {
        var files = new Dictionary<string, string>(SmallGuidance.Files, StringComparer.Ordinal)
        {
            ["ways.yaml"] = "- {id: stay, title: T, because: B., source: [common-practice]}\n- {id: outside-cabinet, title: T, because: B., source: [common-practice], applies-if: {b: {is: yes}}}\n",
        };
        files["facts.yaml"] += Fact("b", "{way: {is: outside-cabinet}}");

        Assert.Contains("b → way → b", Assert.Single(SmallGuidance.Read(files).Faults).Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", null)]
    [InlineData("applies-if: {place.distance: {over: 3 m}}", "HB1133")]
    [InlineData("meets-wish-if: {place.distance: {over: 3 m}}", null)]
    public void One_way_must_remain_whatever_is_answered(string more, string? code)
    {
        var faults = SmallGuidance.With("ways.yaml", $"- {{id: outside-cabinet, title: T, because: B., source: [common-practice], {more}}}\n").Faults;

        Assert.Equal(code, faults.SingleOrDefault()?.Code);
    }

    private static string Fact(string id, string when) =>
        $"- {{id: {id}, title: T, because: B., source: [common-practice], kind: yes-no, rows: [{{when: {when}, value: yes}}], otherwise: no}}\n";

    private static ImmutableArray<Fault> Faults(string one, string other, string otherwise = ", otherwise: no") => SmallGuidance.Adding(
        "facts.yaml",
        $"- {{id: f, title: T, because: B., source: [common-practice], kind: yes-no, rows: [{{when: {one}, value: yes}}, {{when: {other}, value: no}}]{otherwise}}}\n").Faults;
}
