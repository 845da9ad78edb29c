using GuideBuilder.Tests.Support;

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
            .Select(id => new Situation(id, [.. Written.List($"{Folder}{id}.says.yaml").SelectMany(Statement.Of)])),
    ];

    /// <summary>The home as its answers file tells it.</summary>
    public Home Home() => Support.Home.At(Folder + Id + ".yaml");
}
