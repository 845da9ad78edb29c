using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Reading;

/// <summary>The guidance and the demo homes of this repository, as they stand.</summary>
public sealed class ContentTests
{
    private static readonly Staged<Guidance> Content = GuidanceReader.Read([.. Files("content")], "content", SmallGuidance.Today);

    public static TheoryData<string> Homes => [.. Directory.EnumerateFiles(Repository.At("answers"), "*.yaml").Select(Repository.Short).Order(StringComparer.Ordinal)];

    [Fact]
    public void The_guidance_has_no_faults() => Findings.AreNone(Content.Faults.Select(f => f.ToString()));

    [Theory]
    [MemberData(nameof(Homes))]
    public void A_demo_home_has_no_faults(string path) =>
        Findings.AreNone(AnswerReader.Read(new(path, File.ReadAllBytes(Repository.At(path))), Content.Value!).Faults.Select(f => f.ToString()));

    private static IEnumerable<SourceText> Files(string folder) =>
        Directory.EnumerateFiles(Repository.At(folder), "*", SearchOption.AllDirectories).Select(f => new SourceText(Repository.Short(f), File.ReadAllBytes(f)));
}
