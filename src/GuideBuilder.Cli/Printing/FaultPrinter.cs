namespace GuideBuilder.Cli.Printing;

/// <summary>Faults on standard error, a line each, sorted by place.</summary>
internal static class FaultPrinter
{
    /// <summary>Prints every fault once.</summary>
    internal static void Print(IEnumerable<Fault> faults)
    {
        foreach (var fault in faults.Distinct().OrderBy(f => f.Place).ThenBy(f => f.Code, StringComparer.Ordinal).ThenBy(f => f.Wrong, StringComparer.Ordinal))
        {
            Console.Error.WriteLine(OneLine.Of(fault.ToString()));
        }
    }
}
