namespace GuideBuilder.Reading;

internal static partial class ReadingFaults
{
    /// <summary>A key that is no question of its section. Example: <c>home: {natoin: england}</c>.</summary>
    public static Fault UnknownQuestion(Place place, string section, string key, IEnumerable<string> ids, IEnumerable<string> elsewhere) =>
        Error("HB1050", place, $"`{Shown(key)}` is not a question of {section}.", RightQuestion(key, ids, [.. elsewhere]));

    /// <summary>An answer to a question that earlier answers rule out. Example: <c>block-stair: single</c> in a detached house.</summary>
    public static Fault NotAsked(Place place, string name, string ruledOutBy) =>
        Error("HB1051", place, $"`{name}` is not asked, because {ruledOutBy}.", "Leave this answer out, or change the earlier one.");

    /// <summary>No nation. Example: <c>nation: unknown</c>.</summary>
    public static Fault NationNeeded(Place place) =>
        Error("HB1052", place, "`home.nation` is not answered.", "Name the nation: law, holidays and prices depend on it.");

    /// <summary>No wish. Example: a file without the section <c>wish</c>.</summary>
    public static Fault WishNeeded(Place place) =>
        Error("HB1053", place, "The file says nothing of the wish.", "Answer at least one question of section `wish`, if only with unknown.");

    /// <summary>A format that this program does not know. Example: <c>format: 2</c>.</summary>
    public static Fault UnknownFormat(Place place, int format) =>
        Error("HB1054", place, "This format is not known.", Invariant($"Write format: {format}."));

    /// <summary>A handbook id that cannot name a folder. Example: <c>id: Our House</c>.</summary>
    public static Fault NotAHandbookId(Place place, string id, string right) =>
        Error("HB1055", place, $"`{Shown(id)}` cannot be the id of a handbook.", "Use 3 to 40 small letters, digits and single hyphens" + (Ids.IsId(right) && right.Length >= 3 ? $", such as `{right}`." : "."));

    /// <summary>A public edition that would be known by its file's name. Example: <c>edition: public</c> without <c>id</c>.</summary>
    public static Fault PublicNeedsId(Place place) =>
        Error("HB1056", place, "A public edition must not take its id from the name of the answers file.", "Write `public-id:` (or `id:`) under `handbook`, a name that tells nobody who lives there.");

    /// <summary>A public edition of a file of another edition, whose id was meant for those who live there. Example: <c>--edition public</c> over <c>{id: avebury-close, edition: householder}</c>.</summary>
    public static Fault PublicIdNotGiven(Place place, string id) =>
        Error("HB1141", place, $"The id `{Shown(id)}` was given to a private handbook, and a public edition prints its id on every page.", "Write `public-id:` under `handbook`, a name that tells nobody who lives there.");

    /// <summary>A file whose name makes no id. Example: <c>é.yaml</c>.</summary>
    public static Fault FileNameMakesNoId(Place place) =>
        Error("HB1057", place, "The name of the file makes no id for the handbook.", "Write `id:` with 3 to 40 small letters, digits and single hyphens.");

    /// <summary>A log entry without a part that it needs. Example: <c>what: done</c> without <c>step</c>.</summary>
    public static Fault LogEntryNeeds(Place place, string what, string key) =>
        Error("HB1058", place, $"An entry `{what}` needs `{key}`.", $"Write `{key}:` and its value.");

    /// <summary>A date given where none is given. Example: <c>what: paid, date: 2027-01-05</c>.</summary>
    public static Fault DateOnlyWhenGiven(Place place) =>
        Error("HB1059", place, "`date` is the date that a party gave.", "Write it only with what: date-given; the day of the entry itself is `on`.");

    /// <summary>A list with nothing in it. Example: <c>signs: []</c>.</summary>
    public static Fault EmptyList(Place place) =>
        Error("HB1043", place, "The list is empty.", "Write none if none applies, or unknown.");

    /// <summary>A day that lies before the entry that gives it. Example: <c>on: 2027-01-10, valid-until: 2026-12-01</c>.</summary>
    public static Fault DayBeforeItsEntry(Place place, string key, LocalDate on) =>
        Error("HB1044", place, Invariant($"`{key}` lies before the day of its own entry, {on:uuuu-MM-dd}."), "Check both days.");

    /// <summary>Two entries that cannot have happened in this order. Example: accepted on 3 May, quoted on 9 May.</summary>
    public static Fault LogOutOfOrder(Place place, string then, string first, LogEvent other) =>
        Error("HB1045", place, Invariant($"`{then}` stands before `{first}` ({other.On:uuuu-MM-dd}, line {other.Place.Line})."), "Check the days of both entries.");

    /// <summary>A step done before a turn of the works day for which it waits. Example: the fuse box switched on on 1 October, the cable jointed on 2 October.</summary>
    public static Fault DoneTooSoon(Place place, string step, LogEvent turn) =>
        Error("HB1140", place, Invariant($"`{step}` is done before `{turn.Step}` ({turn.On:uuuu-MM-dd}, line {turn.Place.Line}), for which it waits."), "Check the days of both entries.");

    /// <summary>A step done twice. Example: two entries <c>what: done, step: site-visit</c>.</summary>
    public static Fault DoneTwice(Place place, string step, LogEvent first) =>
        Error("HB1046", place, Invariant($"`{step}` is already done in line {first.Place.Line}."), "Keep the entry of the day on which it was really finished.");

    /// <summary>A date given or missed for a step that is done. Example: done on 1 May, missed on 3 May.</summary>
    public static Fault AfterDone(Place place, string what, string step, LogEvent done) =>
        Error("HB1047", place, Invariant($"`{what}` comes after `{step}` was done ({done.On:uuuu-MM-dd}, line {done.Place.Line})."), "Check the days of both entries.");

    /// <summary>A missed date that nobody gave. Example: <c>what: missed, step: site-visit</c> alone.</summary>
    public static Fault MissedWithoutDate(Place place, string step) =>
        Error("HB1048", place, $"No date was given for `{step}` that could be missed.", "Add the entry date-given, or write refused or noted.");

    private static string RightQuestion(string key, IEnumerable<string> ids, ImmutableArray<string> elsewhere) =>
        elsewhere.IsEmpty
            ? Near(Nearest.To(key, ids), $"The questions are {Listed(ids)}.")
            : $"It belongs to section {string.Join(" or ", elsewhere.Select(s => $"`{s}`"))}.";
}
