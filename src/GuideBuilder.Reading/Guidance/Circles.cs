namespace GuideBuilder.Reading;

/// <summary>Finds circles among things that need one another.</summary>
internal static class Circles
{
    /// <summary>Circles, each beginning and ending with its first name in the given order; each name stands in at most one of them, so that one circle is reported once.</summary>
    public static IEnumerable<ImmutableArray<string>> In(IEnumerable<string> names, Func<string, IReadOnlyList<string>> needs)
    {
        var inCircle = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (!inCircle.Contains(name) && From(name, needs) is { } circle)
            {
                inCircle.UnionWith(circle);
                yield return circle;
            }
        }
    }

    // The shortest way from a name back to itself, breadth first.
    private static ImmutableArray<string>? From(string start, Func<string, IReadOnlyList<string>> needs)
    {
        var cameFrom = new Dictionary<string, string>(StringComparer.Ordinal);
        var waiting = new Queue<string>([start]);
        while (waiting.TryDequeue(out var name))
        {
            foreach (var next in needs(name))
            {
                if (next == start)
                {
                    return Path(start, name, cameFrom);
                }

                if (cameFrom.TryAdd(next, name))
                {
                    waiting.Enqueue(next);
                }
            }
        }

        return null;
    }

    private static ImmutableArray<string> Path(string start, string last, Dictionary<string, string> cameFrom)
    {
        var path = new List<string> { start };
        for (var name = last; name != start; name = cameFrom[name])
        {
            path.Insert(0, name);
        }

        return [start, .. path];
    }
}
