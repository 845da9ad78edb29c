namespace GuideBuilder.Model;

/// <summary>Indicative electrical figures and the questions that they raise, for the household to hand to its electrician. Never a design, a test or a certificate.</summary>
public sealed record ElectricalSheet(ImmutableArray<SheetRow> Rows, ImmutableArray<SheetQuestion> Questions)
{
    /// <summary>A sheet on which nothing stands.</summary>
    public static ElectricalSheet Empty { get; } = new([], []);

    /// <summary>What the lines that hang on a missing answer would come to under each answer that is possible; one table a question.</summary>
    public ImmutableArray<SheetCases> Cases { get; init; } = [];
}

/// <summary>A question that is open, its possible answers, and the lines that differ with it. Each line stands in one table only.</summary>
public sealed record SheetCases(string Question, ImmutableArray<Value> Answers, ImmutableArray<SheetCase> Lines);

/// <summary>A line under every possible answer, in their order; null where that answer has no such line. Taken are the other open questions it hangs on, each with the answers for which these figures hold.</summary>
public sealed record SheetCase(string Line, ImmutableArray<(string Question, ImmutableArray<Value> Answers)> Taken, ImmutableArray<SheetRow?> Rows);

/// <summary>One line of a sheet: its id, the formula's id, what went in, what came out (null when an input is unknown or outside its range), the limit it is held against, the verdict, the table rows used, their sources and weakest mark, and the questions (section.id) whose answers would settle it.</summary>
public sealed record SheetRow(
    string Id,
    string Formula,
    ImmutableArray<SheetFigure> Inputs,
    Value? Result,
    SheetFigure? Limit,
    LimitVerdict Verdict,
    ImmutableArray<string> Rows,
    ImmutableArray<string> Sources,
    Mark Mark,
    ImmutableArray<string> Open);

/// <summary>A figure on a sheet: its name (a question, a table row, or a row of the sheet), what it is worth (null when not known), and how it came to us.</summary>
public sealed record SheetFigure(string Name, Value? Worth, FigureOrigin Origin);

/// <summary>A question for the electrician or the operator, by id, and the line of the sheet that raises it.</summary>
public sealed record SheetQuestion(string Id, string Row);

/// <summary>How a figure on a sheet came to us.</summary>
public enum FigureOrigin
{
    /// <summary>Somebody answered it.</summary>
    Answered,

    /// <summary>A report gives it as measured.</summary>
    Measured,

    /// <summary>A greatest value that operators declare; a house may have less, or more.</summary>
    DeclaredMaximum,

    /// <summary>A figure of the tables.</summary>
    Table,

    /// <summary>Taken where no question asks.</summary>
    Assumed,

    /// <summary>Worked out on the sheet.</summary>
    WorkedOut,
}

/// <summary>How an indicative figure stands to its limit: a closed set, and none of it means that an installation may be used.</summary>
public enum LimitVerdict
{
    /// <summary>An input is missing, out of range, or only a declared maximum; or there is no limit to hold it against.</summary>
    NotKnown,

    /// <summary>Over the limit.</summary>
    Over,

    /// <summary>Not over, but nearer to the limit than the margin of the tables.</summary>
    TooCloseToCall,

    /// <summary>Under the limit by at least the margin.</summary>
    Within,
}
