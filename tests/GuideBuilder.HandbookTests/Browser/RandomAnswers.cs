using GuideBuilder.Model;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>Answers files as nobody would fill them in: any answer to any question, some of them unknown, some left out, a few wrong.</summary>
internal sealed class RandomAnswers(int seed)
{
    private static readonly string[] Words = ["As it is", "unknown", "Rowan: \"yes\"", "a # b", "two\nlines", "Ünder the stairs, by 2027!", "- first", "12 3456 0007", "null", "x\ty\\z"];
    private static readonly string[] Dates = ["2027-03-15", "2028-02-29", "2027-12-31"];

    private readonly Random _random = new(seed);

    /// <summary>Answers to every question that falls to be answered, in the guidance's order.</summary>
    public WrittenAnswers Next(Guidance guidance) => new(
        [" Made up."],
        [
            new("handbook", new Written.Keys([new("format", new Written.One("1", false), [])]), []),
            .. guidance.Questions.GroupBy(q => q.Section, StringComparer.Ordinal)
                .Select(s => new WrittenEntry(s.Key, new Written.Keys([.. s.Select(Entry).OfType<WrittenEntry>()]), []))
                .Where(s => s.Value is Written.Keys { Entries.IsEmpty: false }),
        ],
        []);

    private WrittenEntry? Entry(Question question) => _random.Next(20) switch
    {
        < 5 when question.Name != "home.nation" => null,
        < 8 when question.Name != "home.nation" => new(question.Id, new Written.One("unknown", false), []),
        8 when question.Kind is QuestionKind.Quantity or QuestionKind.Date => new(question.Id, new Written.One("4 kittens", false), []),
        _ => new(question.Id, Value(question), _random.Next(30) == 0 ? [" Ask again."] : []),
    };

    private Written Value(Question question) => question.Kind switch
    {
        QuestionKind.Choice or QuestionKind.YesNo => new Written.One(Any(question.Options).Id, false),
        QuestionKind.Several => Several(question),
        QuestionKind.Quantity => new Written.One(Amount(question.Range!), false),
        QuestionKind.Date => new Written.One(Any(Dates), false),
        QuestionKind.Days => _random.Next(3) == 0 ? new Written.One("none", false) : List([Any(Dates), "2027-04-02 to 2027-04-09"]),
        _ => new Written.One(Any(Words), Quoted: true),
    };

    private Written Several(Question question)
    {
        var chosen = question.Options.Where(_ => _random.Next(3) == 0).Select(o => o.Id).ToList();
        return chosen.Count == 0 ? new Written.One("none", false) : List(chosen);
    }

    // On the ends, between them, in another unit, and beyond the ends.
    private string Amount(QuantityRange range)
    {
        var bare = Any([range.Least, range.Least + 1, range.Least + 2.5m, 3, 4, 40, range.Most, range.Most + 1]);
        var other = Any([.. Unit.All.Where(u => u.Dimension == range.Unit.Dimension)]);
        return _random.Next(3) == 0 ? FormattableString.Invariant($"{bare:0.###}") : new Quantity(decimal.Round(new Quantity(bare, range.Unit).In(other).Amount, 3), other).ToString().Replace(",", "", StringComparison.Ordinal);
    }

    private T Any<T>(IReadOnlyList<T> all) => all[_random.Next(all.Count)];

    private static Written.List List(IEnumerable<string> items) => new([.. items.Select(i => new WrittenItem(new Written.One(i, false), []))]);
}
