namespace GuideBuilder.Planning.Worlds;

/// <summary>A way the home may turn out to be: every question definite, with the share that this world has among all, and what it takes for each unknown answer, in written order.</summary>
internal sealed record World(AnswerSet Answers, double Share, ImmutableArray<Assumption> Taken)
{
    /// <summary>The world that takes what is assumed: the base plan stands on it.</summary>
    public static World Assumed(AnswerSet answers, ImmutableArray<Question> questions) =>
        Of(answers, questions, (_, candidates) => candidates.First(c => c.Assumed));

    /// <summary>Walks the questions in written order, asks again which are asked, and lets the chooser take one candidate for each unknown answer.</summary>
    public static World Of(AnswerSet answers, ImmutableArray<Question> questions, Func<Question, ImmutableArray<Candidate>, Candidate> choose)
    {
        var definite = new Dictionary<string, Given.Answered>(StringComparer.Ordinal);
        var taken = ImmutableArray.CreateBuilder<Assumption>();
        var share = 1d;
        foreach (var question in questions)
        {
            var given = answers[question.Name];
            if (given.Standing == Standing.Unknown && Take(question, definite, choose) is { } candidate)
            {
                share *= candidate.Share;
                taken.Add(new(question, candidate.Value));
                given = new(question, Standing.Known, candidate.Value, null);
            }

            definite[question.Name] = given.Standing == Standing.Unknown ? new(question, Standing.NotAsked, null, null) : given;
        }

        return new(answers with { ByName = definite.ToFrozenDictionary(StringComparer.Ordinal) }, share, taken.ToImmutable());
    }

    // Null where the world does not ask the question, or where its answer stays blank.
    private static Candidate? Take(Question question, Dictionary<string, Given.Answered> earlier, Func<Question, ImmutableArray<Candidate>, Candidate> choose)
    {
        bool Holds(Condition condition) => Judge.Of(condition, name => earlier[name]).Truth == Truth.Holds;
        var candidates = Holds(question.AskIf) ? Candidates.Of(question, Holds) : [];
        return candidates.IsEmpty ? null : choose(question, candidates);
    }
}
