namespace GuideBuilder.Rendering;

/// <summary>Finds the right name that is nearest to a wrong one.</summary>
internal static class Nearest
{
    /// <summary>The name with the fewest changed letters; the ordinal first among equals, or empty when there are none.</summary>
    internal static string To(string wrong, IEnumerable<string> names) =>
        names.OrderBy(n => Distance(wrong, n)).ThenBy(n => n, StringComparer.Ordinal).FirstOrDefault("");

    private static int Distance(string from, string to)
    {
        var row = Enumerable.Range(0, to.Length + 1).ToArray();
        for (var i = 1; i <= from.Length; i++)
        {
            var corner = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var changed = corner + (from[i - 1] == to[j - 1] ? 0 : 1);
                corner = row[j];
                row[j] = Math.Min(changed, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
