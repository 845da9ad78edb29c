using System.CommandLine;
using System.CommandLine.Parsing;
using GuideBuilder.Cli.Disk;
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
            if (Completing.PlaceIn(args) is { } place)
            {
                return Completing.Print(Root(), args[1], place);
            }

            var given = Root().Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            return WrongUse(given) is { Count: > 0 } wrong
                ? Refuse(wrong)
                : (Exit)given.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (ShellException problem)
        {
            return Refuse(problem.Faults);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Files speak through ShellException; what is left is the console itself.
            return Refuse([ShellFaults.CannotSay(Loading.Why(problem))]);
        }
    }

    /// <summary>The verbs and their options.</summary>
    internal static RootCommand Root()
    {
        var root = new RootCommand("Works out what it takes to move a home's electricity intake, and binds a handbook for the people who live there.")
        {
            AskVerb.Command(), CheckVerb.Command(), PlanVerb.Command(), BecauseVerb.Command(), BindVerb.Command(), CollateVerb.Command(), FormVerb.Command(), SchemaVerb.Command(),
        };

        // Those that the parser brings along in square brackets are nobody's words; what shells ask is answered before.
        root.Directives.Clear();
        return root;
    }

    // The parser takes an option it does not know for a file's name; a name that begins with a dash is only taken after --.
    private static List<ShellFault> WrongUse(ParseResult given)
    {
        var dashed = given.Tokens.TakeWhile(t => t.Type != TokenType.DoubleDash)
            .Where(t => t.Type == TokenType.Argument && t.Value.StartsWith('-'))
            .Select(t => ShellFaults.NoSuchOption(t.Value))
            .ToList();
        return dashed.Count > 0 ? dashed
            : given.Tokens.Any(t => t.Type == TokenType.Argument && string.IsNullOrWhiteSpace(t.Value)) ? [ShellFaults.EmptyArgument()]
            : given.Errors.Count > 0 && given.CommandResult.Command is RootCommand root ? [NotACommand(given, root)]
            : [.. given.Errors.Select(e => ShellFaults.NotUnderstood(e.Message.TrimEnd('.')))];
    }

    private static ShellFault NotACommand(ParseResult given, RootCommand root)
    {
        var names = root.Subcommands.Select(c => c.Name);
        return given.UnmatchedTokens is [var first, ..] ? ShellFaults.NoSuchCommand(first, names) : ShellFaults.NoCommand(names);
    }

    private static Exit Refuse(IReadOnlyList<ShellFault> faults)
    {
        try
        {
            foreach (var fault in faults)
            {
                Console.Error.WriteLine(fault);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Nobody is listening: the number alone tells how it ended.
        }

        return faults[0].Exit;
    }
}
