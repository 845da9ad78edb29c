using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;

namespace GuideBuilder.Tests.Cases;

/// <summary>Mistakes made in a copy of the guidance as it stands.</summary>
public sealed class GuidanceFaultTests
{
    public static TheoryData<string, string, string, string, string> Mistakes => new()
    {
        { "content/sources.yaml", "- id: hsg47\n", "- id: hsg-forty-seven\n", "content/facts.yaml", "hsg47" },
        { "content/facts.yaml", "{ground.who-digs: {is: household}}", "{ground.who-digs: {is: houshold}}", "content/facts.yaml", "houshold" },
        { "content/steps.yaml", "{step: photograph-intake}]", "{step: photograph-intak}]", "content/steps.yaml", "photograph-intak}" },
        { "content/questions/people.yaml", "  data-class: health\n", "", "content/questions/people.yaml", "id: medical-equipment" },
        { "content/hazards.yaml", "  reviewed-by: not yet reviewed\n", "", "content/hazards.yaml", "id: stop-smoke-or-flash" },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_a_fault_where_it_stands(string file, string was, string now, string faultIn, string at)
    {
        var changed = Guidances.Changed((file, was, now));
        var text = Encoding.UTF8.GetString(changed.Single(f => f.Path == faultIn).Bytes.Span);
        var place = Position(faultIn, text, text.IndexOf(at, StringComparison.Ordinal));
        var faults = GuidanceReader.Read(changed, "content", Guidances.Today).Faults.Where(f => f.Severity == Severity.Error).ToArray();

        Assert.True(faults.Any(f => f.Place.Path == place.Path && f.Place.Line == place.Line), $"Wanted {place}, found:\n" + string.Join('\n', faults.Select(f => f.ToString())));
    }

    [Fact]
    public void A_day_of_review_that_is_past_is_a_warning()
    {
        var fault = Assert.Single(GuidanceReader.Read(Guidances.Changed(("content/guidance.yaml", "review-by: 2027-05-24", "review-by: 2026-01-31")), "content", Guidances.Today).Faults);

        Assert.Equal(Severity.Warning, fault.Severity);
        Assert.Equal("content/guidance.yaml", fault.Place.Path);
    }

    private static Place Position(string path, string text, int index) =>
        new(path, text[..index].Count(c => c == '\n') + 1, index - text.LastIndexOf('\n', Math.Max(0, index - 1)));
}
