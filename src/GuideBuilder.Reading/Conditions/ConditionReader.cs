namespace GuideBuilder.Reading;

/// <summary>Reads conditions: all-of, any-of and none-of over lists, or one name with one comparison. Every name, option and unit is checked.</summary>
internal sealed class ConditionReader(Registry registry, FaultList faults)
{
    // What stands in for a condition with a fault: it fails, so that it overlaps no other.
    private static readonly Condition StandIn = new Condition.AnyOf([], Place.None);

    /// <summary>The condition in a node, where it may use the names of a scope.</summary>
    public Condition Read(Node node, ConditionScope scope)
    {
        if (node is not Mapping { Entries: [var entry] })
        {
            faults.Add(ReadingFaults.NotACondition(node.Place));
            return StandIn;
        }

        return entry.Key.Text switch
        {
            "all-of" => new Condition.AllOf(Parts(entry.Value, scope), entry.Key.Place),
            "any-of" => new Condition.AnyOf(Parts(entry.Value, scope), entry.Key.Place),
            "none-of" => new Condition.NoneOf(Parts(entry.Value, scope), entry.Key.Place),
            _ => Asks(entry, scope),
        };
    }

    private ImmutableArray<Condition> Parts(Node node, ConditionScope scope)
    {
        if (node is Sequence list)
        {
            return [.. list.Items.Select(item => Read(item, scope))];
        }

        faults.Add(ReadingFaults.NotAList(node.Place));
        return [];
    }

    private Condition Asks(Entry entry, ConditionScope scope)
    {
        var name = entry.Key.Text;
        if (!registry.Names.TryGetValue(name, out var named))
        {
            if (registry.IsComplete)
            {
                faults.Add(ReadingFaults.UnknownName(entry.Key.Place, name, registry.Names.Values.Where(scope.Allows).Select(n => n.Name)));
            }

            return StandIn;
        }

        if (!scope.Allows(named))
        {
            faults.Add(ReadingFaults.NameNotAllowed(entry.Key.Place, name, scope.Says));
            return StandIn;
        }

        var comparison = new ComparisonReader(named, faults).Read(entry.Value);
        return comparison is null ? StandIn : new Condition.Asks(name, comparison, entry.Key.Place);
    }
}
