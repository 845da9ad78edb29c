namespace GuideBuilder.Reading;

/// <summary>Reads an answers file against the guidance: every question known, unknown or not asked, every mistake in one run.</summary>
public static class AnswerReader
{
    /// <summary>The answers in a file, checked against the questions and ids of the guidance.</summary>
    public static Staged<AnswerSet> Read(SourceText answers, Guidance guidance)
    {
        var faults = new FaultList();
        var root = YamlText.Read(answers, Budget.Answers, faults);
        return Staged<AnswerSet>.From(root is null ? null : new AnswersFile(answers.Path, root, guidance, faults).Read(), faults.Found);
    }

    /// <summary>An answers file as it is written, with its comments; it must read without a fault.</summary>
    public static Staged<WrittenAnswers> ReadWritten(SourceText answers, Guidance guidance)
    {
        var faults = new FaultList();
        return Read(answers, guidance)
            .Then(_ => Staged<WrittenAnswers>.From(WrittenReader.Read(YamlText.Read(answers, Budget.Answers, faults)!, YamlText.Comments(answers, Budget.Answers)), faults.Found));
    }
}
