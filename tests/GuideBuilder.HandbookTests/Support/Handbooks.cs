using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using GuideBuilder.Tests.Support;

[assembly: AssemblyFixture(typeof(GuideBuilder.HandbookTests.Support.Handbooks))]

namespace GuideBuilder.HandbookTests.Support;

/// <summary>Every home in answers/, bound once for all tests.</summary>
public sealed class Handbooks : IAsyncLifetime
{
    private readonly Folder _folder = new();

    /// <summary>The day that every test takes for today.</summary>
    public const string Today = "2026-11-24";

    /// <summary>The names of the answers files, without ending, in ordinal order; the rich demo home is first.</summary>
    public static string[] Homes { get; } =
        [.. Directory.EnumerateFiles(Repository.At("answers"), "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    /// <summary>The folder of a home's handbook.</summary>
    public string Of(string home) => _folder.At(home);

    /// <summary>The file names of a home's pages, in ordinal order.</summary>
    public string[] PagesOf(string home) =>
        [.. Directory.EnumerateFiles(Of(home), "*.html").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    /// <summary>The cover and, of each kind of page (chapter, party, way, step, hazard, letter), the first so many (every chapter, unless one is asked for); the kind is what the page says of itself.</summary>
    public string[] OfEachKind(string home, int most) =>
        [.. PagesOf(home).Where(page => !IsWholeBook(page)).GroupBy(page => Parsed(home, page).Body!.ClassName ?? "", StringComparer.Ordinal).SelectMany(kind => kind.Key == "chapter" && most > 1 ? kind : kind.Take(most))];

    /// <summary>Whether a file is an edition for paper, which holds the other pages over again.</summary>
    public static bool IsWholeBook(string page) => page.StartsWith("paper", StringComparison.Ordinal) || page.StartsWith("large-print", StringComparison.Ordinal);

    /// <summary>A page as a tree.</summary>
    public IHtmlDocument Parsed(string home, string page) => new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(Of(home), page)));

    /// <summary>Binds an answers file with the tests' day.</summary>
    internal static Task<Tool> BindAsync(string answers, string folder) => Tool.GuideBuilderAsync("bind", answers, "--to", folder, "--today", Today);

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        foreach (var home in Homes)
        {
            var bound = await BindAsync(Repository.At("answers/" + home + ".yaml"), Of(home));
            Assert.True(bound.Exit == 0, $"{home} does not bind:\n{bound.Errors}");
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        _folder.Dispose();
        return default;
    }
}
