using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering;

/// <summary>Binds the sample with pages of a test's own.</summary>
internal static class Bound
{
    /// <summary>The pages that every sample has: a cover, and the homes of reasons, terms, sources, costs, questions, consents and clocks.</summary>
    public static readonly (string Id, string Text)[] Pages =
    [
        ("cover", "# Moving your intake\n\n{{ block \"wish\" }}\n"),
        ("method", "# How\n\n{{ block \"because\" }}\n\n{{ block \"glossary\" }}\n\n{{ block \"sources\" }}\n\n{{ block \"costs\" }}\n\n{{ block \"open-questions\" }}\n\n{{ block \"consents\" }}\n\n{{ block \"clocks\" }}\n"),
    ];

    /// <summary>What comes of the sample with one more page.</summary>
    public static Staged<BoundBook> With(string text, Plan? plan = null) => Handbook.Render(plan ?? SamplePlan.For(), Sample.Guidance([.. Pages, ("extra", "# Extra\n\n" + text)]));

    /// <summary>The file of that name as text.</summary>
    public static string File(this BoundBook book, string name) => Encoding.UTF8.GetString(book.Files.Single(f => f.Name == name).Bytes.Span);

    /// <summary>The extra page as text; a fault fails the test.</summary>
    public static string Page(string text, Plan? plan = null)
    {
        var staged = With(text, plan);
        Findings.AreNone(staged.Faults.Select(f => f.ToString()));
        return staged.Value!.File("extra.html");
    }
}
