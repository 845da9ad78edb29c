namespace GuideBuilder.Cli.Printing;

/// <summary>The name that somebody may have meant.</summary>
internal static class NearestName
{
    /// <summary>The known name that shares the most of its beginning with what was written, if that is three letters or more.</summary>
    internal static string? To(string written, IEnumerable<string> known) =>
        known.Select(name => (name, shared: name.Zip(written).TakeWhile(p => p.First == p.Second).Count()))
            .Where(n => n.shared >= 3)
            .OrderByDescending(n => n.shared).ThenBy(n => n.name, StringComparer.Ordinal)
            .Select(n => n.name)
            .FirstOrDefault();
}
