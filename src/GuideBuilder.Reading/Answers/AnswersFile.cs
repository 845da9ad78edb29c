namespace GuideBuilder.Reading;

/// <summary>Reads the sections of one answers file.</summary>
internal sealed class AnswersFile(string path, Node root, Guidance guidance, DayReach reach, FaultList faults)
{
    private string FileName => path[(path.LastIndexOfAny(['/', '\\']) + 1)..];

    /// <summary>The whole set, with stand-ins where there are faults.</summary>
    public AnswerSet Read(bool mayBeUnfinished)
    {
        var fields = new Fields(root, "an answers file", faults);
        var handbook = fields.Need("handbook", (node, _) => new HandbookReader(FileName, guidance.Head.Languages, faults).Read(node), HandbookReader.StandIn);
        var sections = guidance.Questions.Select(q => q.Section).Distinct(StringComparer.Ordinal).ToList();
        foreach (var section in sections)
        {
            CheckKeys(fields.Node(section), section);
        }

        var answers = new Answering(root, guidance, faults).All();
        if (!mayBeUnfinished)
        {
            CheckNeeded(fields, answers);
        }

        SupplyNumberCheck.Check(answers, guidance.Tables, faults);
        reach.Check(answers);
        var history = new HistoryReader(guidance, Currency(answers), reach, faults);
        var set = new AnswerSet(
            FileName,
            handbook,
            answers.ToFrozenDictionary(a => a.Name, StringComparer.Ordinal),
            fields.Find("papers", Values.ListOf((node, _) => history.ReadPaper(node)), []),
            fields.Find("log", Values.ListOf((node, _) => history.ReadEvent(node)), []));
        LogOrder.Check(set.Log, guidance.Steps, faults);
        fields.Close();
        return set;
    }

    private void CheckKeys(Node? node, string section)
    {
        if (node is null)
        {
            return;
        }

        var fields = new Fields(node, $"section `{section}`", faults);
        var ids = guidance.Questions.Where(q => q.Section == section).Select(q => q.Id).ToList();
        foreach (var entry in node is Mapping mapping ? mapping.Entries.Where(e => !ids.Contains(e.Key.Text)) : [])
        {
            var elsewhere = guidance.Questions.Where(q => q.Id == entry.Key.Text).Select(q => q.Section);
            faults.Add(Fields.DividedByComma(entry) ?? ReadingFaults.UnknownQuestion(entry.Key.Place, fields.What, entry.Key.Text, ids, elsewhere));
        }
    }

    private void CheckNeeded(Fields fields, IReadOnlyCollection<Given.Answered> answers)
    {
        var nation = answers.FirstOrDefault(a => a.Name == AnswerWords.Nation);
        if (nation is { Place: null } or { Standing: Standing.Unknown, Place: not null } && !HasFaultAt(nation.Place))
        {
            faults.Add(ReadingFaults.NationNeeded(nation.Place ?? fields.Node("home")?.Place ?? fields.Place));
        }

        if (fields.Node(AnswerWords.Wish) is null or Mapping { Entries.IsEmpty: true })
        {
            faults.Add(ReadingFaults.WishNeeded(fields.Node(AnswerWords.Wish)?.Place ?? fields.Place));
        }
    }

    private bool HasFaultAt(Place? place) => faults.Found.Any(f => f.Place == place);

    private Unit? Currency(IEnumerable<Given.Answered> answers) =>
        answers.FirstOrDefault(a => a.Name == AnswerWords.Nation)?.Value is Value.Option option
            ? guidance.Nations.FirstOrDefault(n => n.Id == option.Id)?.Currency
            : null;
}
