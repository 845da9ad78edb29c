using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace GuideBuilder.Planning.Chance;

/// <summary>
/// Draws by name: one stream for each item and purpose, so that an item more leaves all other draws as they were, and two plans that differ in one answer differ by that answer alone.
/// A draw is a whole number below 2³², one for each trial.
/// </summary>
public static class Draws
{
    private const double Whole = 1UL << 32;

    /// <summary>The seed of the stream of an item and purpose: the first eight bytes of a SHA-256, the first byte the highest.</summary>
    public static ulong SeedOf(ulong seed, string item, string purpose) =>
        BinaryPrimitives.ReadUInt64BigEndian(SHA256.HashData(Encoding.UTF8.GetBytes(Invariant($"v1|{seed}|{item}|{purpose}"))));

    /// <summary>The first draws of the stream of an item and purpose; a longer run begins with a shorter one.</summary>
    public static uint[] Of(ulong seed, string item, string purpose, int trials)
    {
        var stream = new Xoshiro256(SeedOf(seed, item, purpose));
        var draws = new uint[trials];
        for (var i = 0; i < trials; i++)
        {
            draws[i] = stream.NextDraw();
        }

        return draws;
    }

    /// <summary>
    /// An item's draws where it shares its group's with probability √ρ in each trial, and else keeps its own.
    /// Margins stay exact, and two items of a group have rank correlation ρ (0 to 1).
    /// </summary>
    public static uint[] Shared(ReadOnlySpan<uint> own, ReadOnlySpan<uint> choice, ReadOnlySpan<uint> group, double correlation)
    {
        var share = Math.Sqrt(correlation);
        var draws = own.ToArray();
        for (var i = 0; i < draws.Length; i++)
        {
            draws[i] = Happens(choice[i], share) ? group[i] : draws[i];
        }

        return draws;
    }

    /// <summary>Whether an event of that probability (0 to 1) happens at that draw.</summary>
    public static bool Happens(uint draw, double probability) => draw < probability * Whole;
}
