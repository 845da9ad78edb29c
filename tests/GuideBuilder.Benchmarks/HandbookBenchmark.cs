using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using NodaTime;

namespace GuideBuilder.Benchmarks;

/// <summary>The trials of the chosen way beside the rendering of the pages, on one thread. The plan without trials is there to be taken off: the trials may take no more time than the rendering.</summary>
public class HandbookBenchmark
{
    private static readonly LocalDate Today = new(2026, 11, 24);
    private Guidance _guidance = null!;
    private Facts _facts = null!;
    private Plan _plan = null!;

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
        _plan = Plan(TrialRun.Many);
    }

    /// <summary>The plan with all trials of the chosen way and none of each other way.</summary>
    [Benchmark]
    public Plan WithTrials() => Plan(TrialRun.Many);

    /// <summary>The plan with none.</summary>
    [Benchmark]
    public Plan WithoutTrials() => Plan(0);

    /// <summary>The pages.</summary>
    [Benchmark]
    public Staged<BoundBook> Render() => Handbook.Render(_plan, _guidance);

    private Plan Plan(int many) => Planner.Plan(_facts, _guidance, new(Today, Occasion.DefaultSeed, EditionKind.Householder), new Effort(many, 0, 1)).Value!;

    private static string Root(string folder) => File.Exists(Path.Combine(folder, "GuideBuilder.sln")) ? folder : Root(Path.GetDirectoryName(folder)!);
}
