namespace GuideBuilder.Reading;

internal static partial class ReadingFaults
{
    /// <summary>Something else where a condition belongs. Example: <c>applies-if: home.kind</c>, or two names in one mapping.</summary>
    public static Fault NotACondition(Place place) =>
        Error("HB1060", place, "A condition belongs here, and this is not one.", "Write all-of, any-of or none-of and a list, or one name and one comparison: {home.kind: {is: flat}}.");

    /// <summary>A name that nothing defines. Example: <c>{home.kynd: {is: flat}}</c>.</summary>
    public static Fault UnknownName(Place place, string name, IEnumerable<string> known) =>
        Error("HB1061", place, $"Nothing is called `{Shown(name)}`.", Near(Nearest.To(name, known), "Use section.id of a question, the id of a fact, a calculator's name, or way."));

    /// <summary>A name that may not stand here. Example: an <c>ask-if</c> that names a later question.</summary>
    public static Fault NameNotAllowed(Place place, string name, string says) =>
        Error("HB1062", place, $"`{name}` cannot be asked about here.", says);

    /// <summary>A name without a comparison. Example: <c>{home.kind: flat}</c>.</summary>
    public static Fault NotAComparison(Place place, string name, IEnumerable<string> words) =>
        Error("HB1063", place, $"One comparison of `{name}` belongs here.", $"Write one of {Listed(words)} and what is compared.");

    /// <summary>A comparison that a kind does not know. Example: <c>{home.kind: {over: 3}}</c>.</summary>
    public static Fault WrongComparison(Place place, string word, string name, IEnumerable<string> words) =>
        Error("HB1064", place, $"`{Shown(word)}` cannot be asked of `{name}`.", Near(Nearest.To(word, words), $"Write one of {Listed(words)}."));

    /// <summary>A name of which nothing can be asked. Example: <c>{home.address: {is: here}}</c>.</summary>
    public static Fault NothingToAsk(Place place, string name) =>
        Error("HB1065", place, $"`{name}` holds a person's own words, days or a number that is a name; no condition can ask about it.", "Ask about a choice, a quantity or a date.");

    /// <summary>An option that the question does not have. Example: <c>{home.kind: {is: castle}}</c>.</summary>
    public static Fault UnknownOption(Place place, string option, string name, IEnumerable<string> options) =>
        Error("HB1066", place, $"`{Shown(option)}` is not an option of `{name}`.", Near(Nearest.To(option, options), $"The options are {Listed(options)}."));

    /// <summary>A range without its two ends. Example: <c>{between: 3 m}</c>.</summary>
    public static Fault NotTwoEnds(Place place) =>
        Error("HB1067", place, "A range has two ends.", "Write [least, most]; the ends count.");

    /// <summary>A range with its ends exchanged. Example: <c>{between: [5 m, 2 m]}</c>.</summary>
    public static Fault EndsReversed(Place place) =>
        Error("HB1068", place, "The first end of the range is above the second.", "Write the lesser end first.");
}
