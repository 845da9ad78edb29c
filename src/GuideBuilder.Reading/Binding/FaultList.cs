namespace GuideBuilder.Reading;

/// <summary>The faults found so far while one text is read. A reader that adds one goes on with a stand-in, so that every mistake is found in one run.</summary>
internal sealed class FaultList
{
    private readonly List<Fault> _found = [];

    /// <summary>How many were found so far.</summary>
    public int Count => _found.Count;

    /// <summary>Every fault so far, as found.</summary>
    public IReadOnlyList<Fault> Found => _found;

    /// <summary>Whether one of them is an error.</summary>
    public bool HasErrors => _found.Exists(f => f.Severity == Severity.Error);

    /// <summary>Keeps a fault.</summary>
    public void Add(Fault fault) => _found.Add(fault);
}
