using System.CommandLine;
using GuideBuilder.Cli.Asking;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Reading;
using Spectre.Console;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>ask</c>: the questionnaire in the terminal, or filled in from a pipe.</summary>
internal static class AskVerb
{
    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var file = new Argument<string>("FILE") { Description = "The answers file to make, or to go on with." };
        var common = new Common();
        var verb = common.To(new Command("ask", "Ask the questionnaire, and save the answers in a file as they are given.") { file });
        verb.SetAction(given => (int)Run(given.GetValue(file)!, given, common));
        return verb;
    }

    private static Exit Run(string file, ParseResult given, Common common)
    {
        var guidance = common.Guidance(given);
        var before = guidance.Then(read => Before(file, read));
        FaultPrinter.Print(before.Faults);
        if (before.Value is not { } filling)
        {
            return Exit.Faults;
        }

        var occasion = common.Occasion(given)(filling.ForPlanning());
        var done = Interview.Run(filling, occasion, file, Console.In.ReadLine, new Teller(AnsiConsole.Console), answers => Save(answers, file));
        if (done.CanBeBound)
        {
            Console.Out.WriteLine($"A handbook can be bound from it: guidebuilder bind {file} --to handbook");
            return Exit.Done;
        }

        Console.Out.WriteLine("No handbook can be bound from it before the nation and one question about the wish are answered.");
        return Exit.Faults;
    }

    // A file that is there must be right, or its answers could be lost; one that is new must have a name that can name a handbook.
    private static Staged<Filling> Before(string file, Guidance guidance)
    {
        if (System.IO.File.Exists(file))
        {
            return AnswerReader.ReadUnfinished(Loading.File(file), guidance).Then(written => Staged<Filling>.From(Filling.Of(guidance, written), []));
        }

        var sample = BareHome.Named(file, guidance.Nations[0].Id);
        return AnswerReader.Read(sample, guidance).Value is null
            ? throw new ShellException(ShellFaults.NameMakesNoId(file))
            : Staged<Filling>.From(Filling.Of(guidance, null), []);
    }

    private static void Save(Filling answers, string file)
    {
        var written = answers.Write(file);
        FaultPrinter.Print(written.Faults);
        if (written.Value is { } text)
        {
            WholeFile.Write(file, text.Bytes.Span);
        }
    }
}
