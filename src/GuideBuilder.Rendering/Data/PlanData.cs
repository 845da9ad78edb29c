using System.Text.Json;

namespace GuideBuilder.Rendering.Data;

/// <summary>Writes the plan as data that another program can read.</summary>
internal static class PlanData
{
    /// <summary>The number of this format; it grows when a reader of the old one would be misled.</summary>
    internal const int Format = 1;

    /// <summary>The plan as JSON in UTF-8, keys in a fixed order, lists in the plan's own. Answers and happenings stand in it only where the pages print them.</summary>
    internal static ReadOnlyMemory<byte> Write(Plan plan, Guidance guidance, AnswerWords answers)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteNumber("format", Format);
            json.WriteString("handbook", plan.Answers.Handbook.Id);
            json.WriteString("nation", plan.Nation.Id);
            json.WriteString("edition", plan.Occasion.Edition.ToString().ToLowerInvariant());
            json.WriteString("guidance", Day(guidance.Head.EditionDate));
            json.WriteString("way", plan.ChosenWay.Item.Id);
            if (plan.Occasion.Edition != EditionKind.Public)
            {
                Dated(json, plan);
            }

            json.WriteBoolean("beyond-this-book", plan.IsBeyond);
            json.WriteBoolean("suspended", plan.IsSuspended);
            if (plan.IsCounted)
            {
                Points(json, "cost", plan.Money.Gross);
            }

            Points(json, "off-supply-hours", plan.Schedule.OffSupplyHours);
            Costs(json, plan);
            Items(json, "hazards", plan.Hazards.Select(h => (h.Hazard.Item.Id, h.Hazard.State)));
            Items(json, "consents", plan.Consents.Select(c => (c.Item.Id, c.State)));
            Items(json, "ways", plan.Ways.Select(w => (w.Way.Item.Id, w.Way.State)));
            Items(json, "parties", plan.Parties.Select(p => (p.Item.Id, p.State)));
            Items(json, "clocks", plan.Clocks.Select(c => (c.Item.Id, c.State)));
            Answers(json, plan, guidance, answers);
            json.WriteEndObject();
        }

        return buffer.ToArray();
    }

    private static void Dated(Utf8JsonWriter json, Plan plan)
    {
        json.WriteString("today", Day(plan.Occasion.Today));
        json.WriteString("seed", Invariant($"{plan.Occasion.Seed}"));
        if (plan.IsCounted)
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
        WhereData.Write(json, plan);
        ChanceData.Write(json, plan);
        Log(json, plan);
    }

    private static void Costs(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("costs");
        foreach (var cost in plan.Costs)
        {
            json.WriteStartObject();
            json.WriteString("id", cost.Cost.Item.Id);
            json.WriteString("state", StateOf(cost.Cost.State));
            json.WriteBoolean("added", cost.Added);
            if (cost.Cost.IsPresent)
            {
                Points(json, "gross", cost.Gross);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Answers(Utf8JsonWriter json, Plan plan, Guidance guidance, AnswerWords answers)
    {
        json.WriteStartObject("answers");
        foreach (var question in guidance.Questions)
        {
            if (plan.Answers.ByName.TryGetValue(question.Name, out var given) && answers.Of(given) is { } said)
            {
                json.WriteString(question.Name, said);
            }
        }

        json.WriteEndObject();
    }

    private static void Log(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("log");
        foreach (var happened in plan.Answers.Log)
        {
            json.WriteStartObject();
            json.WriteString("on", Day(happened.On));
            json.WriteString("what", happened.What.ToString().ToLowerInvariant());
            if (happened.Step is { } step)
            {
                json.WriteString("step", step);
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

    /// <summary>A range in figures.</summary>
    internal static void Points(Utf8JsonWriter json, string name, ThreePoint amount)
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
