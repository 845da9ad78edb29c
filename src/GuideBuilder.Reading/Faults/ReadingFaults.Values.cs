namespace GuideBuilder.Reading;

internal static partial class ReadingFaults
{
    /// <summary>A key that nothing reads. Example: <c>tenur: owner</c>.</summary>
    public static Fault UnknownKey(Place place, string what, string key, IEnumerable<string> known) =>
        Error("HB1020", place, $"`{Shown(key)}` is not a key of {what}.", Near(Nearest.To(key, known), $"The keys are {Listed(known)}."));

    /// <summary>A key that must be there. Example: a step without <c>party</c>.</summary>
    public static Fault MissingKey(Place place, string what, string key) =>
        Error("HB1021", place, $"`{key}` is missing from {what}.", $"Write `{key}:` and its value.");

    /// <summary>A key with nothing after it. Example: <c>storeys:</c>.</summary>
    public static Fault EmptyValue(Place place) =>
        Error("HB1022", place, "Nothing is written here.", "Write a value, or leave the whole line out.");

    /// <summary>Something else where keys belong. Example: <c>home: England</c>.</summary>
    public static Fault NotAMapping(Place place, string what) =>
        Error("HB1023", place, $"Keys and values belong here, for {what}.", "Write each as key, colon, space, value.");

    /// <summary>Something else where a list belongs. Example: <c>moves: cutout</c>.</summary>
    public static Fault NotAList(Place place) =>
        Error("HB1024", place, "A list belongs here.", "Write it in square brackets, such as [one, two], or one line each with a hyphen.");

    /// <summary>A list or keys where one value belongs. Example: <c>nation: [england, wales]</c>.</summary>
    public static Fault NotOneValue(Place place) =>
        Error("HB1025", place, "One value belongs here.", "Write one value; put quotes around words that begin with [ or {.");

    /// <summary>Something that is not a number. Example: <c>010</c>, <c>1_000</c>, <c>1:30</c>, <c>0x1</c>, <c>.nan</c>, <c>1e3</c>.</summary>
    public static Fault NotANumber(Place place, string text, string right) =>
        Error("HB1026", place, $"`{Shown(text)}` is not read as a number.", right);

    /// <summary>A number that must be whole and between two ends. Example: <c>severity: 6</c>.</summary>
    public static Fault NotWhole(Place place, int least, int most) =>
        Error("HB1027", place, "This is not one of the whole numbers that can stand here.", Invariant($"Write a whole number from {least} to {most}."));

    /// <summary>A quantity beyond what makes sense. Example: a cabinet 900 m away.</summary>
    public static Fault OutOfRange(Place place, string text, Quantity least, Quantity most) =>
        Error("HB1028", place, $"`{Shown(text)}` is out of range.", $"It must lie between {least} and {most}.");

    /// <summary>Something other than yes or no. Example: <c>looped: true</c>.</summary>
    public static Fault NotYesNo(Place place, string text) =>
        Error("HB1029", place, $"`{Shown(text)}` is neither yes nor no.", "Write yes or no, in small letters.");

    /// <summary>A date in another form. Example: <c>15/03/2027</c>.</summary>
    public static Fault NotADate(Place place, string text) =>
        Error("HB1030", place, $"`{Shown(text)}` is not a date as it is read here.", "Write year-month-day, such as 2027-03-15.");

    /// <summary>A date that no calendar has. Example: <c>2027-02-30</c>.</summary>
    public static Fault NoSuchDate(Place place, string text, int firstYear, int lastYear) =>
        Error("HB1031", place, $"There is no {text} in the calendar used here.", Invariant($"Write a day that exists, in a year from {firstYear} to {lastYear}."));

    /// <summary>A span that ends before it begins. Example: <c>2027-03-10 to 2027-03-01</c>.</summary>
    public static Fault SpanBackwards(Place place, string text) =>
        Error("HB1032", place, $"`{Shown(text)}` ends before it begins.", "Write the earlier day first.");

    /// <summary>A word that is no id. Example: <c>id: Dig_Hole</c>.</summary>
    public static Fault NotAnId(Place place, string text, string right) =>
        Error("HB1033", place, $"`{Shown(text)}` is not an id.", "Use small letters, digits and single hyphens, at most 64" + (Ids.IsId(right) ? $", such as `{right}`." : "."));

    /// <summary>A word that is not on a closed list. Example: <c>signal-word: alarm</c>.</summary>
    public static Fault NotOneOf(Place place, string text, IEnumerable<string> words) =>
        Error("HB1034", place, $"`{Shown(text)}` is not one of the words that can stand here.", Near(Nearest.To(text, words), $"Write one of {Listed(words)}."));

    /// <summary>Several lines where one belongs. Example: a reference written as a block.</summary>
    public static Fault NotOneLine(Place place) =>
        Error("HB1035", place, "This runs over several lines.", "Write it on one line.");

    /// <summary>Something that is no quantity at all. Example: <c>distance: far</c>.</summary>
    public static Fault NotAQuantity(Place place, string text, Unit asked) =>
        Error("HB1036", place, $"`{Shown(text)}` is not a quantity.", $"Write a number and a unit, such as {Example(asked)}, or unknown.");

    /// <summary>A unit that nobody knows. Example: <c>4 yards</c>.</summary>
    public static Fault UnknownUnit(Place place, string unit, Unit asked) =>
        Error("HB1037", place, unit.Length == 0 ? "A number stands here without its unit." : $"`{Shown(unit)}` is not a unit.", UnitsFor(asked));

    /// <summary>A unit of another kind. Example: <c>distance: 4 kg</c>.</summary>
    public static Fault WrongDimension(Place place, Unit found, Unit asked) =>
        Error("HB1038", place, $"{(found.Symbol.Length == 0 ? "A bare number" : $"`{found.Symbol}`")} does not measure what is asked here.", UnitsFor(asked));

    /// <summary>Two parts that do not make one quantity. Example: <c>5 ft 14 in</c>.</summary>
    public static Fault PartsDoNotJoin(Place place, string text) =>
        Error("HB1039", place, $"`{Shown(text)}` does not make one quantity.", "Write whole larger units first and then less than one of them, such as 5 ft 6 in.");

    /// <summary>Money with one place or three. Example: <c>£1,180.5</c>.</summary>
    public static Fault PenceNotTwo(Place place, string text) =>
        Error("HB1040", place, $"`{Shown(text)}` is not a sum of money.", "Write a whole sum, or two digits after the point.");

    /// <summary>Words after a sum that say nothing of VAT. Example: <c>£500 or so</c>.</summary>
    public static Fault NotAVatBasis(Place place, string words) =>
        Error("HB1041", place, $"`{Shown(words)}` does not say whether VAT is in the sum.", "Write inc VAT, ex VAT or outside VAT, or nothing.");

    /// <summary>One item twice in a list. Example: <c>[cutout, meter, cutout]</c>.</summary>
    public static Fault Repeated(Place place, string item) =>
        Error("HB1042", place, $"`{Shown(item)}` stands twice in the list.", "Keep one of them.");

    private static string UnitsFor(Unit asked) => asked.Dimension == Dimension.Number
        ? "Write a plain number."
        : $"The units that fit are {Listed(Unit.All.Where(u => u.Dimension == asked.Dimension).Select(u => u.Symbol))}.";

    private static string Example(Unit asked) => asked.Dimension switch
    {
        Dimension.Pounds or Dimension.Euros => asked.Symbol + "1,180 inc VAT",
        Dimension.Number => "4",
        _ => $"4 {asked.Symbol}",
    };
}
