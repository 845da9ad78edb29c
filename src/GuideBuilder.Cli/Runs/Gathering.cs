using GuideBuilder.Cli.Disk;
using GuideBuilder.Rendering.Catalogues;

namespace GuideBuilder.Cli.Runs;

/// <summary>Puts the slices of a run together: one list, one catalogue, and nothing left of handbooks whose answers are gone.</summary>
internal static class Gathering
{
    /// <summary>The lists of all slices in a folder; a slice that is missing is a fault that names it.</summary>
    internal static (BoundList List, ImmutableArray<string> Parts) Slices(string root)
    {
        var parts = Directory.Exists(root) ? Directory.EnumerateFiles(root, "bound-*-of-*.json").Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal).ToImmutableArray() : [];
        var count = parts.Select(p => int.TryParse(p.Split('-')[^1].Split('.')[0], out var n) ? n : 0).DefaultIfEmpty(0).Max();
        var wanted = Enumerable.Range(1, Math.Max(count, 1)).Select(k => BoundList.NameOf(new(k, Math.Max(count, 1)))).ToList();
        var lists = wanted.Select(name => (Name: name, List: BoundList.Load(Path.Combine(root, name)))).ToList();
        return lists.Where(l => l.List is null).Select(l => l.Name).ToList() is { Count: > 0 } missing
            ? throw new ShellException(ShellFaults.SlicesMissing(root, missing))
            : (new(lists[0].List!.Today, [.. lists.SelectMany(l => l.List!.Entries)], [.. lists.SelectMany(l => l.List!.Faulty)]), parts);
    }

    /// <summary>Writes list and catalogue of a folder and takes away the handbooks that the run did not want any more; gives how many. A faulty one keeps what was bound of it before.</summary>
    internal static int Finish(string root, BoundList now, BoundList before, Guidance guidance, string? baseAddress)
    {
        var kept = before.Entries.Where(e => now.Faulty.Contains(e.Id) && e.StandsIn(Path.Combine(root, e.Id)));
        var list = now with { Entries = [.. now.Entries.Concat(kept).OrderBy(e => e.Id, StringComparer.Ordinal)] };
        var wanted = list.Entries.Select(e => e.Id).Concat(now.Faulty).ToHashSet(StringComparer.Ordinal);
        var removed = before.Entries.Count(e => !wanted.Contains(e.Id) && HandbookFolder.Remove(Path.Combine(root, e.Id)));
        Directory.CreateDirectory(root);
        var files = Catalogue.Render([.. list.Entries.Select(e => new CatalogueLine(e.Id, e.About))], guidance, baseAddress);
        foreach (var file in files)
        {
            WholeFile.Write(Path.Combine(root, file.Name), file.Bytes.Span);
        }

        foreach (var name in Catalogue.Names.Where(n => files.All(f => f.Name != n) && before.Today is not null))
        {
            File.Delete(Path.Combine(root, name));
        }

        WholeFile.Write(Path.Combine(root, BoundList.Name), list.Write());
        return removed;
    }
}
