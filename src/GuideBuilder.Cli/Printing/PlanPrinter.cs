using Spectre.Console;

namespace GuideBuilder.Cli.Printing;

/// <summary>The plan on the console: what it comes to, then step by step, money, hazards and what is not known.</summary>
internal static class PlanPrinter
{
    /// <summary>Prints to standard output, plain in a pipe.</summary>
    internal static void Print(Plan plan)
    {
        var console = AnsiConsole.Console;
        Heads(console, plan);
        WherePrinter.Print(console, plan);
        console.Write(Steps(plan));
        console.Write(Costs(plan));
        console.Write(Hazards(plan));
        Unknowns(console, plan);
    }

    private static void Heads(IAnsiConsole console, Plan plan)
    {
        var (money, finish) = (plan.Money, plan.Schedule.Finish);
        foreach (var stop in plan.StopSigns)
        {
            Line(console, $"STOP: {stop.Hazard.Item.Title.Words}. {Plain(stop.Hazard.Item.StopWhen)}");
        }

        Line(console, $"Way: {plan.ChosenWay.Item.Title.Words} ({plan.ChosenWay.Item.Id}, {State(plan.ChosenWay.State)})");
        if (!plan.IsCounted)
        {
            Line(console, $"No total and no finish date: {Why(plan)}");
            return;
        }

        Line(console, $"Cost: from {Money(money, money.Gross.Low)} to {Money(money, money.Gross.High)}, likely {Money(money, money.Gross.Likely)}, VAT in it");
        Line(console, $"Finish: from {ValueText.Of(finish.Early)} to {ValueText.Of(finish.Late)}, likely {ValueText.Of(finish.Likely)}");
        if (plan.Schedule.NeededBy is { } needed)
        {
            Line(console, $"Needed by {ValueText.Of(needed)}: {plan.Schedule.Feasibility}");
        }
    }

    private static string Why(Plan plan) =>
        plan.IsSuspended ? "a stop sign stands until the log says that somebody has come"
        : plan.Schedule.Stuck.IsEmpty ? "one of the answers takes this home beyond what can be counted"
        : "the answers leave no day for something";

    private static Table Steps(Plan plan)
    {
        var table = Ruled("Steps", "id", "who", "start", "finish", "spare days", "state");
        foreach (var step in plan.Steps.Where(s => s.Step.IsPresent).OrderBy(s => s.Dates?.EarliestStart ?? LocalDate.MaxIsoValue).ThenBy(s => s.Step.Item.Id, StringComparer.Ordinal))
        {
            var dates = step.Dates;
            Row(table, step.Step.Item.Id, step.Step.Item.Party, Day(dates?.EarliestStart), Day(dates?.EarliestFinish), dates is null ? "" : Invariant($"{dates.TotalFloat}"), State(step.Step.State));
        }

        return table;
    }

    private static Table Costs(Plan plan)
    {
        var table = Ruled("Costs", "id", "invoiced by", "low", "likely", "high", "state");
        foreach (var cost in plan.Costs.Where(c => c.Cost.IsPresent))
        {
            var (item, gross) = (cost.Cost.Item, cost.Gross);
            Row(table, item.Id, item.InvoicedBy, Money(plan.Money, gross.Low), Money(plan.Money, gross.Likely), Money(plan.Money, gross.High), cost.Added ? State(cost.Cost.State) : "may apply, not added");
        }

        return table;
    }

    private static Table Hazards(Plan plan)
    {
        var table = Ruled("Hazards", "id", "word", "before", "after", "state");
        foreach (var (hazard, _) in plan.Hazards.Where(h => h.Hazard.IsPresent).OrderByDescending(h => h.Hazard.Item.Before.Score).ThenBy(h => h.Hazard.Item.Id, StringComparer.Ordinal))
        {
            Row(table, hazard.Item.Id, hazard.Item.Word.ToString().ToUpperInvariant(), Invariant($"{hazard.Item.Before.Score}"), Invariant($"{hazard.Item.After.Score}"), State(hazard.State));
        }

        return table;
    }

    private static void Unknowns(IAnsiConsole console, Plan plan)
    {
        foreach (var open in plan.OpenQuestions)
        {
            Line(console, $"Not known: {open.Question.Name}. It would settle {string.Join(", ", open.WouldSettle.Select(i => i.Id))}");
        }
    }

    private static Table Ruled(string title, params string[] heads)
    {
        var table = new Table { Border = TableBorder.Minimal, Title = new TableTitle(title) };
        foreach (var head in heads)
        {
            table.AddColumn(new TableColumn(head));
        }

        return table;
    }

    private static void Row(Table table, params string[] cells) => table.AddRow([.. cells.Select(c => new Text(c))]);

    private static void Line(IAnsiConsole console, string text) => console.Write(new Paragraph(text + Environment.NewLine));

    private static string Plain(LocalText text) => text.Words.ReplaceLineEndings(" ").Trim();

    private static string Money(MoneySummary money, decimal amount) => new Quantity(amount, money.Currency).ToString();

    private static string Day(LocalDate? day) => day is { } date ? ValueText.Of(date) : "";

    private static string State(ItemState state) => state == ItemState.Open ? "may apply" : "";
}
