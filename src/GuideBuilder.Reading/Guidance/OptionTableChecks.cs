namespace GuideBuilder.Reading;

/// <summary>Looks for cases that a table of options does not cover: an option without a row, a region without a factor, a nation without a rate.</summary>
internal static class OptionTableChecks
{
    private const string Region = "home.region";

    /// <summary>Adds a fault for each region without a factor and each nation in which a price holds without a rate.</summary>
    public static void Run(Guidance guidance, Desk desk)
    {
        if (desk.Registry.IsComplete)
        {
            CheckFactors(guidance, desk);
            CheckRates(guidance, desk.Faults);
        }
    }

    /// <summary>Adds a fault, with an example, for each table whose rows say when they stand and leave a case out, or say it twice.</summary>
    public static void RunRows(Guidance guidance, Desk desk)
    {
        var tables = guidance.Tables.Rows.Where(r => r.When is not null).GroupBy(r => (r.Table, Asks: string.Join(' ', NamesOf(r))));
        foreach (var table in tables)
        {
            ImmutableArray<TableRow> rows = [.. table];
            CheckOverlaps(rows, guidance, desk);
            CheckGaps(rows, guidance, desk);
        }
    }

    private static void CheckFactors(Guidance guidance, Desk desk)
    {
        var options = desk.Registry.Names.TryGetValue(Region, out var question) ? question.Options : [];
        foreach (var row in guidance.Tables.Regions)
        {
            foreach (var option in options.Where(o => !row.ByRegion.ContainsKey(o)))
            {
                desk.Faults.Add(ReadingFaults.FactorMissing(row.Place, option, Region));
            }
        }
    }

    private static void CheckRates(Guidance guidance, FaultList faults)
    {
        var rates = guidance.Tables.Vat.DistinctBy(v => v.Id, StringComparer.Ordinal).ToFrozenDictionary(v => v.Id, StringComparer.Ordinal);
        foreach (var price in guidance.Tables.Prices.Where(p => p.StatedAs != VatBasis.Outside && rates.ContainsKey(p.VatKind)))
        {
            var nations = guidance.Nations.Select(n => n.Id).Where(n => price.Nations.IsEmpty || price.Nations.Contains(n));
            foreach (var nation in nations.Where(n => !rates[price.VatKind].ByNation.ContainsKey(n)))
            {
                faults.Add(ReadingFaults.RateMissing(price.Place, price.VatKind, nation));
            }
        }
    }

    private static void CheckOverlaps(ImmutableArray<TableRow> rows, Guidance guidance, Desk desk)
    {
        for (var later = 1; later < rows.Length; later++)
        {
            foreach (var earlier in rows.Take(later))
            {
                if (Find([earlier.When!, rows[later].When!], rows[later].Place, guidance, desk) is { } example)
                {
                    desk.Faults.Add(ReadingFaults.RowsOverlap(rows[later].Place, earlier.Place, example));
                }
            }
        }
    }

    // A question that was not asked needs no row, so the cases are those in which each is answered.
    private static void CheckGaps(ImmutableArray<TableRow> rows, Guidance guidance, Desk desk)
    {
        var place = rows[0].Place;
        var answered = NamesOf(rows[0]).Select(n => desk.Registry.Names[n]).Where(n => !n.Options.IsEmpty)
            .Select(n => (Condition)new Condition.Asks(n.Name, new Comparison.IsOneOf(n.Options), place));
        if (Find([.. answered, new Condition.NoneOf([.. rows.Select(r => r.When!)], place)], place, guidance, desk) is { } example)
        {
            desk.Faults.Add(ReadingFaults.RowMissing(place, example));
        }
    }

    private static string? Find(ImmutableArray<Condition> all, Place place, Guidance guidance, Desk desk) =>
        new CaseSearch(new Condition.AllOf(all, place), guidance, desk.Registry).Find().Example;

    private static IEnumerable<string> NamesOf(TableRow row) => row.When!.Names.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
}
