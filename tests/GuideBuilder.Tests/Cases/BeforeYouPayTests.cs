using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using Home = GuideBuilder.Tests.Support.Home;

namespace GuideBuilder.Tests.Cases;

/// <summary>What may cost nothing, and must be asked before anything is paid.</summary>
public sealed class BeforeYouPayTests
{
    private static readonly Dictionary<string, string> Nothing = new(StringComparer.Ordinal)
    {
        ["home"] = "nation: england, kind: detached, built: 2001, tenure: owner, divided-or-merged: no, supply-points: 1, operator-kind: distribution, business-use: no, resold: no",
        ["people"] = "cannot-reach: no",
        ["intake"] = "service: underground, cutout-kind: modern-plastic, signs: none, fixed-to: wall, looped: no, second-cable: no, carriers: one, phases: single",
        ["meter"] = "kind: credit, tariff: single, count: 1, height: 1.4 m, box-state: none, change-due: no",
        ["wish"] = "reason: [room-needed], moves: [cutout, meter], way: outside-cabinet",
        ["place"] = "kind: outside-box",
        ["loads"] = "heat-pump: none, charger: none",
        ["works"] = "kinds: none",
    };

    public static TheoryData<string, string, string, string> Conditions => new()
    {
        { "intake", "cutout-kind: modern-plastic", "cutout-kind: iron-or-metal", "a defect of the operator's own equipment?" },
        { "intake", "fixed-to: wall", "fixed-to: loose", "a defect of the operator's own equipment?" },
        { "meter", "change-due: no", "change-due: yes", "Must the meter be changed anyway?" },
        { "people", "cannot-reach: no", "cannot-reach: yes", "Can a person in the house not reach the meter?" },
        { "meter", "kind: credit, tariff: single, count: 1, height: 1.4 m", "kind: key-or-card, tariff: single, count: 1, height: 2.4 m", "Can a person in the house not reach the meter?" },
        { "intake", "looped: no", "looped: yes", "Does the operator want the loop gone" },
        { "home", "tenure: owner", "tenure: social-tenant", "your landlord's to keep in repair?" },
        { "home", "divided-or-merged: no, supply-points: 1", "divided-or-merged: yes, supply-points: 2", "in a way that no operator recorded?" },
        { "home", "operator-kind: distribution", "operator-kind: not-recorded", "in a way that no operator recorded?" },
    };

    public static TheoryData<string, string, string> ThatRaiseNothing =>
        [.. Conditions.Select(c => new TheoryDataRow<string, string, string>(c.Data.Item1, c.Data.Item2, c.Data.Item3))];

    [Theory]
    [MemberData(nameof(Conditions))]
    public void Each_condition_alone_puts_its_line_on_the_money_page(string section, string was, string now, string line)
    {
        var (before, after) = (Of(Nothing).Words("money"), Of(Changed(section, was, now)).Words("money"));

        Assert.DoesNotContain(line, before, StringComparison.Ordinal);
        Assert.Contains(line, after, StringComparison.Ordinal);
        Assert.Matches(@"^[^|]*?May be nil\..*?How sure: [a-z]", after[after.IndexOf(line, StringComparison.Ordinal)..]);
    }

    [Fact]
    public void Each_reason_to_ask_before_paying_stands_alone_in_one_of_these_homes()
    {
        var reasons = Content.Guidance.Steps.Single(s => s.Id == "ask-free-first").Head.AppliesIf.Names.ToArray();
        var loopAndCharger = Changed("intake", "looped: no", "looped: yes");
        loopAndCharger["loads"] = "heat-pump: none, charger: planned";
        var met = Conditions.Select(c => Changed(c.Data.Item1, c.Data.Item2, c.Data.Item3)).Append(loopAndCharger)
            .Select(h => Of(h).Plan).Select(p => reasons.Where(r => p.Facts[r].Value is Value.Option { Id: "yes" }).ToArray()).ToArray();

        Assert.Equal(6, reasons.Length);
        Assert.All(met, m => Assert.True(m.Length < 2, string.Join(", ", m)));
        Assert.Empty(reasons.Except(met.SelectMany(m => m)));
        Assert.All(reasons, r => Assert.True(Of(Nothing).Plan.Facts[r].Value is Value.Option { Id: "no" }, r));
    }

    [Theory]
    [MemberData(nameof(ThatRaiseNothing))]
    public void What_may_be_nil_raises_no_total(string section, string was, string now) =>
        Assert.True(Of(Changed(section, was, now)).Plan.Money.Gross.Likely <= Of(Nothing).Plan.Money.Gross.Likely);

    private static Dictionary<string, string> Changed(string section, string was, string now)
    {
        Assert.Contains(was, Nothing[section], StringComparison.Ordinal);
        return new(Nothing, StringComparer.Ordinal) { [section] = Nothing[section].Replace(was, now, StringComparison.Ordinal) };
    }

    private static Home Of(Dictionary<string, string> answers) => Home.Given(string.Concat(answers.Select(a => $"{a.Key}: {{{a.Value}}}\n")));
}
