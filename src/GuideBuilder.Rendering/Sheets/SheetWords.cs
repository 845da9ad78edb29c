using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Sheets;

/// <summary>The words of one sheet: its lines, figures, results and verdicts, under labels that begin with its name.</summary>
internal sealed class SheetWords(Bindery bindery, string sheet)
{
    private const string OperatorSection = "operator.";
    private const string OperatorTable = "networks";
    private const string StandsFor = "stands-for";

    // Below this a volume is told in litres.
    private const decimal LeastInCubicMetres = 0.1m;
    private const decimal LitresInCubicMetre = 1000;

    /// <summary>What the words are taken from.</summary>
    internal Bindery Bindery => bindery;

    /// <summary>A fixed phrase of this sheet.</summary>
    internal string Say(string id) => bindery.Say($"{sheet}-{id}");

    /// <summary>The name of a line.</summary>
    internal string Line(string id) => Say($"line-{id}");

    /// <summary>The name of a line in a summary, where nothing stands above it.</summary>
    internal string Short(string id) => bindery.Labels.Has($"{sheet}-short-{id}") ? Say($"short-{id}") : Line(id);

    /// <summary>What came out, or that it is not known; of a question that this edition keeps back, that it does.</summary>
    internal string Worth(Value? worth, string name = "")
    {
        var question = Question(name);
        return worth is null ? bindery.Say("answer-unknown")
            : question is not null && !bindery.Answers.MayPrint(question.Data) ? bindery.Say("answer-kept-back")
            : worth is Value.Option option && question is null && bindery.Labels.Has($"{sheet}-result-{option.Id}") ? Say($"result-{option.Id}")
            : worth is Value.Amount { Vat: VatBasis.NotStated } amount ? Amount(Figures.Rounded(amount.Quantity))
            : worth is Value.Spread spread ? bindery.Say("from-to", ("0", Amount(Figures.Rounded(spread.Lowest))), ("1", Amount(Figures.Rounded(spread.Highest))))
            : bindery.Answers.Say(worth, question);
    }

    /// <summary>What came out, in a summary for whoever has a spade in hand; the line below it says it to the place to which it was worked out.</summary>
    internal string Coarsely(Value? worth) => worth switch
    {
        Value.Amount { Vat: VatBasis.NotStated } amount => Coarse(amount.Quantity),
        Value.Spread spread => bindery.Say("from-to", ("0", Coarse(spread.Lowest.Unit.Dimension == Dimension.ClockTime ? spread.Lowest with { Amount = decimal.Floor(spread.Lowest.Amount) } : spread.Lowest)), ("1", Coarse(spread.Highest))),
        _ => Worth(worth),
    };

    /// <summary>A figure: its name, what it is worth, and how it came to us.</summary>
    internal Phrase Figure(SheetFigure figure) => bindery.Labels.Compose(
        figure.Worth is null ? "sheet-figure-open" : "sheet-figure", ("name", Name(figure.Name)), ("worth", Phrase.Of(Worth(figure.Worth, figure.Name))), ("origin", Phrase.Of(Origin(figure))));

    /// <summary>The name of a figure: its question, or the sheet's own word for a row.</summary>
    internal Phrase Name(string name) =>
        Question(name) is { } question ? bindery.Link(question)
        : bindery.Items.Find(name) is { } fact ? bindery.Words(fact.Title)
        : Row(name)?.Cells.GetValueOrDefault("title") is { } title && !bindery.Labels.Has($"{sheet}-figure-{name}") ? Phrase.Of(title.Words)
        : Phrase.Of(Say($"figure-{name}"));

    /// <summary>How a figure came to us. What the operator has answered is quoted as such; what stands for an answer of its that is missing is common, and to be asked.</summary>
    internal string Origin(SheetFigure figure)
    {
        var asksOperator = figure.Name.StartsWith(OperatorSection, StringComparison.Ordinal);
        var common = Row(figure.Name) is { } row && (row.Table == OperatorTable || row.Cells.ContainsKey(StandsFor));
        return figure.Origin switch
        {
            FigureOrigin.Answered when asksOperator && figure.Worth is not null => bindery.Say("origin-operator"),
            FigureOrigin.Assumed when asksOperator => bindery.Say("origin-common"),
            FigureOrigin.Assumed or FigureOrigin.Table when common => bindery.Say("origin-common"),
            var origin => bindery.Say($"electrical-origin-{NameOf(origin)}"),
        };
    }

    /// <summary>How a value stands to its limit, in words that allow nothing.</summary>
    internal string Verdict(LimitVerdict verdict) => bindery.Say($"electrical-verdict-{NameOf(verdict)}");

    /// <summary>Titles of publications with edition and section, as links.</summary>
    internal Phrase Sources(IEnumerable<string> ids) => Phrase.Join("; ", ids.Select(Source));

    private Phrase Source(string id)
    {
        var source = bindery.Guidance.Sources.FirstOrDefault(s => s.Id == id);
        return source is null ? Phrase.Empty
            : Bindery.Link(id, bindery.Words(source.Title)) + Phrase.Of(string.Concat(new[] { source.Edition, source.Section }.Where(p => p.Length > 0).Select(p => ", " + p)));
    }

    private string Amount(Quantity quantity) => quantity.Unit.Dimension == Dimension.ClockTime
        ? $"{Figures.Plain(quantity.Amount)} {bindery.Labels.Count("unit-hour", quantity.Amount)}"
        : quantity.ToString();

    private string Coarse(Quantity quantity) => quantity.Unit.Dimension == Dimension.Volume && quantity.Base < LeastInCubicMetres
        ? bindery.Say("litres", ("n", Figures.Plain(Figures.Coarse(new Quantity(quantity.Base * LitresInCubicMetre, Unit.One)).Amount)))
        : Amount(Figures.Coarse(quantity));

    private TableRow? Row(string name) => bindery.Guidance.Tables.Rows.FirstOrDefault(r => r.Id == name);

    private Question? Question(string name) => bindery.Guidance.Questions.FirstOrDefault(q => q.Name == name);

    private static string NameOf(FigureOrigin origin) => origin switch
    {
        FigureOrigin.Answered => "answered",
        FigureOrigin.Measured => "measured",
        FigureOrigin.DeclaredMaximum => "declared-maximum",
        FigureOrigin.Table => "table",
        FigureOrigin.Assumed => "assumed",
        FigureOrigin.WorkedOut => "worked-out",
        _ => throw new UnreachableException(),
    };

    private static string NameOf(LimitVerdict verdict) => verdict switch
    {
        LimitVerdict.NotKnown => "not-known",
        LimitVerdict.Over => "over",
        LimitVerdict.TooCloseToCall => "too-close-to-call",
        LimitVerdict.Within => "within",
        _ => throw new UnreachableException(),
    };
}
