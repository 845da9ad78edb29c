namespace GuideBuilder.Reading;

/// <summary>A first, silent look through the files for what conditions may ask about. Whatever is malformed is passed over here and found when the entry is read.</summary>
internal static class NameScan
{
    private static readonly FrozenDictionary<string, QuestionKind> KindWords = QuestionWords.Kinds.ToFrozenDictionary(k => k.Word, k => k.Means, StringComparer.Ordinal);

    /// <summary>Every name, questions first, in the order of asking.</summary>
    public static IEnumerable<Named> Of(IReadOnlyList<ContentFile> files)
    {
        var questions = Layout.Sections
            .SelectMany(section => files.Where(f => f.Name == $"questions/{section}.yaml"))
            .SelectMany(file => file.Entries.Select(e => (file.Stem, Entry: e)));
        var order = 0;
        foreach (var (section, entry) in questions)
        {
            yield return Question(section, entry, order++);
        }

        foreach (var entry in Entries(files, "facts.yaml"))
        {
            yield return new(Text(entry, "id"), Kind(entry), FactOptions(entry), UnitOf(entry), NameSource.Fact, 0);
        }

        foreach (var fact in CalculatedFact.All)
        {
            yield return new(fact.Name, fact.Kind, fact.Options, fact.Unit, NameSource.Calculator, 0);
        }

        var ways = Entries(files, "ways.yaml").Select(e => Text(e, "id")).ToImmutableArray();
        yield return new(CalculatedFact.Way, QuestionKind.Choice, ways, null, NameSource.Way, 0);
        yield return new(CalculatedFact.OffSupplyHours, QuestionKind.Quantity, [], Unit.Of("hours"), NameSource.FinishedPlan, 0);
        yield return new(CalculatedFact.Months, QuestionKind.Quantity, [], Unit.One, NameSource.FinishedPlan, 0);
    }

    private static Named Question(string section, Mapping entry, int order)
    {
        var kind = Kind(entry);
        var options = entry["options"] is Mapping written ? written.Entries.Select(e => e.Key.Text).ToImmutableArray() : [];
        return new($"{section}.{Text(entry, "id")}", kind, kind == QuestionKind.YesNo ? QuestionWords.YesAndNo : options, UnitOf(entry), NameSource.Question, order);
    }

    private static ImmutableArray<string> FactOptions(Mapping entry) =>
        Kind(entry) == QuestionKind.YesNo ? QuestionWords.YesAndNo
        : entry["options"] is Sequence list ? [.. list.Items.OfType<Scalar>().Select(s => s.Text)]
        : [];

    private static IEnumerable<Mapping> Entries(IReadOnlyList<ContentFile> files, string name) => files.Where(f => f.Name == name).SelectMany(f => f.Entries);

    private static QuestionKind Kind(Mapping entry) => KindWords.GetValueOrDefault(Text(entry, "kind"), QuestionKind.Text);

    private static Unit? UnitOf(Mapping entry) => Kind(entry) == QuestionKind.Quantity ? Unit.Find(Text(entry, "unit")) ?? Unit.One : null;

    private static string Text(Mapping entry, string key) => entry[key] is Scalar scalar ? scalar.Text : "";
}
