using System.CommandLine;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Rendering.Form;

namespace GuideBuilder.Cli.Verbs;

/// <summary><c>form</c>: the questionnaire as one web page that a charity can put on its site.</summary>
internal static class FormVerb
{
    /// <summary>The verb for the parser.</summary>
    internal static Command Command()
    {
        var to = Output.To();
        var common = new Common();
        var verb = common.ToWordsOnly(new Command("form", "Write the questionnaire as one self-contained web page.") { to });
        verb.SetAction(given => (int)Run(common.Guidance(given), given.GetValue(to)));
        return verb;
    }

    private static Exit Run(Staged<Guidance> guidance, string? to)
    {
        var page = guidance.Then(FormPage.Render);
        FaultPrinter.Print(page.Faults);
        return page.Value is null ? Exit.Faults : Output.Write(to, page.Value.Bytes);
    }
}
