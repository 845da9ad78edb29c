namespace GuideBuilder.Reading;

/// <summary>What can only be seen once every entry is read.</summary>
internal static class GuidanceChecks
{
    /// <summary>Adds every fault that lies between entries.</summary>
    public static void Run(Guidance guidance, Desk desk)
    {
        CheckNations(guidance, desk);
        NumberChecks.Run(guidance, desk.Faults);
        CheckIndexes(guidance, desk.Faults);
        OptionTableChecks.Run(guidance, desk);
        CheckWays(guidance, desk.Faults);
        CheckFacts(guidance, desk.Faults);
        CheckSteps(guidance, desk.Faults);
        if (!desk.Faults.HasErrors)
        {
            FactRowChecks.Run(guidance, desk.Registry, desk.Faults);
            OptionTableChecks.RunRows(guidance, desk);
        }
    }

    private static void CheckNations(Guidance guidance, Desk desk)
    {
        if (!desk.Registry.IsComplete || guidance.Nations.IsEmpty)
        {
            return;
        }

        var question = guidance.Questions.FirstOrDefault(q => q.Name == AnswerWords.Nation);
        if (question is not { Kind: QuestionKind.Choice })
        {
            desk.Faults.Add(ReadingFaults.NationQuestion(question?.Place ?? guidance.Nations[0].Place, "Add the question `nation`, a choice, to questions/home.yaml."));
            return;
        }

        foreach (var option in question.Options.Where(o => guidance.Nations.All(n => n.Id != o.Id)))
        {
            desk.Faults.Add(ReadingFaults.NationQuestion(option.Place, $"`{option.Id}` is no nation of guidance.yaml."));
        }
    }

    private static void CheckIndexes(Guidance guidance, FaultList faults)
    {
        foreach (var price in guidance.Tables.Prices)
        {
            if (guidance.Tables.Indexes.FirstOrDefault(i => i.Id == price.Index) is { } index && !index.ByYear.ContainsKey(price.Year))
            {
                faults.Add(ReadingFaults.YearNotInIndex(price.Place, price.Year, price.Index));
            }
        }
    }

    // Whatever a household answers, a way without a condition remains.
    private static void CheckWays(Guidance guidance, FaultList faults)
    {
        if (!guidance.Ways.IsEmpty && guidance.Ways.All(w => w.Head.AppliesIf != Condition.Always))
        {
            faults.Add(ReadingFaults.NoWayRemains(guidance.Ways[^1].Head.Place));
        }
    }

    // The way is a fact too: it follows from what the ways ask about.
    private static void CheckFacts(Guidance guidance, FaultList faults)
    {
        var needs = guidance.Facts.DistinctBy(f => f.Id).ToDictionary(f => f.Id, f => f.Rows.SelectMany(r => r.When.Names).ToList(), StringComparer.Ordinal);
        needs[CalculatedFact.Way] = [.. guidance.Ways.SelectMany(w => w.Head.AppliesIf.Names.Concat(w.MeetsWishIf.Names))];
        foreach (var circle in Circles.In(guidance.Facts.Select(f => f.Id), name => needs.GetValueOrDefault(name) ?? []))
        {
            faults.Add(ReadingFaults.FactCircle(guidance.Facts.First(f => f.Id == circle[0]).Head.Place, circle));
        }
    }

    private static void CheckSteps(Guidance guidance, FaultList faults)
    {
        var after = guidance.Steps.DistinctBy(s => s.Id).ToDictionary(s => s.Id, s => s.After.Select(l => l.Step).ToList(), StringComparer.Ordinal);
        foreach (var circle in Circles.In(guidance.Steps.Select(s => s.Id), id => after.GetValueOrDefault(id) ?? []))
        {
            faults.Add(ReadingFaults.StepCircle(guidance.Steps.First(s => s.Id == circle[0]).Head.Place, circle));
        }
    }
}
