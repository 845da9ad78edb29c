namespace GuideBuilder.Reading;

/// <summary>Goes through the questions in order and gives each its answer.</summary>
internal sealed class Answering(Node root, Guidance guidance, FaultList faults)
{
    private readonly Dictionary<string, Given.Answered> _answers = new(StringComparer.Ordinal);

    /// <summary>One answer for every question: known, unknown or not asked.</summary>
    public IReadOnlyCollection<Given.Answered> All()
    {
        foreach (var question in guidance.Questions)
        {
            _answers[question.Name] = Answer(question, Written(question));
        }

        return _answers.Values;
    }

    private Node? Written(Question question) => ((root as Mapping)?[question.Section] as Mapping)?[question.Id];

    private Given.Answered Answer(Question question, Node? node)
    {
        var asked = Judge.Of(question.AskIf, name => _answers[name]);
        if (asked.Truth == Truth.Fails)
        {
            if (node is not null)
            {
                faults.Add(ReadingFaults.NotAsked(node.Place, question.Name, RuledOutBy(asked)));
            }

            return new(question, Standing.NotAsked, null, null);
        }

        if (node is null || IsUnknown(question, node))
        {
            return new(question, Standing.Unknown, null, node?.Place);
        }

        var value = new AnswerValue(question, faults).Read(node);
        return new(question, value is null ? Standing.Unknown : Standing.Known, value, node.Place);
    }

    // Between quotes, unknown is a word like any other where a person's own words are asked for.
    private static bool IsUnknown(Question question, Node node) =>
        node is Scalar { Text: AnswerWords.Unknown } scalar
        && (scalar.Form == ScalarForm.Plain || question.Kind is not (QuestionKind.Text or QuestionKind.NumberName));

    private static string RuledOutBy(Judgement asked) => string.Join(" and ", asked.Deciding.Select(Describe).Distinct(StringComparer.Ordinal));

    private static string Describe(Leaf leaf) => leaf.Given switch
    {
        { Standing: Standing.NotAsked } given => $"`{given.Name}` is not asked either",
        Given.Answered { Place: { } place } given => $"`{given.Name}` is {Words(given.Value)} in line {Invariant($"{place.Line}")}",
        var given => $"`{given.Name}` is not answered so",
    };

    private static string Words(Value? value) => value switch
    {
        Value.Option option => option.Id,
        Value.Several several => several.Ids.IsEmpty ? Value.Several.None : string.Join(", ", several.Ids),
        Value.Amount amount => amount.Quantity.ToString(),
        Value.Day day => Invariant($"{day.Date:uuuu-MM-dd}"),
        _ => "not so",
    };
}
