namespace GuideBuilder.Planning.Ground;

/// <summary>A soil as its row soil-… has it.</summary>
public sealed record Soil(TableRow Row)
{
    /// <summary>Mass of one cubic metre in the ground, in kg.</summary>
    internal decimal? Mass => Row.In("cubic-metre", "kg");

    /// <summary>How much it grows when dug, as a part of one.</summary>
    internal decimal? Bulking => Row.Share("bulking");

    /// <summary>Volume packed back by hand over volume in the ground.</summary>
    internal decimal? Packing => Row.In("packing", "");

    /// <summary>How far a cut side goes back for each metre of depth.</summary>
    internal decimal? Slope => Row.In("slope", "");

    /// <summary>Whether a shallow cut side may stand while it is dry. Never a promise.</summary>
    internal bool Stands => Row.Words("stands") == "yes";

    /// <summary>The soil of that name (clay, made-ground …), or null.</summary>
    public static Soil? Find(GroundFigures figures, string name) => figures.Row("soil-" + name) is { } row ? new(row) : null;

    /// <summary>The soil whose row stands for the answers, or null while none is known.</summary>
    public static Soil? Answered(GroundFigures figures, Lookup lookup) =>
        figures.Group("soil-").FirstOrDefault(r => r.When is { } when && Judge.Of(when, lookup).Truth == Truth.Holds) is { } row ? new(row) : null;
}
