using System.Collections.Concurrent;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Data;

namespace GuideBuilder.Cli.Runs;

/// <summary>What a run wants of its handbooks, as the command line says it: it overrules what an answers file says of itself.</summary>
internal sealed record Wanted(LocalDate Today, ulong Seed, EditionKind? Edition, string? Language, string? Imprint, Shelf Shelf)
{
    private readonly ConcurrentDictionary<string, ImprintFiles> _imprints = new(StringComparer.Ordinal);

    /// <summary>Whether faults alone are looked for, so that no trial need be run.</summary>
    internal bool FaultsOnly { get; init; }

    /// <summary>What an answers file asks for, with what overrules it: its id, edition and language, and the imprint of a customer's edition.</summary>
    internal Asked For(SourceText answers)
    {
        var head = AnswersHead.Of(answers);
        var edition = EditionOf(head);
        var named = edition != EditionKind.Customer ? null : Imprint ?? (head.Imprint is { } beside ? Path.Combine(Path.GetDirectoryName(answers.Path) ?? "", beside) : null);
        return new(IdOf(head, edition), edition, Language ?? head.Language ?? LocalText.Original, named is null ? null : _imprints.GetOrAdd(named, ImprintFiles.Load));
    }

    /// <summary>The id of the handbook that an answers file makes, without its imprint.</summary>
    internal string IdOf(SourceText answers) => IdOf(AnswersHead.Of(answers), EditionOf(AnswersHead.Of(answers)));

    private EditionKind EditionOf(AnswersHead head) => Edition ?? (Imprint is null ? head.Edition : EditionKind.Customer);

    private static string IdOf(AnswersHead head, EditionKind edition) => edition == EditionKind.Public ? head.PublicId ?? head.Id : head.Id;

    /// <summary>The guidance for an answers file. A language that the command line names and the guidance lacks is wrong use.</summary>
    internal Staged<Guidance> Guidance(Asked asked)
    {
        var plain = Shelf.Plain;
        if (Language is { } named && plain.Value is { } read && !read.Head.Languages.Contains(named))
        {
            throw new ShellException(ShellFaults.NoSuchLanguage(named, read.Head.Languages));
        }

        return Shelf.Take(plain.Value?.Head.Languages.Contains(asked.Language) == true ? asked.Language : LocalText.Original, asked.Imprint);
    }

    /// <summary>The plan that follows from an answers file.</summary>
    internal Staged<Plan> Plan(SourceText answers) => Plan(answers, For(answers));

    /// <summary>The handbook that follows from an answers file.</summary>
    internal Staged<BoundBook> Bind(SourceText answers, EarlierPlan? earlier = null) => Bind(answers, For(answers), earlier);

    /// <summary>The same, where what it asks for is known already.</summary>
    internal Staged<BoundBook> Bind(SourceText answers, Asked asked, EarlierPlan? earlier = null) =>
        Guidance(asked).Then(guidance => Guide.Bind(answers, guidance, new Occasion(Today, Seed, asked.Edition) { FaultsOnly = FaultsOnly }, earlier));

    private Staged<Plan> Plan(SourceText answers, Asked asked) => Guidance(asked).Then(guidance => Guide.Plan(answers, guidance, new Occasion(Today, Seed, asked.Edition) { FaultsOnly = FaultsOnly }));
}

/// <summary>What one handbook is to be.</summary>
internal sealed record Asked(string Id, EditionKind Edition, string Language, ImprintFiles? Imprint);
