using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Ground;

/// <summary>Draws up the ground sheet from answers, the assumed world and the tables.</summary>
public static class GroundSheets
{
    /// <summary>The sheet for a home, or null where no ground is opened. Figures are those of the assumed world; each line names the questions that it took an answer for. Who digs, and how the cable is shown, follow from what is known alone.</summary>
    public static GroundSheet? Of(Lookup known, Lookup assumed, Tables tables)
    {
        var home = new GroundHome(GroundFigures.From(tables), new Inputs(assumed, tables));
        if (known(GroundHome.HasTrench).Standing == Standing.NotAsked || home.No(GroundHome.HasTrench))
        {
            return null;
        }

        var desk = new GroundDesk(home, known);
        return new(
            [.. home.No(GroundHome.HasHole) ? [] : HoleLines.Of(desk), .. WorkLines.Trenches(desk), .. SpoilLines.Of(desk), .. WorkLines.Hours(desk), .. WorkLines.Filling(desk), .. WorkLines.WhoDigs(desk, known), .. LetterLines.Of(desk, known)],
            CableOf(known),
            [.. Guarding.Stops(home.Figures)]);
    }

    /// <summary>As exposed only when it is known that the operator has laid the cable bare; else a band.</summary>
    public static CablePosition CableOf(Lookup known) =>
        known("ground.cable-exposed").Value is Value.Option { Id: "yes" } ? CablePosition.AsExposed : CablePosition.SomewhereInHere;
}
