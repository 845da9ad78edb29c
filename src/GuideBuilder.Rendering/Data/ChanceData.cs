using System.Text.Json;

namespace GuideBuilder.Rendering.Data;

/// <summary>Writes payments, what may happen besides, and what the trials came to, for the file of the plan. Chances rest on judgement: they are written in whole tenths and say so, and never for the public edition.</summary>
internal static class ChanceData
{
    /// <summary>Three members of the plan: payments, events and chances; the last where anything may be told of the finish.</summary>
    internal static void Write(Utf8JsonWriter json, Plan plan)
    {
        WhereData.List(json, "payments", plan.Payments, p => Payment(json, p));
        WhereData.List(json, "events", [.. plan.Events.Where(e => e.Share > 0)], e => Event(json, e));
        if (plan.Chances is { } chances)
        {
            Chances(json, chances);
        }
    }

    private static void Payment(Utf8JsonWriter json, Payment payment)
    {
        json.WriteString("cost", payment.Line.Cost.Item.Id);
        json.WriteString("to", payment.Line.Cost.Item.InvoicedBy);
        WhereData.Day(json, "day", payment.Day);
        json.WriteNumber("sum", payment.Sum);
        json.WriteNumber("so-far", payment.SoFar);
        json.WriteNumber("may-come-back", payment.MayComeBack);
    }

    private static void Event(Utf8JsonWriter json, PlannedEvent planned)
    {
        json.WriteString("id", planned.Event.Id);
        json.WriteString("step", planned.Step);
        json.WriteNumber("tenths", Tenths((double)planned.Event.Chance));
        if (planned.Event.TakesMore is { } more)
        {
            json.WriteString("more-of", WhereData.Word(more.Unit.ToString()));
            PlanData.Points(json, "takes-more", more.Amount);
        }

        if (planned.Cost is { } cost)
        {
            json.WriteString("cost", cost.Cost.Item.Id);
            PlanData.Points(json, "gross", cost.Gross);
        }
    }

    private static void Chances(Utf8JsonWriter json, Chances chances)
    {
        json.WriteStartObject("chances");
        json.WriteString("basis", "judged");
        json.WriteNumber("trials", chances.Trials);
        json.WriteBoolean("every-world", chances.EveryWorld);
        Quantiles(json, "cost", chances.Cost, json.WriteNumber);
        Quantiles(json, "finish", chances.Finish, (name, day) => WhereData.Day(json, name, day));
        if (chances.MeetsDate is { } meets)
        {
            json.WriteNumber("meets-date", Tenths(meets));
        }

        WhereData.List(json, "finish-by", chances.FinishByTenths, f =>
        {
            WhereData.Day(json, "day", f.Day);
            json.WriteNumber("tenths", Tenths(f.Share));
        });
        WhereData.List(json, "deciding", [.. chances.Deciding.Where(d => Tenths(d.Value) > 0).OrderByDescending(d => Tenths(d.Value)).ThenBy(d => d.Key, StringComparer.Ordinal)], d =>
        {
            json.WriteString("step", d.Key);
            json.WriteNumber("tenths", Tenths(d.Value));
        });
        json.WriteEndObject();
    }

    private static void Quantiles<T>(Utf8JsonWriter json, string name, QuantileRange<T> range, Action<string, T> write)
    {
        json.WriteStartObject(name);
        write("lowest", range.Lowest);
        write("p10", range.P10);
        write("p50", range.P50);
        write("p80", range.P80);
        write("p90", range.P90);
        write("highest", range.Highest);
        json.WriteEndObject();
    }

    private static int Tenths(double share) => (int)Math.Round(share * 10, MidpointRounding.AwayFromZero);
}
