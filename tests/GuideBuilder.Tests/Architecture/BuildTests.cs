using System.Text.RegularExpressions;
using System.Xml.Linq;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Architecture;

public sealed partial class BuildTests
{
    private static readonly XDocument Props = XDocument.Load(Repository.At("Directory.Build.props"));

    public static TheoryData<string> Names => [.. Projects.Allowed.Keys];

    /// <summary>With doc files on and warnings as errors, the compiler refuses a public member without a comment (CS1591).</summary>
    [Theory]
    [InlineData("GenerateDocumentationFile")]
    [InlineData("TreatWarningsAsErrors")]
    [InlineData("Deterministic")]
    public void The_build_asks_it_of_every_project(string property)
    {
        Assert.Equal("true", Assert.Single(Props.Descendants(property)).Value);
        Assert.All(Projects.Found, project => Assert.Empty(Projects.Read(project).Descendants(property)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_project_has_its_doc_comments_beside_it(string project) =>
        Assert.True(File.Exists(Path.Combine(AppContext.BaseDirectory, Projects.AssemblyOf(project) + ".xml")));

    [Fact]
    public void One_file_of_properties_holds_for_all_projects() =>
        Assert.Equal(["Directory.Build.props"], Files("Directory.Build.*").Select(Repository.Short));

    [Fact]
    public void Every_warning_switched_off_has_its_reason_beside_it() =>
        Findings.AreNone(
            from file in Files("*.csproj").Concat(Files("*.props")).Concat(Files("*.cs")).Concat(Files(".editorconfig"))
            from line in WithoutReason(File.ReadAllLines(file))
            select $"{Repository.Short(file)}:{line}");

    [Fact]
    public void A_warning_switched_off_without_a_reason_would_be_found()
    {
        string[] lines =
        [
            "[*.cs]",
            "dotnet_diagnostic.CA1.severity = none",
            "# Why.",
            "dotnet_diagnostic.CA2.severity = none",
            "dotnet_diagnostic.CA3.severity = none",
            "",
            "<NoWarn>CA4</NoWarn>",
            "<!-- Why. -->",
            "<NoWarn>CA5</NoWarn>",
            "",
            "#pragma warning disable CA6",
            "#pragma warning disable CA7 // Why.",
        ];

        Assert.Equal([2, 7, 11], WithoutReason(lines));
    }

    private static IEnumerable<int> WithoutReason(string[] lines)
    {
        var reasoned = false;
        for (var i = 0; i < lines.Length; i++)
        {
            var off = SwitchedOff().IsMatch(lines[i]);
            if (off && !reasoned && !ReasonOnTheLine().IsMatch(lines[i]))
            {
                yield return i + 1;
            }

            reasoned = ReasonLine().IsMatch(lines[i]) || (off && reasoned);
        }
    }

    private static IEnumerable<string> Files(string pattern) =>
        Directory.EnumerateFiles(Repository.Root, pattern)
            .Concat(Directory.EnumerateFiles(Repository.At("src"), pattern, SearchOption.AllDirectories))
            .Concat(Directory.EnumerateFiles(Repository.At("tests"), pattern, SearchOption.AllDirectories));

    [GeneratedRegex(@"^\s*(<NoWarn|<WarningsNotAsErrors|#pragma warning disable|\[(assembly: )?SuppressMessage|\S+\.severity = none\s*$)")]
    private static partial Regex SwitchedOff();

    [GeneratedRegex(@"<!--|//|Justification\s*=")]
    private static partial Regex ReasonOnTheLine();

    [GeneratedRegex(@"^\s*(# |//|<!--)")]
    private static partial Regex ReasonLine();
}
