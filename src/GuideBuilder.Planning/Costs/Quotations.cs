namespace GuideBuilder.Planning.Costs;

/// <summary>The quotation that stands in for a line's estimate, and whether this line carries its sum or is only covered by it.</summary>
internal sealed record Quoted(Paper Paper, bool Carries);

/// <summary>Which quotations replace which estimates. Of two for one line the later counts; one past its term counts only if it was accepted within it.</summary>
internal static class Quotations
{
    /// <summary>The quotation for each line, by cost id. A quotation that names no lines covers every line of its party but those it leaves out.</summary>
    public static FrozenDictionary<string, Quoted> Of(IReadOnlyList<Cost> lines, AnswerSet answers, ImmutableArray<Step> steps, LocalDate today)
    {
        var quoted = new Dictionary<string, Paper>(StringComparer.Ordinal);
        var valid = All(answers, steps).Where(p => p.Amount is not null && Counts(p, answers, today));
        foreach (var paper in valid.OrderBy(p => p.Dated ?? LocalDate.MinIsoValue))
        {
            foreach (var line in lines.Where(l => IsCovered(l, paper)))
            {
                quoted[line.Id] = paper;
            }
        }

        return lines.Where(l => quoted.ContainsKey(l.Id)).ToFrozenDictionary(
            l => l.Id, l => new Quoted(quoted[l.Id], lines.First(f => quoted.GetValueOrDefault(f.Id) == quoted[l.Id]).Id == l.Id), StringComparer.Ordinal);
    }

    /// <summary>Whether a quotation that counts names the line itself, so that it is to be paid whatever is still open.</summary>
    public static bool Names(AnswerSet answers, string cost, LocalDate today) =>
        answers.Papers.Any(p => p is { Kind: PaperKind.Quotation, Amount: not null } && p.Covers.Any(c => c.Value == cost) && Counts(p, answers, today));

    private static IEnumerable<Paper> All(AnswerSet answers, ImmutableArray<Step> steps) =>
        answers.Papers.Where(p => p.Kind == PaperKind.Quotation)
            .Concat(answers.Log.Where(e => e is { What: LogKind.Quoted, Amount: not null }).Select(e => OfEvent(e, steps)));

    private static Paper OfEvent(LogEvent e, ImmutableArray<Step> steps) =>
        new(PaperKind.Quotation, e.Party ?? steps.FirstOrDefault(s => s.Id == e.Step)?.Party, e.On, e.ValidUntil, e.Amount, [], [], e.Reference, e.Place);

    private static bool IsCovered(Cost line, Paper paper) =>
        paper.LeavesOut.All(c => c.Value != line.Id)
        && (paper.Covers.IsEmpty ? line.InvoicedBy == paper.From : paper.Covers.Any(c => c.Value == line.Id));

    private static bool Counts(Paper paper, AnswerSet answers, LocalDate today) =>
        paper.ValidUntil is not { } last || last >= today || answers.Log.Any(e => Accepts(e, paper) && e.On <= last);

    private static bool Accepts(LogEvent e, Paper paper) =>
        e.What is LogKind.Accepted or LogKind.Paid
        && (e.Reference is { } reference ? reference == paper.Reference : e.Party is null || e.Party == paper.From);
}
