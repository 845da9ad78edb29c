using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Questions;

/// <summary>What each answer that is not known yet would change.</summary>
internal sealed class FindOutFirst
{
    private const decimal Pennies = 100;
    private const double Half = 0.5 - 1e-9;
    private readonly WayPlan _plan;
    private readonly World _assumed;
    private readonly FrozenDictionary<ItemName, Rule> _items;
    private readonly FrozenDictionary<string, OpenQuestion> _open;

    private FindOutFirst(WayPlan plan, ImmutableArray<OpenQuestion> open, World assumed)
    {
        (_plan, _assumed) = (plan, assumed);
        _open = open.ToFrozenDictionary(q => q.Question.Name, StringComparer.Ordinal);
        var guidance = plan.Case.Guidance;
        _items = new Rule[][] { [.. guidance.Parties], [.. guidance.Steps], [.. guidance.Hazards], [.. guidance.Consents], [.. guidance.Costs.Where(c => c.NilWhileOpen)] }
            .SelectMany(r => r).ToFrozenDictionary(r => new ItemName(r.Head.Kind, r.Id));
    }

    /// <summary>An entry for each open question, what matters most first: the worst danger in which the answers differ, then whether the needed-by date is met, then the spread of the finish, then of the cost, then what can be found out by looking; then in written order.</summary>
    public static ImmutableArray<FindOut> Of(WayPlan plan, ImmutableArray<OpenQuestion> open, World assumed, int threads)
    {
        var run = plan.Scheduling.Trials;
        var rows = AnswerRows.Of(run, threads);
        var unknown = run.Setting.Walk.Unknown;
        var all = new FindOutFirst(plan, open, assumed);
        return
        [
            .. open.Select(q => all.Entry(q, unknown.IndexOf(q.Question), rows))
                .Where(f => !f.Rows.IsEmpty)
                .OrderByDescending(f => f.Danger)
                .ThenByDescending(f => f.DecidesDate)
                .ThenByDescending(f => f.FinishSpread)
                .ThenByDescending(f => f.CostSpread)
                .ThenBy(f => f.Question.Ease),
        ];
    }

    /// <summary>The unknown answers that no entry speaks of.</summary>
    public static ImmutableArray<Question> Idle(WayPlan plan, ImmutableArray<OpenQuestion> open)
    {
        var changing = open.Select(q => q.Question.Name).ToFrozenSet(StringComparer.Ordinal);
        return [.. plan.Case.Guidance.Questions.Where(q => plan.Case.Facts.Answers[q.Name].Standing == Standing.Unknown && !changing.Contains(q.Name))];
    }

    private FindOut Entry(OpenQuestion open, int place, ImmutableArray<ImmutableArray<AnswerRow>> tried)
    {
        var run = _plan.Scheduling.Trials;
        var affected = place < 0 ? null : run.Setting.Affected[place];
        var (money, days) = (affected is { } a && a.Lines.Length + a.Events.Length > 0, affected is { } b && b.Steps.Length + b.Events.Length > 0);
        var numbers = place < 0 ? [] : tried[place];
        ImmutableArray<FindOutRow> rows = place < 0
            ? [.. Candidates.Of(open.Question, _ => false).Select(c => new FindOutRow(c.Value, c.Share, null, null, null, Changes(open, c.Value)))]
            : [.. numbers.Select(n => Row(open, n, run.Setting.Walk.CandidatesOf(place), money, days))];
        var finishes = numbers.Where(_ => days).Select(n => n.Finish).ToArray();
        var sums = numbers.Where(_ => money).Select(n => n.Gross).ToArray();
        return new(
            open,
            _assumed.Taken.FirstOrDefault(t => t.Question.Name == open.Question.Name)?.Value,
            rows,
            DangerOf(rows),
            days && _plan.Schedule.NeededBy is { } day && numbers.Select(n => n.ShareBy(run.Horizon.Day(day)) > Half).Distinct().Count() > 1,
            finishes.Length == 0 ? 0 : finishes.Max(f => f.P50) - finishes.Min(f => f.P50),
            sums.Length == 0 ? 0 : (sums.Max(s => s.P50) - sums.Min(s => s.P50)) / Pennies,
            finishes.Any(f => f.P90 - f.P10 > run.Finish.P90 - run.Finish.P10) || sums.Any(s => (s.P90 - s.P10) / Pennies > run.Gross.P90 - run.Gross.P10));
    }

    private FindOutRow Row(OpenQuestion open, AnswerRow row, ImmutableArray<Candidate> candidates, bool money, bool days)
    {
        var horizon = _plan.Scheduling.Trials.Horizon;
        var answer = row.Answer == WorldWalk.None ? null : candidates[row.Answer].Value;
        return new(
            answer,
            Math.Round(row.Share, 9),
            money ? All(row.Gross, s => s / Pennies) : null,
            days ? All(row.Finish, horizon.Date) : null,
            days && _plan.Schedule.NeededBy is { } day ? Math.Round(row.ShareBy(horizon.Day(day)), 9) : null,
            answer is null ? [] : Changes(open, answer));
    }

    private int DangerOf(ImmutableArray<FindOutRow> rows)
    {
        var changes = rows.SelectMany((r, i) => r.Changes.Select(c => (Row: i, Change: c))).Where(c => _items[c.Change.Item] is Hazard).GroupBy(c => c.Change.Item);
        return changes.Where(c => c.Count() < rows.Length || c.Select(r => r.Change.State).Distinct().Count() > 1).Select(c => ((Hazard)_items[c.Key]).Before.Score).DefaultIfEmpty(0).Max();
    }

    // What waits for the answer, and what waits for another question that this answer makes needless.
    private ImmutableArray<ItemChange> Changes(OpenQuestion open, Value answer)
    {
        var learnt = Learnt(open.Question, answer);
        var lookup = FactDeriver.OnDemand(learnt, _plan.Case.Guidance, _plan.Case.Way);
        var needless = _open.Values.Where(q => learnt[q.Question.Name].Standing == Standing.NotAsked).OrderBy(q => q.Question.Name, StringComparer.Ordinal);
        return
        [
            .. open.WouldSettle.Concat(needless.SelectMany(q => q.WouldSettle)).Distinct().Where(i => _items.TryGetValue(i, out var rule) && Judge.Of(rule.Head.AppliesIf, _plan.Case.Lookup).Truth == Truth.Open)
                .Select(i => (Item: i, Judge.Of(_items[i].Head.AppliesIf, lookup).Truth))
                .Where(i => i.Truth != Truth.Open)
                .Select(i => new ItemChange(i.Item, i.Truth == Truth.Holds ? ItemState.Settled : ItemState.RuledOut)),
        ];
    }

    // A later question may not be asked any more.
    private AnswerSet Learnt(Question question, Value answer)
    {
        var answers = _plan.Case.Facts.Answers;
        var learnt = new Dictionary<string, Given.Answered>(answers.ByName, StringComparer.Ordinal) { [question.Name] = answers[question.Name] with { Standing = Standing.Known, Value = answer } };
        foreach (var later in _plan.Case.Guidance.Questions.Where(q => learnt[q.Name].Standing == Standing.Unknown && q.AskIf.Names.Any()))
        {
            if (Judge.Of(later.AskIf, name => learnt[name]).Truth == Truth.Fails)
            {
                learnt[later.Name] = learnt[later.Name] with { Standing = Standing.NotAsked };
            }
        }

        return answers with { ByName = learnt.ToFrozenDictionary(StringComparer.Ordinal) };
    }

    private static QuantileRange<TTo> All<TFrom, TTo>(Quantiles<TFrom> q, Func<TFrom, TTo> to)
        where TFrom : IComparable<TFrom> => new(to(q.Lowest), to(q.P10), to(q.P50), to(q.P80), to(q.P90), to(q.Highest));
}
