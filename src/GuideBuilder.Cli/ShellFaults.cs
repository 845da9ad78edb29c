namespace GuideBuilder.Cli;

/// <summary>What can go wrong between the program and the machine. Each ends the run with <see cref="Exit.WrongUse"/> or <see cref="Exit.Disk"/>.</summary>
internal static class ShellFaults
{
    /// <summary><c>bind missing.yaml</c></summary>
    internal static ShellFault CannotRead(string path, string why) =>
        Disk("HB4001", path, $"cannot be read: {why}", "Check the name, and that you may read it.");

    /// <summary><c>--guidance</c> naming a folder that holds no guidance.yaml.</summary>
    internal static ShellFault NoGuidance(string folder) =>
        Disk("HB4002", folder, "holds no guidance.yaml", "Name the folder that does, or leave --guidance out to use the guidance that travels with the program.");

    /// <summary><c>--to /</c>, <c>--to ~</c>, <c>--to .</c> and the like.</summary>
    internal static ShellFault NotAPlaceToBind(string folder, string why) =>
        Disk("HB4003", folder, $"is not a place for a handbook: {why}", "Name a new folder, or one that guidebuilder made.");

    /// <summary>A target that has files in it and was not made by this program.</summary>
    internal static ShellFault NotOurs(string folder) =>
        Disk("HB4004", folder, "has files in it and was not made by guidebuilder; nothing was touched", "Name a new folder, or one that guidebuilder made.");

    /// <summary>A full disk, a read-only folder, a permission lost half-way.</summary>
    internal static ShellFault CannotWrite(string folder, string why) =>
        Disk("HB4005", folder, $"cannot be written: {why}; what was there before is still there", "Make room or choose a folder you may write to, then bind again.");

    /// <summary>Two runs into one folder at the same time.</summary>
    internal static ShellFault InUse(string folder) =>
        Disk("HB4006", folder, "is being bound by another run", "Wait until that run has ended, then bind again.");

    /// <summary>A handbook folder into which somebody has put a <c>money.html</c> of their own before ours had that page.</summary>
    internal static ShellFault InTheWay(string folder, string name) =>
        Disk("HB4007", Path.Combine(folder, name), "was not made by guidebuilder, and the handbook needs that name; nothing was touched", "Move it elsewhere, then bind again.");

    /// <summary><c>--today 24/11/2026</c></summary>
    internal static ShellFault NotADay(string option, string text) =>
        Use("HB4010", $"{option} '{text}' is not a day", Invariant($"Write year-month-day, such as 2026-11-24, of the years {Years.First} to {Years.Last}."));

    /// <summary><c>SOURCE_DATE_EPOCH=yesterday</c></summary>
    internal static ShellFault NotAnEpoch(string text) =>
        Use("HB4011", $"SOURCE_DATE_EPOCH '{text}' is not a whole number of seconds from 1970-01-01 UTC to the end of {Years.Last}", "Correct it, or unset it.");

    /// <summary><c>bind --nope a.yaml --to b</c></summary>
    internal static ShellFault NoSuchOption(string text) =>
        Use("HB4012", $"there is no option '{text}'", $"Leave it out, or, if it is a file's name, write ./{text}.");

    /// <summary>Anything else that the parser of the command line reports.</summary>
    internal static ShellFault NotUnderstood(string what) => Use("HB4013", what, "");

    /// <summary><c>because no-such-item home.yaml</c></summary>
    internal static ShellFault NoSuchItem(string id, string? near) =>
        Use("HB4014", $"there is no item '{id}'", near is null ? "guidebuilder plan lists the items." : $"Did you mean '{near}'?");

    /// <summary>Two answers files that would make the same folder.</summary>
    internal static ShellFault SameHandbookTwice(string id, string first, string second) =>
        Use("HB4015", $"{first} and {second} would both make the handbook '{id}'", "Neither was bound. Give one of them another id under handbook.");

    /// <summary><c>--browser /opt/no-such-browser</c></summary>
    internal static ShellFault BrowserMissing(string named) =>
        Disk("HB4016", named, "is not an installed program", "Name a browser of the Chromium family, or leave --browser out to have one found.");

    /// <summary><c>--pdf</c> on a machine without such a browser.</summary>
    internal static ShellFault NoBrowser() =>
        new(Exit.Disk, "HB4017", "no browser of the Chromium family was found to print with.", "Install one, name it with --browser, or leave --pdf out and print paper.html yourself.");

    /// <summary>A browser that ends without having printed.</summary>
    internal static ShellFault BrowserFailed(string program, string page) =>
        Disk("HB4018", program, $"did not print {page}; nothing was written", "Try another browser with --browser, or leave --pdf out.");

    /// <summary><c>--since old/plan.json</c> with two answers files.</summary>
    internal static ShellFault SinceNeedsOne() => Use("HB4019", "--since goes with one answers file only", "Bind each home by itself.");

    /// <summary><c>--browser chromium</c> without <c>--pdf</c>.</summary>
    internal static ShellFault BrowserWithoutPdf() => Use("HB4020", "--browser says who prints, and nothing is to be printed", "Add --pdf, or leave --browser out.");

    /// <summary><c>unbind home.yaml</c></summary>
    internal static ShellFault NoSuchCommand(string text, IEnumerable<string> names) =>
        Use("HB4030", $"there is no command '{text}'", $"The commands are {string.Join(", ", names)}.");

    /// <summary><c>guidebuilder</c> alone.</summary>
    internal static ShellFault NoCommand(IEnumerable<string> names) =>
        Use("HB4031", "no command is given", $"The commands are {string.Join(", ", names)}; --help says more.");

    /// <summary><c>bind "" --to book</c></summary>
    internal static ShellFault EmptyArgument() =>
        Use("HB4032", "one of the arguments is empty", "Name what was meant, or leave it out.");

    /// <summary>Standard output on a full disk, or closed.</summary>
    internal static ShellFault CannotSay(string why) =>
        new(Exit.Disk, "HB4033", $"what there was to say could not be written: {why}.", "See where standard output and standard error lead.");

    /// <summary><c>check --rewrite home.yaml</c> where the file may not be written.</summary>
    internal static ShellFault CannotWriteFile(string path, string why) =>
        Disk("HB4050", path, $"cannot be written: {why}; what was there before is still there", "Make room, or see that you may write there.");

    /// <summary><c>form --to answers.yaml</c></summary>
    internal static ShellFault NotOurFile(string path) =>
        Disk("HB4052", path, "is there already and is another kind of file; nothing was touched", "Name a new file.");

    /// <summary><c>ask x.yaml</c></summary>
    internal static ShellFault NameMakesNoId(string path) =>
        Use("HB4053", $"{path} would give its handbook no name", "Name a file with 3 to 40 letters, digits or hyphens before its ending, such as our-home.yaml.");

    /// <summary><c>check --rewrite</c> without an answers file.</summary>
    internal static ShellFault NothingToRewrite() => Use("HB4051", "--rewrite needs an answers file to rewrite", "Name one or more.");

    /// <summary><c>--language gd</c> with guidance that has no such words.</summary>
    internal static ShellFault NoSuchLanguage(string tag, IEnumerable<string> has) =>
        Use("HB4100", $"the guidance has no words in '{tag}'", $"It has {string.Join(", ", has)}.");

    /// <summary><c>--slice 5/4</c>, <c>--slice half</c>.</summary>
    internal static ShellFault NotASlice(string text) =>
        Use("HB4101", $"--slice '{text}' is not a part of a whole", "Write K/N with K from 1 to N, or array/N inside an array of jobs.");

    /// <summary><c>--slice array/20</c> where no index is set.</summary>
    internal static ShellFault NoArrayIndex() =>
        Use("HB4102", "--slice array/N finds no index", "Run it as an Indexed Job of Kubernetes (JOB_COMPLETION_INDEX) or in an array of Slurm (SLURM_ARRAY_TASK_ID), or write K/N.");

    /// <summary>A folder without answers files.</summary>
    internal static ShellFault NoAnswersIn(string folder) =>
        Disk("HB4103", folder, "holds no answers file (*.yaml)", "Name the folder that does.");

    /// <summary><c>bind</c> without a file, or <c>--gather</c> with one.</summary>
    internal static ShellFault FilesOrGather(bool gather) => gather
        ? Use("HB4104", "--gather takes no answers files", "It puts together what the slices have bound; name the folder with --to only.")
        : Use("HB4110", "bind needs an answers file", "Name one or more, or a folder of them.");

    /// <summary><c>--gather</c> before every slice has run.</summary>
    internal static ShellFault SlicesMissing(string folder, IEnumerable<string> missing) =>
        Disk("HB4105", folder, $"lacks {string.Join(", ", missing)}", "Run every slice into this folder, then gather.");

    /// <summary><c>--slice 1/4</c> or <c>--base-address</c> with one answers file.</summary>
    internal static ShellFault ForManyOnly(string option) =>
        Use("HB4106", $"{option} is for many handbooks", "Name a folder, or several answers files.");

    /// <summary><c>--base-address ours</c></summary>
    internal static ShellFault NotAnAddress(string text) =>
        Use("HB4107", $"--base-address '{text}' is not a web address", "Begin with https://.");

    /// <summary><c>--jobs 0</c></summary>
    internal static ShellFault NotAJobCount(int jobs) => Use("HB4108", Invariant($"--jobs {jobs} would do nothing"), "Write 1 or more.");

    /// <summary>Many handbooks into a folder that is a handbook itself, or whose index.html is somebody else's.</summary>
    internal static ShellFault NotAListsPlace(string folder, string why) =>
        Disk("HB4109", folder, $"is not a place for many handbooks: {why}; nothing was touched", "Name a new folder.");

    /// <summary><c>collate photos/</c></summary>
    internal static ShellFault NotBound(string folder) =>
        Disk("HB4111", folder, "holds no handbook that guidebuilder made", "Name a handbook, or a folder of many.");

    private static ShellFault Disk(string code, string path, string wrong, string right) => new(Exit.Disk, code, $"{path}: {wrong}.", right);

    private static ShellFault Use(string code, string wrong, string right) => new(Exit.WrongUse, code, $"{wrong}.", right);
}

/// <summary>A fault of the shell: how the run ends, a code that never changes, what is wrong, what would be right.</summary>
internal sealed record ShellFault(Exit Exit, string Code, string Wrong, string Right)
{
    /// <summary>The line a person reads.</summary>
    public override string ToString() => Printing.OneLine.Of("guidebuilder: " + Wrong + (Right.Length == 0 ? "" : " " + Right) + $" [{Code}]");
}

/// <summary>Ends the run from wherever the machine said no. Thrown and caught in the shell only.</summary>
internal sealed class ShellException(params ImmutableArray<ShellFault> faults) : Exception(string.Join('\n', faults))
{
    /// <summary>What to print and how to end; at least one.</summary>
    internal ImmutableArray<ShellFault> Faults { get; } = faults;
}
