using System.CommandLine;
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

    private readonly Option<ulong> _seed = new("--seed") { HelpName = "N", Description = "Draw chances from N.", DefaultValueFactory = _ => Model.Occasion.DefaultSeed };

    private readonly Option<string?> _edition = new("--edition") { HelpName = "EDITION", Description = "Bind for householder, neighbour, public or customer, whatever the answers file says." };

    private readonly Option<string?> _language = new("--language") { HelpName = "TAG", Description = "Bind in this language, such as cy, whatever the answers file says." };

    private readonly Option<string?> _imprint = new("--imprint") { HelpName = "FILE", Description = "Bind the customer's edition under this imprint." };

    /// <summary>Adds the options to a verb.</summary>
    internal Command To(Command verb, bool binds = false)
    {
        _edition.AcceptOnlyFromAmong([.. Editions.Select(e => e.Word)]);
        foreach (var option in new Option[] { _guidance, _today, _seed }.Concat(binds ? [_edition, _language, _imprint] : []))
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    /// <summary>The guidance folder as given, or null for the built-in one.</summary>
    internal string? GuidanceFolder(ParseResult given) => given.GetValue(_guidance);

    /// <summary>What the run wants of its handbooks.</summary>
    internal Wanted Wanted(ParseResult given)
    {
        var today = Day(given);
        return new(today, given.GetValue(_seed), Edition(given), Found(given, _language), Found(given, _imprint), Shelf.Of(given.GetValue(_guidance), today));
    }

    /// <summary>The guidance, read and checked.</summary>
    internal Staged<Guidance> Guidance(ParseResult given) => Shelf.Of(given.GetValue(_guidance), Day(given)).Plain;

    /// <summary>Today, the seed, and the edition that the answers file asks for.</summary>
    internal Func<AnswerSet, Model.Occasion> Occasion(ParseResult given)
    {
        var (day, draw) = (Day(given), given.GetValue(_seed));
        return answers => new Model.Occasion(day, draw, answers.Handbook.Edition);
    }

    /// <summary>The day of the run.</summary>
    internal LocalDate Day(ParseResult given) => Today.Find(given.GetValue(_today));

    private EditionKind? Edition(ParseResult given) => Found(given, _edition) is { } word ? Editions.First(e => e.Word == word).Kind : null;

    private static string? Found(ParseResult given, Option<string?> option) => given.GetResult(option) is null ? null : given.GetValue(option);
}
