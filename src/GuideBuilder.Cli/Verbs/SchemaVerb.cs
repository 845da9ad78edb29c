using System.CommandLine;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Rendering.Schema;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>schema</c>: the JSON Schema of an answers file, for editors.</summary>
internal static class SchemaVerb
{
    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var to = Output.To();
        var common = new Common();
        var verb = common.ToWordsOnly(new Command("schema", "Write the JSON Schema of an answers file, so that an editor completes and checks while you type.") { to });
        verb.SetAction(given => (int)Run(common.Guidance(given), given.GetValue(to)));
        return verb;
    }

    private static Exit Run(Staged<Guidance> guidance, string? to)
    {
        FaultPrinter.Print(guidance.Faults);
        return guidance.Value is null ? Exit.Faults : Output.Write(to, AnswersSchema.Write(guidance.Value));
    }
}
