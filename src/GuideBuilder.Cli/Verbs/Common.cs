using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using GuideBuilder.Cli.Disk;

namespace GuideBuilder.Cli.Verbs;

/// <summary>The options that more than one verb takes, and what they come to.</summary>
internal sealed class Common
{
    private readonly Option<string?> _guidance = new("--guidance") { HelpName = "DIR", Description = "Use the guidance in DIR instead of the one that travels with the program." };

    private readonly Option<string?> _today = new("--today") { HelpName = "DAY", Description = "Take DAY (year-month-day) for today, instead of SOURCE_DATE_EPOCH or the clock." };

    private readonly Option<ulong> _seed = new("--seed") { HelpName = "N", Description = "Draw chances from N.", DefaultValueFactory = _ => Model.Occasion.DefaultSeed, CustomParser = Seed };

    /// <summary>Adds the options to a verb.</summary>
    internal Command To(Command verb)
    {
        ToWordsOnly(verb).Options.Add(_seed);
        return verb;
    }

    /// <summary>Adds to a verb the options of those that read the guidance and plan nothing.</summary>
    internal Command ToWordsOnly(Command verb)
    {
        verb.Options.Add(_guidance);
        verb.Options.Add(_today);
        return verb;
    }

    /// <summary>The guidance folder as given, or null for the built-in one.</summary>
    internal string? GuidanceFolder(ParseResult given) => given.GetValue(_guidance);

    /// <summary>The guidance, read and checked.</summary>
    internal Staged<Guidance> Guidance(ParseResult given) => Guide.Guidance(given.GetValue(_guidance), Day(given));

    /// <summary>Today, the seed, and the edition that the answers file asks for.</summary>
    internal Func<AnswerSet, Model.Occasion> Occasion(ParseResult given)
    {
        var (day, draw) = (Day(given), given.GetValue(_seed));
        return answers => new Model.Occasion(day, draw, answers.Handbook.Edition);
    }

    private static ulong Seed(ArgumentResult given)
    {
        if (!ulong.TryParse(given.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var seed))
        {
            given.AddError(Invariant($"--seed '{given.Tokens[0].Value}' is not a whole number from 0 to {ulong.MaxValue}"));
        }

        return seed;
    }

    private LocalDate Day(ParseResult given) => Today.Find(given.GetValue(_today));
}
