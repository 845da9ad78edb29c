using System.Security.Cryptography;
using GuideBuilder.Cli.Disk;

namespace GuideBuilder.Cli.Runs;

/// <summary>Binds many handbooks, each into its own folder, several at a time. One that is faulty does not stop the others, and one that is unchanged is left as it stands.</summary>
internal sealed class ManyRun(Wanted wanted, string root, string? printer, BoundList before)
{
    private readonly FrozenDictionary<string, BoundEntry> _before = before.Entries.ToFrozenDictionary(e => e.Id, StringComparer.Ordinal);
    private readonly BoundKey _key = new(wanted, printer is not null);

    /// <summary>The files that would make the same handbook as another, with that other.</summary>
    internal FrozenDictionary<string, string> Twins { get; init; } = FrozenDictionary<string, string>.Empty;

    /// <summary>What became of each file, in the order of the files.</summary>
    internal ImmutableArray<Outcome> Bind(IReadOnlyList<string> paths, int jobs, Progress progress)
    {
        var outcomes = new Outcome[paths.Count];
        Parallel.For(0, paths.Count, new ParallelOptions { MaxDegreeOfParallelism = jobs }, i =>
        {
            outcomes[i] = One(paths[i]);
            progress.Step(paths[i]);
        });
        return [.. outcomes];
    }

    private Outcome One(string path)
    {
        var id = "";
        try
        {
            var answers = Loading.File(path);
            if (Twins.TryGetValue(path, out var twin))
            {
                id = wanted.IdOf(answers);
                throw new ShellException(ShellFaults.SameHandbookTwice(id, path, twin));
            }

            var asked = wanted.For(answers);
            id = asked.Id;
            var key = _key.Of(answers, asked);
            var folder = Path.Combine(root, id);
            return _before.GetValueOrDefault(id) is { } entry && entry.Key == key && entry.StandsIn(folder)
                ? new(id, entry, IsNew: false, [], null)
                : Bind(answers, asked, key, folder);
        }
        catch (ShellException problem)
        {
            return new(id, null, IsNew: false, [], problem.Faults[0]);
        }
    }

    private Outcome Bind(SourceText answers, Asked asked, string key, string folder)
    {
        var bound = wanted.Bind(answers, asked);
        if (bound.Value is not { } book)
        {
            return new(asked.Id, null, IsNew: false, bound.Faults, null);
        }

        (string Name, ReadOnlyMemory<byte> Bytes)[] files = [.. book.Files.Select(f => (f.Name, f.Bytes))];
        if (printer is not null)
        {
            files = [.. files, .. Browser.Print(printer, files, book.ForPaper)];
        }

        HandbookFolder.Write(folder, files);
        var entry = new BoundEntry(book.Id, key, book.About, [.. files.OrderBy(f => f.Name, StringComparer.Ordinal).Select(f => new BoundEntryFile(f.Name, f.Bytes.Length, Convert.ToHexStringLower(SHA256.HashData(f.Bytes.Span))))]);
        return new(book.Id, entry, IsNew: true, bound.Faults, null);
    }
}

/// <summary>What became of one answers file: its entry unless it was faulty, whether it was bound now, and what was wrong.</summary>
internal sealed record Outcome(string Id, BoundEntry? Entry, bool IsNew, ImmutableArray<Fault> Faults, ShellFault? Problem);
