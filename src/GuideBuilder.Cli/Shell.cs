using System.CommandLine;
using System.CommandLine.Parsing;
using GuideBuilder.Cli.Verbs;

namespace GuideBuilder.Cli;

/// <summary>From the command line to a verb and an exit number.</summary>
internal static class Shell
{
    /// <summary>Understands the arguments, runs the verb, and says how it ended. Wrong use is told in a line each, without a page of help.</summary>
    internal static Exit Run(string[] args)
    {
        try
        {
            var given = Root().Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            return WrongUse(given) is { Count: > 0 } wrong
                ? Refuse(wrong)
                : (Exit)given.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (ShellException problem)
        {
            return Refuse([problem.Fault]);
        }
    }

    private static RootCommand Root() =>
        new("Works out what it takes to move a home's electricity intake, and binds a handbook for the people who live there.")
        {
            CheckVerb.Command(), PlanVerb.Command(), BecauseVerb.Command(), BindVerb.Command(), SchemaVerb.Command(),
        };

    // The parser takes an option it does not know for a file's name; a name that begins with a dash is only taken after --.
    private static List<ShellFault> WrongUse(ParseResult given)
    {
        var dashed = given.Tokens.TakeWhile(t => t.Type != TokenType.DoubleDash)
            .Where(t => t.Type == TokenType.Argument && t.Value.StartsWith('-'))
            .Select(t => ShellFaults.NoSuchOption(t.Value))
            .ToList();
        return dashed.Count > 0 ? dashed : [.. given.Errors.Select(e => ShellFaults.NotUnderstood(e.Message.TrimEnd('.')))];
    }

    private static Exit Refuse(List<ShellFault> faults)
    {
        foreach (var fault in faults)
        {
            Console.Error.WriteLine(fault);
        }

        return faults[0].Exit;
    }
}
