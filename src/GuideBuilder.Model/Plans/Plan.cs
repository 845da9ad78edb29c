namespace GuideBuilder.Model;

/// <summary>What follows from the answers: the whole of what a handbook says, as a value. Lists are in guidance order unless they say otherwise.</summary>
public sealed record Plan(
    Facts Facts,
    Occasion Occasion,
    Nation Nation,
    ImmutableArray<PlannedWay> Ways,
    Planned<Way> ChosenWay,
    ImmutableArray<Planned<Party>> Parties,
    ImmutableArray<PlannedStep> Steps,
    Schedule Schedule,
    ImmutableArray<PlannedCost> Costs,
    MoneySummary Money,
    ImmutableArray<PlannedHazard> Hazards,
    ImmutableArray<Planned<Consent>> Consents,
    ImmutableArray<Planned<Clock>> Clocks,
    ImmutableArray<OpenQuestion> OpenQuestions,
    ImmutableArray<Assumption> Assumptions)
{
    /// <summary>What the trials of the chosen way came to; null where none were run.</summary>
    public Chances? Chances { get; init; }

    /// <summary>The fact of the guidance that takes a home out of the range in which a total or a date can be given from a desk.</summary>
    public const string BeyondFact = "beyond-this-book";

    /// <summary>Whether the answers take this home beyond what can be counted, or leave no day for something: no step that is still to come has a date, and no total and no finish date may be told.</summary>
    public bool IsBeyond => !Schedule.Stuck.IsEmpty || Facts.Derived.GetValueOrDefault(BeyondFact) is { Standing: Standing.Known, Value: Value.Option { Id: "yes" } };

    /// <summary>Where the household is today: what is late, what is next, which gates stand before a payment, which clocks run.</summary>
    public Whereabouts Whereabouts { get; init; } = Whereabouts.None;

    /// <summary>What to talk over with the electrician.</summary>
    public ElectricalSheet Electrical { get; init; } = ElectricalSheet.Empty;

    /// <summary>The figures for the hole and the trench of the chosen way; null where no ground is opened.</summary>
    public GroundSheet? Ground { get; init; }

    /// <summary>How the new place stands to each rule that holds for it, in the order of the table.</summary>
    public ImmutableArray<SitingVerdict> Siting { get; init; } = [];

    /// <summary>The unknown answers that change something, what matters most first.</summary>
    public ImmutableArray<FindOut> FindOutFirst { get; init; } = [];

    /// <summary>What leaves the account in the base plan, in order of date; empty where nothing has a date.</summary>
    public ImmutableArray<Payment> Payments { get; init; } = [];

    /// <summary>What may happen besides, in the steps of the chosen way, in their order.</summary>
    public ImmutableArray<PlannedEvent> Events { get; init; } = [];

    /// <summary>The quotations held, each against our own range.</summary>
    public ImmutableArray<QuotationCheck> QuotationChecks { get; init; } = [];

    /// <summary>The unknown answers that change nothing, in written order.</summary>
    public ImmutableArray<Question> Idle { get; init; } = [];

    /// <summary>The answers the plan rests on.</summary>
    public AnswerSet Answers => Facts.Answers;

    /// <summary>Hazards that suspend everything else until the log says that somebody has come; empty when there is none.</summary>
    public IEnumerable<PlannedHazard> StopSigns => Hazards.Where(h => h is { Hazard: { State: ItemState.Settled, Item.StopSign: true } } && !Steps.Any(s => s.Step.Item.Id == h.Hazard.Item.Until && s.Dates is { Done: true }));

    /// <summary>Whether a stop sign stands: of what is still to come nothing has a date, no total and no finish date may be told, and nothing is to be done but what deals with the sign.</summary>
    public bool IsSuspended => StopSigns.Any();

    /// <summary>Whether totals and dates may be told.</summary>
    public bool IsCounted => !IsBeyond && !IsSuspended;

    /// <summary>While a stop sign stands, the steps that may be done: those that end the signs and all that these wait for, in guidance order.</summary>
    public ImmutableArray<string> StopSteps { get; init; } = [];
}

/// <summary>A way, with what it would come to if it were chosen: null figures when it is ruled out.</summary>
public sealed record PlannedWay(Planned<Way> Way, WayFigures? Figures);

/// <summary>The figures by which ways are compared. Money is gross in the nation's currency, dates are the finish, hours are off supply and of the household's own work.</summary>
public sealed record WayFigures(ThreePoint Cost, DateRange Finish, ThreePoint OffSupplyHours, ThreePoint HouseholdHours, ImmutableArray<string> Hazards, ImmutableArray<string> Consents);

/// <summary>An early, a likely and a late date.</summary>
public sealed record DateRange(LocalDate Early, LocalDate Likely, LocalDate Late);

/// <summary>A hazard, and the ways (ids) in which it arises among those still possible.</summary>
public sealed record PlannedHazard(Planned<Hazard> Hazard, ImmutableArray<string> Ways);

/// <summary>An unknown answer that changes the plan, and the items it would settle (rule kind and id).</summary>
public sealed record OpenQuestion(Question Question, ImmutableArray<ItemName> WouldSettle);

/// <summary>Kind and id of an item of the guidance.</summary>
public sealed record ItemName(string Kind, string Id);

/// <summary>What the base plan takes for a question that is not answered.</summary>
public sealed record Assumption(Question Question, Value Value)
{
    /// <summary>The dated steps and the added lines that are in the base plan because of it, or whose number it gives.</summary>
    public ImmutableArray<ItemName> Brings { get; init; } = [];
}
