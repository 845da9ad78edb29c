namespace GuideBuilder.Planning.Questions;

/// <summary>Which unknown answers would settle something.</summary>
internal static class OpenQuestions
{
    /// <summary>Every unknown question under the reason of an open item or under the number of a line, in written order, with the items that wait for it.</summary>
    public static ImmutableArray<OpenQuestion> Of(IEnumerable<Because> open, ImmutableArray<Question> questions)
    {
        var waiting = open
            .Where(b => b.Truth == Truth.Open)
            .SelectMany(b => b.Unsettled.Select(q => (q.Name, Item: new ItemName(b.RuleKind, b.RuleId))))
            .ToLookup(x => x.Name, x => x.Item, StringComparer.Ordinal);
        return [.. questions.Where(q => waiting.Contains(q.Name)).Select(q => new OpenQuestion(q, [.. waiting[q.Name].Distinct()]))];
    }
}
