using System.CommandLine;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Rendering.Schema;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>schema</c>: the JSON Schema of an answers file, for editors.</summary>
internal static class SchemaVerb
{
    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var common = new Common();
        var verb = common.ToWordsOnly(new Command("schema", "Print the JSON Schema of an answers file, so that an editor completes and checks while you type."));
        verb.SetAction(given => (int)Run(common.Guidance(given)));
        return verb;
    }

    private static Exit Run(Staged<Guidance> guidance)
    {
        FaultPrinter.Print(guidance.Faults);
        if (guidance.Value is null)
        {
            return Exit.Faults;
        }

        using var output = Console.OpenStandardOutput();
        output.Write(AnswersSchema.Write(guidance.Value).Span);
        return Exit.Done;
    }
}
