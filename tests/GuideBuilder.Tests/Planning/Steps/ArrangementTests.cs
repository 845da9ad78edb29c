using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Worlds;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;
using Meetings = GuideBuilder.Planning.Steps.Meetings;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>The run of the works day of the first demo home, moved outside, under each arrangement between the companies.</summary>
public sealed class ArrangementTests
{
    private const string Before = "day-uncover-cable day-cutout day-joint day-release-hole";

    private static readonly string[] OfTheElectrician = ["day-tails-to-isolator", "day-live-tests", "day-board-on"];

    private static readonly string[] Energising = ["day-meter", "day-meter-carried", "day-meter-by-networks"];

    public static TheoryData<string, string> Runs => new()
    {
        { "usual", $"{Before} day-meter day-live-tests day-board-on" },
        { "carried", $"{Before} day-meter-carried day-live-tests day-board-on" },
        { "isolator", $"{Before} day-meter day-tails-to-isolator day-live-tests day-board-on" },
        { "northern-ireland", $"{Before} day-meter-by-networks day-live-tests day-board-on" },
        { "ireland", $"{Before} day-meter-by-networks day-live-tests day-board-on" },
        { "meter-off-first", "day-uncover-cable day-meter-off day-cutout day-joint day-release-hole day-meter day-live-tests day-board-on" },
    };

    [Theory]
    [MemberData(nameof(Runs))]
    public void Each_arrangement_has_its_run(string arrangement, string steps) => Assert.Equal(steps, string.Join(' ', Run(arrangement).Select(s => s.Id)));

    [Theory]
    [MemberData(nameof(Runs))]
    public void No_electrician_opens_meter_or_cutout_and_both_holds_stand(string arrangement, string steps)
    {
        var run = Run(arrangement);

        Assert.Equal(steps.Split(' ').Length, run.Length);
        Assert.All(run.Where(s => s.Party == "electrician"), s => Assert.Contains(s.Id, OfTheElectrician));
        Assert.True(At(run, "day-live-tests") > run.Max(s => Energising.Contains(s.Id) ? run.IndexOf(s) : 0), "the live tests follow energising");
        Assert.Equal(run.Length - 1, At(run, "day-board-on"));
        Assert.Contains("fuse box stays off until the electrician has written down polarity and earth", run[At(run, "day-live-tests")].About.Words, StringComparison.Ordinal);
        Assert.Contains("No filling before the jointer says so", run[At(run, "day-release-hole")].About.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_fills_before_the_jointer_has_released_the_hole() =>
        Assert.All(Content.Guidance.Steps.Where(s => s.Id.StartsWith("fill-hole", StringComparison.Ordinal)), s => Assert.Contains(s.After, l => l.Step == "day-release-hole"));

    [Fact]
    public void Every_meeting_and_crew_of_the_guidance_is_known_with_its_limit()
    {
        var guidance = Content.Guidance;
        var met = guidance.Steps.Where(s => s.Meeting is not null).Select(s => (s.Meeting!, s.Party)).Distinct();

        Assert.All(met, m => Assert.Contains(guidance.Meetings, k => k.Id == m.Item1 && k.Crews.Any(c => c.Party == m.Party)));
        Assert.All(guidance.Meetings.SelectMany(m => m.Mishaps).SelectMany(m => m.Turns), t => Assert.Contains(guidance.Steps, s => s.Id == t && s.Meeting is not null));
        Assert.All(guidance.Steps.Where(s => s.Meeting is not null), s => Assert.NotNull(s.Again));
    }

    private static int At(System.Collections.Immutable.ImmutableArray<Step> run, string id) => run.IndexOf(run.Single(s => s.Id == id));

    private static System.Collections.Immutable.ImmutableArray<Step> Run(string arrangement)
    {
        var guidance = Content.Guidance;
        var staged = AnswerReader.Read(new("answers.yaml", Encoding.UTF8.GetBytes(Answers(arrangement))), guidance);
        Findings.AreNone(staged.Faults.Select(f => f.ToString()));
        var world = World.Assumed(staged.Value!, guidance.Questions);
        var facts = FactDeriver.Under(world.Answers, guidance, guidance.Ways.Single(w => w.Id == "outside-cabinet")).Facts;
        return Meetings.InOrder(Items.Plan(guidance.Steps, name => facts[name]).Where(s => s.State == ItemState.Settled && s.Item.Meeting == "works-day").Select(s => s.Item));
    }

    private static string Answers(string arrangement)
    {
        var home = File.ReadAllText(Repository.At("answers/avebury-close.yaml")).Replace("looped: unknown", "looped: no", StringComparison.Ordinal);
        return arrangement switch
        {
            "usual" => home + "\noperator:\n  meter-carried: no\n",
            "carried" => home + "\noperator:\n  meter-carried: yes\n",
            "isolator" => home.Replace("isolator: none", "isolator: all-pole", StringComparison.Ordinal) + "\noperator:\n  meter-carried: no\n",
            "meter-off-first" => home + "\noperator:\n  meter-carried: no\n  meter-off-first: yes\n",
            _ => home.Replace("nation: england", "nation: " + arrangement, StringComparison.Ordinal),
        };
    }
}
