using GuideBuilder.HandbookTests.Shell;
using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>The program asks nothing of a network: the libraries that could are not even loaded.</summary>
public sealed class NetworkTests
{
    private static readonly string[] Harmless = ["System.Net.Primitives", "System.Net.WebUtility"];

    [Fact]
    public async Task Binding_loads_no_library_that_knows_a_network()
    {
        using var folder = new Folder();
        var home = folder.Put("home.yaml", FaultTests.Small("handbook: {format: 1}"));

        var bound = await Tool.RunWithAsync(
            new() { ["TELL"] = "libraries", ["DOTNET_STARTUP_HOOKS"] = typeof(NetworkTests).Assembly.Location },
            Tool.Managed,
            "bind", home, "--to", folder.At("book"), "--edition", "neighbour", "--today", Handbooks.Today);

        var loaded = bound.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains("GuideBuilder.Rendering", loaded);
        GuideBuilder.Tests.Support.Findings.AreNone(loaded.Where(l => l.StartsWith("System.Net.", StringComparison.Ordinal)).Except(Harmless));
    }
}
