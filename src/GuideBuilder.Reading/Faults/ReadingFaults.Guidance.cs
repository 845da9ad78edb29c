namespace GuideBuilder.Reading;

internal static partial class ReadingFaults
{
    /// <summary>A file that the guidance has no place for. Example: <c>questions/hmoe.yaml</c>.</summary>
    public static Fault NotOfTheGuidance(Place place, string name, IEnumerable<string> names) =>
        Error("HB1070", place, $"`{Shown(name)}` is not a file of the guidance.", Near(Nearest.To(name, names), "Move it elsewhere; the guide for editors lists the files."));

    /// <summary>The file without which there is no guidance. Example: a folder without <c>guidance.yaml</c>.</summary>
    public static Fault MissingFile(Place place, string name) =>
        Error("HB1071", place, $"`{name}` is missing.", "Name the folder that holds the guidance.");

    /// <summary>One id for two entries. Example: a step and a cost both called <c>plans-fee</c>.</summary>
    public static Fault DuplicateId(Place place, string id, Place first) =>
        Error("HB1072", place, $"`{Shown(id)}` is already the id of the entry at {first}.", "Give one of them another id.");

    /// <summary>A reference to nothing. Example: <c>party: electrican</c>.</summary>
    public static Fault UnknownReference(Place place, string id, string kind, IEnumerable<string> ids) =>
        Error("HB1073", place, $"There is no {kind} `{Shown(id)}`.", Near(Nearest.To(id, ids), $"Write the id of a {kind} that the guidance has."));

    /// <summary>A choice without exactly one assumed option. Example: two options with <c>assume: yes</c>.</summary>
    public static Fault NotOneAssumed(Place place, int count) =>
        Error("HB1074", place, Invariant($"{count} answers of this question are marked `assume: yes`."), "Mark exactly one: in doubt the one that means more work and more caution.");

    /// <summary>A key that is no option's id. Example: an option called <c>unknown</c>.</summary>
    public static Fault NotAnOptionId(Place place, string id) =>
        Error("HB1075", place, $"`{Shown(id)}` cannot be an option.", "Use small letters, digits and hyphens, not the word unknown; a yes-no question has only yes and no.");

    /// <summary>A weight that is negative. Example: <c>weight: -1</c>.</summary>
    public static Fault WeightBelowNothing(Place place) =>
        Error("HB1076", place, "A weight cannot be less than nothing.", "Write 0 or more.");

    /// <summary>A question of which every weight is nothing. Example: two options, both <c>weight: 0</c>.</summary>
    public static Fault NoWeightAtAll(Place place) =>
        Error("HB1077", place, "No option of this question has a weight above nothing.", "Give at least one option a weight.");

    /// <summary>Three points out of order. Example: <c>{low: 5, likely: 3, high: 9}</c>.</summary>
    public static Fault PointsOutOfOrder(Place place) =>
        Error("HB1078", place, "Low, likely and high are not in order, or lie below nothing.", "Write 0 ≤ low ≤ likely ≤ high.");

    /// <summary>A symbol that is no unit. Example: <c>unit: yards</c>.</summary>
    public static Fault NotAUnit(Place place, string symbol) =>
        Error("HB1079", place, $"`{Shown(symbol)}` is not a unit.", $"The units are {Listed(Unit.All.Select(u => u.Symbol).Where(s => s.Length > 0))}.");

    /// <summary>A party named for days that are nobody's own. Example: <c>{lag: 5, of: calendar days, whose: household}</c>.</summary>
    public static Fault NobodysDays(Place place) =>
        Error("HB1080", place, "Calendar days are everybody's.", "Leave `whose` out, or write of: working days.");

    /// <summary>A hazard that its controls make worse. Example: before 5 × 1, after 5 × 2.</summary>
    public static Fault WorseAfterControls(Place place) =>
        Error("HB1081", place, "The score after the controls is higher than before them.", "Check severity and likelihood; after may not be above before.");

    /// <summary>A review that is neither named nor said to be missing. Example: <c>reviewed-by: somebody</c>.</summary>
    public static Fault NotAReview(Place place) =>
        Error("HB1082", place, "This does not say who reviewed the text.", "Write {role: …, on: date}, or not yet reviewed.");

    /// <summary>A figure whose review day has passed. Example: <c>review-by: 2020-01-01</c>. A warning.</summary>
    public static Fault ReviewIsDue(Place place, LocalDate day) =>
        new("HB1083", Severity.Warning, place, Invariant($"This was to be reviewed by {day:uuuu-MM-dd}."), "Look the figure up again, and move the day.");

    /// <summary>A price that is not a bare sum. Example: <c>low: 600</c>, or <c>low: £600 inc VAT</c>.</summary>
    public static Fault NotABareSum(Place place, string symbol) =>
        Error("HB1084", place, "A price is a sum with its currency sign and nothing more.", $"Write it such as {symbol}600; stated-as says whether VAT is in it.");

    /// <summary>A figure that must be above nothing. Example: an index value of 0.</summary>
    public static Fault NotAboveNothing(Place place) =>
        Error("HB1085", place, "This figure must be above nothing.", "Write a number above 0.");

    /// <summary>A page without its title. Example: a page that begins with a paragraph.</summary>
    public static Fault NoTitle(Place place) =>
        Error("HB1086", place, "The first line is not a title.", "Begin with #, a space and the title.");

    /// <summary>An address that no browser should open. Example: <c>address: javascript:…</c>.</summary>
    public static Fault NotAnAddress(Place place, string address) =>
        Error("HB1087", place, $"`{Shown(address)}` is not a web address.", "Begin with https://.");

    /// <summary>A price year that its index does not know. Example: <c>price-year: 2031</c> with an index up to 2026.</summary>
    public static Fault YearNotInIndex(Place place, int year, string index) =>
        Error("HB1088", place, Invariant($"The price index `{index}` has no value for {year}."), "Add the year to the index, or state the price in a year that it has.");

    /// <summary>The question after the nation is not as the program needs it. Example: an option of <c>home.nation</c> that is no nation.</summary>
    public static Fault NationQuestion(Place place, string right) =>
        Error("HB1089", place, "The guidance must ask `home.nation`, with the nations of guidance.yaml as its options.", right);

    /// <summary>Facts that need one another. Example: a needs b, b needs a.</summary>
    public static Fault FactCircle(Place place, IEnumerable<string> circle) =>
        Error("HB1090", place, $"These follow from one another in a circle: {string.Join(" → ", circle)}.", "Let one of them ask about answers instead.");

    /// <summary>Steps that wait for one another. Example: a after b, b after a.</summary>
    public static Fault StepCircle(Place place, IEnumerable<string> circle) =>
        Error("HB1091", place, $"These steps wait for one another in a circle: {string.Join(" → ", circle)}.", "Take one of the links away.");

    /// <summary>Guidance that may leave a home without any way. Example: every way has its <c>applies-if</c>.</summary>
    public static Fault NoWayRemains(Place place) =>
        Error("HB1133", place, "Every way has a condition, so some home may be left without any.", "Let one way, such as leaving it as it is, always apply; meets-wish-if says when it is what was wished for.");

    /// <summary>Two rows of a fact that can hold at once. Example: <c>under: 5 m</c> and <c>over: 3 m</c>.</summary>
    public static Fault RowsOverlap(Place place, Place other, string example) =>
        Error("HB1092", place, Invariant($"This row and the row in line {other.Line} can hold together: {example}."), "Narrow one of them.");

    /// <summary>Answers for which no row of a fact holds. Example: two of three options have a row, and there is no <c>otherwise</c>.</summary>
    public static Fault RowsGap(Place place, string example) =>
        Error("HB1093", place, $"No row holds when {example}.", "Add a row, or otherwise.");

    /// <summary>Answers for which a table has no row. Example: a soil that can be answered, and no row that stands for it.</summary>
    public static Fault RowMissing(Place place, string example) =>
        Error("HB1095", place, $"No row of this table stands for the case that {example}.", "Add a row with that `for-answer`, or take the option away.");

    /// <summary>An option that a table of factors leaves out. Example: a region without a factor.</summary>
    public static Fault FactorMissing(Place place, string option, string question) =>
        Error("HB1096", place, $"There is no factor for `{option}`, which is an option of `{question}`.", "Add it to `factors`.");

    /// <summary>A price in a nation for which its VAT has no rate. Example: a price in Ireland, and a row without <c>ireland</c>.</summary>
    public static Fault RateMissing(Place place, string vat, string nation) =>
        Error("HB1097", place, $"The VAT row `{vat}` has no rate for `{nation}`, where this price holds.", "Add the rate, or say under `nations` where the price holds.");

    /// <summary>An emergency number that nobody has listed with its source. Example: <c>gas-emergency: 0800 111 999</c>, and no such line under <c>numbers</c>.</summary>
    public static Fault NumberWithoutSource(Place place, string number) =>
        Error("HB1098", place, $"The emergency number `{number}` has no source.", "Add it under `numbers` with the source in which it was read, or say in words where it stands.");

    /// <summary>An emergency number whose source nobody has opened. Example: a source with <c>mark: memory</c>, or without a day under <c>checked</c>.</summary>
    public static Fault NumberFromMemory(Place place, string number, string source) =>
        Error("HB1099", place, $"The emergency number `{number}` rests on `{source}`, which was not read on a known day.", "Read it on the body's own page, and say so in that source: mark: read, and checked.");

    /// <summary>Rows too many to try. Example: a fact over twelve questions without <c>otherwise</c>.</summary>
    public static Fault RowsUnchecked(Place place) =>
        Error("HB1094", place, "The rows ask about too much to try every case.", "Add otherwise, or divide the fact in two.");
}
