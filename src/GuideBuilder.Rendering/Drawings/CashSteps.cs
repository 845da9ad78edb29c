using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>What has left the account by each day, as steps.</summary>
internal static class CashSteps
{
    private const decimal Top = 26;
    private const decimal Height = 150;

    /// <summary>The drawing of payments in order of date; the table that says the same follows it.</summary>
    internal static Block.Drawing Of(Bindery bindery, ImmutableArray<Payment> payments)
    {
        var currency = bindery.Plan.Money.Currency;
        var (first, last) = (bindery.Plan.Schedule.Start, payments[^1].Day);
        var axis = new TimeAxis(first, last.PlusDays(Math.Max(7, Period.DaysBetween(first, last) / 10)));
        var whole = payments[^1].SoFar;
        var sketch = new Sketch();
        axis.Draw(bindery, sketch, Top, Top + Height);
        decimal At(decimal sum) => Top + Height - (sum / whole * (Height - 20));
        var points = new List<(decimal X, decimal Y)> { (0, At(0)) };
        var running = 0m;
        foreach (var day in payments.GroupBy(p => p.Day))
        {
            points.Add((axis.At(day.Key), At(running)));
            running += day.Sum(p => p.Sum);
            points.Add((axis.At(day.Key), At(running)));
        }

        points.Add((Sketch.Width, At(running)));
        sketch.Shape(false, "line", Hatch.None, [.. points]).Line(0, At(0), Sketch.Width, At(0), "fine");
        sketch.Say(Sketch.Width - 2, At(running) - 6, Figures.Exact(running, currency), "small", Anchoring.End);
        return new("drawing-cash", bindery.Say("drawing-cash"), bindery.Say("drawing-cash-words", ("0", Figures.Exact(running, currency))), sketch.Finish(Top + Height + 6));
    }
}
