using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Cases;
using NodaTime;

namespace GuideBuilder.Tests.Reading;

/// <summary>Cases that a table of the guidance as it stands would leave out.</summary>
public sealed class UncoveredTests
{
    [Fact]
    public void An_answer_without_a_row_is_a_fault() =>
        SmallGuidance.Finds("tables/soils.yaml", "- «{id: wet-clay, for-answer: {home.nation: {is: england}}, density: 1.9 t, source: [common-practice]}»", "HB1095");

    [Fact]
    public void A_region_without_a_factor_is_a_fault() =>
        Assert.Contains(GuidanceReader.Read(Guidances.Changed(("content/tables/regions.yaml", ", ie-region: 1.00}", "}")), "content", Guidances.Today).Faults, f => f is { Code: "HB1096", Severity: Severity.Error });

    [Fact]
    public void Holidays_that_no_list_knows_yet_are_a_warning() =>
        Assert.Contains(GuidanceReader.Read(Guidances.Changed(), "content", new LocalDate(2029, 1, 2)).Faults, f => f is { Code: "HB1113", Severity: Severity.Warning });
}
