namespace GuideBuilder.Planning.Electrical;

/// <summary>Draws the sheet up again under each answer that a missing one could be, with the same arithmetic and the same verdicts, and keeps the lines that then differ. The sheet itself stays as little known as it is.</summary>
internal static class PossibleAnswers
{
    // The answer that gives the columns comes first; the others that a line hangs on are taken one by one beside it.
    private static readonly ImmutableArray<string> Asked = [HomeSupply.FuseQuestion, HomeSupply.AfterQuestion, HomeSupply.PhasesQuestion];

    /// <summary>One table for each of those questions that is open and has lines of its own.</summary>
    public static ImmutableArray<SheetCases> Of(ImmutableArray<SheetRow> lines, Lookup lookup, Func<Lookup, ImmutableArray<SheetRow>> draw)
    {
        var open = Asked.Select(name => lookup(name)).OfType<Given.Answered>().Where(a => a.Standing == Standing.Unknown).ToImmutableArray();
        var drawn = new Dictionary<string, FrozenDictionary<string, SheetRow>>(StringComparer.Ordinal);
        return [.. open.Select(column => Table(column, Worlds)).Where(t => !t.Lines.IsEmpty)];

        SheetCases Table(Given.Answered column, Func<ImmutableArray<(string, Value)>, FrozenDictionary<string, SheetRow>> worlds)
        {
            var hanging = lines.Where(l => open.FirstOrDefault(o => l.Open.Contains(o.Name)) == column);
            var answers = Answers(column.Question);
            return new(column.Name, answers, [.. hanging.SelectMany(l => Cases(l, column.Name, answers, [.. open.Where(o => o != column && l.Open.Contains(o.Name))], worlds))]);
        }

        FrozenDictionary<string, SheetRow> Worlds(ImmutableArray<(string Name, Value Value)> taken)
        {
            var key = string.Join('|', taken.Select(t => $"{t.Name}={t.Value}"));
            return drawn.TryGetValue(key, out var found) ? found : drawn[key] = draw(With(lookup, taken)).ToFrozenDictionary(r => r.Id, StringComparer.Ordinal);
        }
    }

    // Rows that come out the same under several of the other answers are one, with all of those answers.
    private static IEnumerable<SheetCase> Cases(
        SheetRow line, string column, ImmutableArray<Value> answers, ImmutableArray<Given.Answered> others, Func<ImmutableArray<(string, Value)>, FrozenDictionary<string, SheetRow>> worlds)
    {
        var found = new List<(string Shown, ImmutableArray<(string Question, ImmutableArray<Value> Answers)> Taken, ImmutableArray<SheetRow?> Rows)>();
        foreach (var taken in Combinations(others))
        {
            ImmutableArray<SheetRow?> rows = [.. answers.Select(a => worlds([(column, a), .. taken]).GetValueOrDefault(line.Id))];
            var shown = string.Join('|', rows.Select(Shown));
            var same = found.FindIndex(f => f.Shown == shown);
            if (same >= 0)
            {
                found[same] = found[same] with { Taken = [.. found[same].Taken.Zip(taken, (before, more) => (before.Question, before.Answers.Contains(more.Item2) ? before.Answers : before.Answers.Add(more.Item2)))] };
            }
            else
            {
                found.Add((shown, [.. taken.Select(t => (t.Item1, ImmutableArray.Create(t.Item2)))], rows));
            }
        }

        return found.Exists(f => f.Rows.Any(r => r is not null && Shown(r) != Shown(line)))
            ? found.Where(f => f.Rows.Any(r => r?.Result is not null)).Select(f => new SheetCase(line.Id, Deciding(f.Taken, others), f.Rows))
            : [];
    }

    // What comes out the same under every answer of a question does not hang on it.
    private static ImmutableArray<(string Question, ImmutableArray<Value> Answers)> Deciding(ImmutableArray<(string Question, ImmutableArray<Value> Answers)> taken, ImmutableArray<Given.Answered> others) =>
        [.. taken.Where(t => t.Answers.Length < Answers(others.First(o => o.Name == t.Question).Question).Length)];

    private static IEnumerable<ImmutableArray<(string, Value)>> Combinations(ImmutableArray<Given.Answered> others) => others.Aggregate(
        (IEnumerable<ImmutableArray<(string, Value)>>)[[]],
        (sets, other) => sets.SelectMany(set => Answers(other.Question).Select(answer => set.Add((other.Name, answer)))));

    private static string Shown(SheetRow? row) => row is null ? "" : $"{row.Result}/{row.Limit?.Worth}/{row.Verdict}";

    private static ImmutableArray<Value> Answers(Question question) =>
        question.Kind == QuestionKind.Quantity ? [.. question.IfUnknown.Select(v => (Value)new Value.Amount(v.Value))] : [.. question.Options.Select(o => (Value)new Value.Option(o.Id))];

    private static Lookup With(Lookup lookup, ImmutableArray<(string Name, Value Value)> taken) => name =>
        taken.FirstOrDefault(t => t.Name == name).Value is { } value && lookup(name) is Given.Answered answer ? answer with { Standing = Standing.Known, Value = value } : lookup(name);
}
