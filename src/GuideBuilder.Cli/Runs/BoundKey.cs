using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace GuideBuilder.Cli.Runs;

/// <summary>The key of everything that a handbook is made from. Where the key is the same, so are all its bytes.</summary>
internal sealed class BoundKey
{
    private const int OutputFormat = 2;

    private readonly Wanted _wanted;
    private readonly byte[] _shared;
    private readonly bool _pdf;

    /// <summary>The key of a run: program, guidance, seed and options.</summary>
    internal BoundKey(Wanted wanted, bool pdf)
    {
        (_wanted, _pdf) = (wanted, pdf);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Add(hash, Encoding.UTF8.GetBytes(Invariant($"{OutputFormat} {typeof(BoundKey).Assembly.GetName().Version} {wanted.Seed}")));
        foreach (var file in wanted.Shelf.Files.OrderBy(f => f.Path, StringComparer.Ordinal))
        {
            Add(hash, Encoding.UTF8.GetBytes(file.Path));
            Add(hash, file.Bytes.Span);
        }

        _shared = hash.GetHashAndReset();
    }

    /// <summary>The key of one handbook. The public edition knows no today, so that another day is no other key for it.</summary>
    internal string Of(SourceText answers, Asked asked)
    {
        var today = asked.Edition == EditionKind.Public ? "" : Invariant($"{_wanted.Today:uuuu-MM-dd}");
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Add(hash, _shared);
        Add(hash, Encoding.UTF8.GetBytes($"{today} {asked.Edition} {asked.Language} {_pdf} {Path.GetFileName(answers.Path)}"));
        Add(hash, asked.Imprint is null ? [] : asked.Imprint.File.Bytes.Span);
        Add(hash, asked.Imprint?.Logo is { } logo ? logo.Bytes.Span : []);
        Add(hash, answers.Bytes.Span);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    // Lengths go in too, so that no two lists of pieces run into the same bytes.
    private static void Add(IncrementalHash hash, ReadOnlySpan<byte> bytes)
    {
        Span<byte> length = stackalloc byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(length, bytes.Length);
        hash.AppendData(length);
        hash.AppendData(bytes);
    }
}
