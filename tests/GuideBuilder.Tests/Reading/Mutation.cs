using System.Text;
using CsCheck;

namespace GuideBuilder.Tests.Reading;

/// <summary>Makes files wrong at random: bytes dropped, doubled, moved or changed, and pieces put in that mean something to YAML, to this reader or to a browser.</summary>
internal static class Mutation
{
    private const int MostEdits = 4;

    private static readonly string[] Pieces =
    [
        "", "\n", "\r\n", "\r", "\t", " ", "  ", ":", ": ", "- ", "? ", "#", " # ", "[", "]", "{", "}", ",", "|", ">", "|+2\n", "'", "\"", "\\", "\"\\x", "\"\\ud800\"", "&a ", "*a", "!", "!!int ", "<<: ",
        "---\n", "...\n", "%YAML 1.1\n", "~", "null", "unknown", "none", "yes", "no", "true", "010", "1_000", "1:30", "0x1", ".nan", "-.inf", "1e999", "£", "€", "£1,180 inc VAT", "5 ft 6 in", "4 kg", "-1",
        "99999999999999999999999999999", "0.00000000000000000000000001", "2027-02-30", "9999-12-31", "2027-02-01 to 2027-01-01", "\0", "\u0085", "\u2028", "\u202E", "\uFEFF", "😀", "\u0301", "<script>", "{{ x }}",
        "all-of", "any-of", "is", "between", "home.kind", "far", "way", "plan.months", "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[", "{a: {a: {a: ", "handbook", "home", "wish", "log", "papers", "id", "source",
    ];

    private static readonly byte[][] Bytes = [.. Pieces.Select(Encoding.UTF8.GetBytes), [0xFF], [0xC3], [0xED, 0xA0, 0x80], [0xFE, 0xFF]];

    private static readonly Gen<(int Kind, int At, int Length, int Piece)> Edit =
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 1 << 20], Gen.Int[0, 40], Gen.Int[0, Bytes.Length - 1]);

    /// <summary>A file with up to four edits.</summary>
    public static Gen<byte[]> Of(string text)
    {
        var original = Encoding.UTF8.GetBytes(text);
        return Edit.Array[1, MostEdits].Select(edits => edits.Aggregate(original, Apply));
    }

    private static byte[] Apply(byte[] file, (int Kind, int At, int Length, int Piece) edit)
    {
        var at = edit.At % (file.Length + 1);
        var end = Math.Min(file.Length, at + edit.Length);
        return edit.Kind switch
        {
            0 => [.. file[..at], .. file[end..]],
            1 => [.. file[..at], .. Bytes[edit.Piece], .. file[at..]],
            2 => [.. file[..at], .. Bytes[edit.Piece], .. file[end..]],
            3 => [.. file[..end], .. file[at..end], .. file[end..]],
            _ => [.. file[..at], (byte)(edit.Length * 6), .. file[Math.Min(file.Length, at + 1)..]],
        };
    }
}
