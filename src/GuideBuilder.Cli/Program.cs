using System.CommandLine;

var command = new RootCommand("Binds a handbook for a home that wants its electricity intake moved.");

// An argument that begins with @ is a file's name like any other, not a file of further arguments.
var given = command.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });

foreach (var error in given.Errors)
{
    Console.Error.WriteLine($"guidebuilder: {error.Message}");
}

const int WrongUse = 2;
return given.Errors.Count > 0 ? WrongUse : given.Invoke();
