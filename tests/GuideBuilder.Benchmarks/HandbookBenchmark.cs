using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using NodaTime;

namespace GuideBuilder.Benchmarks;

/// <summary>The trials of the chosen way beside the rendering of the pages, on one thread: they may take no more time. Beside them the whole plan, with what each unknown answer would change and with 1,000 trials of each other way, and the plan without trials.</summary>
public class HandbookBenchmark
{
    private static readonly LocalDate Today = new(2026, 11, 24);
    private Guidance _guidance = null!;
    private Facts _facts = null!;
    private Plan _plan = null!;
    private WayCase _way = null!;
    private ImmutableArray<Planned<Step>> _steps;
    private PartyCalendars _calendars = null!;

    /// <summary>The home.</summary>
    [Params("avebury-close", "mostly-unknown")]
    public string Home { get; set; } = "";

    /// <summary>Reads guidance and answers, and plans once.</summary>
    [GlobalSetup]
    public void Read()
    {
        var root = Root(AppContext.BaseDirectory);
        var content = Path.Combine(root, "content");
        var files = Directory.EnumerateFiles(content, "*", SearchOption.AllDirectories)
            .Select(p => Path.GetRelativePath(root, p).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)
            .Select(n => new SourceText(n, File.ReadAllBytes(Path.Combine(root, n))))
            .ToImmutableArray();
        _guidance = GuidanceReader.Read(files, "content", Today).Value!;
        var answers = AnswerReader.Read(new SourceText(Home, File.ReadAllBytes(Path.Combine(root, "answers", Home + ".yaml"))), _guidance);
        _facts = FactDeriver.Derive(answers.Value!, _guidance).Value!;
        _plan = Plan(TrialRun.Many, TrialRun.Few);
        var world = World.Assumed(_facts.Answers, _guidance.Questions);
        _way = WayCase.Of(_plan.ChosenWay.Item, _facts.Answers, world, Outranked.By(_facts.Answers, _guidance), _plan.Occasion, _plan.Nation).Case;
        _steps = Planning.Items.Plan(_way.Guidance.Steps, _way.Lookup);
        _calendars = PartyCalendars.Of(_guidance.Parties, _guidance.Tables.Holidays.First(h => h.Id == _plan.Nation.Holidays), world.Answers, Today);
    }

    /// <summary>The trials of the chosen way.</summary>
    [Benchmark]
    public int Trials() => TrialRun.Of(_way, _steps, _calendars, NeededFor.PowerOn, new Effort(TrialRun.Many, 0, 1), TrialRun.Many).Sums.Length;

    /// <summary>The whole plan.</summary>
    [Benchmark]
    public Plan Whole() => Plan(TrialRun.Many, TrialRun.Few);

    /// <summary>The plan without trials.</summary>
    [Benchmark]
    public Plan WithoutTrials() => Plan(0, 0);

    /// <summary>The pages.</summary>
    [Benchmark]
    public Staged<BoundBook> Render() => Handbook.Render(_plan, _guidance);

    private Plan Plan(int many, int few) => Planner.Plan(_facts, _guidance, new(Today, Occasion.DefaultSeed, EditionKind.Householder), new Effort(many, few, 1)).Value!;

    private static string Root(string folder) => File.Exists(Path.Combine(folder, "GuideBuilder.sln")) ? folder : Root(Path.GetDirectoryName(folder)!);
}
