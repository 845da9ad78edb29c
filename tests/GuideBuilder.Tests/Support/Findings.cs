namespace GuideBuilder.Tests.Support;

/// <summary>What a check of many things found wrong.</summary>
internal static class Findings
{
    /// <summary>Fails with every finding on its own line, uncut, if there are any.</summary>
    public static void AreNone(IEnumerable<string> found)
    {
        var lines = found.ToList();
        Assert.True(lines.Count == 0, string.Join('\n', lines.Prepend($"{lines.Count} found:")));
    }
}
