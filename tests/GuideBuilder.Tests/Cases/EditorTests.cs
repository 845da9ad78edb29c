using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>What content/README.md tells an editor to do, done.</summary>
public sealed class EditorTests
{
    private const string Question = """
        - id: cellar-dry
          label: Dry cellar
          wording: Is the cellar dry all year?
          how-to-find-out: Ask whoever has lived there longest.
          what-it-decides: Whether the intake is warned of water.
          kind: yes-no
          data-class: none
          ease: ask
          ask-if: {intake.where: {is: cellar}}
          options:
            yes: {weight: 8}
            no: {weight: 2, assume: yes}
          source: [our-judgement]


        """;

    private const string Hazard = """
        - id: water-in-the-cellar
          title: Water in the cellar
          applies-if: {intake.cellar-dry: {is: no}}
          because: You said that the cellar is not dry.
          source: [our-judgement]
          signal-word: danger
          cause: Water reaches the intake.
          harm: Electric shock.
          people: Whoever goes down.
          when: After rain.
          controls:
            - {level: eliminate, what: "Another place for the intake.", by: network-operator}
          stop-when: Water is on the floor.
          before: {severity: 5, likelihood: 2}
          after: {severity: 5, likelihood: 1}
          reviewed-by: not yet reviewed


        """;

    [Fact]
    public void A_price_a_duration_and_a_sentence_can_be_changed() => HasNoFault(
        ("content/tables/prices.yaml", "  high: £", "  high: £1"),
        ("content/steps.yaml", "takes: {low: ", "takes: {low: 0."),
        ("content/pages/money.md", "No single bill covers this job.", "No one bill covers [the joint hole](see:dig-joint-hole). Ring {{ body \"network-emergency\" }}."));

    [Fact]
    public void A_question_and_a_hazard_that_asks_it_can_be_added() => HasNoFault(
        ("content/questions/intake.yaml", "- id: slack\n", Question + "- id: slack\n"),
        ("content/hazards.yaml", "- id: tidy-intake\n", Hazard + "- id: tidy-intake\n"));

    [Fact]
    public void A_nation_can_be_added() => HasNoFault(
        ("content/guidance.yaml", "    - id: wales\n", "    - id: isle\n      title: An isle\n      holidays: england-and-wales\n      currency: £\n      bodies: {}\n    - id: wales\n"),
        ("content/questions/home.yaml", "    wales: {wording: Wales, weight: 5}\n", "    wales: {wording: Wales, weight: 5}\n    isle: {wording: An isle, weight: 1}\n"));

    private static void HasNoFault(params (string File, string Was, string Now)[] changes) =>
        Findings.AreNone(GuidanceReader.Read(Guidances.Changed(changes), "content", Guidances.Today).Faults.Select(f => f.ToString()));
}
