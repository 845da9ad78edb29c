using GuideBuilder.Model;
using GuideBuilder.Reading;
using FaultList = GuideBuilder.Reading.FaultList;

namespace GuideBuilder.Tests.Support;

/// <summary>Cases that a writer can read: YAML files of the tests as nodes.</summary>
internal static class Written
{
    /// <summary>The entries of a file that is a list.</summary>
    public static IEnumerable<Mapping> List(string path) => Assert.IsType<Sequence>(Read(path)).Items.Cast<Mapping>();

    /// <summary>The keys and words of a file that is a mapping.</summary>
    public static IReadOnlyDictionary<string, string> Names(string path) =>
        Assert.IsType<Mapping>(Read(path)).Entries.ToDictionary(e => e.Key.Text, e => ((Scalar)e.Value).Text, StringComparer.Ordinal);

    private static Node Read(string path)
    {
        var faults = new FaultList();
        var root = YamlText.Read(new SourceText(path, File.ReadAllBytes(Repository.At(path))), Budget.Answers, faults);
        Findings.AreNone(faults.Found.Select(f => f.ToString()));
        return root!;
    }
}
