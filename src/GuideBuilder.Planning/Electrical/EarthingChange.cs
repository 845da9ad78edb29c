namespace GuideBuilder.Planning.Electrical;

/// <summary>What a change of earthing asks for, in the order in which it must be settled.</summary>
public enum EarthingTask
{
    /// <summary>Find out which earth there is, and which will be given.</summary>
    LearnSystems,

    /// <summary>Bring the main bonding to the size for combined earthing before that earth is given.</summary>
    BondingFirst,

    /// <summary>Bring the earthing conductor to the size for the new system.</summary>
    EarthingConductor,

    /// <summary>Take the bonds to the earthing terminal that will be in use.</summary>
    BondsReachTerminal,

    /// <summary>Keep the old earth until the new one has been proved.</summary>
    KeepOldUntilProved,

    /// <summary>Measure the loop afresh.</summary>
    MeasureLoop,

    /// <summary>Look at everything that combined earthing must not feed.</summary>
    LookAtExclusions,

    /// <summary>A rod, and residual current devices from the origin on.</summary>
    RodAndDevices,
}

/// <summary>Turns a change of earthing into tasks. Source: BS 7671 chapter 54; operators' practice on combined earthing.</summary>
public static class EarthingChanges
{
    /// <summary>Tasks for going from one earth to another. While either is not known, everything that could be asked for is.</summary>
    public static ImmutableArray<EarthingTask> Tasks(EarthingSystem before, EarthingSystem after) => (before, after) switch
    {
        (EarthingSystem.NotKnown, _) or (_, EarthingSystem.NotKnown) => [.. Enum.GetValues<EarthingTask>()],
        (EarthingSystem.Combined, EarthingSystem.Combined) =>
            [EarthingTask.EarthingConductor, EarthingTask.BondsReachTerminal, EarthingTask.KeepOldUntilProved, EarthingTask.MeasureLoop, EarthingTask.LookAtExclusions],
        (_, EarthingSystem.Combined) =>
            [EarthingTask.BondingFirst, EarthingTask.EarthingConductor, EarthingTask.BondsReachTerminal, EarthingTask.KeepOldUntilProved, EarthingTask.MeasureLoop, EarthingTask.LookAtExclusions],
        (_, EarthingSystem.OwnRod) =>
            [EarthingTask.EarthingConductor, EarthingTask.BondsReachTerminal, EarthingTask.KeepOldUntilProved, EarthingTask.MeasureLoop, EarthingTask.RodAndDevices],
        _ => [EarthingTask.EarthingConductor, EarthingTask.BondsReachTerminal, EarthingTask.KeepOldUntilProved, EarthingTask.MeasureLoop],
    };
}
