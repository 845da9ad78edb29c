using System.Text;
using GuideBuilder.Model;

namespace GuideBuilder.Tests.Reading;

/// <summary>Text that marks its own mistakes: each «…» stands where a fault must be, and is taken out before the text is read.</summary>
internal sealed record Marked(string Text, IReadOnlyList<(int Line, int Column)> Marks)
{
    public static Marked Parse(string marked)
    {
        var text = new StringBuilder();
        var marks = new List<(int, int)>();
        var (line, column) = (1, 1);
        foreach (var c in marked)
        {
            if (c is '«')
            {
                marks.Add((line, column));
            }
            else if (c is not '»')
            {
                text.Append(c);
                (line, column) = c == '\n' ? (line + 1, 1) : (line, column + 1);
            }
        }

        return new(text.ToString(), marks);
    }

    /// <summary>The text as a file.</summary>
    public SourceText As(string path) => new(path, Encoding.UTF8.GetBytes(Text));

    /// <summary>Fails unless the faults in this file have these codes, one at each mark in order.</summary>
    public void HasExactly(IEnumerable<Fault> faults, string path, params string[] codes)
    {
        var found = faults.Where(f => f.Place.Path == path).ToList();
        var expected = Marks.Zip(codes, (mark, code) => $"{code} at {mark.Line}:{mark.Column}");

        Assert.Equal(Marks.Count, codes.Length);
        Assert.True(
            expected.SequenceEqual(found.Select(f => $"{f.Code} at {f.Place.Line}:{f.Place.Column}"), StringComparer.Ordinal),
            $"Expected {string.Join(", ", expected)}, found:\n{string.Join('\n', found)}");
    }
}
