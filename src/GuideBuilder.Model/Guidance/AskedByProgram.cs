namespace GuideBuilder.Model;

/// <summary>The questions that the program itself reads, by their full names: whether an editor's rule names them or not, they are used. A test holds the list against the code.</summary>
public static class AskedByProgram
{
    /// <summary>The names, in ordinal order.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        "board.kind", "board.moves", "dates.avoid-fridays", "dates.away", "dates.needed-by", "dates.start-from",
        "ground.cable-exposed", "ground.depth-given", "ground.footing-distance", "ground.joint-place", "ground.length", "ground.soil",
        "ground.surface", "ground.trees", "ground.wet", "ground.who-digs", "ground.who-uncovers", "home.address",
        "home.block-stair", "home.heritage", "home.kind", "home.nation", "home.region", "home.supply-number",
        "intake.earth-reading", "intake.earthing", "intake.fuse-rating", "intake.isolator", "intake.looped", "intake.phases",
        "intake.signs", "intake.where", "loads.back-feed-car", "loads.battery", "loads.caravan-or-boat", "loads.charger",
        "loads.cooker", "loads.generator", "loads.heat-pump", "loads.hot-tub", "loads.outbuilding", "loads.shower",
        "loads.solar", "loads.storage-heating", "loads.workshop", "operator.cabinet-height", "operator.duct-bore", "operator.earth-offered",
        "operator.fuse-answer", "operator.hole-depth", "operator.hole-size", "operator.hole-width", "operator.tails-limit", "operator.who-fills",
        "people.name", "place.box-metal", "place.clear-space", "place.flood", "place.gas-distance", "place.height",
        "place.hub-distance", "place.kind", "place.near", "place.only-stair", "place.party-wall", "place.room-use",
        "place.tails-length", "place.wall", "place.wall-stays", "wish.detail", "wish.moves", "wish.reason",
        "wish.way", "works.enclosing", "works.room-needed-by",
    ];
}
