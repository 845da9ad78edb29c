using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;

namespace GuideBuilder.Tests.Reading;

public sealed class Utf8TextTests
{
    [Fact]
    public void UTF_8_is_read_with_and_without_its_mark()
    {
        Assert.Equal("é😀", Decode("é😀"u8.ToArray(), out _));
        Assert.Equal("é😀", Decode([0xEF, 0xBB, 0xBF, .. "é😀"u8], out _));
    }

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("utf-32")]
    [InlineData("utf-32BE")]
    public void Other_encodings_are_refused_with_and_without_their_mark(string name)
    {
        var encoding = Encoding.GetEncoding(name);

        Assert.Null(Decode([.. encoding.Preamble, .. encoding.GetBytes("a: b\n")], out var marked));
        Assert.Null(Decode(encoding.GetBytes("a: b\n"), out var bare));
        Assert.Equal(["HB1002", "HB1002"], marked.Concat(bare).Select(f => f.Code));
    }

    [Fact]
    public void Bytes_that_are_not_UTF_8_are_found_at_their_place()
    {
        Decode([.. "a: 1\r\nb: 😀"u8, 0xE9, .. "\n"u8], out var faults);

        Assert.Equal(("HB1003", new Place("f", 2, 6)), (Assert.Single(faults).Code, faults[0].Place));
    }

    [Theory]
    [InlineData('\0')]
    [InlineData('\u0007')]
    [InlineData('\u001B')]
    [InlineData('\u007F')]
    [InlineData('\u0085')]
    [InlineData('\u009F')]
    [InlineData('\u061C')]
    [InlineData('\u200E')]
    [InlineData('\u200F')]
    [InlineData('\u2028')]
    [InlineData('\u2029')]
    [InlineData('\u202A')]
    [InlineData('\u202E')]
    [InlineData('\u2066')]
    [InlineData('\u2069')]
    [InlineData('\uFEFF')]
    [InlineData('\uFFFE')]
    [InlineData('\uFFFF')]
    public void Characters_that_hide_or_reorder_are_found_at_their_place(char hidden)
    {
        Decode(Encoding.UTF8.GetBytes($"a: 1\nb: x{hidden}y\n"), out var faults);

        Assert.Equal(("HB1004", new Place("f", 2, 5)), (Assert.Single(faults).Code, faults[0].Place));
        Assert.Contains(Characters.Code(hidden), faults[0].Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tab\there\r\nand two lines")]
    [InlineData("\u00A0\u00E9\u0161\u20AC\u2014\u2026")]
    [InlineData("👩\u200D🔧 \u200C")]
    [InlineData("\uFFFD")]
    public void Everything_else_may_stand(string text)
    {
        Assert.Equal(text, Decode(Encoding.UTF8.GetBytes(text), out var faults));
        Assert.Empty(faults);
    }

    [Fact]
    public void A_file_beyond_its_budget_is_refused_and_one_at_it_is_not()
    {
        Assert.NotNull(Decode(new byte[1 << 20].Select(_ => (byte)'x').ToArray(), out _));
        Assert.Null(Decode(new byte[(1 << 20) + 1].Select(_ => (byte)'x').ToArray(), out var faults));
        Assert.Equal("HB1001", Assert.Single(faults).Code);
    }

    [Fact]
    public void A_file_full_of_controls_gives_a_few_faults_and_not_a_million()
    {
        Decode(Encoding.UTF8.GetBytes("xx" + new string('\u0001', 100_000)), out var faults);

        Assert.InRange(faults.Count, 1, 100);
    }

    private static string? Decode(byte[] bytes, out IReadOnlyList<Fault> faults)
    {
        var list = new FaultList();
        var text = Utf8Text.Decode(new("f", bytes), Budget.Answers, list);
        faults = list.Found;
        return text;
    }
}
