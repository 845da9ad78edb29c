using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>One state of a home's supply in words: as it is, or as the plan would have it.</summary>
internal sealed record Supply(string Title, string Place, string Fuse, string Switch, string Tails, string Board, string Earth)
{
    /// <summary>The main fuse in few words.</summary>
    internal required string FuseShort { get; init; }

    /// <summary>The switch after the meter in few words.</summary>
    internal required string SwitchShort { get; init; }

    /// <summary>The length of the tails in few words.</summary>
    internal required string TailsShort { get; init; }

    /// <summary>Drawn firm where it is known to be there, broken where it may be.</summary>
    internal required string SwitchLook { get; init; }

    /// <summary>The first of cutout and meter (0, 1) that stands in the place named.</summary>
    internal int MovesFrom { get; init; }

    /// <summary>Whether the earth is known to come from the network.</summary>
    internal bool FromNetwork { get; init; }

    /// <summary>Whether it is known to come from a rod.</summary>
    internal bool FromRod { get; init; }

    /// <summary>The supply as it is.</summary>
    internal static Supply Now(Bindery bindery)
    {
        var isolator = Option(bindery, "intake.isolator");
        return new(
            bindery.Say("drawing-now"), Say(bindery, "intake.where"), Say(bindery, "intake.fuse-rating"), Say(bindery, "intake.isolator"), bindery.Say("arrangement-tails-now"), Say(bindery, "board.kind"), Say(bindery, "intake.earthing"))
        {
            FuseShort = Known(bindery, "intake.fuse-rating") ? Short(bindery, "intake.fuse-rating") : bindery.Say("arrangement-fuse-short"),
            SwitchShort = bindery.Say(isolator switch { null => "arrangement-switch-unknown", "none" => "arrangement-switch-none", _ => "arrangement-isolator" }),
            SwitchLook = isolator is null or "none" ? "dash" : "outline",
            TailsShort = bindery.Say("part-tails"),
            FromNetwork = Option(bindery, "intake.earthing") is "combined" or "cable-sheath",
            FromRod = Option(bindery, "intake.earthing") == "own-rod",
        };
    }

    /// <summary>The supply as the plan would have it; what only the operator can say is quoted, or to be asked.</summary>
    internal static Supply After(Bindery bindery)
    {
        var line = bindery.Plan.Electrical.Rows.FirstOrDefault(r => r.Id == "switch-fuse");
        var need = (line?.Result as Value.Option)?.Id;
        var earth = Option(bindery, "operator.earth-offered");
        var label = need is null ? "arrangement-fused-ask" : $"arrangement-fused-{need}";
        return new(
            bindery.Say("drawing-after"), Moving(bindery) == "none" ? Say(bindery, "intake.where") : Say(bindery, "place.kind"), Ask(bindery, "operator.fuse-answer"), bindery.Say(label), need == "needed" ? bindery.Say("arrangement-run-sub-main", ("0", Say(bindery, "place.tails-length"))) : Say(bindery, "place.tails-length"), bindery.Say("arrangement-board-moves", ("0", Say(bindery, "board.moves"))),
            earth is null ? bindery.Say("arrangement-earth-ask") : $"{bindery.Say("operator-says")}: {Say(bindery, "operator.earth-offered")}")
        {
            FuseShort = bindery.Say("arrangement-fuse-short"),
            MovesFrom = Moving(bindery) == "meter" ? 1 : 0,
            SwitchShort = bindery.Say($"{label}-short"),
            SwitchLook = need == "needed" ? "thick" : "dash",
            TailsShort = need == "needed" ? bindery.Say("arrangement-sub-main", ("0", Say(bindery, "place.tails-length"))) : Short(bindery, "place.tails-length"),
            FromNetwork = earth is "combined" or "cable-sheath",
            FromRod = earth == "own-rod",
        };
    }

    private static string Moving(Bindery bindery) => bindery.Plan.Answers.ByName.GetValueOrDefault("wish.moves") switch
    {
        { Standing: Standing.Known, Value: Value.Several moves } => moves.Ids.Contains("cutout") ? "cutout" : moves.Ids.Contains("meter") ? "meter" : "none",
        _ => "cutout",
    };

    private static string Ask(Bindery bindery, string name) => Option(bindery, name) is null ? bindery.Say("arrangement-fuse-ask") : $"{bindery.Say("operator-says")}: {Say(bindery, name)}";

    private static string Say(Bindery bindery, string name) => bindery.Plan.Answers.ByName.GetValueOrDefault(name) is { Standing: Standing.Known } given ? bindery.Answers.Of(given) ?? bindery.Say("answer-kept-back") : bindery.Say("answer-unknown");

    private static bool Known(Bindery bindery, string name) => bindery.Plan.Answers.ByName.GetValueOrDefault(name) is { Standing: Standing.Known };

    private static string Short(Bindery bindery, string name) => bindery.Say("arrangement-" + name.Replace('.', '-'), ("0", Say(bindery, name)));

    private static string? Option(Bindery bindery, string name) => bindery.Plan.Answers.ByName.GetValueOrDefault(name) is { Standing: Standing.Known, Value: Value.Option option } ? option.Id : null;
}
