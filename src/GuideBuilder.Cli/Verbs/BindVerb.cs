using System.CommandLine;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Cli.Runs;
using GuideBuilder.Rendering.Data;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>bind</c>: answers files to handbooks on disk.</summary>
internal static class BindVerb
{
    private static readonly Option<string?> Since = new("--since") { HelpName = "FILE", Description = "The plan.json of the last handbook: the cover says what has changed since, and why." };

    private static readonly Option<bool> Pdf = new("--pdf") { Description = "Also print the paper edition and the short one to PDF, by an installed browser of the Chromium family." };

    private static readonly Option<string?> Named = new("--browser") { HelpName = "PROGRAM", Description = "The browser for --pdf, if it is not found by itself." };

    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var files = new Argument<string[]>("FILE") { Arity = ArgumentArity.ZeroOrMore, Description = "Answers files, or folders of them. One file makes DIR the handbook; several, or a folder, make a folder each inside DIR, and a catalogue." };
        var to = new Option<string>("--to") { HelpName = "DIR", Required = true, Description = "The folder to write: a new one, or one that guidebuilder made." };
        var common = new Common();
        var many = new ManyOptions();
        var verb = many.To(common.To(new Command("bind", "Bind handbooks from answers files.") { files, to, Since, Pdf, Named }));
        verb.SetAction(given => (int)Run(given.GetValue(files) ?? [], given.GetValue(to)!, given, common, many));
        return verb;
    }

    private static Exit Run(string[] named, string to, ParseResult given, Common common, ManyOptions many)
    {
        var gathers = many.Gathers(given);
        if (gathers == named.Length > 0)
        {
            throw new ShellException(ShellFaults.FilesOrGather(gathers));
        }

        var wanted = common.Wanted(given);
        var printer = Printer(given);
        var sources = Sources.Of(named);
        return gathers || sources.IsMany
            ? Many(sources, to, given, wanted, new(many, given, printer))
            : One(sources.Paths[0], to, given, wanted, printer, many);
    }

    private static Exit Many(Sources sources, string to, ParseResult given, Wanted wanted, ManyOrder order)
    {
        if (given.GetValue(Since) is not null)
        {
            throw new ShellException(ShellFaults.SinceNeedsOne());
        }

        return order.Run(sources, to, wanted);
    }

    // A single handbook is always bound, whatever stood there before.
    private static Exit One(string path, string to, ParseResult given, Wanted wanted, string? printer, ManyOptions many)
    {
        many.RefuseForOne(given);
        var earlier = given.GetValue(Since) is { } file ? EarlierPlan.Read(Loading.File(file)) : null;
        var text = Loading.File(path);
        FaultPrinter.Print(earlier?.Faults ?? []);
        if (earlier is { Value: null })
        {
            return Exit.Faults;
        }

        var bound = Counter.Over([text], t => t.Path, t => wanted.Bind(t, earlier?.Value))[0];
        FaultPrinter.Print(bound.Faults);
        if (bound.Value is not { } book)
        {
            return Exit.Faults;
        }

        (string Name, ReadOnlyMemory<byte> Bytes)[] all = [.. book.Files.Select(f => (f.Name, f.Bytes))];
        HandbookFolder.Write(to, printer is null ? all : [.. all, .. Browser.Print(printer, all, book.ForPaper)]);
        Console.Out.WriteLine(OneLine.Of(Invariant($"{to}: {book.Files.Length} files. Open {Path.Combine(to, "index.html")}")));
        return Exit.Done;
    }

    private static string? Printer(ParseResult given) => (given.GetValue(Pdf), given.GetValue(Named)) switch
    {
        (true, var named) => Browser.Find(named),
        (false, not null) => throw new ShellException(ShellFaults.BrowserWithoutPdf()),
        _ => null,
    };
}
