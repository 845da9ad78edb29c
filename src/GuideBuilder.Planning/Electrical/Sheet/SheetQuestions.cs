using static GuideBuilder.Model.LimitVerdict;

namespace GuideBuilder.Planning.Electrical;

/// <summary>The questions that the lines of a sheet raise, each once. A figure that is over, close or not known becomes a question, never an instruction.</summary>
internal static class SheetQuestions
{
    private static readonly ImmutableArray<(string Line, LimitVerdict[] When, string Ask)> OfLines =
    [
        ("demand", [Over, TooCloseToCall, NotKnown], "real-peak"),
        ("switch-fuse", [Over, TooCloseToCall, NotKnown], "tails-in-writing"),
        ("switch-fuse", [Over, TooCloseToCall, NotKnown], "switch-fuse-rating"),
        ("same-carries", [Within, TooCloseToCall, Over], "terminals"),
        ("same-loop", [Over, TooCloseToCall, NotKnown], "loop-measured"),
        ("same-loop", [Over, TooCloseToCall], "smaller-fuse"),
        ("same-protective", [Over, TooCloseToCall, NotKnown], "clearing-time"),
        ("armour-as-bond", [Over, TooCloseToCall, NotKnown], "copper-to-terminal"),
        ("rod-reading", [Over, TooCloseToCall, NotKnown], "rod-reading"),
    ];

    private static readonly ImmutableArray<(string Thing, string? Question)> Things =
    [
        ("caravan-or-boat", "loads.caravan-or-boat"),
        ("charger", "loads.charger"),
        ("hot-tub", "loads.hot-tub"),
        ("outbuilding", "loads.outbuilding"),
        ("metal-cabinet", "place.box-metal"),
        ("outdoor-metal", null),
    ];

    public static ImmutableArray<SheetQuestion> Of(SheetDesk desk, ImmutableArray<SheetRow> lines)
    {
        IEnumerable<SheetQuestion> always =
            [new("fuse-link", "demand"), new("other-loads", "demand"), new("board-rating", "demand"), new("bonding-there", "main-bonding"), new("terminal-place", "earthing-conductor")];
        var raised = from rule in OfLines from line in lines where line.Id == rule.Line && rule.When.Contains(line.Verdict) select new SheetQuestion(rule.Ask, line.Id);
        var notice = lines.Where(l => l.Id == "notice" && (l.Result is not Value.Option { Id: "tell-afterwards" } || l.Verdict != Within)).Select(l => new SheetQuestion("operator-first", l.Id));
        var tasks = EarthingChanges.Tasks(desk.Supply.Before, desk.Supply.After).Select(t => new SheetQuestion(Id(t), "earthing-conductor"));
        return [.. always.Concat(raised).Concat(notice).Concat(tasks).Concat(NotUnderCombined(desk)).DistinctBy(q => q.Id, StringComparer.Ordinal)];
    }

    private static IEnumerable<SheetQuestion> NotUnderCombined(SheetDesk desk) =>
        desk.Supply.After is EarthingSystem.Combined or EarthingSystem.NotKnown
            ? Things.Where(t => MayBeThere(desk, t.Question) && CombinedEarthing.For(desk.Figures, t.Thing) is not null).Select(t => new SheetQuestion("combined-" + t.Thing, "main-bonding"))
            : [];

    private static bool MayBeThere(SheetDesk desk, string? question) =>
        question is null || (desk.Inputs.Lookup(question).Standing != Standing.NotAsked && desk.Inputs.Option(question) is not ("no" or "none"));

    private static string Id(EarthingTask task) => task switch
    {
        EarthingTask.LearnSystems => "earth-which",
        EarthingTask.BondingFirst => "earth-bonding-first",
        EarthingTask.EarthingConductor => "earth-conductor",
        EarthingTask.BondsReachTerminal => "earth-bonds-reach",
        EarthingTask.KeepOldUntilProved => "earth-keep-old",
        EarthingTask.MeasureLoop => "earth-measure",
        EarthingTask.LookAtExclusions => "earth-exclusions",
        EarthingTask.RodAndDevices => "earth-rod",
        _ => throw new UnreachableException(),
    };
}
