using System.CommandLine;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Reading;
using GuideBuilder.Rendering.Questionnaire;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>check</c>: every fault in answers and guidance that would stop a bind.</summary>
internal static class CheckVerb
{
    private static readonly Option<bool> Rewrite = new("--rewrite") { Description = "If nothing stops a bind, put each answers file into the plain layout, in place. Answers and comments stay." };

    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var files = new Argument<string[]>("FILE") { Arity = ArgumentArity.ZeroOrMore, Description = "Answers files to check; without one, the guidance alone is checked." };
        var common = new Common();
        var verb = common.To(new Command("check", "Check answers files and guidance, and say where every fault is.") { files, Rewrite });
        verb.SetAction(given => (int)Run(given.GetValue(files) ?? [], given, common));
        return verb;
    }

    private static Exit Run(string[] files, ParseResult given, Common common)
    {
        if (given.GetValue(Rewrite) && files.Length == 0)
        {
            throw new ShellException(ShellFaults.NothingToRewrite());
        }

        var wanted = common.Wanted(given) with { FaultsOnly = true };
        var guidance = wanted.Shelf.Plain;
        var texts = Loading.Files(files);
        var found = FaultsOf(wanted, texts);
        FaultPrinter.Print(found);
        var failed = found.Any(f => f.Severity == Severity.Error);
        if (!failed)
        {
            Console.Out.WriteLine(OneLine.Of($"Nothing stops a bind. Checked: the guidance{Also(files)}."));
        }

        return failed ? Exit.Faults
            : given.GetValue(Rewrite) ? InPlace(texts, guidance.Value!)
            : Exit.Done;
    }

    /// <summary>Every fault that would stop a bind of these files; without files, of a home in every nation and language of which nothing else is known.</summary>
    internal static ImmutableArray<Fault> FaultsOf(Runs.Wanted wanted, SourceText[] texts)
    {
        var guidance = wanted.Shelf.Plain;
        return guidance.Value is not { } read
            ? guidance.Faults
            : [.. guidance.Faults, .. Samples(read, texts).SelectMany(text => wanted.Bind(text).Faults), .. texts.Length > 0 ? [] : Translations(read, wanted)];
    }

    // All are written in memory before the first is written to disk.
    private static Exit InPlace(SourceText[] texts, Guidance guidance)
    {
        var plain = texts.Select(text => AnswerReader.ReadWritten(text, guidance).Then(written => PlainLayout.Write(written, guidance, text.Path))).ToArray();
        FaultPrinter.Print(plain.SelectMany(p => p.Faults.Where(f => f.Severity == Severity.Error)));
        if (plain.Any(p => p.Value is null))
        {
            return Exit.Faults;
        }

        foreach (var (text, now) in texts.Zip(plain, (text, p) => (text, p.Value!)))
        {
            var isSame = text.Bytes.Span.SequenceEqual(now.Bytes.Span);
            if (!isSame)
            {
                WholeFile.Write(text.Path, now.Bytes.Span);
            }

            Console.Out.WriteLine($"{text.Path}: {(isSame ? "is in the plain layout already" : "is now in the plain layout")}.");
        }

        return Exit.Done;
    }

    // Pages and letters show their faults only when they are written, so the guidance alone is tried on a home in each nation
    // of which nothing else is known.
    private static IEnumerable<SourceText> Samples(Guidance guidance, SourceText[] texts) =>
        texts.Length > 0 ? texts : guidance.Nations.Select(nation => BareHome.In(nation.Id));

    // Each translation is tried on the same home in every nation.
    private static IEnumerable<Fault> Translations(Guidance guidance, Runs.Wanted wanted) =>
        from language in guidance.Head.Languages.Skip(1)
        from nation in guidance.Nations
        from fault in (wanted with { Language = language }).Bind(BareHome.In(nation.Id)).Faults
        select fault;

    private static string Also(string[] files) => files.Length == 0 ? "" : " and " + string.Join(", ", files);
}
