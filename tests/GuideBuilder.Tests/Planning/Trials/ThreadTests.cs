using System.Globalization;
using System.Security.Cryptography;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Trials;

public sealed class ThreadTests
{
    [Theory]
    [InlineData("answers/avebury-close.yaml")]
    [InlineData("answers/mostly-unknown.yaml")]
    public void One_thread_and_two_give_the_same_figures_and_the_same_bytes(string file) => Assert.Equal(Told(file, 1), Told(file, 2));

    private static string Told(string file, int threads)
    {
        var answers = AnswerReader.Read(new SourceText(file, File.ReadAllBytes(Repository.At(file))), Content.Guidance).Value!;
        var facts = FactDeriver.Derive(answers, Content.Guidance).Value!;
        var plan = Planner.Plan(facts, Content.Guidance, new(Home.Today, Occasion.DefaultSeed, EditionKind.Householder), new Effort(1_000, 100, threads)).Value!;
        var book = Handbook.Render(plan, Content.Guidance).Value!;
        return string.Join('\n', Lines(plan).Concat(book.Files.Select(f => $"{f.Name} {Convert.ToHexString(SHA256.HashData(f.Bytes.Span))}")));
    }

    private static IEnumerable<string> Lines(Plan plan)
    {
        yield return $"{plan.Money} {plan.Schedule.Finish} {plan.Schedule.HouseholdHours}";
        foreach (var way in plan.Ways.Select(w => w.Figures).OfType<WayFigures>())
        {
            yield return $"{way.Cost} {way.Finish} {way.HouseholdHours}";
        }

        foreach (var step in plan.Steps.Where(s => s.Dates is not null))
        {
            yield return $"{step.Step.Item.Id} {step.Dates}";
        }

        foreach (var row in plan.FindOutFirst.SelectMany(f => f.Rows.Select(r => (f.Question.Name, r))))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{row.Name} {row.r.Answer} {row.r.Share:R} {row.r.Cost} {row.r.Finish} {row.r.MeetsDate}");
        }

        if (plan.Chances is { } chances)
        {
            yield return $"{chances.Cost} {chances.Finish} {chances.MeetsDate}";
            foreach (var step in chances.Deciding.Keys.Order(StringComparer.Ordinal))
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"{step} {chances.StepShares[step]:R} {chances.Deciding[step]:R}");
            }
        }
    }
}
