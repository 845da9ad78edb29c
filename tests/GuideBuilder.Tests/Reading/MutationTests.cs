using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Reading;

/// <summary>A reader gives a value or faults, whatever it is given; CsCheck prints the seed of what it finds.</summary>
public sealed class MutationTests
{
    private const string Answers = """
        handbook: {format: 1, id: our-house, edition: householder, filled-in-by: A. Neighbour}
        home:
          nation: england
          kind: flat
          storeys: 3
          block-stair: single
          looped: unknown
          signs: [wet, rust]
          address: |
            14 Avebury Close
            Thornwick
          supply-number: 00123456789012345678901
        wish: {moves: [cutout, meter]}
        place:
          distance: 5 ft 6 in
          offer: "£1,180.50 inc VAT"
        dates: {needed-by: 2027-03-15, away: [2027-02-01, 2027-02-10 to 2027-02-14]}
        papers:
          - {kind: quotation, from: network-operator, dated: 2026-10-01, valid-until: 2026-12-30, amount: £1180, covers: [operator-alteration], reference: 0012}
        log:
          - {on: 2026-09-01, what: applied, party: network-operator, reference: 1e3}
          - {on: 2026-09-20, what: date-given, step: site-visit, date: 2026-09-28}
          - {on: 2026-09-28, what: missed, step: site-visit, note: Nobody came.}

        """;

    private static readonly string[] Names = [.. SmallGuidance.Files.Keys.Order(StringComparer.Ordinal)];

    private static readonly SourceText[] Files = [.. Names.Select(n => new SourceText($"{SmallGuidance.Root}/{n}", System.Text.Encoding.UTF8.GetBytes(SmallGuidance.Files[n])))];

    [Fact]
    public void The_answers_are_right_before_they_are_made_wrong() => Assert.Empty(SmallAnswers.Read(Answers).Faults);

    [Fact]
    public void Mutated_answers_give_a_value_or_faults_and_never_an_exception() =>
        Mutation.Of(Answers).Sample(bytes => IsWhole(AnswerReader.Read(new(SmallAnswers.Path, bytes), SmallGuidance.Value)), iter: Sizes.Of("mutated-answers"));

    [Fact]
    public void Mutated_guidance_gives_a_value_or_faults_and_never_an_exception() =>
        Gen.Int[0, Files.Length - 1]
            .SelectMany(at => Mutation.Of(SmallGuidance.Files[Names[at]]).Select(bytes => (at, bytes)))
            .Sample(
                mutated => IsWhole(GuidanceReader.Read([.. Files.Select((f, i) => i == mutated.at ? f with { Bytes = mutated.bytes } : f)], SmallGuidance.Root, SmallGuidance.Today)),
                iter: Sizes.Of("mutated-guidance"));

    internal static void IsWhole<T>(Staged<T> staged)
        where T : class
    {
        Assert.Equal(staged.Value is null, staged.Faults.Any(f => f.Severity == Severity.Error));
        Assert.All(staged.Faults, f => Assert.True(f.Place is { Line: > 0, Column: > 0 } && !f.ToString().Any(char.IsControl), f.ToString()));
    }
}
