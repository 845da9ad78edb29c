namespace GuideBuilder.Reading;

/// <summary>Looks at the supply number that was given: one that is not right is worth a warning and stops nothing, because only bills and forms need it.</summary>
internal static class SupplyNumberCheck
{
    private const string Question = "home.supply-number";

    /// <summary>Adds what is odd about the number: a gas number, one that cannot be right, or one of another nation. Never prints the number.</summary>
    public static void Check(IReadOnlyCollection<Given.Answered> answers, Tables tables, FaultList faults)
    {
        var nation = (answers.FirstOrDefault(a => a.Name == AnswerWords.Nation)?.Value as Value.Option)?.Id;
        if (answers.FirstOrDefault(a => a.Name == Question) is { Value: Value.NumberName written, Place: { } place } && SupplyNumbers.Read(written.Text, nation, tables) is { } number)
        {
            foreach (var fault in Odd(number, nation, place))
            {
                faults.Add(fault);
            }
        }
    }

    private static IEnumerable<Fault> Odd(SupplyNumber number, string? nation, Place place)
    {
        if (number.Kind == SupplyNumberKind.Gas)
        {
            yield return ReadingFaults.LooksLikeGas(place);
        }
        else if (number.Flaw != SupplyNumberFlaw.None)
        {
            yield return ReadingFaults.NotASupplyNumber(place, number.Flaw);
        }
        else if (!number.IsKnownArea)
        {
            yield return ReadingFaults.UnknownArea(place);
        }
        else if (!number.BeginsAsUsual)
        {
            yield return ReadingFaults.UnusualBeginning(place);
        }
        else if (nation is not null && number.IsOutside(nation))
        {
            yield return ReadingFaults.OtherNation(place, number.Nations, nation);
        }
    }
}
