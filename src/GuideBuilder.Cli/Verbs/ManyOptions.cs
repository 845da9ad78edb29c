using System.CommandLine;
using GuideBuilder.Cli.Runs;

namespace GuideBuilder.Cli.Verbs;

/// <summary>The options of <c>bind</c> that are for many handbooks at once.</summary>
internal sealed class ManyOptions
{
    private readonly Option<int> _jobs = new("--jobs") { HelpName = "N", Description = "Bind so many at a time; as many as there are processors if it is left out.", DefaultValueFactory = _ => Environment.ProcessorCount };

    private readonly Option<string?> _slice = new("--slice") { HelpName = "K/N", Description = "Bind part K of N only; array/N takes K from an array of jobs (Kubernetes, Slurm). Then --gather." };

    private readonly Option<bool> _gather = new("--gather") { Description = "Put the slices in DIR together: one list, one catalogue." };

    private readonly Option<string?> _base = new("--base-address") { HelpName = "URL", Description = "Where the catalogue will stand on the web, for its map of pages." };

    /// <summary>Adds the options to a verb.</summary>
    internal Command To(Command verb)
    {
        foreach (var option in new Option[] { _jobs, _slice, _gather, _base })
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    /// <summary>Whether slices are to be put together.</summary>
    internal bool Gathers(ParseResult given) => given.GetValue(_gather);

    /// <summary>The slice to bind; null for the whole.</summary>
    internal Slice? Slice(ParseResult given) => given.GetValue(_slice) is { } text ? Runs.Slice.Read(text) : null;

    /// <summary>How many to bind at a time.</summary>
    internal int Jobs(ParseResult given) => given.GetValue(_jobs) is > 0 and var jobs ? jobs : throw new ShellException(ShellFaults.NotAJobCount(given.GetValue(_jobs)));

    /// <summary>The address of the catalogue on the web, with a slash at its end; null when none is given.</summary>
    internal string? Base(ParseResult given) => given.GetValue(_base) switch
    {
        null => null,
        var text when Uri.TryCreate(text, UriKind.Absolute, out var address) && address.Scheme is "https" or "http" => text.TrimEnd('/') + "/",
        var text => throw new ShellException(ShellFaults.NotAnAddress(text)),
    };

    /// <summary>Refuses what makes no sense for a single handbook.</summary>
    internal void RefuseForOne(ParseResult given)
    {
        var wrong = given.GetValue(_slice) is not null ? _slice.Name : given.GetValue(_base) is not null ? _base.Name : null;
        if (wrong is not null)
        {
            throw new ShellException(ShellFaults.ForManyOnly(wrong));
        }
    }
}
