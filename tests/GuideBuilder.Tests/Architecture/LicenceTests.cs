using System.Text.Json;
using System.Xml.Linq;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Architecture;

/// <summary>Every library that travels inside the program is named, with the licence that its own package states, in the file that travels with it.</summary>
public sealed class LicenceTests
{
    private const string File = "src/GuideBuilder.Cli/Delivery/third-party.txt";

    // They work while building and are not in the program.
    private static readonly string[] BuildOnly = ["Microsoft.CodeAnalysis.BannedApiAnalyzers", "Microsoft.NET.ILLink.Tasks"];

    [Fact]
    public void Every_library_in_the_program_is_listed_with_the_licence_of_its_package() =>
        Assert.Equal(Locked().Select(Stated).Order(StringComparer.Ordinal), Listed().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_licence_that_is_named_is_printed_in_full()
    {
        var text = System.IO.File.ReadAllText(Repository.At(File));

        Findings.AreNone(Listed().Select(l => l.Split(" | ")[1]).Distinct().Where(licence => !text.Contains($"{new string('=', 100)}\n{licence}\n\n", StringComparison.Ordinal)));
    }

    private static IEnumerable<string> Listed() => System.IO.File.ReadLines(Repository.At(File)).Where(l => l.Contains(" | ", StringComparison.Ordinal));

    private static HashSet<(string Name, string Version)> Locked() =>
        [.. from path in Directory.EnumerateFiles(Repository.At("src"), "packages.lock.json", SearchOption.AllDirectories)
            from target in JsonDocument.Parse(System.IO.File.ReadAllText(path)).RootElement.GetProperty("dependencies").EnumerateObject()
            from package in target.Value.EnumerateObject()
            where package.Value.TryGetProperty("resolved", out _) && !BuildOnly.Contains(package.Name)
            select (package.Name, package.Value.GetProperty("resolved").GetString()!)];

    // The package's own description, as the restore has unpacked it.
    private static string Stated((string Name, string Version) package)
    {
        var folder = Path.Combine(PackagesFolder(), package.Name.ToLowerInvariant(), package.Version.ToLowerInvariant());
        var about = XDocument.Load(Directory.EnumerateFiles(folder, "*.nuspec").Single()).Root!.Descendants().ToLookup(e => e.Name.LocalName, e => e.Value.Trim());
        return $"{package.Name} {package.Version} | {about["license"].Single()} | {about["copyright"].Concat(about["authors"]).First(w => w.Length > 0)}";
    }

    private static string PackagesFolder() =>
        Environment.GetEnvironmentVariable("NUGET_PACKAGES") is { Length: > 0 } named
            ? named
            : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
}
