using System.Diagnostics;
using Spectre.Console;

namespace GuideBuilder.Cli.Runs;

/// <summary>How far a run over many files has come: how many a minute, and how long the rest may take. On a terminal only, on standard error, in one line.</summary>
internal sealed class Progress(int all)
{
    private readonly IAnsiConsole? _console = Console.IsErrorRedirected ? null : AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
    private readonly Stopwatch _watch = Stopwatch.StartNew();
    private readonly Lock _turn = new();
    private int _done;

    /// <summary>One more is done.</summary>
    internal void Step(string name)
    {
        lock (_turn)
        {
            _done++;
            _console?.Write(new Text(Line(name)));
        }
    }

    /// <summary>Ends the line.</summary>
    internal void End() => _console?.WriteLine();

    private string Line(string name)
    {
        var seconds = Math.Max(_watch.Elapsed.TotalSeconds, 0.001);
        var left = TimeSpan.FromSeconds(seconds / _done * (all - _done));
        return Invariant($"\r{_done} of {all}, {_done / seconds * 60:0} a minute, about {(int)left.TotalMinutes}:{left.Seconds:00} left  {Path.GetFileName(name),-24}");
    }
}
