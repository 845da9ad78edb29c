namespace GuideBuilder.HandbookTests.Browser;

/// <summary>What is asked of a page inside the browser. Each gives a list of findings.</summary>
internal static class PageScripts
{
    /// <summary>Text spacing as WCAG 2.2, 1.4.12 names it.</summary>
    public const string SpreadText = """
        () => {
          const sheet = new CSSStyleSheet();
          sheet.replaceSync('* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }');
          document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
        }
        """;

    /// <summary>What runs out of the page sideways, and what is cut off. A table may scroll in a box of its own.</summary>
    public const string Lost = """
        () => {
          const found = [];
          const root = document.documentElement;
          const name = e => e.localName + (e.id ? '#' + e.id : '') + (typeof e.className === 'string' && e.className ? '.' + e.className : '') + ' ' + e.textContent.trim().slice(0, 40);
          if (root.scrollWidth > root.clientWidth) {
            found.push('the page is ' + root.scrollWidth + ' wide in ' + root.clientWidth);
            for (const e of document.querySelectorAll('body *')) {
              if (!e.closest('.grid.wide, svg, .skip') && e.getBoundingClientRect().right > root.clientWidth + 1) { found.push('too wide: ' + name(e)); break; }
            }
          }
          for (const e of document.querySelectorAll('body *')) {
            const style = getComputedStyle(e);
            const cut = s => s === 'hidden' || s === 'clip';
            if (e.closest('svg') || style.clipPath !== 'none') { continue; }
            if ((cut(style.overflowX) && e.scrollWidth > e.clientWidth + 1) || (cut(style.overflowY) && e.scrollHeight > e.clientHeight + 1)) { found.push('cut off: ' + name(e)); }
          }
          return found;
        }
        """;

    /// <summary>Words smaller than 18 points, but for those in drawings, whose tables say the same.</summary>
    public const string Small = """
        () => {
          const found = new Set();
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walker.nextNode()) {
            const e = walker.currentNode.parentElement;
            const size = parseFloat(getComputedStyle(e).fontSize);
            if (walker.currentNode.data.trim() && !e.closest('svg, script, .unseen') && e.getClientRects().length > 0 && size < 23.99) { found.add(size + ' ' + e.localName + '.' + e.className + ' in ' + e.parentElement.localName + '.' + e.parentElement.className); }
          }
          return [...found];
        }
        """;

    /// <summary>What is wider or, where it must not be divided, higher than the sheet that it is printed on: 170 by 257 mm between the margins.</summary>
    public const string OffTheSheet = """
        () => {
          const found = [];
          const width = document.documentElement.clientWidth;
          for (const e of document.querySelectorAll('main *')) {
            const outside = e.closest('svg, figure') !== e && e.closest('svg') && e.localName !== 'svg';
            const box = e.getBoundingClientRect();
            if (outside || box.width === 0) { continue; }
            const what = e.localName + (e.id ? '#' + e.id : '') + ' ' + e.textContent.trim().slice(0, 40);
            if (box.right > width + 1 || box.left < -1) { found.push('off the sheet: ' + what); }
            if (box.height > 971 && getComputedStyle(e).breakInside.startsWith('avoid')) { found.push('higher than a sheet: ' + what); }
          }
          return found.slice(0, 5);
        }
        """;

    /// <summary>Words of a drawing that run out of it, or lie over other words.</summary>
    public const string Drawn = """
        () => {
          const found = [];
          for (const svg of document.querySelectorAll('.drawing svg')) {
            const view = svg.viewBox.baseVal;
            const words = [...svg.querySelectorAll('text')].map(e => ({ text: e.textContent, box: e.getBBox() })).filter(w => w.text.trim());
            for (const w of words) {
              if (w.box.x < -1 || w.box.y < -1 || w.box.x + w.box.width > view.width + 1 || w.box.y + w.box.height > view.height + 1) { found.push('runs out: ' + w.text); }
            }
            words.forEach((a, i) => words.slice(i + 1).forEach(b => {
              const across = Math.min(a.box.x + a.box.width, b.box.x + b.box.width) - Math.max(a.box.x, b.box.x);
              const down = Math.min(a.box.y + a.box.height, b.box.y + b.box.height) - Math.max(a.box.y, b.box.y);
              if (across > 2 && down > 4) { found.push('lies over: ' + a.text + ' / ' + b.text); }
            }));
          }
          return found;
        }
        """;

    /// <summary>What the keyboard can reach without anything being seen of it.</summary>
    public const string Unfocused = """
        () => {
          const found = [];
          for (const e of document.querySelectorAll('a[href], button, input, select, textarea, [tabindex]')) {
            e.focus({ focusVisible: true, preventScroll: true });
            const style = getComputedStyle(e);
            const box = e.getBoundingClientRect();
            const what = e.localName + ' ' + (e.textContent.trim() || e.id).slice(0, 40);
            if (document.activeElement !== e) { found.push('cannot be reached: ' + what); }
            else if (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2) { found.push('no outline: ' + what); }
            else if (box.width < 1 || box.height < 1 || box.right < 0) { found.push('not to be seen: ' + what); }
          }
          document.activeElement?.blur();
          return found;
        }
        """;
}
