namespace GuideBuilder.Planning.Worlds;

/// <summary>A condition made ready to be asked of many worlds: what comes out the same in all of them is already decided.</summary>
internal abstract class WorldTest
{
    private WorldTest()
    {
    }

    /// <summary>Holds in every world.</summary>
    public static WorldTest Always { get; } = new Constant(true);

    /// <summary>Fails in every world.</summary>
    public static WorldTest Never { get; } = new Constant(false);

    /// <summary>Whether it holds in a world.</summary>
    public abstract bool Holds(DefiniteWorld world);

    /// <summary>Asks something of what a world has in one place.</summary>
    public static WorldTest Ask(int slot, Comparison comparison) => new Comparing(slot, comparison);

    /// <summary>Holds where every part does.</summary>
    public static WorldTest All(IEnumerable<WorldTest> parts)
    {
        var open = parts.Where(p => p != Always).ToArray();
        return open.Length == 0 ? Always : open.Contains(Never) ? Never : open.Length == 1 ? open[0] : new Every(open);
    }

    /// <summary>Holds where a part does.</summary>
    public static WorldTest Any(IEnumerable<WorldTest> parts)
    {
        var open = parts.Where(p => p != Never).ToArray();
        return open.Length == 0 ? Never : open.Contains(Always) ? Always : open.Length == 1 ? open[0] : new Some(open);
    }

    /// <summary>Holds where the other fails.</summary>
    public static WorldTest Not(WorldTest test) => test == Always ? Never : test == Never ? Always : new Other(test);

    private sealed class Constant(bool holds) : WorldTest
    {
        public override bool Holds(DefiniteWorld world) => holds;
    }

    // Worlds share their values, so that few are ever compared; for one thread, as the world is.
    private sealed class Comparing(int slot, Comparison comparison) : WorldTest
    {
        private const int MostKept = 16;
        private readonly List<(Value Value, bool Holds)> _known = [];

        public override bool Holds(DefiniteWorld world)
        {
            if (world.ValueAt(slot) is not { } value)
            {
                return false;
            }

            foreach (var known in _known)
            {
                if (ReferenceEquals(known.Value, value))
                {
                    return known.Holds;
                }
            }

            var holds = comparison.Of(value) == Truth.Holds;
            if (_known.Count < MostKept)
            {
                _known.Add((value, holds));
            }

            return holds;
        }
    }

    private sealed class Every(WorldTest[] parts) : WorldTest
    {
        public override bool Holds(DefiniteWorld world)
        {
            foreach (var part in parts)
            {
                if (!part.Holds(world))
                {
                    return false;
                }
            }

            return true;
        }
    }

    private sealed class Some(WorldTest[] parts) : WorldTest
    {
        public override bool Holds(DefiniteWorld world)
        {
            foreach (var part in parts)
            {
                if (part.Holds(world))
                {
                    return true;
                }
            }

            return false;
        }
    }

    private sealed class Other(WorldTest test) : WorldTest
    {
        public override bool Holds(DefiniteWorld world) => !test.Holds(world);
    }
}
