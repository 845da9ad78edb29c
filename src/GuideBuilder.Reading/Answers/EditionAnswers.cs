namespace GuideBuilder.Reading;

/// <summary>Makes of all that was answered what an edition may know. What it may not print it is not told: it plans as if nobody had answered, so that nothing can show through.</summary>
public static class EditionAnswers
{
    /// <summary>The answers for an edition; wrong settings for it are faults.</summary>
    public static Staged<AnswerSet> Of(AnswerSet answers, Guidance guidance, EditionKind edition)
    {
        var faults = new FaultList();
        var at = new Place(answers.FileName, 1, 1);
        if (edition == EditionKind.Public && !answers.Handbook.HasOwnId)
        {
            faults.Add(ReadingFaults.PublicNeedsId(at));
        }

        if (edition == EditionKind.Customer && guidance.Imprint is null)
        {
            faults.Add(ReadingFaults.CustomerNeedsImprint(at));
        }

        return Staged<AnswerSet>.From(edition == EditionKind.Householder ? answers : Withhold(answers, guidance, edition), faults.Found);
    }

    // In the order of asking, since a question may be asked only because of an answer that is withheld; the public edition has no dates and no history either.
    private static AnswerSet Withhold(AnswerSet answers, Guidance guidance, EditionKind edition)
    {
        var may = Disclosure.Most(edition);
        var isPublic = edition == EditionKind.Public;
        var told = new Dictionary<string, Given.Answered>(StringComparer.Ordinal);
        foreach (var question in guidance.Questions)
        {
            var given = answers[question.Name];
            var isAsked = Judge.Of(question.AskIf, name => told[name]).Truth != Truth.Fails;
            var isTold = given.Standing == Standing.Known && may.Contains(question.Data) && !(isPublic && question.Kind is QuestionKind.Date or QuestionKind.Days or QuestionKind.Text or QuestionKind.NumberName);
            told[question.Name] = !isAsked ? new(question, Standing.NotAsked, null, null)
                : isTold ? given
                : new(question, Standing.Unknown, null, null);
        }

        return answers with
        {
            FileName = isPublic ? "" : answers.FileName,
            Handbook = isPublic ? answers.Handbook with { FilledInBy = null, Imprint = null } : answers.Handbook,
            ByName = told.ToFrozenDictionary(StringComparer.Ordinal),
            Papers = edition == EditionKind.Customer ? answers.Papers : [],
            Log = isPublic ? [] : [.. answers.Log.Select(e => edition == EditionKind.Customer ? e : e with { Amount = null, Reference = null, Note = null })],
        };
    }
}
