namespace GuideBuilder.Cli.Runs;

/// <summary>The answers files that a command line names: files as they are, and every *.yaml directly in a folder.</summary>
internal sealed record Sources(ImmutableArray<string> Paths, bool IsMany)
{
    /// <summary>The files in the order in which they were named, those of a folder by their names. One file alone is not many; a folder is.</summary>
    internal static Sources Of(string[] named)
    {
        ImmutableArray<string> paths = [.. named.SelectMany(n => Directory.Exists(n) ? In(n) : [n])];
        return new(paths, named.Length > 1 || named.Any(Directory.Exists));
    }

    private static string[] In(string folder)
    {
        var plain = new EnumerationOptions { AttributesToSkip = FileAttributes.Hidden };
        string[] found = [.. Directory.EnumerateFiles(folder, "*.yaml", plain).Order(StringComparer.Ordinal)];
        return found.Length > 0 ? found : throw new ShellException(ShellFaults.NoAnswersIn(folder));
    }
}
