using System.Reflection;

namespace GuideBuilder.Tests.Support;

/// <summary>A test that checks a calculator against the outside, and what it says of itself.</summary>
internal sealed record PublishedCheck(string Test, PublishedCheckAttribute Says)
{
    /// <summary>Every check in these tests, by subject and number.</summary>
    public static PublishedCheck[] All { get; } =
    [
        .. from type in typeof(PublishedCheck).Assembly.GetTypes()
           from method in type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
           let says = method.GetCustomAttribute<PublishedCheckAttribute>()
           where says is not null
           orderby says.Subject, says.Number, method.Name
           select new PublishedCheck(method.Name.Replace('_', ' '), says),
    ];

    /// <summary>A table for DEVELOPERS.md: for each subject and source, how many checks were read there, rest on memory, or were derived; then the sum.</summary>
    public static string Counts()
    {
        var groups = All.GroupBy(c => (c.Says.Subject, c.Says.Source)).OrderBy(g => g.Key.Subject, StringComparer.Ordinal).ThenBy(g => g.Key.Source, StringComparer.Ordinal);
        var lines = groups.Select(g => Row(g.Key.Subject, g.Key.Source, g)).Append(Row("all", "", All));
        return string.Concat(lines.Prepend("| subject | source | read | memory | derived |\n|---|---|---|---|---|\n"));
    }

    private static string Row(string subject, string source, IEnumerable<PublishedCheck> checks)
    {
        var marks = checks.ToLookup(c => c.Says.Mark);
        return FormattableString.Invariant($"| {subject} | {source} | {marks[CheckMark.Read].Count()} | {marks[CheckMark.Memory].Count()} | {marks[CheckMark.Derived].Count()} |\n");
    }

    /// <summary>A table of the checks of a subject by source, as text: the source, then number, mark and name of each check.</summary>
    public static string Table(string subject)
    {
        var lines = from check in All
                    where check.Says.Subject == subject
                    group check by check.Says.Source into bySource
                    orderby bySource.Key
                    from line in bySource.Select(c => FormattableString.Invariant($"  {c.Says.Number,3}  {c.Says.Mark.ToString().ToLowerInvariant(),-7}  {c.Test}")).Prepend(bySource.Key)
                    select line + "\n";
        return string.Concat(lines);
    }
}
