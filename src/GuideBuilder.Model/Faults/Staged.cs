namespace GuideBuilder.Model;

/// <summary>What a stage hands on: its value unless there were errors, and always its faults, sorted by place.</summary>
public sealed class Staged<T>
    where T : class
{
    private Staged(T? value, ImmutableArray<Fault> faults)
    {
        Value = value;
        Faults = faults;
    }

    /// <summary>The stage's result; null exactly when a fault is an error.</summary>
    public T? Value { get; }

    /// <summary>Every fault the stage and those before it saw, sorted by place, then code.</summary>
    public ImmutableArray<Fault> Faults { get; }

    /// <summary>Keeps the value only if no fault is an error.</summary>
    public static Staged<T> From(T? value, IEnumerable<Fault> faults)
    {
        var sorted = faults.Distinct().OrderBy(f => f.Place).ThenBy(f => f.Code, StringComparer.Ordinal).ThenBy(f => f.Wrong, StringComparer.Ordinal).ToImmutableArray();
        var failed = sorted.Any(f => f.Severity == Severity.Error);
        return new(failed ? null : value ?? throw new UnreachableException("a stage without errors must give a value"), sorted);
    }

    /// <summary>Runs the next stage on the value, or passes the faults on when there is none.</summary>
    public Staged<TNext> Then<TNext>(Func<T, Staged<TNext>> next)
        where TNext : class
    {
        if (Value is null)
        {
            return Staged<TNext>.From(null, Faults);
        }

        var result = next(Value);
        return Staged<TNext>.From(result.Value, Faults.Concat(result.Faults));
    }
}
