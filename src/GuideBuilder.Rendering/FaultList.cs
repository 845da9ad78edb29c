namespace GuideBuilder.Rendering;

/// <summary>Collects the faults of one rendering, so that all are reported and not the first one only.</summary>
internal sealed class FaultList
{
    private readonly List<Fault> _faults = [];

    /// <summary>What was collected, in the order in which it was met.</summary>
    internal IEnumerable<Fault> All => _faults;

    /// <summary>Keeps one more.</summary>
    internal void Add(Fault fault) => _faults.Add(fault);
}
