using System.Globalization;

namespace GuideBuilder.Tests.Support;

/// <summary>How often a test repeats itself: the short count of tests/sizes, or the long one where SIZES=long.</summary>
internal static class Sizes
{
    private static readonly int Column = Environment.GetEnvironmentVariable("SIZES") == "long" ? 2 : 1;

    private static readonly Dictionary<string, int> Counts = File.ReadLines(Repository.At("tests/sizes"))
        .Where(line => line.Length > 0 && line[0] != '#')
        .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        .ToDictionary(words => words[0], words => int.Parse(words[Column], CultureInfo.InvariantCulture), StringComparer.Ordinal);

    /// <summary>The count under this name; a name that tests/sizes does not list is a mistake in the test.</summary>
    public static int Of(string name) => Counts[name];
}
