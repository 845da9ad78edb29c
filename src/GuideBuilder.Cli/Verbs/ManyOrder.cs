using System.CommandLine;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Cli.Runs;

namespace GuideBuilder.Cli.Verbs;

/// <summary>A run over many handbooks as it was ordered: a slice, the whole, or the gathering of slices.</summary>
internal sealed class ManyOrder(ManyOptions options, ParseResult given, string? printer)
{
    /// <summary>Runs it, and sums it up in a line.</summary>
    internal Exit Run(Sources sources, string to, Wanted wanted)
    {
        var (jobs, slice, baseAddress) = (options.Jobs(given), options.Slice(given), options.Base(given));
        var before = BoundList.Load(Path.Combine(to, BoundList.Name));
        var isOurs = before is not null || (Directory.Exists(to) && Directory.EnumerateFiles(to, "bound-*-of-*.json").Any(p => BoundList.Load(p) is not null));
        var root = Targets.CheckList(to, isOurs);
        try
        {
            return options.Gathers(given)
                ? Gather(root, to, before ?? BoundList.Empty, wanted, baseAddress)
                : Bind(sources, root, to, before ?? BoundList.Empty, wanted, (jobs, slice, baseAddress));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new ShellException(ShellFaults.CannotWrite(to, Loading.Why(problem)));
        }
    }

    private Exit Bind(Sources sources, string root, string to, BoundList before, Wanted wanted, (int Jobs, Slice? Slice, string? Base) how)
    {
        if (Unreadable(wanted))
        {
            return Exit.Faults;
        }

        var part = how.Slice is null ? null : Path.Combine(root, BoundList.NameOf(how.Slice));
        var known = part is not null && BoundList.Load(part) is { } earlier ? earlier with { Entries = [.. earlier.Entries, .. before.Entries.ExceptBy(earlier.Entries.Select(e => e.Id), e => e.Id, StringComparer.Ordinal)] } : before;
        string[] paths = [.. (how.Slice ?? Slice.Whole).Of(sources.Paths)];
        var progress = new Progress(paths.Length);
        var outcomes = new ManyRun(wanted, root, printer, known) { Twins = Twins(sources.Paths, wanted) }.Bind(paths, how.Jobs, progress);
        progress.End();
        var list = new BoundList(wanted.Today, [.. outcomes.Select(o => o.Entry).OfType<BoundEntry>()], [.. outcomes.Where(o => o.Entry is null && o.Id.Length > 0).Select(o => o.Id)]);
        var removed = 0;
        if (part is null)
        {
            removed = Gathering.Finish(root, list, before, GuidanceOf(wanted), how.Base);
        }
        else
        {
            Directory.CreateDirectory(root);
            WholeFile.Write(part, list.Write());
        }

        return Told(outcomes, removed, to, known.Today is { } day && day != wanted.Today ? day : null);
    }

    private static Exit Gather(string root, string to, BoundList before, Wanted wanted, string? baseAddress)
    {
        if (Unreadable(wanted))
        {
            return Exit.Faults;
        }

        var (list, parts) = Gathering.Slices(root);
        var removed = Gathering.Finish(root, list, before, GuidanceOf(wanted), baseAddress);
        foreach (var name in parts)
        {
            File.Delete(Path.Combine(root, name));
        }

        Console.Out.WriteLine(OneLine.Of(Invariant($"{to}: {list.Entries.Length} handbooks in the catalogue, {list.Faulty.Length} faulty, {removed} removed. Open {Path.Combine(to, "index.html")}")));
        return list.Faulty.IsEmpty ? Exit.Done : Exit.Faults;
    }

    private static bool Unreadable(Wanted wanted)
    {
        FaultPrinter.Print(wanted.Shelf.Plain.Faults);
        return wanted.Shelf.Plain.Value is null;
    }

    // The catalogue is in the language of the run.
    private static Guidance GuidanceOf(Wanted wanted) => wanted.Guidance(new("", EditionKind.Householder, wanted.Language ?? LocalText.Original, null)).Value ?? wanted.Shelf.Plain.Value!;

    // Of two files that would make the same handbook neither is bound, since nobody can tell which is meant. Files that cannot be read are faults of their own, told when their turn comes.
    private static FrozenDictionary<string, string> Twins(ImmutableArray<string> paths, Wanted wanted)
    {
        var known = paths.Where(File.Exists).GroupBy(p => wanted.IdOf(Loading.File(p)), StringComparer.Ordinal).Where(g => g.Count() > 1);
        return known.SelectMany(g => g.Select(p => (Path: p, Twin: g.First(o => o != p)))).DistinctBy(t => t.Path).ToFrozenDictionary(t => t.Path, t => t.Twin, StringComparer.Ordinal);
    }

    private static Exit Told(ImmutableArray<Outcome> outcomes, int removed, string to, LocalDate? lastDay)
    {
        FaultPrinter.Print(outcomes.SelectMany(o => o.Faults));
        foreach (var problem in outcomes.Select(o => o.Problem).OfType<ShellFault>())
        {
            Console.Error.WriteLine(OneLine.Of(problem.ToString()));
        }

        var faulty = outcomes.Count(o => o.Entry is null);
        Console.Out.WriteLine(OneLine.Of(Invariant($"{to}: {outcomes.Count(o => o.IsNew)} bound, {outcomes.Count(o => o is { Entry: not null, IsNew: false })} unchanged, {faulty} faulty, {removed} removed. Open {Path.Combine(to, "index.html")}")));
        if (lastDay is { } day)
        {
            Console.Out.WriteLine(Invariant($"The last run was of {day:uuuu-MM-dd}: another day plans anew, so that every handbook with dates was bound again."));
        }

        return outcomes.Any(o => o.Problem?.Exit == Exit.Disk) ? Exit.Disk : faulty > 0 ? Exit.Faults : Exit.Done;
    }
}
