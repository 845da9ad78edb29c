using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Data;

/// <summary>The files for other programs: the plan, the shape it is promised in, and the costs as a table.</summary>
internal static class PlanFiles
{
    /// <summary>The plan.</summary>
    internal const string Plan = "plan.json";

    /// <summary>The JSON Schema of the plan.</summary>
    internal const string Schema = "plan-schema.json";

    /// <summary>The costs.</summary>
    internal const string Costs = "costs.csv";

    /// <summary>All three; a neighbour's sheet has none, since its reader needs none of them.</summary>
    internal static ImmutableArray<BoundFile> Of(Bindery bindery) => bindery.Plan.Occasion.Edition == EditionKind.Neighbour ? [] :
    [
        new BoundFile(Plan, PlanData.Write(bindery.Plan, bindery.Guidance, bindery.Answers)),
        new BoundFile(Schema, ReadSchema()),
        new BoundFile(Costs, CostTable.Write(bindery)),
    ];

    private static byte[] ReadSchema()
    {
        using var stream = typeof(PlanFiles).Assembly.GetManifestResourceStream(Schema) ?? throw new UnreachableException();
        using var all = new MemoryStream();
        stream.CopyTo(all);
        return [.. all.ToArray().Where(b => b != (byte)'\r')];
    }
}
