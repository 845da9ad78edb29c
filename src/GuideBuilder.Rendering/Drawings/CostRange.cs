using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>Ranges of money: text first, then thin bars with three marks.</summary>
internal static class CostRange
{
    private const int LinesDrawn = 12;
    private const decimal RowHeight = 34;

    // Right of the longest bar, for its figures.
    private const decimal FiguresWidth = 100;

    /// <summary>The whole as a range, its largest lines as bars on one scale, and a table of those.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var lines = bindery.Plan.Costs.Where(c => c is { Added: true, Cost.IsPresent: true }).OrderByDescending(c => c.Gross.High - c.Gross.Low).Take(LinesDrawn).ToList();
        var money = bindery.Plan.Money;
        if (money.Gross.High <= 0 || lines.Count == 0 || !bindery.Plan.IsCounted)
        {
            return [new Block.Prose(Phrase.Of(bindery.Plan.IsCounted ? bindery.Say("none-here") : bindery.NotTold))];
        }

        ImmutableArray<(string Name, ThreePoint Amount)> rows = [(bindery.Say("cost-whole"), Outward(money.Gross)), .. lines.Select(l => (l.Cost.Item.Title.Words, l.Gross))];
        return
        [
            new Block.Prose(Phrase.Of(bindery.Say("cost-range-words", ("0", bindery.Ranges.Total(money.Gross, money.Currency))))),
            new Block.Drawing("drawing-cost-range", bindery.Say("drawing-cost-range"), bindery.Say("drawing-cost-range-words", ("0", bindery.Ranges.Total(money.Gross, money.Currency))), Draw(rows, money.Currency)),
            .. Make.Grid(bindery, "cost-range-caption", ["column-line", "low#", "likely#", "high#"], rows.Select((r, i) => Row(i == 0 ? bindery.Say("cost-whole-row") : r.Name, r.Amount, money.Currency))),
        ];
    }

    // What trials come to is known to two figures at most.
    private static ThreePoint Outward(ThreePoint total) =>
        total.Low == total.High ? total : ThreePoint.Of(Figures.Down(total.Low), Figures.Near(total.Likely), Figures.Up(total.High))!;

    private static Picture Draw(ImmutableArray<(string Name, ThreePoint Amount)> rows, Unit currency)
    {
        var sketch = new Sketch();
        var scale = (Sketch.Width - FiguresWidth - 4) / rows.Max(r => r.Amount.High);
        for (var i = 0; i < rows.Length; i++)
        {
            var (name, amount) = rows[i];
            var top = i * RowHeight;
            var look = i == 0 ? "heavy" : "";
            sketch.Say(2, top + 13, name, look);
            var (low, likely, high) = (4 + (amount.Low * scale), 4 + (amount.Likely * scale), 4 + (amount.High * scale));
            sketch.Line(low, top + 23, high, top + 23, i == 0 ? "thick" : "line").Line(low, top + 18, low, top + 28).Line(high, top + 18, high, top + 28);
            sketch.Dot(likely, top + 23, 4, "solid");
            sketch.Say(high + 8, top + 27, $"{Figures.Rough(amount.Low, currency)}–{Figures.Rough(amount.High, currency)}", "small");
        }

        return sketch.Finish(rows.Length * RowHeight);
    }

    private static GridRow Row(string name, ThreePoint amount, Unit currency) =>
        Make.Row(null, Phrase.Of(name), Phrase.Of(Figures.Rough(amount.Low, currency)), Phrase.Of(Figures.Rough(amount.Likely, currency)), Phrase.Of(Figures.Rough(amount.High, currency)));
}
