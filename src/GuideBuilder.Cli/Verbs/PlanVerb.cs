using System.CommandLine;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>plan</c>: the plan on the console.</summary>
internal static class PlanVerb
{
    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var file = new Argument<string>("FILE") { Description = "The answers file." };
        var common = new Common();
        var verb = common.To(new Command("plan", "Print the plan that follows from an answers file.") { file });
        verb.SetAction(given => (int)Run(given.GetValue(file)!, given, common));
        return verb;
    }

    private static Exit Run(string file, ParseResult given, Common common)
    {
        var text = Loading.File(file);
        var plan = common.Wanted(given).Plan(text);
        FaultPrinter.Print(plan.Faults);
        if (plan.Value is null)
        {
            return Exit.Faults;
        }

        PlanPrinter.Print(plan.Value);
        return Exit.Done;
    }
}
