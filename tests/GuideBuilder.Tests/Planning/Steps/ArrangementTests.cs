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
    private const string Before = "day-uncover-cable day-fuse-out day-cutout day-joint day-release-hole";

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

    [Theory]
    [MemberData(nameof(Runs))]
    public void Each_crew_that_drops_out_on_the_eve_tells_whom_to_call_off_by_when_and_what_a_late_call_costs(string arrangement, string steps)
    {
        var home = Home.Of(new("answers.yaml", Encoding.UTF8.GetBytes(Answers(arrangement))));
        var (day, words) = (home.Plan.Schedule.Meetings.Single(m => m.Meeting == "works-day"), home.Words("the-day"));
        var crews = day.Turns.Select(t => Content.Guidance.Steps.Single(s => s.Id == t.Step).Party).Distinct().ToList();

        Assert.All(steps.Split(' '), s => Assert.Contains(day.Turns, t => t.Step == s));
        Assert.Equal(crews, day.DropOuts.Select(d => d.Party));
        foreach (var dropOut in day.DropOuts)
        {
            Assert.Equal(crews.Where(c => c != dropOut.Party), dropOut.CallOff.Select(c => c.Party));
            Assert.All(dropOut.CallOff, c => Assert.True(c.FreeUntil < day.Day && c.Costs.Length > 0, $"{c.Party}: {c.FreeUntil}, {c.Costs.Length} costs"));
            Assert.True(dropOut.NextDay > day.Day, dropOut.Party);
        }

        Assert.Equal(day.DropOuts.Sum(d => d.CallOff.Length), words.Split("or pay for a wasted visit: ").Length - 1);
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
