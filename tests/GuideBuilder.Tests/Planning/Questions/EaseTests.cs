using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Questions;

public sealed class EaseTests
{
    [Fact]
    public void Of_questions_that_change_as_much_the_easier_one_to_find_out_comes_first()
    {
        var eases = new[] { Ease.Visit, Ease.Ask, Ease.Write, Ease.Look, Ease.Papers };
        var guidance = Small.Empty with
        {
            Questions = [.. Small.Empty.Questions, .. eases.Select(e => Small.YesNo($"a.{Name(e)}") with { Ease = e })],
            Hazards = [.. eases.Select(e => Small.Hazard(Name(e), Small.Is($"a.{Name(e)}", "yes")))],
        };

        Assert.Equal(["look", "papers", "ask", "write", "visit"], Small.Plan(guidance).FindOutFirst.Select(f => f.Question.Id));
    }

    private static string Name(Ease ease) => $"{ease}".ToLowerInvariant();
}
