using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Drawings;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Sheets;

/// <summary>The electrical sheet: the questions to settle, the arrangement now and afterwards, and the indicative figures with how each was worked out.</summary>
internal static class ElectricalBlock
{
    private static readonly ImmutableArray<(string Part, ImmutableArray<string> Lines)> First =
    [
        ("supply", ["supply-", "generation"]),
        ("demand", ["demand", "counts-", "demand-", "notice"]),
        ("tails", ["switch-fuse", "whole-run", "tails-", "selective-fuse", "selective-demand"]),
        ("sub-main-same", ["same-"]),
    ];

    private static readonly ImmutableArray<(string Part, ImmutableArray<string> Lines)> Then =
    [
        ("sub-main-selective", ["selective-size", "selective-carries", "selective-drop", "selective-left", "selective-loop", "selective-protective", "selective-longest-drop", "selective-longest"]),
        ("earthing", ["earthing-", "main-bonding", "armour-as-bond", "declared-"]),
        ("rod", ["rod-", "residual-"]),
    ];

    /// <summary>The whole sheet.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var (words, sheet) = (new SheetWords(bindery, "electrical"), bindery.Plan.Electrical);
        return
        [
            .. Questions(words, sheet),
            new Block.Heading(1, null, Phrase.Of(words.Say("arrangement"))),
            .. Arrangement.Of(bindery),
            .. sheet.Rows.IsEmpty ? [] : ImmutableArray.Create<Block>(new Block.Heading(1, null, Phrase.Of(words.Say("figures"))), Make.Say(bindery, "electrical-figures-words")),
            .. CaseTables.Of(words, sheet),
            .. SheetLines.InParts(words, sheet.Rows, First, sheet.Cases),
            .. SheetLines.Brief(words, "sub-main-others", [.. sheet.Rows.Where(r => !CaseTables.Instead(sheet.Cases)(r))], "other-"),
            .. SheetLines.InParts(words, sheet.Rows, Then, sheet.Cases),
        ];
    }

    private static ImmutableArray<Block> Questions(SheetWords words, ElectricalSheet sheet) => sheet.Questions.IsEmpty ? [] :
    [
        new Block.Heading(1, null, Phrase.Of(words.Say("questions"))),
        new Block.Ticks([.. sheet.Questions.Select(q => new Tick($"ask-{q.Id}", Phrase.Of(words.Say($"ask-{q.Id}"))))]),
    ];
}
