using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>axe-core on an open page: the rules of WCAG 2.0 to 2.2, A and AA, with the size of targets, and good practice.</summary>
internal static class Axe
{
    private static readonly string Source = new BundledAxeScriptProvider().GetScript();

    // One run in the page itself: the package's own way opens a second page for each result, which takes twice as long.
    // Without preloading, which would ask for the stylesheet once more and be refused.
    private const string Run = """
        async () => {
          const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
          const result = await axe.run(document, { preload: false, runOnly: tags, resultTypes: ['violations', 'incomplete'], rules: { 'target-size': { enabled: true } } });
          // Words in a drawing lie over lines and hatches, of which the checker can make nothing: they carry an edge of the
          // paper's colour, and the contrast of every colour of the look against it is computed in a test of its own.
          const inDrawing = n => n.target.flat().join(' ').includes('svg') || /^<(text|title|desc)\b/.test(n.html);
          const open = r => ({ ...r, nodes: r.id === 'color-contrast' ? r.nodes.filter(n => !inDrawing(n)) : r.nodes });
          result.incomplete = result.incomplete.map(open).filter(r => r.nodes.length > 0);
          const say = kind => result[kind].map(r => kind + ' ' + r.id + ': ' + r.nodes.slice(0, 3)
            .map(n => n.html.slice(0, 160) + ' (' + [...n.any, ...n.all, ...n.none].map(c => c.message).join('; ') + ')').join(' | '));
          return [...say('violations'), ...say('incomplete')];
        }
        """;

    private const string Contrast = """
        async () => (await axe.run(document, { preload: false, runOnly: { type: 'rule', values: ['color-contrast'] }, resultTypes: ['violations'] })).violations
          .flatMap(r => r.nodes.slice(0, 3).map(n => n.html.slice(0, 160) + ' ' + n.any.map(c => c.message).join('; ')))
        """;

    /// <summary>What is wrong, and what could not be decided, a line a rule.</summary>
    public static async Task<string[]> FindAsync(IPage page)
    {
        await page.EvaluateAsync(Source);
        return await page.EvaluateAsync<string[]>(Run);
    }

    /// <summary>On a page that was checked as a whole: what cannot be told from its ground in the colours that the page wears now; contrast is of lightness alone, so it holds without colour too.</summary>
    public static Task<string[]> ContrastAsync(IPage page) => page.EvaluateAsync<string[]>(Contrast);
}
