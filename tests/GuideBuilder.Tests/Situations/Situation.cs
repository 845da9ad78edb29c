using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;
using FaultList = GuideBuilder.Reading.FaultList;

namespace GuideBuilder.Tests.Situations;

/// <summary>What people went through, as a home and as the statements that its handbook owes them.</summary>
internal sealed record Situation(string Id, IReadOnlyList<Statement> Statements)
{
    private const string Folder = "tests/GuideBuilder.Tests/Situations/";

    /// <summary>Every situation, by name.</summary>
    public static IReadOnlyList<Situation> All { get; } =
    [
        .. Directory.EnumerateFiles(Repository.At(Folder), "*.says.yaml")
            .Select(f => Path.GetFileName(f)[..^".says.yaml".Length])
            .Order(StringComparer.Ordinal)
            .Select(id => new Situation(id, [.. Nodes(id).SelectMany(Statement.Of)])),
    ];

    /// <summary>The home as its answers file tells it.</summary>
    public Home Home() => Support.Home.At(Folder + Id + ".yaml");

    private static IEnumerable<Mapping> Nodes(string id)
    {
        var file = $"{Folder}{id}.says.yaml";
        var faults = new FaultList();
        var root = YamlText.Read(new SourceText(file, File.ReadAllBytes(Repository.At(file))), Budget.Answers, faults);
        Findings.AreNone(faults.Found.Select(f => f.ToString()));
        return Assert.IsType<Sequence>(root).Items.Cast<Mapping>();
    }
}
