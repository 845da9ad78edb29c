using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Trials;

/// <summary>Which unknown questions a name, a condition or an item can depend on, facts followed down to the questions under them.</summary>
internal sealed class Reach(WayCase way, ImmutableArray<Question> unknown)
{
    private readonly FrozenDictionary<string, int> _places = unknown.Select((q, i) => (q.Name, i)).ToFrozenDictionary(x => x.Name, x => x.i, StringComparer.Ordinal);
    private readonly Dictionary<string, FrozenSet<int>> _under = new(StringComparer.Ordinal);

    /// <summary>What may be otherwise when the answer to each question is.</summary>
    public ImmutableArray<Affected> Of(ImmutableArray<Planned<Step>> steps, ImmutableArray<Planned<Cost>> lines)
    {
        var events = steps.SelectMany(s => s.Item.MayHappen.Select(e => Under([.. Open(s), .. e.AppliesIf.Names]))).ToArray();
        var bySteps = steps.Select(s => Under([.. Open(s), .. s.Item.Work?.Names ?? []])).ToArray();
        var byLines = lines.Select(l => Under([.. Open(l), .. l.Item.Quantity is { } name ? new[] { name } : []])).ToArray();
        return [.. unknown.Select((_, q) => From(q, bySteps, events, byLines))];
    }

    private Affected From(int question, FrozenSet<int>[] steps, FrozenSet<int>[] events, FrozenSet<int>[] lines)
    {
        var changed = new HashSet<int> { question };
        for (var later = question + 1; later < unknown.Length; later++)
        {
            if (Under(unknown[later].AskIf.Names.Concat(unknown[later].WeightsIf.SelectMany(w => w.When.Names))).Overlaps(changed))
            {
                changed.Add(later);
            }
        }

        ImmutableArray<int> Places(FrozenSet<int>[] items) => [.. Enumerable.Range(0, items.Length).Where(i => items[i].Overlaps(changed))];
        return new([.. changed.Where(q => q != question).Order()], Places(steps), Places(events), Places(lines));
    }

    private static IEnumerable<string> Open<T>(Planned<T> item)
        where T : Rule => item.State == ItemState.Settled ? [] : item.Item.Head.AppliesIf.Names;

    private FrozenSet<int> Under(IEnumerable<string> names) => names.SelectMany(Under).ToFrozenSet();

    private FrozenSet<int> Under(string name)
    {
        if (!_under.TryGetValue(name, out var found))
        {
            _under[name] = [];
            _under[name] = found = _places.TryGetValue(name, out var place) ? [place]
                : Derivation.FindIn(way.Facts, name).Standing == Standing.Unknown ? Under(Asked(name))
                : [];
        }

        return found;
    }

    private IEnumerable<string> Asked(string name) =>
        Calculators.ByName.TryGetValue(name, out var calculator) ? calculator.Needs.Concat(calculator.MayUse)
        : way.Rules.TryGetValue(name, out var rule) ? rule.Rows.SelectMany(r => r.When.Names).Concat(rule.Head.AppliesIf.Names)
        : [];
}
