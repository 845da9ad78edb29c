using System.Collections.Immutable;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Situations;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>Facts of a home, and what its handbook must and must not have because of them.</summary>
internal sealed record Case(string Answers, Statement Statement)
{
    private const string Folder = "tests/GuideBuilder.Tests/Cases/";

    private static readonly IReadOnlyDictionary<string, string> Hazards = Written.Names(Folder + "hazard-names.yaml");

    /// <summary>The ids of the hazards that have a number in the register.</summary>
    public static IEnumerable<string> Numbered => Hazards.Values;

    /// <summary>The cases of a file.</summary>
    public static ImmutableArray<Case> In(string file) => [.. Written.List(Folder + file).Select(Of)];

    /// <summary>The home of the case.</summary>
    public Home Home() => Support.Home.Given(Answers);

    private static Case Of(Mapping entry)
    {
        var said = Statement.Of(((Scalar)entry["case"]!).Text, entry);
        return new(((Scalar)entry["answers"]!).Text, said with
        {
            Present = said.Present.AddRange(Statement.Words(entry["must"]).Select(n => Hazards[n])),
            RuledOut = said.RuledOut.AddRange(Statement.Words(entry["must-not"]).Select(n => Hazards[n])),
        });
    }
}
