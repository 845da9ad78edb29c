namespace GuideBuilder.Reading;

/// <summary>Makes of all that was answered what an edition is planned from, and what it may print. Only the public edition is planned as if nobody had answered what it may not print; the others are planned on everything, since a firm that takes other days than the household has would come on the wrong one.</summary>
public static class EditionAnswers
{
    /// <summary>The answers that an edition is planned from; wrong settings for it are faults.</summary>
    public static Staged<AnswerSet> Of(AnswerSet answers, Guidance guidance, EditionKind edition)
    {
        var faults = new FaultList();
        var at = new Place(answers.FileName, 1, 1);
        if (edition == EditionKind.Customer && guidance.Imprint is null)
        {
            faults.Add(ReadingFaults.CustomerNeedsImprint(at));
        }

        if (edition == EditionKind.Public && PublicFault(answers.Handbook, at) is { } fault)
        {
            faults.Add(fault);
        }

        return Staged<AnswerSet>.From(edition == EditionKind.Public ? Printed(answers, guidance, edition) : answers, faults.Found);
    }

    // The id names the folder and stands on every page: that of a private book is often a street or a name.
    private static Fault? PublicFault(HandbookSettings handbook, Place at) =>
        handbook.PublicId is not null ? null
        : !handbook.HasOwnId ? ReadingFaults.PublicNeedsId(at)
        : handbook.Edition != EditionKind.Public ? ReadingFaults.PublicIdNotGiven(at, handbook.Id)
        : null;

    /// <summary>What an edition may print: any other answer is unknown, in the order of asking, since a question may be asked only because of an answer that is withheld; the public edition has no dates and no history either.</summary>
    public static AnswerSet Printed(AnswerSet answers, Guidance guidance, EditionKind edition)
    {
        if (edition == EditionKind.Householder)
        {
            return answers;
        }

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
            Handbook = isPublic ? answers.Handbook with { Id = answers.Handbook.PublicId ?? answers.Handbook.Id, PublicId = null, FilledInBy = null, Imprint = null } : answers.Handbook,
            ByName = told.ToFrozenDictionary(StringComparer.Ordinal),
            Papers = edition == EditionKind.Customer ? answers.Papers : [],
            Log = isPublic ? [] : [.. answers.Log.Select(e => edition == EditionKind.Customer ? e : e with { Amount = null, Reference = null, Note = null })],
        };
    }
}
