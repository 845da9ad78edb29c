using System.Buffers.Binary;

namespace GuideBuilder.Reading;

/// <summary>Takes a PNG apart into its chunks and keeps those that are the picture (W3C Portable Network Graphics, third edition): words, times and camera data are left behind.</summary>
internal static class Png
{
    private const int MostSide = 4000;
    private const int Head = 8;
    private const int Around = 12;

    private static readonly ImmutableArray<string> Kept = ["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "sRGB", "pHYs"];

    private static ReadOnlySpan<byte> Signature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>Whether the bytes begin as a PNG does.</summary>
    public static bool Holds(ReadOnlySpan<byte> bytes) => bytes.StartsWith(Signature);

    /// <summary>The picture, or why it cannot be used.</summary>
    public static (ImprintLogo? Logo, string Why) Read(ReadOnlySpan<byte> bytes)
    {
        var clean = new List<byte>(bytes.Length);
        clean.AddRange(Signature);
        for (var at = Signature.Length; at + Around <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]);
            if (length > (uint)(bytes.Length - at - Around))
            {
                break;
            }

            var chunk = bytes.Slice(at, (int)length + Around);
            var kind = System.Text.Encoding.ASCII.GetString(chunk.Slice(4, 4));
            if (BinaryPrimitives.ReadUInt32BigEndian(chunk[^4..]) != Crc(chunk[4..^4]) || (at == Signature.Length && !IsHead(kind, chunk)))
            {
                return (null, "the PNG is damaged or too large");
            }

            if (Kept.Contains(kind))
            {
                clean.AddRange(chunk);
            }

            at += chunk.Length;
            if (kind == "IEND")
            {
                return (new("image/png", clean.ToArray()), "");
            }
        }

        return (null, "the PNG is cut off");
    }

    private static bool IsHead(string kind, ReadOnlySpan<byte> chunk) =>
        kind == "IHDR" && chunk.Length == Around + 13
        && BinaryPrimitives.ReadUInt32BigEndian(chunk[Head..]) is > 0 and <= MostSide
        && BinaryPrimitives.ReadUInt32BigEndian(chunk[(Head + 4)..]) is > 0 and <= MostSide;

    // The checksum of the standard's annex D.
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 1 ? (crc >> 1) ^ 0xEDB88320u : crc >> 1;
            }
        }

        return ~crc;
    }
}
