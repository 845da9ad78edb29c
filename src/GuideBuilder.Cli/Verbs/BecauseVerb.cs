using System.CommandLine;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>because</c>: why an item is in the plan, or is not, down to the answers.</summary>
internal static class BecauseVerb
{
    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var item = new Argument<string>("ITEM") { Description = "The item's id, as plan and the handbook print it." };
        var file = new Argument<string>("FILE") { Description = "The answers file." };
        var common = new Common();
        var verb = common.To(new Command("because", "Say why an item is in the plan of an answers file, or is not.") { item, file });
        verb.SetAction(given => (int)Run(given.GetValue(item)!, given.GetValue(file)!, given, common));
        return verb;
    }

    private static Exit Run(string item, string file, ParseResult given, Common common)
    {
        var text = Loading.File(file);
        var plan = common.Wanted(given).Plan(text);
        FaultPrinter.Print(plan.Faults);
        if (plan.Value is null)
        {
            return Exit.Faults;
        }

        var reasons = Reasons.In(plan.Value);
        if (!reasons.TryGetValue(item, out var because))
        {
            throw new ShellException(ShellFaults.NoSuchItem(item, NearestName.To(item, reasons.Keys)));
        }

        BecausePrinter.Print(because);
        return Exit.Done;
    }
}
