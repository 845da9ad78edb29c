using System.CommandLine;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>check</c>: every fault in answers and guidance that would stop a bind.</summary>
internal static class CheckVerb
{
    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var files = new Argument<string[]>("FILE") { Arity = ArgumentArity.ZeroOrMore, Description = "Answers files to check; without one, the guidance alone is checked." };
        var common = new Common();
        var verb = common.To(new Command("check", "Check answers files and guidance, and say where every fault is.") { files });
        verb.SetAction(given => (int)Run(given.GetValue(files) ?? [], given, common));
        return verb;
    }

    private static Exit Run(string[] files, ParseResult given, Common common)
    {
        var guidance = common.Guidance(given);
        var occasion = common.Occasion(given);
        var texts = Loading.Files(files);
        var found = guidance.Value is not { } read
            ? guidance.Faults
            : [.. guidance.Faults, .. Samples(read, texts).SelectMany(text => Guide.Bind(text, read, occasion).Faults)];
        FaultPrinter.Print(found);
        var failed = found.Any(f => f.Severity == Severity.Error);
        if (!failed)
        {
            Console.Out.WriteLine(OneLine.Of($"Nothing stops a bind. Checked: the guidance{Also(files)}."));
        }

        return failed ? Exit.Faults : Exit.Done;
    }

    // Pages and letters show their faults only when they are written, so the guidance alone is tried on a home in each nation
    // of which nothing else is known.
    private static IEnumerable<SourceText> Samples(Guidance guidance, SourceText[] texts) =>
        texts.Length > 0 ? texts : guidance.Nations.Select(nation => BareHome.In(nation.Id));

    private static string Also(string[] files) => files.Length == 0 ? "" : " and " + string.Join(", ", files);
}
