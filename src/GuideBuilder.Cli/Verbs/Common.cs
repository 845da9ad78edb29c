using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using GuideBuilder.Cli.Disk;
using GuideBuilder.Cli.Runs;

namespace GuideBuilder.Cli.Verbs;

/// <summary>The options that more than one verb takes, and what they come to.</summary>
internal sealed class Common
{
    private static readonly (string Word, EditionKind Kind)[] Editions =
        [("householder", EditionKind.Householder), ("neighbour", EditionKind.Neighbour), ("public", EditionKind.Public), ("customer", EditionKind.Customer)];

    private readonly Option<string?> _guidance = new("--guidance") { HelpName = "DIR", Description = "Use the guidance in DIR instead of the one that travels with the program." };

    private readonly Option<string?> _today = new("--today") { HelpName = "DAY", Description = "Take DAY (year-month-day) for today, instead of SOURCE_DATE_EPOCH or the clock." };

    private readonly Option<ulong> _seed = new("--seed") { HelpName = "N", Description = "Draw chances from N.", DefaultValueFactory = _ => Model.Occasion.DefaultSeed, CustomParser = Seed };

    private readonly Option<string?> _edition = new("--edition") { HelpName = "EDITION", Description = "Bind for householder, neighbour, public or customer, whatever the answers file says." };

    private readonly Option<string?> _language = new("--language") { HelpName = "TAG", Description = "Bind in this language, such as cy, whatever the answers file says." };

    private readonly Option<string?> _imprint = new("--imprint") { HelpName = "FILE", Description = "Bind the customer's edition under this imprint." };

    /// <summary>Adds the options to a verb.</summary>
    internal Command To(Command verb)
    {
        ToWordsOnly(verb).Options.Add(_seed);
        _edition.AcceptOnlyFromAmong([.. Editions.Select(e => e.Word)]);
        verb.Options.Add(_edition);
        verb.Options.Add(_language);
        verb.Options.Add(_imprint);
        return verb;
    }

    /// <summary>Adds to a verb the options of those that read the guidance and plan nothing.</summary>
    internal Command ToWordsOnly(Command verb)
    {
        verb.Options.Add(_guidance);
        verb.Options.Add(_today);
        return verb;
    }

    /// <summary>What the run wants of its handbooks.</summary>
    internal Wanted Wanted(ParseResult given)
    {
        var today = Day(given);
        return new(today, given.GetValue(_seed), Edition(given), Found(given, _language), Found(given, _imprint), Shelf.Of(given.GetValue(_guidance), today));
    }

    /// <summary>The guidance, read and checked.</summary>
    internal Staged<Guidance> Guidance(ParseResult given) => Guide.Guidance(given.GetValue(_guidance), Day(given));

    private static ulong Seed(ArgumentResult given)
    {
        if (!ulong.TryParse(given.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var seed))
        {
            given.AddError(Invariant($"--seed '{given.Tokens[0].Value}' is not a whole number from 0 to {ulong.MaxValue}"));
        }

        return seed;
    }

    /// <summary>Today, the seed, and the edition that the answers file asks for.</summary>
    internal Func<AnswerSet, Model.Occasion> Occasion(ParseResult given)
    {
        var (day, draw) = (Day(given), given.GetValue(_seed));
        return answers => new Model.Occasion(day, draw, answers.Handbook.Edition);
    }

    private LocalDate Day(ParseResult given) => Today.Find(given.GetValue(_today));

    private EditionKind? Edition(ParseResult given) => Found(given, _edition) is { } word ? Editions.First(e => e.Word == word).Kind : null;

    private static string? Found(ParseResult given, Option<string?> option) => given.GetResult(option) is null ? null : given.GetValue(option);
}
