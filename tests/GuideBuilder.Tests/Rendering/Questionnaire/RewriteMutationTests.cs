using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Rendering.Questionnaire;
using GuideBuilder.Tests.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering.Questionnaire;

/// <summary>Whatever was done to an answers file: if it still reads, it is rewritten, says the same, and keeps its comments.</summary>
public sealed class RewriteMutationTests
{
    private const string Answers = """
        # Ours, not theirs.
        handbook: {format: 1, id: our-house, filled-in-by: A. Neighbour}   # since May
        home:
          nation: england
          # Which kind?
          kind: flat   # or so
          storeys: 3
          address: |
            14 Avebury Close
            Thornwick
        wish: {moves: [cutout, meter], detail: 'It''s "free": # really'}
        place:
          distance: 5 ft 6 in
          near:
            # On the left.
            - window
            - drain   # deep
        dates: {needed-by: 2027-03-15, away: [2027-02-01, 2027-02-10 to 2027-02-14]}
        papers:
          - {kind: quotation, from: network-operator, amount: £1180, covers: [operator-alteration], reference: 0012}
        log:
          - on: 2026-09-28   # a Monday
            # They rang.
            what: noted
            note: >
              Nobody
              came.
        # The end.

        """;

    [Fact]
    public void A_file_that_still_reads_is_rewritten_without_loss()
    {
        var (rewritten, commented) = (0, 0);
        Mutation.Of(Answers).Sample(
            bytes =>
            {
                var file = new SourceText("our-house.yaml", bytes);
                if (AnswerReader.ReadWritten(file, Content.Guidance).Value is not { } written)
                {
                    return;
                }

                var now = PlainLayout.Write(written, Content.Guidance, file.Path).Value!;
                Assert.Equal(AnswersFiles.Meaning(file), AnswersFiles.Meaning(now));
                var kept = Comments(now).ToList();
                Assert.DoesNotContain(Comments(file), c => !kept.Remove(c));
                var again = AnswerReader.ReadWritten(now, Content.Guidance).Value!;
                Assert.Equal(AnswersFiles.Text(now), AnswersFiles.Text(PlainLayout.Write(again, Content.Guidance, file.Path).Value!));
                rewritten++;
                commented += Comments(file).Count() == Comments(AnswersFiles.Of(Answers)).Count() ? 0 : 1;
            },
            iter: Sizes.Of("rewritten"),
            threads: 1);

        Assert.True(rewritten > Sizes.Of("rewritten") / 50, $"only {rewritten} read");
        Assert.True(commented > 0);
    }

    private static IEnumerable<string> Comments(SourceText file) => YamlText.Comments(file, Budget.Answers).Select(c => c.Words);
}
