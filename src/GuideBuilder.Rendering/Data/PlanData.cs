using System.Text.Json;

namespace GuideBuilder.Rendering.Data;

/// <summary>Writes the plan as data that another program can read.</summary>
internal static class PlanData
{
    private const int Format = 1;

    /// <summary>The plan as JSON in UTF-8, keys in a fixed order, lists in the plan's own.</summary>
    internal static ReadOnlyMemory<byte> Write(Plan plan)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("format", Format);
            json.WriteString("handbook", plan.Answers.Handbook.Id);
            json.WriteString("nation", plan.Nation.Id);
            json.WriteString("edition", plan.Occasion.Edition.ToString().ToLowerInvariant());
            json.WriteString("way", plan.ChosenWay.Item.Id);
            if (plan.Occasion.Edition != EditionKind.Public)
            {
                Dated(json, plan);
            }

            json.WriteBoolean("beyond-this-book", plan.IsBeyond);
            if (!plan.IsBeyond)
            {
                Money(json, "cost", plan.Money.Gross);
            }

            Money(json, "off-supply-hours", plan.Schedule.OffSupplyHours);
            Items(json, "costs", plan.Costs.Select(c => (c.Cost.Item.Id, c.Cost.State)));
            Items(json, "hazards", plan.Hazards.Select(h => (h.Hazard.Item.Id, h.Hazard.State)));
            Items(json, "consents", plan.Consents.Select(c => (c.Item.Id, c.State)));
            Items(json, "parties", plan.Parties.Select(p => (p.Item.Id, p.State)));
            json.WriteEndObject();
        }

        return buffer.ToArray();
    }

    private static void Dated(Utf8JsonWriter json, Plan plan)
    {
        json.WriteString("today", Day(plan.Occasion.Today));
        json.WriteString("seed", Invariant($"{plan.Occasion.Seed}"));
        if (!plan.IsBeyond)
        {
            Finish(json, plan.Schedule.Finish);
        }

        json.WriteStartArray("steps");
        foreach (var step in plan.Steps)
        {
            json.WriteStartObject();
            json.WriteString("id", step.Step.Item.Id);
            json.WriteString("state", StateOf(step.Step.State));
            if (step.Dates is { } dates)
            {
                json.WriteString("start", Day(dates.EarliestStart));
                json.WriteString("finish", Day(dates.EarliestFinish));
                json.WriteString("book-by", Day(dates.BookBy));
                json.WriteBoolean("done", dates.Done);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Finish(Utf8JsonWriter json, DateRange finish)
    {
        json.WriteStartObject("finish");
        json.WriteString("early", Day(finish.Early));
        json.WriteString("likely", Day(finish.Likely));
        json.WriteString("late", Day(finish.Late));
        json.WriteEndObject();
    }

    private static void Money(Utf8JsonWriter json, string name, ThreePoint amount)
    {
        json.WriteStartObject(name);
        json.WriteNumber("low", amount.Low);
        json.WriteNumber("likely", amount.Likely);
        json.WriteNumber("high", amount.High);
        json.WriteEndObject();
    }

    private static void Items(Utf8JsonWriter json, string name, IEnumerable<(string Id, ItemState State)> items)
    {
        json.WriteStartArray(name);
        foreach (var (id, state) in items)
        {
            json.WriteStartObject();
            json.WriteString("id", id);
            json.WriteString("state", StateOf(state));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string StateOf(ItemState state) => Blocks.Marks.NameOf(state);

    private static string Day(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);
}
