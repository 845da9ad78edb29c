using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Hostile;

/// <summary>The reader against the YAML project's own test suite: what is not YAML is a fault, and what is read means what the suite says it means.</summary>
public sealed class YamlSuiteTests
{
    // A tab where only spaces may stand, read as the space that it looks like.
    private static readonly string[] Forgiven = ["DK95/1", "Y79Y/3", "Y79Y/4", "Y79Y/5"];

    // YAML that the library cannot read: a colon alone on its line, a tab on an empty line, a block of nothing but spaces.
    private static readonly string[] BeyondTheLibrary = ["4MUZ/2", "DK95/4", "JEF9/1", "UKK6/0", "VJP3/1"];

    // A last line of spaces without a line end, in a block.
    private static readonly string[] Otherwise = ["JEF9/2", "L24T/1"];

    [Fact]
    public void What_the_suite_calls_no_YAML_is_a_fault() =>
        Assert.Equal(Forgiven, YamlSuite.Cases().Where(c => c.Fails && Read(c) is { Faults.Count: 0 }).Select(c => c.Id));

    [Fact]
    public void What_the_suite_calls_YAML_is_read_or_refused_on_purpose()
    {
        string[] onPurpose = ["HB1004", "HB1005", "HB1009", "HB1010", "HB1011", "HB1012", "HB1014", "HB1017", "HB1018"];

        Assert.Equal(BeyondTheLibrary, YamlSuite.Cases().Where(c => !c.Fails && Read(c) is { Faults.Count: > 0 } read && !read.Faults.Any(f => onPurpose.Contains(f.Code))).Select(c => c.Id));
    }

    [Fact]
    public void What_is_read_without_a_fault_means_what_the_suite_says() => Findings.AreNone(
        from wanted in YamlSuite.Cases()
        where !wanted.Fails && !Otherwise.Contains(wanted.Id)
        let read = Read(wanted)
        where read.Faults.Count == 0
        let tree = string.Join('\n', Events(read.Root!))
        let right = string.Join('\n', wanted.Tree.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.TrimStart()).Where(l => l[..4] is not ("+STR" or "-STR" or "+DOC" or "-DOC")).Select(Plain))
        where tree != right
        select $"{wanted.Id}:\n{wanted.Yaml}\nis read as\n{tree}\nand is\n{right}");

    private static (Node? Root, IReadOnlyList<Fault> Faults) Read(YamlSuiteCase wanted)
    {
        var faults = new FaultList();
        var root = YamlText.Read(new(wanted.Id, Encoding.UTF8.GetBytes(wanted.Yaml)), Budget.Answers, faults);
        return (root, faults.Found);
    }

    private static IEnumerable<string> Events(Node node) => node switch
    {
        Scalar scalar => [$"=VAL {scalar.Text}"],
        Sequence list => ["+SEQ", .. list.Items.SelectMany(Events), "-SEQ"],
        Mapping mapping => ["+MAP", .. mapping.Entries.SelectMany(e => Events(e.Key).Concat(Events(e.Value))), "-MAP"],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    // The suite marks how a value is written with one character before it, and writes what does not show as an escape.
    private static string Plain(string line)
    {
        if (!line.StartsWith("=VAL ", StringComparison.Ordinal))
        {
            return line[..4];
        }

        var text = new StringBuilder("=VAL ");
        for (var i = 6; i < line.Length; i++)
        {
            text.Append(line[i] != '\\' ? line[i] : line[++i] switch { 'n' => '\n', 't' => '\t', 'r' => '\r', 'b' => '\b', var c => c });
        }

        return text.ToString();
    }
}
