using GuideBuilder.Cli.Disk;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Data;

namespace GuideBuilder.Cli;

/// <summary>The whole program: each stage takes what the one before it gave.</summary>
internal static class Guide
{
    /// <summary>The guidance of a folder, or the one inside the program.</summary>
    internal static Staged<Guidance> Guidance(string? folder, LocalDate today)
    {
        var (files, root) = GuidanceFolder.Load(folder);
        return GuidanceReader.Read(files, root, today);
    }

    /// <summary>From an answers file to a plan.</summary>
    internal static Staged<Plan> Plan(SourceText answers, Guidance guidance, Func<AnswerSet, Occasion> occasion) =>
        AnswerReader.Read(answers, guidance)
            .Then(given => FactDeriver.Derive(given, guidance))
            .Then(facts => Planner.Plan(facts, guidance, occasion(facts.Answers)));

    /// <summary>From an answers file to a handbook, in memory.</summary>
    internal static Staged<BoundBook> Bind(SourceText answers, Guidance guidance, Func<AnswerSet, Occasion> occasion, EarlierPlan? earlier = null) =>
        Plan(answers, guidance, occasion)
            .Then(plan => Handbook.Render(plan, guidance, earlier));
}
