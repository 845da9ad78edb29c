using System.Text.Json;
using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering.Data;

/// <summary>What the file of the plan tells of money over time and of chance.</summary>
public sealed class PlanDataTests
{
    private static readonly string[] OfChance = ["payments", "events", "chances"];

    [Fact]
    public void Payments_stand_in_order_of_day_and_add_up()
    {
        using var plan = JsonDocument.Parse(Home.At("answers/avebury-close.yaml").Data);
        var payments = plan.RootElement.GetProperty("payments").EnumerateArray().ToList();
        var sum = 0m;

        Assert.NotEmpty(payments);
        Assert.All(payments, p => Assert.Equal(sum += p.GetProperty("sum").GetDecimal(), p.GetProperty("so-far").GetDecimal()));
        Assert.Equal(payments.Select(p => p.GetProperty("day").GetString()).Order(StringComparer.Ordinal), payments.Select(p => p.GetProperty("day").GetString()));
        Assert.Contains(payments, p => p.GetProperty("may-come-back").GetDecimal() > 0);
    }

    [Fact]
    public void Chances_are_whole_tenths_and_rise_with_the_days()
    {
        var home = Home.At("answers/avebury-close.yaml");
        using var plan = JsonDocument.Parse(home.Data);
        var (events, chances) = (plan.RootElement.GetProperty("events"), plan.RootElement.GetProperty("chances"));
        var tenths = chances.GetProperty("finish-by").EnumerateArray().Select(f => f.GetProperty("tenths").GetInt32()).ToList();

        Assert.Equal("judged", chances.GetProperty("basis").GetString());
        Assert.Equal(home.Plan.Events.Count(e => e.Share > 0), events.GetArrayLength());
        Assert.Contains(events.EnumerateArray(), e => e.TryGetProperty("gross", out _) && e.GetProperty("more-of").GetString() == "working-days");
        Assert.Equal(10, tenths[^1]);
        Assert.Equal(tenths.Order(), tenths);
        Assert.Equal(home.Plan.Chances!.Cost.P90, chances.GetProperty("cost").GetProperty("p90").GetDecimal());
    }

    [Theory]
    [InlineData(EditionKind.Householder, true)]
    [InlineData(EditionKind.Customer, true)]
    [InlineData(EditionKind.Public, false)]
    public void No_chance_stands_in_the_public_edition(EditionKind edition, bool told)
    {
        using var plan = JsonDocument.Parse(Support.Editions.Bind(Support.Editions.Demo, edition).Files.Single(f => f.Name == "plan.json").Bytes);

        Assert.All(OfChance, name => Assert.Equal(told, plan.RootElement.TryGetProperty(name, out _)));
    }

    [Fact]
    public void Beyond_the_book_nothing_is_paid_and_nothing_has_a_chance()
    {
        using var plan = JsonDocument.Parse(Home.Given("home: {nation: england, kind: semi, built: 1954, business-use: yes}\nwish: {moves: [cutout, meter], reason: [room-needed], way: outside-cabinet}\n").Data);

        Assert.Equal(0, plan.RootElement.GetProperty("payments").GetArrayLength());
        Assert.Equal(0, plan.RootElement.GetProperty("where").GetProperty("payments").GetArrayLength());
        Assert.False(plan.RootElement.TryGetProperty("chances", out _));
    }
}
