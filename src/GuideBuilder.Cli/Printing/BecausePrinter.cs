namespace GuideBuilder.Cli.Printing;

/// <summary>A reason as an indented tree: rule with its place, what decided it with its place, sources.</summary>
internal static class BecausePrinter
{
    /// <summary>Prints one item's reason.</summary>
    internal static void Print(Because because)
    {
        Console.Out.WriteLine($"{because.RuleKind} {because.RuleId}: {State(because.Truth)}");
        Console.Out.WriteLine(OneLine.Of($"  rule     {because.Place}"));
        if (!because.Reason.IsEmpty)
        {
            Console.Out.WriteLine($"  reason   {because.Reason.Words.ReplaceLineEndings(" ").TrimEnd()}");
        }

        foreach (var leaf in because.Deciding)
        {
            Print(leaf, 1);
        }

        if (because.Sources.Length > 0)
        {
            Console.Out.WriteLine($"  sources  {string.Join(", ", because.Sources)}");
        }
    }

    private static void Print(Leaf leaf, int depth)
    {
        var place = leaf.Given is Given.Answered { Place: { } written } ? $"  ({written})" : "";
        Console.Out.WriteLine(OneLine.Of($"{new string(' ', depth * 2)}because  {leaf.Given.Name} {Said(leaf.Given)}{place}; asked at {leaf.Asked.Place}"));
        if (leaf.Given is Given.Derived derived)
        {
            foreach (var under in derived.Because.Deciding)
            {
                Print(under, depth + 1);
            }
        }
    }

    private static string State(Truth truth) => truth switch
    {
        Truth.Holds => "in the plan",
        Truth.Open => "may apply",
        _ => "not in the plan",
    };

    private static string Said(Given given) => given.Standing switch
    {
        Standing.Known => "is " + ValueText.Of(given.Value!),
        Standing.Unknown => "is unknown",
        _ => "was not asked",
    };
}
