using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;

namespace GuideBuilder.Tests.Reading;

public sealed class YamlTextTests
{
    private const string Path = "a.yaml";

    [Theory]
    [InlineData("a: «&x» b", "HB1009")]
    [InlineData("a: «*x»", "HB1009")]
    [InlineData("a: «!!int» 1", "HB1010")]
    [InlineData("a: «!x» 1", "HB1010")]
    [InlineData("a: «!» 1", "HB1010")]
    [InlineData("a: 1\n«---»\nb: 2", "HB1011")]
    [InlineData("? «[a]»\n: b", "HB1012")]
    [InlineData("{? «{a: b}» : c}", "HB1012")]
    [InlineData("«<<»: {a: b}", "HB1013")]
    [InlineData("a: 1\nb: 2\n«a»: 3", "HB1014")]
    [InlineData("a: 1\n«'a'»: 3", "HB1014")]
    [InlineData("«%YAML 1.2»\n---\na: 1", "HB1017")]
    [InlineData("«%TAG !e! tag:example,2026:»\n---\na: 1", "HB1017")]
    [InlineData("a: «\"\\u202e\"»", "HB1018")]
    [InlineData("a: «\"\\0\"»", "HB1018")]
    [InlineData("«»", "HB1005")]
    [InlineData("«»# only a comment\n", "HB1005")]
    [InlineData("«»---\n...\n", "HB1005")]
    [InlineData("«»~", "HB1005")]
    [InlineData("a: b«:» c", "HB1006")]
    [InlineData("a: «@»x", "HB1006")]
    [InlineData("a: «\"x»", "HB1006")]
    [InlineData("a: «\"\\ud800\"»", "HB1006")]
    [InlineData("a: «[1», 2\nb: 3", "HB1007")]
    [InlineData("a:\n«\t»b: c", "HB1008")]
    public void What_is_not_plain_YAML_is_found_where_it_stands(string text, string code)
    {
        var marked = Marked.Parse(text);
        var faults = new FaultList();
        YamlText.Read(marked.As(Path), Budget.Answers, faults);

        marked.HasExactly(faults.Found, Path, code);
    }

    [Fact]
    public void Lines_and_columns_are_those_of_an_editor_whatever_ends_the_lines()
    {
        foreach (var end in new[] { "\n", "\r\n", "\r" })
        {
            foreach (var mark in new[] { "", "\uFEFF" })
            {
                var root = (Mapping)Read(mark + "a: 1" + end + "b:" + end + "  - {c: 2}" + end)!;

                Assert.Equal(new Place(Path, 1, 4), root["a"]!.Place);
                Assert.Equal(new Place(Path, 3, 9), ((Mapping)((Sequence)root["b"]!).Items[0])["c"]!.Place);
            }
        }
    }

    [Fact]
    public void A_column_counts_UTF_16_units_as_editors_do()
    {
        var list = (Sequence)Read("[é, 😀, x]")!;

        Assert.Equal([2, 5, 9], list.Items.Select(i => i.Place.Column));
        Assert.Equal("😀", ((Scalar)list.Items[1]).Text);
    }

    [Fact]
    public void How_a_value_was_written_is_kept()
    {
        var root = (Mapping)Read("a: 010\nb: '010'\nc: \"010\"\nd: |\n  010\n")!;

        Assert.Equal([ScalarForm.Plain, ScalarForm.Quoted, ScalarForm.Quoted, ScalarForm.Block], root.Entries.Select(e => ((Scalar)e.Value).Form));
        Assert.Equal(["010", "010", "010", "010\n"], root.Entries.Select(e => ((Scalar)e.Value).Text));
    }

    [Fact]
    public void The_first_of_two_equal_keys_is_kept_and_both_lines_are_named()
    {
        var faults = new FaultList();
        var root = (Mapping)YamlText.Read(Source("a: 1\nb: 2\na: 3\n"), Budget.Answers, faults)!;

        Assert.Equal("1", ((Scalar)root["a"]!).Text);
        Assert.Contains("line 1", Assert.Single(faults.Found).Wrong, StringComparison.Ordinal);
        Assert.Contains("line 3", faults.Found[0].Right, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[", "HB1015")]
    [InlineData("{a: ", "HB1015")]
    [InlineData("- ", "HB1015")]
    [InlineData("[{a: ", "HB1015")]
    [InlineData("[\n", "HB1015")]
    public void Depth_beyond_the_budget_is_a_fault_and_no_crash(string opening, string code) =>
        Assert.Equal(code, Assert.Single(Faults(string.Concat(Enumerable.Repeat(opening, 100_000)))).Code);

    [Fact]
    public void Thirty_two_levels_are_read_and_thirty_three_are_not()
    {
        Assert.Empty(Faults(new string('[', 32) + "x" + new string(']', 32)));
        Assert.Equal("HB1015", Assert.Single(Faults(new string('[', 33) + "x" + new string(']', 33))).Code);
    }

    [Fact]
    public void More_nodes_than_the_budget_are_a_fault()
    {
        Assert.Empty(Faults("[" + string.Concat(Enumerable.Repeat("1,", 199_999)) + "]"));
        Assert.Equal("HB1016", Assert.Single(Faults("[" + string.Concat(Enumerable.Repeat("1,", 200_000)) + "]")).Code);
    }

    [Theory]
    [InlineData("a: \"")]
    [InlineData("a: '")]
    [InlineData("a: |\n ")]
    [InlineData("a: >\n ")]
    [InlineData("#")]
    [InlineData("")]
    [InlineData("&a ")]
    [InlineData("!a ")]
    [InlineData("? ")]
    [InlineData(": ")]
    [InlineData("---\n")]
    [InlineData("%TAG ! x\n")]
    [InlineData("]")]
    [InlineData("\n")]
    public async Task A_million_of_anything_ends_quickly(string piece)
    {
        var most = Budget.Answers.Bytes - 100;
        var once = piece + new string('x', most);
        var often = piece.Length == 0 ? once : string.Concat(Enumerable.Repeat(piece, most / piece.Length));

        await Task.Run(() => Faults(once).Count + Faults(often).Count, TestContext.Current.CancellationToken).WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken);
    }

    private static IReadOnlyList<Fault> Faults(string text)
    {
        var faults = new FaultList();
        YamlText.Read(Source(text), Budget.Answers, faults);
        return faults.Found;
    }

    private static Node? Read(string text)
    {
        var faults = new FaultList();
        var root = YamlText.Read(Source(text), Budget.Answers, faults);
        Assert.Empty(faults.Found);
        return root;
    }

    private static SourceText Source(string text) => new(Path, Encoding.UTF8.GetBytes(text));
}
