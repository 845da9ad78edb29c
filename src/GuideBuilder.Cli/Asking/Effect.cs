using GuideBuilder.Cli.Printing;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Cli.Asking;

/// <summary>What the answers so far come to, roughly, and what one more answer changed.</summary>
internal sealed class Effect
{
    private const int Named = 2;

    // A sketch is not worth more than the nearest fifty.
    private const int Rough = 50;

    private readonly ImmutableArray<(string Name, string Title, ItemState State)> _items;
    private readonly Plan _plan;

    private Effect(Plan plan)
    {
        _plan = plan;
        _items =
        [
            .. plan.Ways.Select(w => Of(w.Way)), .. plan.Steps.Select(s => Of(s.Step)), .. plan.Costs.Select(c => Of(c.Cost)),
            .. plan.Hazards.Select(h => Of(h.Hazard)), .. plan.Consents.Select(Of), .. plan.Clocks.Select(Of),
        ];
    }

    /// <summary>The effect of the answers so far; null while the nation is not known or no plan follows from them.</summary>
    internal static Effect? Of(Filling filling, Occasion occasion)
    {
        var answers = filling.ForPlanning();
        return answers["home.nation"].Standing != Standing.Known
            ? null
            : FactDeriver.Derive(answers, filling.Guidance).Then(facts => Planner.Sketch(facts, filling.Guidance, occasion)).Value is { } plan ? new(plan) : null;
    }

    /// <summary>One line: what an answer settled and ruled out, how much is open, and what it all comes to now.</summary>
    internal string Since(Effect? before)
    {
        var old = before?._items.ToDictionary(i => i.Name, i => i.State, StringComparer.Ordinal) ?? [];
        var changed = before is null ? [] : _items.Where(i => old.GetValueOrDefault(i.Name, i.State) != i.State).ToList();
        var parts = new[] { Part("settles", changed, ItemState.Settled), Part("rules out", changed, ItemState.RuledOut), Part("opens again", changed, ItemState.Open) }.OfType<string>().ToList();
        if (before is not null && before.Sum() != Sum())
        {
            parts.Add("moves the range");
        }

        var what = parts.Count == 0 ? "nothing in the plan" : string.Join("; ", parts);
        return Invariant($"{(before is null ? "" : $"What this changes: {what}. ")}Items still open: {_items.Count(i => i.State == ItemState.Open)}. {Sum()}");
    }

    /// <summary>What waits for the answer to a question.</summary>
    internal string Waiting(Question question)
    {
        var waiting = _plan.OpenQuestions.FirstOrDefault(q => q.Question.Name == question.Name)?.WouldSettle ?? [];
        var titles = waiting.Select(w => _items.FirstOrDefault(i => i.Name == $"{w.Kind} {w.Id}").Title).OfType<string>().ToList();
        return titles.Count == 0 ? "Nothing in the plan waits for this answer as things stand." : $"It would settle: {string.Join("; ", titles)}.";
    }

    private static (string Name, string Title, ItemState State) Of<T>(Planned<T> item)
        where T : Rule => ($"{item.Item.Head.Kind} {item.Item.Id}", item.Item.Title.Words, item.State);

    private static string? Part(string verb, IEnumerable<(string Name, string Title, ItemState State)> changed, ItemState to)
    {
        var titles = changed.Where(i => i.State == to).Select(i => i.Title).ToList();
        return titles.Count switch
        {
            0 => null,
            <= Named => $"{verb} {string.Join(", ", titles)}",
            _ => Invariant($"{verb} {titles.Count}, such as {string.Join(", ", titles.Take(Named))}"),
        };
    }

    private string Sum()
    {
        var finish = _plan.Schedule.Finish;
        return _plan.IsSuspended ? "A stop sign stands: ring first. Nothing else counts until somebody has come."
            : _plan.IsBeyond ? "No total can be given for such a home."
            : $"Roughly from {Money(_plan.Money.Gross.Low)} to {Money(_plan.Money.Gross.High)}, done from {ValueText.Of(finish.Early)} to {ValueText.Of(finish.Late)}.";
    }

    private string Money(decimal sum) => new Quantity(decimal.Round(sum / Rough, MidpointRounding.AwayFromZero) * Rough, _plan.Nation.Currency).ToString();
}
