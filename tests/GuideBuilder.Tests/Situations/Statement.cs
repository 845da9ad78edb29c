using System.Collections.Immutable;
using GuideBuilder.Reading;

namespace GuideBuilder.Tests.Situations;

/// <summary>One thing that the handbook of a situation must say: items and their states, the order of steps, and words on a page where the wording matters.</summary>
internal sealed record Statement(
    string Letter,
    string Says,
    ImmutableArray<string> Present,
    ImmutableArray<string> Settled,
    ImmutableArray<string> Open,
    ImmutableArray<string> RuledOut,
    ImmutableArray<string> InOrder,
    ImmutableArray<(string Page, string Words)> On,
    ImmutableArray<string> Nowhere,
    string? NotCovered)
{
    private static readonly string[] Keys = ["covers", "says", "present", "settled", "open", "ruled-out", "in-order", "on", "nowhere", "not-covered"];

    /// <summary>An entry that covers several letters stands for one statement each.</summary>
    public static IEnumerable<Statement> Of(Mapping entry)
    {
        Assert.All(entry.Entries, e => Assert.Contains(e.Key.Text, Keys));
        return Words(entry["covers"]).Select(letter => Of(letter, entry));
    }

    /// <summary>The statement of an entry, under that letter or name.</summary>
    public static Statement Of(string letter, Mapping entry) => new(
        letter,
        ((Scalar)entry["says"]!).Text,
        Words(entry["present"]),
        Words(entry["settled"]),
        Words(entry["open"]),
        Words(entry["ruled-out"]),
        Words(entry["in-order"]),
        [.. entry["on"] is Mapping on ? on.Entries.Select(e => (e.Key.Text, ((Scalar)e.Value).Text)) : []],
        Words(entry["nowhere"]),
        (entry["not-covered"] as Scalar)?.Text);

    /// <summary>Whether anything is asked of the handbook.</summary>
    public bool IsCovered => Present.Length + Settled.Length + Open.Length + RuledOut.Length + InOrder.Length + On.Length + Nowhere.Length > 0;

    /// <summary>One word or a list of them.</summary>
    public static ImmutableArray<string> Words(Node? node) => node switch
    {
        null => [],
        Scalar one => [one.Text],
        Sequence list => [.. list.Items.Select(i => ((Scalar)i).Text)],
        _ => throw new ArgumentException($"{node.Place}: a list of ids belongs here."),
    };
}
