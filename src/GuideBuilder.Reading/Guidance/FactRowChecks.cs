namespace GuideBuilder.Reading;

/// <summary>Tries the cases of every derived fact: no two rows may hold together, and a fact without <c>otherwise</c> must have a row for every case.</summary>
internal static class FactRowChecks
{
    /// <summary>Adds a fault, with an example, for each pair of rows that overlap and each gap.</summary>
    public static void Run(Guidance guidance, Registry registry, FaultList faults)
    {
        foreach (var fact in guidance.Facts)
        {
            CheckOverlaps(fact, guidance, registry, faults);
            if (fact.Otherwise is null)
            {
                CheckGaps(fact, guidance, registry, faults);
            }
        }
    }

    private static void CheckOverlaps(FactRule fact, Guidance guidance, Registry registry, FaultList faults)
    {
        for (var later = 1; later < fact.Rows.Length; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                var both = new Condition.AllOf([fact.Rows[earlier].When, fact.Rows[later].When], fact.Rows[later].Place);
                if (new CaseSearch(both, guidance, registry).Find() is { Example: { } example })
                {
                    faults.Add(ReadingFaults.RowsOverlap(fact.Rows[later].Place, fact.Rows[earlier].Place, example));
                }
            }
        }
    }

    private static void CheckGaps(FactRule fact, Guidance guidance, Registry registry, FaultList faults)
    {
        var none = new Condition.NoneOf([.. fact.Rows.Select(r => r.When)], fact.Head.Place);
        var found = new CaseSearch(none, guidance, registry).Find();
        if (found.Example is not null)
        {
            faults.Add(ReadingFaults.RowsGap(fact.Head.Place, found.Example));
        }
        else if (!found.IsComplete)
        {
            faults.Add(ReadingFaults.RowsUnchecked(fact.Head.Place));
        }
    }
}
