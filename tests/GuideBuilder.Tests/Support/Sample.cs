using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideBuilder.Model;
using NodaTime;

namespace GuideBuilder.Tests.Support;

/// <summary>A small guidance made by hand: every kind of entry once or twice, and a page for each block.</summary>
internal static class Sample
{
    public static readonly LocalDate Today = new(2026, 11, 24);

    public static LocalText Text(string words, int line = 1) => new(words, "en-GB", new Place("content/sample.yaml", line, 10));

    public static RuleHead Head(string kind, string id, string title) =>
        new(kind, id, Text(title), Condition.Always, Text($"{title} belongs to it"), new Basis(["hsg47"], Mark.Judged, Today, null), new Place($"content/{kind}s.yaml", 1, 3));

    public static Question CableKind { get; } = new(
        "intake", "cable-kind", Text("Kind of service cable"), Text("What does the cable look like?"), Text("Look from the doorway."), Text("Who may touch it."), Text("The operator."),
        QuestionKind.Choice, DataClass.None, Ease.Look,
        [new QuestionOption("lead", Text("A dull grey sheath"), 2, true, Place.None), new QuestionOption("plastic", Text("Plastic"), 5, false, Place.None)],
        null, [], [], Condition.Always, Basis.Nothing, Place.None);

    public static Question Address { get; } = new(
        "home", "address", Text("Address"), Text("Where is it?"), LocalText.Empty, LocalText.Empty, LocalText.Empty,
        QuestionKind.Text, DataClass.Personal, Ease.Look, [], null, [], [], Condition.Always, Basis.Nothing, Place.None);

    public static ImmutableArray<Party> Parties { get; } =
    [
        Party("household", "You"), Party("network-operator", "Network operator"), Party("supplier", "Supplier"), Party("electrician", "Electrician"),
    ];

    public static Way Cabinet { get; } = new(Head("way", "outside-cabinet", "An outside cabinet"), Text("The intake goes outside."), Text("More digging, less dust."), LocalText.Empty);

    public static ImmutableArray<Step> Steps { get; } =
    [
        Step("ask-operator", "Ask the network operator", "household", null, false, []) with { Letter = "letter-enquiry", DoneWhen = Text("- You hold its answer.\n- It names a person.") },
        Step("dig-joint-hole", "Dig the joint hole", "household", null, false, ["cable-strike"]) with { After = [After("ask-operator")], HowTo = Text("### First\n\nLook for [the cutout](see:cutout).") },
        Step("day-cutout", "Move the cutout", "network-operator", "works-day", true, ["cable-strike"]) with { After = [After("dig-joint-hole")], IfItGoesWrong = Text("Ring at once.") },
        Step("day-board-on", "Connect the board", "electrician", "works-day", true, []) with { After = [After("day-cutout")], IfItGoesWrong = Text("Ring the electrician.") },
    ];

    public static ImmutableArray<Cost> Costs { get; } =
    [
        new(Head("cost", "operator-alteration", "The operator's work"), "network-operator", "alteration", null, "day-cutout", Text("What the operator asks.")),
        new(Head("cost", "electrician-tails", "New tails"), "electrician", "tails", null, "day-board-on", LocalText.Empty),
    ];

    public static Hazard CableStrike { get; } = new(
        Head("hazard", "cable-strike", "A cable is struck"), SignalWord.Danger, Text("A spade meets a live cable."), Text("It burns and kills."), Text("Whoever digs"), Text("While digging"),
        [new HazardControl(ControlLevel.Administrative, Text("Dig by hand."), "household"), new HazardControl(ControlLevel.Eliminate, Text("Let the operator uncover it."), "network-operator")],
        Text("You see tape, tile or cable."), new RiskScore(5, 3), new RiskScore(5, 1), false, null);

    public static Consent Notice { get; } = new(Head("consent", "building-notice", "Notice of electrical work"), ConsentKind.Notification, Text("Building control"), Text("Before work"), Text("The electrician sends it."), "day-board-on");

    public static Clock Late { get; } = new(Head("clock", "offer-late", "An offer that is late"), "network-operator", LogKind.Applied, "ask-operator", 5, DayCount.WorkingDays, Text("It owes a payment."), Text("Write the date."));

    public static Nation England { get; } = new(
        "england", Text("England"), "england-and-wales", Unit.Of("£"), Place.None)
    {
        Bodies = new Dictionary<string, LocalText>(StringComparer.Ordinal) { ["network-emergency"] = Text("105"), ["gas-emergency"] = Text("0800 111 999") }.ToFrozenDictionary(StringComparer.Ordinal),
    };

    public static Guidance Guidance(params (string Id, string Text)[] pages) => new(
        new GuidanceHead(Text("Moving your intake"), Today, new LocalDate(2027, 5, 24), ["en-GB"]),
        [England], [Address, CableKind], [], Parties, [Cabinet], Steps, Costs, [CableStrike], [Notice], [Late],
        [new Source("hsg47", Text("Avoiding danger from underground services"), "HSE", "3rd", "2014", "", "https://www.hse.gov.uk/", Mark.Memory, null, Place.None)],
        [new Term("cutout", Text("cutout"), [Text("service head")], Text("The box with the main fuse."), [], Place.None)],
        new Tables([], [], [], [], [new HolidayList("england-and-wales", [new Holiday(new(2026, 12, 25), Text("Christmas Day"))], new(2028, 12, 31), Basis.Nothing, Place.None)], []),
        [.. pages.Select(p => Page("pages", p.Id, p.Text))],
        [Page("letters", "letter-enquiry", "# Enquiry\n\nFrom {{ answer \"home.address\" }}.\n\nReference {{ note \"reference\" }}.\n")],
        Labels.Real,
        LookOf(pages.Select(p => p.Id)));

    public static Template Page(string folder, string id, string text) => new(id, new LocalText(text, "en-GB", new Place($"content/{folder}/{id}.md", 1, 1)));

    private static Look LookOf(IEnumerable<string> pages)
    {
        var chapters = string.Join('\n', pages.Concat(["pages of parties", "pages of ways", "pages of steps", "pages of hazards", "pages of letters"]));
        return new(Labels.LookFiles.Append(new("chapters.txt", chapters)).ToFrozenDictionary(f => f.Key, f => new LocalText(f.Value, "en-GB", new Place($"content/look/{f.Key}", 1, 1)), StringComparer.Ordinal));
    }

    private static Party Party(string id, string title) => new(
        Head("party", id, title), Text("Its own part."), Text("Its own work."), Text("Others' work."), Text("By quotation."), Text("By telephone."), Text("The supply number."), [IsoDayOfWeek.Monday], true);

    private static Link After(string step) => new(step, LinkKind.FinishToStart, 0, DayCount.CalendarDays, null, false, Place.None);

    private static Step Step(string id, string title, string party, string? meeting, bool off, ImmutableArray<string> hazards) => new(
        Head("step", id, title), party, new GuideBuilder.Model.Duration(ThreePoint.Of(1, 2, 4)!, DayCount.WorkingDays, Basis.Nothing), [], [], meeting, 1, meeting is null ? null : ThreePoint.Of(1, 2, 3),
        off, Text($"About: {title}."), LocalText.Empty, LocalText.Empty, LocalText.Empty, LocalText.Empty, [], hazards, [], [], null);
}
