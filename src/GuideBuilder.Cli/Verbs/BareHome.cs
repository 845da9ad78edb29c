using System.Text;

namespace GuideBuilder.Cli.Verbs;

/// <summary>A home of which only the nation and the wish are known: enough to write every page once.</summary>
internal static class BareHome
{
    /// <summary>The answers file of such a home.</summary>
    internal static SourceText In(string nation) => new($"(a home in {nation})", Encoding.UTF8.GetBytes($"""
        handbook:
          format: 1
          id: bare-home
        home:
          nation: {nation}
        wish:
          moves: [cutout, meter]
        """));

    /// <summary>A file of that name for such a home, which gives the handbook no id of its own.</summary>
    internal static SourceText Named(string file, string nation) =>
        new(file, Encoding.UTF8.GetBytes($"handbook: {{format: 1}}\nhome: {{nation: {nation}}}\nwish: {{moves: [cutout, meter]}}\n"));
}
