using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning;

public sealed class ItemsTests
{
    private static readonly Guidance Guidance = Small.Empty with { Questions = [.. Small.Empty.Questions, Small.YesNo("a.yes"), Small.YesNo("a.no"), Small.YesNo("a.open")] };

    public static TheoryData<Condition, ItemState, string> Judged => new()
    {
        { Condition.Always, ItemState.Settled, "" },
        { Yes, ItemState.Settled, "a.yes" },
        { No, ItemState.RuledOut, "a.no" },
        { Open, ItemState.Open, "a.open" },
        { Small.All(Yes, Yes), ItemState.Settled, "a.yes a.yes" },
        { Small.All(Yes, Open, No), ItemState.RuledOut, "a.no" },
        { Small.All(Yes, Open), ItemState.Open, "a.open" },
        { Small.Any(Yes, Open, No), ItemState.Settled, "a.yes" },
        { Small.Any(Open, No), ItemState.Open, "a.open" },
        { Small.Any(No, No), ItemState.RuledOut, "a.no a.no" },
        { Small.Any(), ItemState.RuledOut, "" },
        { Small.None(Yes, Open), ItemState.RuledOut, "a.yes" },
        { Small.None(No, No), ItemState.Settled, "a.no a.no" },
        { Small.None(No, Open), ItemState.Open, "a.open" },
    };

    private static Condition Yes => Small.Is("a.yes", "yes");

    private static Condition No => Small.Is("a.no", "yes");

    private static Condition Open => Small.Is("a.open", "yes");

    [Theory]
    [MemberData(nameof(Judged))]
    public void An_entry_keeps_its_state_and_the_leaves_that_decided_it(Condition when, ItemState state, string deciding)
    {
        var answers = Small.Answers(Guidance, ("a.yes", "yes"), ("a.no", "no"));

        var item = Items.Plan(Small.Hazard("h", when), name => answers[name]);

        Assert.Equal((state, deciding), (item.State, string.Join(' ', item.Because.Deciding.Select(l => l.Given.Name))));
        Assert.Equal(("hazard", "h", Small.At("h"), "Because of h", "common-practice"), (item.Because.RuleKind, item.Because.RuleId, item.Because.Place, item.Because.Reason.Words, Assert.Single(item.Because.Sources)));
    }
}
