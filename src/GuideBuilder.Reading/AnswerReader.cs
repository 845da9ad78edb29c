namespace GuideBuilder.Reading;

/// <summary>Reads an answers file against the guidance: every question known, unknown or not asked, every mistake in one run.</summary>
public static class AnswerReader
{
    /// <summary>The answers in a file, checked against the questions and ids of the guidance, and against the day on which they are read; without one, what lies ahead or too far off is not told.</summary>
    public static Staged<AnswerSet> Read(SourceText answers, Guidance guidance, LocalDate? today = null) => Read(answers, guidance, mayBeUnfinished: false, today);

    /// <summary>What an answers file that is still being written says so far: an answer to every question, and the faults, each with the question's full name for a path. What is missing is no fault.</summary>
    public static (FrozenDictionary<string, Given.Answered> Answers, ImmutableArray<Fault> Faults) ReadSoFar(WrittenAnswers written, Guidance guidance)
    {
        var faults = new FaultList();
        var answers = new Answering(WrittenNodes.Of(written, faults), guidance, faults).All();
        SupplyNumberCheck.Check(answers, guidance.Tables, faults);
        return (answers.ToFrozenDictionary(a => a.Name, StringComparer.Ordinal), [.. faults.Found]);
    }

    /// <summary>An answers file as it is written, with its comments; it must read without a fault.</summary>
    public static Staged<WrittenAnswers> ReadWritten(SourceText answers, Guidance guidance) => ReadWritten(answers, guidance, mayBeUnfinished: false);

    /// <summary>The same for a file that somebody has begun: the answers that every file needs may still be missing.</summary>
    public static Staged<WrittenAnswers> ReadUnfinished(SourceText answers, Guidance guidance) => ReadWritten(answers, guidance, mayBeUnfinished: true);

    private static Staged<AnswerSet> Read(SourceText answers, Guidance guidance, bool mayBeUnfinished, LocalDate? today)
    {
        var faults = new FaultList();
        var root = YamlText.Read(answers, Budget.Answers, faults);
        return Staged<AnswerSet>.From(root is null ? null : new AnswersFile(answers.Path, root, guidance, new DayReach(today, faults), faults).Read(mayBeUnfinished), faults.Found);
    }

    private static Staged<WrittenAnswers> ReadWritten(SourceText answers, Guidance guidance, bool mayBeUnfinished)
    {
        var faults = new FaultList();
        return Read(answers, guidance, mayBeUnfinished, null)
            .Then(_ => Staged<WrittenAnswers>.From(WrittenReader.Read(YamlText.Read(answers, Budget.Answers, faults)!, YamlText.Comments(answers, Budget.Answers)), faults.Found));
    }
}
