using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>Mistakes made in a copy of the guidance as it stands.</summary>
public sealed class GuidanceFaultTests
{
    public static TheoryData<string, string, string, string, string> Mistakes => new()
    {
        { "content/sources.yaml", "- id: hsg47\n", "- id: hsg-forty-seven\n", "content/facts.yaml", "hsg47" },
        { "content/facts.yaml", "{ground.who-digs: {is: household}}", "{ground.who-digs: {is: houshold}}", "content/facts.yaml", "houshold" },
        { "content/hazards.yaml", "{intake.signs: {is: fresh-tar}}", "{intake.signs: {is: fresh-tarr}}", "content/hazards.yaml", "fresh-tarr}}" },
        { "content/costs.yaml", "{home.nation: {is: ireland}}", "{home.nation: {is: eire}}", "content/costs.yaml", "eire}}" },
        { "content/steps.yaml", "{step: photograph-intake}]", "{step: photograph-intak}]", "content/steps.yaml", "photograph-intak}" },
        { "content/questions/meter.yaml", "  ease: papers\n", "", "content/questions/meter.yaml", "id: change-due" },
        { "content/questions/meter.yaml", "  ease: papers\n", "  ease: paper\n", "content/questions/meter.yaml", "paper\n" },
        { "content/questions/people.yaml", "  data-class: health\n", "", "content/questions/people.yaml", "id: medical-equipment" },
        { "content/hazards.yaml", "  reviewed-by: not yet reviewed\n", "", "content/hazards.yaml", "id: stop-smoke-or-flash" },
        { "content/hazards.yaml", "  until: emergency-visit\n", "", "content/hazards.yaml", "id: stop-smoke-or-flash" },
        { "content/hazards.yaml", "  until: emergency-visit\n", "  until: emergency-vist\n", "content/hazards.yaml", "emergency-vist" },
        { "content/hazards.yaml", "  signal-word: caution\n", "  signal-word: caution\n  until: emergency-visit\n", "content/hazards.yaml", "until: emergency-visit\n  cause: Coats" },
        { "content/tables/soils.yaml", "  for-answer: {ground.soil: {is: chalk}}\n", "", "content/tables/soils.yaml", "id: soil-topsoil" },
        { "content/questions/ground.yaml", "    chalk: {wording:", "    gault: {wording: Gault, weight: 1}\n    chalk: {wording:", "content/tables/soils.yaml", "id: soil-topsoil" },
        { "content/tables/soils.yaml", "{ground.soil: {is: chalk}}", "{ground.soil: {is: clay}}", "content/tables/soils.yaml", "id: soil-chalk" },
        { "content/tables/soils.yaml", "{ground.soil: {is: chalk}}", "{ground.soil: {is: chlak}}", "content/tables/soils.yaml", "chlak" },
        { "content/tables/regions.yaml", ", ie-region: 1.00}", "}", "content/tables/regions.yaml", "id: labour" },
        { "content/facts.yaml", "  otherwise: no\n", "", "content/facts.yaml", "id: great-britain" },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_a_fault_where_it_stands(string file, string was, string now, string faultIn, string at)
    {
        var changed = Guidances.Changed((file, was, now));
        var text = Encoding.UTF8.GetString(changed.Single(f => f.Path == faultIn).Bytes.Span);
        var place = Position(faultIn, text, text.IndexOf(at, StringComparison.Ordinal));
        var faults = GuidanceReader.Read(changed, "content", Guidances.Today).Faults.Where(f => f.Severity == Severity.Error).ToArray();

        Assert.True(faults.Any(f => f.Place == place), $"Wanted {place}, found:\n" + string.Join('\n', faults.Select(f => f.ToString())));
    }

    [Theory]
    [InlineData("content/guidance.yaml")]
    [InlineData("content/tables/prices.yaml")]
    [InlineData("content/tables/networks.yaml")]
    public void A_day_of_review_that_is_past_is_a_warning_where_it_stands(string file)
    {
        var changed = Guidances.Changed((file, "review-by: 2027-", "review-by: 2020-"));
        var text = Encoding.UTF8.GetString(changed.Single(f => f.Path == file).Bytes.Span);
        var fault = Assert.Single(GuidanceReader.Read(changed, "content", Guidances.Today).Faults);

        Assert.Equal(Severity.Warning, fault.Severity);
        Assert.Equal(Position(file, text, text.IndexOf("2020-", StringComparison.Ordinal)), fault.Place);
    }

    [Fact]
    public void The_guidance_as_it_stands_has_no_fault() =>
        Findings.AreNone(GuidanceReader.Read(Guidances.Changed(), "content", Guidances.Today).Faults.Select(f => f.ToString()));

    private static Place Position(string path, string text, int index) =>
        new(path, text[..index].Count(c => c == '\n') + 1, index - text.LastIndexOf('\n', Math.Max(0, index - 1)));
}
