namespace GuideBuilder.Planning.Chance;

/// <summary>The SplitMix64 generator, which only seeds the other one. Source: Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014.</summary>
public struct SplitMix64(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        _state += 0x9E3779B97F4A7C15;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
