using System.Collections.Frozen;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using NodaTime;
using Duration = GuideBuilder.Model.Duration;

namespace GuideBuilder.Tests.Support;

/// <summary>Small guidances and answers, as short as a test can read. Everything not said is left out, England is the nation, and no day is a holiday but the given ones.</summary>
internal static class Small
{
    /// <summary>A Monday.</summary>
    public static readonly LocalDate Today = new(2027, 2, 1);

    public static readonly IsoDayOfWeek[] Weekdays = [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday];

    /// <summary>A guidance with one way, a household, an operator and an electrician, and nothing else.</summary>
    public static readonly Guidance Empty = new(
        new(Words("Small"), Today, Today, ["en-GB"]),
        [new("england", Words("England"), "england-and-wales", Unit.Of("£"), Place.None)],
        [Choice("home.nation", "england")],
        [],
        [Party("household"), Party("operator"), Party("electrician")],
        [Way("stay")],
        [], [], [], [], [], [], [],
        new([], [], [], [], [new("england-and-wales", [], new(2028, 12, 31), Basis.Nothing, Place.None)], []),
        [], [],
        FrozenDictionary<string, Label>.Empty,
        new(FrozenDictionary<string, LocalText>.Empty));

    public static LocalText Words(string words) => new(words, "en-GB", Place.None);

    public static Place At(string id) => new(id + ".yaml", 1, 1);

    public static RuleHead Head(string kind, string id, Condition? when = null) => new(kind, id, Words(id), when ?? Condition.Always, Words("Because of " + id), new(["common-practice"], Mark.Judged, null, null), At(id));

    public static Condition Is(string name, params string[] options) => new Condition.Asks(name, new Comparison.IsOneOf([.. options]), Place.None);

    public static Condition Over(string name, decimal amount, string unit = "") => new Condition.Asks(name, new Comparison.Within(new(Quantity.Of(amount, unit), null, false), null), Place.None);

    public static Condition All(params Condition[] parts) => new Condition.AllOf([.. parts], Place.None);

    public static Condition Any(params Condition[] parts) => new Condition.AnyOf([.. parts], Place.None);

    public static Condition None(params Condition[] parts) => new Condition.NoneOf([.. parts], Place.None);

    /// <summary>A choice; the first option is assumed, each has weight one.</summary>
    public static Question Choice(string name, params string[] options) =>
        Question(name, QuestionKind.Choice) with { Options = [.. options.Select((o, i) => new QuestionOption(o, Words(o), 1, i == 0, Place.None))] };

    public static Question Several(string name, params string[] options) =>
        Choice(name, options) with { Kind = QuestionKind.Several, Options = [.. options.Select(o => new QuestionOption(o, Words(o), 1, false, Place.None))] };

    /// <summary>A yes-or-no question; yes is assumed.</summary>
    public static Question YesNo(string name) => Choice(name, "yes", "no") with { Kind = QuestionKind.YesNo };

    /// <summary>A quantity; the first value is assumed.</summary>
    public static Question Amount(string name, string unit, params decimal[] values) => Question(name, QuestionKind.Quantity) with
    {
        Range = new(Unit.Of(unit), 0, 1000),
        IfUnknown = [.. values.Select((v, i) => new WeightedQuantity(Quantity.Of(v, unit), 1, i == 0))],
    };

    public static Question Question(string name, QuestionKind kind) => new(
        name.Split('.')[0], name.Split('.')[1], Words(name), LocalText.Empty, LocalText.Empty, LocalText.Empty, LocalText.Empty,
        kind, DataClass.None, Ease.Look, [], null, [], [], Condition.Always, Basis.Nothing, Place.None);

    public static FactRule Fact(string id, string? otherwise, params (Condition When, string Value)[] rows) => new(
        Head("fact", id), QuestionKind.Choice, [], null,
        [.. rows.Select(r => new FactRow(r.When, new Value.Option(r.Value), At(id)))],
        otherwise is null ? null : new Value.Option(otherwise));

    public static Party Party(string id) => new(
        Head("party", id), LocalText.Empty, LocalText.Empty, LocalText.Empty, LocalText.Empty, LocalText.Empty, LocalText.Empty, [.. Weekdays], true);

    public static Way Way(string id, Condition? when = null) => new(Head("way", id, when), LocalText.Empty, LocalText.Empty, LocalText.Empty);

    public static Step Step(string id, decimal days, string party = "operator", string[]? after = null, Condition? when = null) => new(
        Head("step", id, when), party, new(ThreePoint.Certain(days), DayCount.WorkingDays, Basis.Nothing), [.. (after ?? []).Select(a => After(a))], [], null, 0, null, false,
        LocalText.Empty, LocalText.Empty, LocalText.Empty, LocalText.Empty, LocalText.Empty, [], [], [], [], null);

    public static Link After(string step, int lag = 0, string? whose = null, LinkKind kind = LinkKind.FinishToStart) =>
        new(step, kind, lag, whose is null ? DayCount.CalendarDays : DayCount.WorkingDays, whose, false, Place.None);

    /// <summary>A turn of an hour in a meeting.</summary>
    public static Step Turn(string id, string party, int order, string meeting = "works-day") =>
        Step(id, 0, party) with { Takes = Takes(DayCount.Hours, 1, 1, 1), Meeting = meeting, Order = order, SupplyOff = true };

    public static Duration Takes(DayCount unit, decimal low, decimal likely, decimal high) => new(ThreePoint.Of(low, likely, high)!, unit, Basis.Nothing);

    public static Cost Cost(string id, string by = "operator", string price = "price", string? quantity = null, string? due = null, Condition? when = null) =>
        new(Head("cost", id, when), by, price, quantity, due, LocalText.Empty);

    public static Price Price(string id, decimal low, decimal likely, decimal high, VatBasis stated = VatBasis.Excluding) =>
        new(id, ThreePoint.Of(low, likely, high)!, Unit.Of("£"), stated, "standard", 2025, "none", null, Basis.Nothing, Place.None);

    public static VatRate Vat(string id, decimal rate) =>
        new(id, Words(id), new Dictionary<string, decimal> { ["england"] = rate }.ToFrozenDictionary(), Basis.Nothing, Place.None);

    public static Hazard Hazard(string id, Condition? when = null) => new(
        Head("hazard", id, when), SignalWord.Danger, LocalText.Empty, LocalText.Empty, LocalText.Empty, LocalText.Empty, [], LocalText.Empty, new(5, 3), new(5, 1), false, null);

    public static AnswerSet Answers(Guidance guidance, params (string Name, object Value)[] given)
    {
        var found = new Dictionary<string, Given.Answered>(StringComparer.Ordinal);
        foreach (var question in guidance.Questions)
        {
            var value = question.Name == "home.nation" ? "england" : given.FirstOrDefault(g => g.Name == question.Name).Value;
            var asked = Judge.Of(question.AskIf, name => found[name]).Truth != Truth.Fails;
            found[question.Name] = value is null
                ? new(question, asked ? Standing.Unknown : Standing.NotAsked, null, null)
                : new(question, Standing.Known, ValueOf(value), At("answers"));
        }

        return new("answers.yaml", new(1, "small", EditionKind.Householder, null, null), found.ToFrozenDictionary(StringComparer.Ordinal), [], []);
    }

    public static LogEvent Event(LocalDate on, LogKind what, string? step = null, LocalDate? given = null, string? party = null) =>
        new(on, what, step, party, given, null, null, null, null, At("answers"));

    public static Facts Facts(Guidance guidance, params (string Name, object Value)[] given) => FactDeriver.Derive(Answers(guidance, given), guidance).Value!;

    public static Plan Plan(Guidance guidance, params (string Name, object Value)[] given) => Plan(guidance, Answers(guidance, given));

    public static Plan Plan(Guidance guidance, AnswerSet answers, LocalDate? today = null)
    {
        var staged = Staged(guidance, answers, today);
        return staged.Value ?? throw new InvalidOperationException(string.Join('\n', staged.Faults));
    }

    public static Staged<Plan> Staged(Guidance guidance, AnswerSet answers, LocalDate? today = null) =>
        FactDeriver.Derive(answers, guidance).Then(f => Planner.Plan(f, guidance, new(today ?? Today, Occasion.DefaultSeed, EditionKind.Householder)));

    private static Value ValueOf(object value) => value switch
    {
        string option => new Value.Option(option),
        string[] options => new Value.Several([.. options]),
        Quantity quantity => new Value.Amount(quantity),
        LocalDate date => new Value.Day(date),
        DateInterval span => new Value.Days([span]),
        Value ready => ready,
        _ => throw new ArgumentException(value.ToString()),
    };
}
