using System.Globalization;

namespace GuideBuilder.Cli.Runs;

/// <summary>Part k of n of a large run, counted from one: every n-th file, beginning with the k-th.</summary>
internal sealed record Slice(int K, int N)
{
    /// <summary>The whole run.</summary>
    internal static Slice Whole { get; } = new(1, 1);

    /// <summary>The slice in a text: k/n, or array/n for the index that an array of jobs has set.</summary>
    internal static Slice Read(string text)
    {
        var parts = text.Split('/');
        if (parts is not [var k, var n] || Number(n) is not { } all || (k != "array" && Number(k) is null))
        {
            throw new ShellException(ShellFaults.NotASlice(text));
        }

        var part = k == "array" ? Index() : Number(k)!.Value;
        return part >= 1 && part <= all ? new(part, all) : throw new ShellException(ShellFaults.NotASlice(text));
    }

    /// <summary>What belongs to the slice.</summary>
    internal IEnumerable<T> Of<T>(IEnumerable<T> all) => all.Where((_, i) => i % N == K - 1);

    // Kubernetes counts an Indexed Job from 0; an array of Slurm begins where its author said.
    private static int Index() =>
        Number("JOB_COMPLETION_INDEX", 0) is { } index ? index + 1
        : Number("SLURM_ARRAY_TASK_ID", 0) is { } task ? task - (Number("SLURM_ARRAY_TASK_MIN", 0) ?? 1) + 1
        : throw new ShellException(ShellFaults.NoArrayIndex());

    private static int? Number(string variable, int least) => Environment.GetEnvironmentVariable(variable) is { Length: > 0 } text && Parse(text) is { } number && number >= least ? number : null;

    private static int? Number(string text) => Parse(text) is > 0 and var number ? number : null;

    private static int? Parse(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
