namespace GuideBuilder.Rendering;

/// <summary>Every mistake that Rendering can report. Each is a mistake in the guidance: its templates, links, labels or look.</summary>
internal static class RenderingFaults
{
    /// <summary>HB3001: a template cannot be read. Example: <c>{{ if known "home.address" }}</c> without an end.</summary>
    internal static Fault TemplateUnreadable(Place place, string message) =>
        Error("HB3001", place, $"This template cannot be read: {Sentence(message)}", "Close every {{ and every if and for.");

    /// <summary>HB3002: a template uses a name, a member or a value that does not exist. Example: <c>{{ anser "home.address" }}</c>.</summary>
    internal static Fault TemplateFails(Place place, string message) =>
        Error("HB3002", place, $"This template cannot be filled in: {Sentence(message)}", "Use only the names that the guide for editors lists.");

    /// <summary>HB3003: a template uses a statement that pages may not use. Example: <c>{{ capture x }}</c>.</summary>
    internal static Fault StatementRefused(Place place, string statement) =>
        Error("HB3003", place, $"A template may not use {statement}.", "Write values, if, for and the functions that the guide for editors lists.");

    /// <summary>HB3004: a value stands inside a code span or block, where it cannot be told from what the editor wrote. Example: <c>`{{ answer "home.address" }}`</c>.</summary>
    internal static Fault ValueInCode(Place place) =>
        Error("HB3004", place, "A value stands inside a code span or a code block.", "Take the value out of the code.");

    /// <summary>HB3005: no block has that name. Example: <c>{{ block "cost" }}</c>.</summary>
    internal static Fault UnknownBlock(Place place, string name, string nearest) =>
        Error("HB3005", place, $"There is no block called {name}.", $"The nearest is {nearest}.");

    /// <summary>HB3006: a block does not stand alone on its line. Example: <c>See {{ block "costs" }} here.</c></summary>
    internal static Fault BlockNotAlone(Place place, string name) =>
        Error("HB3006", place, $"The block {name} does not stand alone.", "Give it a line of its own with an empty line before and after.");

    /// <summary>HB3007: a text grew beyond what a page can hold. Example: a loop inside a loop over every step.</summary>
    internal static Fault TooLong(Place place) =>
        Error("HB3007", place, "This template writes more than a page can hold.", "Shorten its loops; nothing is ever cut off silently.");

    /// <summary>HB3008: a link has a scheme that the handbook does not follow. Example: <c>[read](javascript:alert(1))</c>.</summary>
    internal static Fault LinkRefused(Place place, string address) =>
        Error("HB3008", place, $"A link may not lead to {address}.", "Use see: with an id, https:, http:, mailto: or tel:.");

    /// <summary>HB3009: a link names something that does not exist. Example: <c>[the hole](see:dig-joint-hoel)</c>.</summary>
    internal static Fault LinkUnresolved(Place place, string id, string nearest) =>
        Error("HB3009", place, $"Nothing is called {id}.", $"The nearest id is {nearest}.");

    /// <summary>HB3010: a fixed phrase is missing from labels.yaml. Example: <c>side-who</c>.</summary>
    internal static Fault LabelMissing(string id) =>
        Error("HB3010", new Place("content/labels.yaml", 1, 1), $"The label {id} is missing.", "Add an entry with that id.");

    /// <summary>HB3011: the list of chapters names a page that nobody wrote. Example: <c>money</c> without pages/money.md.</summary>
    internal static Fault ChapterMissing(Place place, string id) =>
        Error("HB3011", place, $"No page is called {id}.", "Write it under pages, or take it off the list.");

    /// <summary>HB3012: a page stands in no place of the list of chapters; it is bound last. Example: pages/winter.md.</summary>
    internal static Fault ChapterUnlisted(Place place, string id) =>
        new("HB3012", Severity.Warning, place, $"The page {id} is not in the list of chapters, so it comes last.", "Add it to look/chapters.txt.");

    /// <summary>HB3013: a file of the look is missing. Example: <c>frame.html</c>.</summary>
    internal static Fault LookMissing(string name) =>
        Error("HB3013", new Place($"content/look/{name}", 1, 1), $"The look has no {name}.", "Every handbook needs it.");

    /// <summary>HB3014: a function of a template is given an id that names nothing of the right kind. Example: <c>{{ start_of "dig-hole" }}</c>.</summary>
    internal static Fault UnknownItem(Place place, string kind, string id, string nearest) =>
        Error("HB3014", place, $"No {kind} is called {id}.", $"The nearest is {nearest}.");

    /// <summary>HB3015: one page would give an item two homes. Example: the block <c>costs</c> twice on the money page.</summary>
    internal static Fault AnchorTwice(Place place, string page, string anchor) =>
        Error("HB3015", place, $"The page {page} gives {anchor} two places.", "Use each block once on a page.");

    /// <summary>HB3016: a page or letter does not begin with its title. Example: a first line without <c># </c>.</summary>
    internal static Fault TitleMissing(Place place) =>
        Error("HB3016", place, "The first line is not a title.", "Begin with # and the title.");

    /// <summary>HB3017: an image in a text; drawings come from the plan only. Example: <c>![hole](hole.png)</c>.</summary>
    internal static Fault ImageRefused(Place place) =>
        Error("HB3017", place, "A text may not hold an image.", "Use a block that draws.");

    /// <summary>HB3018: a text nests too deeply to be read. Example: a thousand quotation marks in a row.</summary>
    internal static Fault TooDeep(Place place) =>
        Error("HB3018", place, "This text nests lists or quotations too deeply.", "Keep to three levels.");

    /// <summary>HB3019: the list of chapters asks for pages of a kind that does not exist. Example: <c>  pages of costs</c>.</summary>
    internal static Fault ChapterKindUnknown(Place place, string kind) =>
        Error("HB3019", place, $"There are no pages of {kind}.", "Say pages of parties, ways, steps, hazards or letters.");

    /// <summary>HB3020: the file of an earlier binding is not a plan that this program wrote. Example: <c>--since notes.json</c>.</summary>
    internal static Fault NotAnEarlierPlan(Place place) =>
        Error("HB3020", place, "This is not the plan of an earlier handbook.", "Name the plan.json that an earlier binding wrote; the public edition's tells no dates and will not do.");

    /// <summary>HB3021: the earlier plan is of another handbook. Example: <c>--since other/plan.json</c>.</summary>
    internal static Fault EarlierPlanOfAnother(string earlier, string now) =>
        Error("HB3021", Place.None, $"The earlier plan is of the handbook {earlier}, this one is {now}.", "Name the plan.json of the same handbook.");

    /// <summary>HB3030: an imprint's colour is too pale for paper; a darker one is used. Example: <c>links: "#ffee00"</c>.</summary>
    internal static Fault ColourPutRight(Place place, string colour, double ratio, string enough) =>
        new("HB3030", Severity.Warning, place, Invariant($"{colour} has a contrast of only {ratio:0.0} with the paper; {enough} is used instead."), "Choose a darker colour if that is not to your liking.");

    /// <summary>HB3031: the stylesheet does not say on which paper it prints, so that nobody can tell whether a colour stands out. Example: a stylesheet without <c>--paper</c>.</summary>
    internal static Fault PaperNotNamed() =>
        Error("HB3031", new Place("content/look/stylesheet.css", 1, 1), "The stylesheet does not name its paper in light and in dark.", "Name --paper twice, as #rrggbb.");

    /// <summary>HB3050: a limit in the questions is not a whole number of the smallest unit, in which the page compares. Example: <c>{place.distance: {over: 0.00001 m}}</c>.</summary>
    internal static Fault TooFineForTheForm(Place place, Quantity limit) =>
        Error("HB3050", place, $"{limit} is finer than the page of the questionnaire can compare.", "Round it.");

    private static Fault Error(string code, Place place, string wrong, string right) => new(code, Severity.Error, place, wrong, right);

    private static string Sentence(string message) => message.TrimEnd('.', ' ').ReplaceLineEndings(" ") + ".";
}
