namespace GuideBuilder.Rendering.Collating;

/// <summary>Handbooks that were bound from cautions or emergency numbers that have changed since, so that they can be called back.</summary>
public static class Recalls
{
    /// <summary>A finding for each handbook of a catalogue that is out of date in what keeps people alive.</summary>
    public static ImmutableArray<Finding> Of(string folder, IEnumerable<(string Id, BookAbout About)> books, Guidance guidance)
    {
        var now = guidance.Hazards.Select(h => KeyValuePair.Create(h.Id, CautionMarks.Of(h)))
            .Concat(guidance.Nations.SelectMany(n => CautionMarks.Bodies.Select(b => KeyValuePair.Create($"{n.Id}/{b}", CautionMarks.Of(n, b)))))
            .ToFrozenDictionary(StringComparer.Ordinal);
        return
        [
            .. from book in books
               let changed = book.About.Cautions.Where(c => now.GetValueOrDefault(c.Key) != c.Value).Select(c => c.Key).ToList()
               where changed.Count > 0
               select new Finding(Severity.Error, "recall", $"{folder}/{book.Id}", $"It was bound from cautions or numbers that have changed since: {string.Join(", ", changed)}. Bind it again and tell whoever has it{Who(book.About)}."),
        ];
    }

    private static string Who(BookAbout about) => about.For.Length == 0 ? "" : $" ({about.For})";
}
