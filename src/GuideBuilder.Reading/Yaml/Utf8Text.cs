using System.Buffers;
using System.Text;
using System.Text.Unicode;

namespace GuideBuilder.Reading;

/// <summary>Bytes to text: UTF-8 and nothing else, one byte order mark at the start forgiven.</summary>
internal static class Utf8Text
{
    private const int MostFaultsOfAKind = 20;

    /// <summary>The text of a file, or null when there is no use in reading on. A character that may not stand there is a fault and becomes U+FFFD.</summary>
    public static string? Decode(SourceText source, Budget budget, FaultList faults)
    {
        var bytes = source.Bytes.Span;
        var start = new Place(source.Path, 1, 1);
        if (bytes.Length > budget.Bytes)
        {
            faults.Add(ReadingFaults.FileTooLong(start, budget.Bytes));
            return null;
        }

        if (IsWide(bytes))
        {
            faults.Add(ReadingFaults.OtherEncoding(start));
            return null;
        }

        bytes = bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[Encoding.UTF8.Preamble.Length..] : bytes;
        var text = Encoding.UTF8.GetString(bytes);
        if (!Utf8.IsValid(bytes))
        {
            var before = Encoding.UTF8.GetString(bytes[..FirstInvalid(bytes)]);
            faults.Add(ReadingFaults.NotUtf8(Positions.At(source.Path, before, before.Length)));
        }

        return WithoutForbidden(source.Path, text, faults);
    }

    /// <summary>The same text with every line ended by a line feed alone.</summary>
    public static string WithLineFeeds(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');

    private static bool IsWide(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith(Encoding.Unicode.Preamble) || bytes.StartsWith(Encoding.BigEndianUnicode.Preamble)
        || (bytes.Length >= 2 && (bytes[0] == 0) != (bytes[1] == 0)) || bytes.StartsWith("\0\0"u8);

    private static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var length) == OperationStatus.Done)
        {
            at += length;
        }

        return at;
    }

    private static string WithoutForbidden(string path, string text, FaultList faults)
    {
        var found = 0;
        char[]? cleaned = null;
        for (var at = 0; at < text.Length; at++)
        {
            if (Characters.Forbidden(text[at]) is not { } why)
            {
                continue;
            }

            cleaned ??= text.ToCharArray();
            cleaned[at] = '\uFFFD';
            if (found++ < MostFaultsOfAKind)
            {
                faults.Add(ReadingFaults.ForbiddenCharacter(Positions.At(path, text, at), Characters.Code(text[at]), why));
            }
        }

        return cleaned is null ? text : new string(cleaned);
    }
}
