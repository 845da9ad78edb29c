using Spectre.Console;

namespace GuideBuilder.Cli.Printing;

/// <summary>Shows how far a run over many files has come: on a terminal only, and on standard error.</summary>
internal static class Counter
{
    /// <summary>Does the work for each item in order and gives the results in the same order.</summary>
    internal static TResult[] Over<T, TResult>(IReadOnlyList<T> items, Func<T, string> name, Func<T, TResult> work) =>
        Console.IsErrorRedirected ? [.. items.Select(work)] : Shown(items, name, work);

    private static TResult[] Shown<T, TResult>(IReadOnlyList<T> items, Func<T, string> name, Func<T, TResult> work)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        return console.Status().Start("Reading", status => items.Select((item, done) =>
        {
            status.Status = Markup.Escape(Invariant($"{name(item)} ({done + 1} of {items.Count})"));
            return work(item);
        }).ToArray());
    }
}
