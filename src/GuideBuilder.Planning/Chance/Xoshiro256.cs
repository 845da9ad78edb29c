using System.Numerics;

namespace GuideBuilder.Planning.Chance;

/// <summary>The xoshiro256** generator: the same numbers from the same seed on every machine. Source: Blackman and Vigna, Scrambled linear pseudorandom number generators, ACM TOMS 47(4), 2021.</summary>
public struct Xoshiro256
{
    private ulong _a;
    private ulong _b;
    private ulong _c;
    private ulong _d;

    /// <summary>A generator whose state SplitMix64 fills from a seed.</summary>
    public Xoshiro256(ulong seed)
    {
        var fill = new SplitMix64(seed);
        (_a, _b, _c, _d) = (fill.Next(), fill.Next(), fill.Next(), fill.Next());
    }

    internal Xoshiro256(ulong a, ulong b, ulong c, ulong d) => (_a, _b, _c, _d) = (a, b, c, d);

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        var result = BitOperations.RotateLeft(_b * 5, 7) * 9;
        var t = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= t;
        _d = BitOperations.RotateLeft(_d, 45);
        return result;
    }

    /// <summary>The upper 32 bits of the next 64: what the sampling tables take.</summary>
    public uint NextDraw() => (uint)(Next() >> 32);

    /// <summary>A number from 0 up to but not 1, in steps of 2⁻⁵³.</summary>
    public double NextDouble() => (Next() >> 11) * (1.0 / (1UL << 53));
}
