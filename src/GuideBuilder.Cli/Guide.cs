using GuideBuilder.Cli.Runs;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Withholding;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Data;

namespace GuideBuilder.Cli;

/// <summary>The whole program: each stage takes what the one before it gave.</summary>
internal static class Guide
{
    /// <summary>The guidance of a folder, or the one inside the program, in its own language.</summary>
    internal static Staged<Guidance> Guidance(string? folder, LocalDate today) => Shelf.Of(folder, today).Plain;

    /// <summary>From an answers file to a plan of its edition, which tells no more than the edition may print.</summary>
    internal static Staged<Plan> Plan(SourceText answers, Guidance guidance, Occasion occasion) =>
        AnswerReader.Read(answers, guidance, occasion.Today)
            .Then(given => EditionAnswers.Of(given, guidance, occasion.Edition))
            .Then(told => FactDeriver.Derive(told, guidance))
            .Then(facts => Planner.Plan(facts, guidance, OfEdition(occasion, guidance)))
            .Then(plan => Staged<Plan>.From(Told(plan, guidance), []));

    /// <summary>From an answers file to a handbook, in memory.</summary>
    internal static Staged<BoundBook> Bind(SourceText answers, Guidance guidance, Occasion occasion, EarlierPlan? earlier = null) =>
        Plan(answers, guidance, occasion)
            .Then(plan => Handbook.Render(plan, guidance, earlier));

    // The public edition was planned from what it may print.
    private static Plan Told(Plan plan, Guidance guidance) => plan.Occasion.Edition is EditionKind.Householder or EditionKind.Public
        ? plan
        : ToldPlan.Of(plan, EditionAnswers.Printed(plan.Answers, guidance, plan.Occasion.Edition), guidance);

    // The public edition knows no today: it counts from the day on which the guidance was edited.
    private static Occasion OfEdition(Occasion occasion, Guidance guidance) =>
        occasion.Edition == EditionKind.Public ? occasion with { Today = guidance.Head.EditionDate } : occasion;
}
