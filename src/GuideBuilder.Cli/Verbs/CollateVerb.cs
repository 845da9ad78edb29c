using System.CommandLine;
using System.Security.Cryptography;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Cli.Runs;
using GuideBuilder.Rendering.Collating;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>collate</c>: the publisher's check of the guidance, of an imprint, and of bound folders.</summary>
internal static class CollateVerb
{
    private static readonly Option<bool> AsJson = new("--json") { Description = "Write the report as JSON." };

    private static readonly Option<bool> ToPublish = new("--to-publish") { Description = "Count a caution of the highest severity that nobody has read among what must be put right, so that the run ends with 1." };

    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var folders = new Argument<string[]>("DIR") { Arity = ArgumentArity.ZeroOrMore, Description = "Handbooks, or folders of many; without one, the guidance alone is looked at." };
        var common = new Common();
        var verb = common.To(new Command("collate", "Check guidance and bound handbooks before they are published.") { folders, AsJson, ToPublish });
        verb.SetAction(given => (int)Run(given.GetValue(folders) ?? [], given, common));
        return verb;
    }

    private static Exit Run(string[] folders, ParseResult given, Common common)
    {
        var wanted = common.Wanted(given) with { FaultsOnly = true };
        var faults = CheckVerb.FaultsOf(wanted, []);
        if (wanted.Shelf.Plain.Value is not { } guidance)
        {
            FaultPrinter.Print(faults);
            return Exit.Faults;
        }

        ImmutableArray<Finding> findings =
        [
            .. faults.Distinct().Select(f => new Finding(f.Severity, "check", f.Place.ToString(), $"{f.Wrong} {f.Right} [{f.Code}]")),
            .. GuidanceCheck.Of(guidance, guidance.Head.Languages.Skip(1).Select(l => wanted.Shelf.Take(l, null).Value).OfType<Guidance>(), wanted.Today),
            .. Imprint(wanted),
            .. folders.SelectMany(f => Folder(f, guidance)),
        ];
        findings = given.GetValue(ToPublish) ? Unread.ToBePutRight(findings) : findings;
        Write(findings, given.GetValue(AsJson));
        return findings.Any(f => f.Severity == Severity.Error) ? Exit.Faults : Exit.Done;
    }

    private static void Write(ImmutableArray<Finding> findings, bool asJson)
    {
        using var output = Console.OpenStandardOutput();
        output.Write(asJson ? Report.Json(findings) : System.Text.Encoding.UTF8.GetBytes(string.Concat(Report.Text(findings).Split('\n').Select(l => OneLine.Of(l) + "\n"))));
    }

    private static IEnumerable<Finding> Imprint(Wanted wanted)
    {
        if (wanted.Imprint is not { } path)
        {
            return [];
        }

        var read = wanted.Shelf.Take(LocalText.Original, ImprintFiles.Load(path));
        return
        [
            .. read.Faults.Where(f => f.Place.Path == path.Replace('\\', '/')).Select(f => new Finding(f.Severity, "check", f.Place.ToString(), $"{f.Wrong} {f.Right} [{f.Code}]")),
            .. read.Value is { } guidance ? GuidanceCheck.OfImprint(guidance) : [],
        ];
    }

    private static ImmutableArray<Finding> Folder(string folder, Guidance guidance)
    {
        if (BoundList.Load(Path.Combine(folder, BoundList.Name)) is { } list)
        {
            return
            [
                .. Recalls.Of(folder, list.Entries.Select(e => (e.Id, e.About)), guidance),
                .. list.Entries.SelectMany(e => OfEntry(Path.Combine(folder, e.Id), e)),
            ];
        }

        return BoundFiles.Read(folder) is null ? throw new ShellException(ShellFaults.NotBound(folder)) : Book(folder);
    }

    // Of a page that was changed by hand it says enough that it was: what a parser thinks of it helps nobody.
    private static IEnumerable<Finding> OfEntry(string folder, BoundEntry entry)
    {
        var changed = Changed(folder, entry).ToList();
        return changed.Concat(Book(folder).Where(f => f.Kind != BookCheck.Html || !changed.Exists(c => f.Where.StartsWith(c.Where + ":", StringComparison.Ordinal))));
    }

    // Somebody may have changed a file by hand, or lost one.
    private static IEnumerable<Finding> Changed(string folder, BoundEntry entry) =>
        from file in entry.Files
        let path = Path.Combine(folder, file.Name)
        let isThere = File.Exists(path)
        where !isThere || Convert.ToHexStringLower(SHA256.HashData(Loading.File(path).Bytes.Span)) != file.Hash
        select new Finding(Severity.Error, isThere ? "file-changed" : "file-missing", $"{folder}/{file.Name}", isThere ? "It is not as it was bound." : "It was bound and is not there.");

    private static ImmutableArray<Finding> Book(string folder) => Directory.Exists(folder)
        ? BookCheck.Of(folder, [.. Directory.EnumerateFiles(folder).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal).Select(n => (n, Loading.File(Path.Combine(folder, n)).Bytes))])
        : [];
}
