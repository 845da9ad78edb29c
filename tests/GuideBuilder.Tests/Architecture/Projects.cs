using System.Xml.Linq;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Architecture;

/// <summary>The projects under src and what each may know.</summary>
internal static class Projects
{
    private static readonly string[] Stages = ["GuideBuilder.Planning", "GuideBuilder.Reading", "GuideBuilder.Rendering"];

    /// <summary>Each project and the projects that it references, both in ordinal order: a stage knows the Model, only the shell knows all.</summary>
    public static SortedDictionary<string, string[]> Allowed { get; } = new(StringComparer.Ordinal)
    {
        ["GuideBuilder.Cli"] = ["GuideBuilder.Model", .. Stages],
        ["GuideBuilder.Model"] = [],
        ["GuideBuilder.Planning"] = ["GuideBuilder.Model"],
        ["GuideBuilder.Reading"] = ["GuideBuilder.Model"],
        ["GuideBuilder.Rendering"] = ["GuideBuilder.Model"],
    };

    /// <summary>The names of the projects under src, in ordinal order.</summary>
    public static string[] Found { get; } =
        [.. Directory.GetDirectories(Repository.At("src")).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal)];

    /// <summary>The project file of a project under src.</summary>
    public static XDocument Read(string project) => XDocument.Load(Repository.At($"src/{project}/{project}.csproj"));

    /// <summary>The assembly that a project under src makes.</summary>
    public static string AssemblyOf(string project) => project == "GuideBuilder.Cli" ? "guidebuilder" : project;
}
