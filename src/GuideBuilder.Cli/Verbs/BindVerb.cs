using System.CommandLine;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Rendering;
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
        var files = new Argument<string[]>("FILE") { Arity = ArgumentArity.OneOrMore, Description = "Answers files. One makes DIR the handbook; several make a folder each inside DIR." };
        var to = new Option<string>("--to") { HelpName = "DIR", Required = true, Description = "The folder to write: a new one, or one that guidebuilder made." };
        var common = new Common();
        var verb = common.To(new Command("bind", "Bind handbooks from answers files.") { files, to, Since, Pdf, Named });
        verb.SetAction(given => (int)Run(given.GetValue(files)!, given.GetValue(to)!, given, common));
        return verb;
    }

    private static Exit Run(string[] files, string to, ParseResult given, Common common)
    {
        var occasion = common.Occasion(given);
        var printer = Printer(given);
        var earlier = Earlier(given, files.Length);
        var texts = Loading.Files(files);
        var guidance = common.Guidance(given);
        FaultPrinter.Print(guidance.Faults.Concat(earlier?.Faults ?? []));
        if (guidance.Value is not { } read || earlier is { Value: null })
        {
            return Exit.Faults;
        }

        var books = Counter.Over(texts, text => text.Path, text => Guide.Bind(text, read, occasion, earlier?.Value));
        FaultPrinter.Print(books.SelectMany(b => b.Faults));
        if (books.Any(b => b.Value is null))
        {
            return Exit.Faults;
        }

        foreach (var (folder, book) in Folders(to, texts, [.. books.Select(b => b.Value!)]))
        {
            (string Name, ReadOnlyMemory<byte> Bytes)[] all = [.. book.Files.Select(f => (f.Name, f.Bytes))];
            HandbookFolder.Write(folder, printer is null ? all : [.. all, .. Browser.Print(printer, all, book.ForPaper)]);
            Console.Out.WriteLine(OneLine.Of(Invariant($"{folder}: {book.Files.Length} files. Open {Path.Combine(folder, "index.html")}")));
        }

        return Exit.Done;
    }

    private static string? Printer(ParseResult given) => (given.GetValue(Pdf), given.GetValue(Named)) switch
    {
        (true, var named) => Browser.Find(named),
        (false, not null) => throw new ShellException(ShellFaults.BrowserWithoutPdf()),
        _ => null,
    };

    private static Staged<EarlierPlan>? Earlier(ParseResult given, int homes) => given.GetValue(Since) switch
    {
        null => null,
        _ when homes > 1 => throw new ShellException(ShellFaults.SinceNeedsOne()),
        var file => EarlierPlan.Read(Loading.File(file)),
    };

    private static IEnumerable<(string Folder, BoundBook Book)> Folders(string to, SourceText[] texts, BoundBook[] books)
    {
        var firstWith = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (text, book) in texts.Zip(books))
        {
            if (!firstWith.TryAdd(book.Id, text.Path))
            {
                throw new ShellException(ShellFaults.SameHandbookTwice(book.Id, firstWith[book.Id], text.Path));
            }
        }

        return books.Select(book => (books.Length == 1 ? to : Path.Combine(to, book.Id), book));
    }
}
