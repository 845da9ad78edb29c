using System.Collections.Immutable;
using GuideBuilder.Model;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Trials;

/// <summary>Trials of the only way of a small guidance.</summary>
internal static class Runs
{
    /// <summary>Its trials, on at most so many threads.</summary>
    public static TrialRun Of(Guidance guidance, AnswerSet answers, int trials = 2_000, int threads = -1)
    {
        var world = World.Assumed(answers, guidance.Questions);
        var way = WayCase.Of(guidance.Ways[0], answers, world, guidance, new(Small.Today, 1, EditionKind.Householder), guidance.Nations[0]).Case;
        var calendars = PartyCalendars.Of(guidance.Parties, guidance.Tables.Holidays[0], world.Answers, Small.Today);
        return TrialRun.Of(way, GuideBuilder.Planning.Items.Plan(guidance.Steps, way.Lookup), calendars, NeededFor.PowerOn, new(trials, trials, threads), trials);
    }

    /// <summary>The mean and the variance of values by weight, weights together one.</summary>
    public static (double Mean, double Variance) Spread(IEnumerable<double> values, IEnumerable<double> weights)
    {
        var all = values.Zip(weights).ToImmutableArray();
        var total = all.Sum(v => v.Second);
        var mean = all.Sum(v => v.First * v.Second) / total;
        return (mean, all.Sum(v => (v.First - mean) * (v.First - mean) * v.Second) / total);
    }
}
