namespace GuideBuilder.Reading;

internal static partial class ReadingFaults
{
    /// <summary>A translation of something that is no text. Example: <c>party: trydanwr</c> in <c>words/cy/steps.yaml</c>.</summary>
    public static Fault NotForTranslation(Place place) =>
        Error("HB1120", place, "This is not for translation.", "A translation may hold texts only; leave every other key out.");

    /// <summary>A translation of nothing. Example: an entry <c>dig-joint-hoel</c> in <c>words/cy/steps.yaml</c>.</summary>
    public static Fault NothingToTranslate(Place place, string name, IEnumerable<string> names) =>
        Error("HB1121", place, $"There is no `{Shown(name)}` to lay these words over.", Near(Nearest.To(name, names), "Use a name that the guidance has."));

    /// <summary>A list without ids of another length than its original. Example: two controls for a hazard that has three.</summary>
    public static Fault OtherLength(Place place, int count) =>
        Error("HB1122", place, Invariant($"The original of this list has {count} entries."), "Write as many, in the same order.");

    /// <summary>A list of languages that does not begin with that of the guidance. Example: <c>languages: [cy]</c>.</summary>
    public static Fault OriginalFirst(Place place) =>
        Error("HB1123", place, $"The first language is not `{LocalText.Original}`.", "The guidance itself is written in it; name translations after it.");

    /// <summary>A word that is no tag of a language. Example: <c>languages: [en-GB, Welsh!]</c>.</summary>
    public static Fault NotALanguage(Place place, string tag) =>
        Error("HB1124", place, $"`{Shown(tag)}` is not the tag of a language.", "Write it as browsers know it, such as cy.");

    /// <summary>A language that the guidance has no words in. Example: <c>language: gd</c>.</summary>
    public static Fault NoSuchLanguage(Place place, string tag, IEnumerable<string> tags) =>
        Error("HB1125", place, $"The guidance has no words in `{Shown(tag)}`.", $"It has {Listed(tags)}.");

    /// <summary>The customer's edition without an imprint. Example: <c>edition: customer</c> alone.</summary>
    public static Fault CustomerNeedsImprint(Place place) =>
        Error("HB1126", place, "The customer's edition has no imprint.", "Name the imprint file under handbook, or choose another edition.");

    /// <summary>Health named without a question that consents to it. Example: <c>may-print: [health]</c> without <c>after-consent</c>.</summary>
    public static Fault HealthNeedsConsent(Place place) =>
        Error("HB1127", place, "Health is printed here without anybody's consent.", "Name the yes-no question that gives it, as after-consent.");

    /// <summary>A party that no imprint may speak for. Example: <c>parties: [network-operator]</c>.</summary>
    public static Fault NotForHire(Place place, string id, IEnumerable<string> ids) =>
        Error("HB1128", place, $"`{Shown(id)}` is not a party that an imprint can be.", $"These are: {Listed(ids)}.");

    /// <summary>A price of somebody else's. Example: <c>operator-alteration</c> in an electrician's imprint.</summary>
    public static Fault NotYourLine(Place place, string id, string party) =>
        Error("HB1129", place, $"`{Shown(id)}` belongs to `{party}`.", "An imprint may change its own lines only: those of the parties that it names.");

    /// <summary>A turn of a works day that is given in days, or that is quicker than the guidance thinks possible. Example: <c>day-live-tests: {low: 0, likely: 0, high: 0, unit: hours}</c>.</summary>
    public static Fault NotATurn(Place place, string id, decimal least) =>
        Error("HB1142", place, $"`{Shown(id)}` is a turn of a works day.", Invariant($"Give its hours (unit: hours), and at the least {least:0.##}: the tests and the holds of the day hang on them."));

    /// <summary>Words with a template in an imprint. Example: <c>opening: "{{ answer … }}"</c>.</summary>
    public static Fault NoTemplateHere(Place place) =>
        Error("HB1130", place, "An imprint's words cannot hold a template.", "Write the words out.");

    /// <summary>A logo that is no picture of a kind that can be checked. Example: <c>logo: ours.jpg</c>, or an SVG with a script in it.</summary>
    public static Fault NotALogo(Place place, string why) =>
        Error("HB1131", place, $"The logo cannot be used: {why}.", "Give a plain SVG without scripts, styles and outside addresses, or a PNG, of at most 100 kB.");

    /// <summary>A colour that is not one. Example: <c>links: blue</c>.</summary>
    public static Fault NotAColour(Place place, string text) =>
        Error("HB1132", place, $"`{Shown(text)}` is not a colour.", "Write # and six digits from 0 to f, in quotes, such as \"#0b4a9e\".");
}
