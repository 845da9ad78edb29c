namespace GuideBuilder.Reading;

/// <summary>The values worth trying for each name in some conditions: enough to make every comparison come out both ways.</summary>
internal sealed class Candidates
{
    private const int MostMentioned = 6;
    private static readonly Because NoReason = new("", "", Place.None, Truth.Open, [], LocalText.Empty, []);

    private readonly ILookup<string, Comparison> _asked;
    private readonly Registry _registry;
    private readonly FrozenDictionary<string, Question> _questions;

    /// <summary>Prepares the values for the comparisons in these conditions.</summary>
    public Candidates(IEnumerable<Condition> conditions, Registry registry, FrozenDictionary<string, Question> questions)
    {
        _asked = conditions.SelectMany(Leaves).ToLookup(l => l.Name, l => l.Comparison, StringComparer.Ordinal);
        _registry = registry;
        _questions = questions;
    }

    /// <summary>What a name without a value stands for.</summary>
    public static Given Unknown(string name) => new Given.Derived(name, Standing.Unknown, null, NoReason);

    /// <summary>What a name is given as, in words for a fault.</summary>
    public static string Describe(Given given) => given.Standing == Standing.NotAsked ? $"{given.Name} is not asked" : $"{given.Name} is {Words(given.Value!)}";

    /// <summary>Everything to try for a name, when it is asked, not asked, or either.</summary>
    public IEnumerable<Given> Of(string name, Truth asked)
    {
        if (asked != Truth.Holds)
        {
            yield return new Given.Answered(_questions[name], Standing.NotAsked, null, null);
        }

        if (asked != Truth.Fails)
        {
            foreach (var value in Values(_registry.Names[name]))
            {
                yield return new Given.Set(name, value);
            }
        }
    }

    private IEnumerable<Value> Values(Named named) => named.Kind switch
    {
        QuestionKind.Several => Subsets(named),
        QuestionKind.Quantity => Amounts(named),
        QuestionKind.Date => Days(named),
        _ => named.Options.Select(o => new Value.Option(o)),
    };

    private IEnumerable<Value> Subsets(Named named)
    {
        var mentioned = named.Options.Where(o => _asked[named.Name].OfType<Comparison.IsOneOf>().Any(c => c.Options.Contains(o))).Take(MostMentioned).ToList();
        for (var bits = 0; bits < 1 << mentioned.Count; bits++)
        {
            yield return new Value.Several([.. mentioned.Where((_, i) => (bits & (1 << i)) != 0)]);
        }

        if (named.Options.FirstOrDefault(o => !mentioned.Contains(o)) is { } other)
        {
            yield return new Value.Several([other]);
        }
    }

    private IEnumerable<Value> Amounts(Named named)
    {
        var unit = named.Unit ?? Unit.One;
        var range = _questions.TryGetValue(named.Name, out var question) ? question.Range : null;
        var limits = Limits(named).Select(l => l.Quantity!.In(unit).Amount).Distinct().Order().ToList();
        return Around(limits, (a, b) => (a + b) / 2, l => l - 1, l => l + 1)
            .Where(a => range is null || (a >= range.Least && a <= range.Most))
            .Select(a => new Value.Amount(new Quantity(a, unit)));
    }

    private IEnumerable<Value> Days(Named named) =>
        Around(Limits(named).Select(l => l.Date!.Value).Distinct().Order().ToList(), (a, b) => a.PlusDays(Period.DaysBetween(a, b) / 2), d => d.PlusDays(-1), d => d.PlusDays(1))
            .Distinct()
            .Select(d => new Value.Day(d));

    private static IEnumerable<T> Around<T>(List<T> limits, Func<T, T, T> between, Func<T, T> below, Func<T, T> above) =>
        limits.Count == 0
            ? []
            : limits.Zip(limits.Skip(1), between).Concat(limits).Prepend(below(limits[0])).Append(above(limits[^1]));

    private IEnumerable<Limit> Limits(Named named) => _asked[named.Name].OfType<Comparison.Within>().SelectMany(w => new[] { w.From, w.To }).OfType<Limit>();

    private static IEnumerable<Condition.Asks> Leaves(Condition condition) => condition switch
    {
        Condition.AllOf all => all.Parts.SelectMany(Leaves),
        Condition.AnyOf any => any.Parts.SelectMany(Leaves),
        Condition.NoneOf none => none.Parts.SelectMany(Leaves),
        Condition.Asks asks => [asks],
        _ => throw new UnreachableException(),
    };

    private static string Words(Value value) => value switch
    {
        Value.Option option => option.Id,
        Value.Several several => several.Ids.IsEmpty ? Value.Several.None : string.Join(" and ", several.Ids),
        Value.Amount amount => amount.Quantity.ToString(),
        Value.Day day => Invariant($"{day.Date:uuuu-MM-dd}"),
        _ => throw new UnreachableException(),
    };
}
