using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Trials;

/// <summary>A small guidance by chance: up to five questions, some asked only after another, steps, events and lines of money that depend on them.</summary>
internal static class RandomGuidance
{
    private const int Questions = 5;

    /// <summary>The guidance of a seed.</summary>
    public static Guidance Of(ulong seed)
    {
        var draws = new Draw(seed);
        var questions = Enumerable.Range(0, 1 + draws.Below(Questions)).Select(i => QuestionOf(i, draws)).ToArray();
        Condition When() => draws.Below(3) == 0 ? Condition.Always : Small.Is($"a.q{draws.Below(questions.Length)}", draws.Below(2) == 0 ? "yes" : "no");
        var steps = Enumerable.Range(0, 2 + draws.Below(5)).Select(i => StepOf(i, draws, When)).ToArray();
        var costs = Enumerable.Range(0, 1 + draws.Below(5)).Select(i => Small.Cost($"c{i}", price: $"p{i}", when: i == 0 ? Condition.Always : When())).ToArray();
        return Small.Empty with
        {
            Questions = [.. Small.Empty.Questions, .. questions],
            Steps = [.. steps],
            Costs = [.. costs, Small.Cost("again", price: "p0")],
            Tables = Small.Empty.Tables with { Prices = [.. costs.Select(c => PriceOf(c.Price, draws))], Vat = [Small.Vat("standard", 0.2m)] },
        };
    }

    private static Question QuestionOf(int i, Draw draws) => Small.YesNo($"a.q{i}") with
    {
        Options = [new("yes", Small.Words("yes"), 1 + draws.Below(9), true, Place.None), new("no", Small.Words("no"), 1 + draws.Below(9), false, Place.None)],
        AskIf = i > 0 && draws.Below(3) == 0 ? Small.Is($"a.q{draws.Below(i)}", "yes") : Condition.Always,
    };

    private static Step StepOf(int i, Draw draws, Func<Condition> when)
    {
        var low = 1 + draws.Below(5);
        var likely = low + draws.Below(10);
        var takes = Small.Takes(DayCount.WorkingDays, low, likely, likely + draws.Below(20));
        return Small.Step($"s{i}", 1, after: i == 0 ? [] : [$"s{draws.Below(i)}"], when: when()) with
        {
            Takes = takes,
            MayHappen = draws.Below(3) > 0 ? [] : [new($"e{i}", Small.Words("event"), Condition.Always, draws.Below(10) / 10m, takes, draws.Below(2) == 0 ? [] : ["again"], Small.Words("because"), Basis.Nothing, Place.None)],
        };
    }

    private static Price PriceOf(string id, Draw draws)
    {
        var low = draws.Below(500);
        var likely = low + draws.Below(900);
        return Small.Price(id, low, likely, likely + draws.Below(2000), (VatBasis)draws.Below(3));
    }

    private sealed class Draw(ulong seed)
    {
        private Xoshiro256 _draws = new(seed);

        public int Below(int most) => (int)(_draws.NextDraw() % (uint)most);
    }
}
