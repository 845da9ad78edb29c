namespace GuideBuilder.Rendering.Wording;

/// <summary>The fixed phrases that a reader sees, out of labels.yaml; a missing one is a fault and prints its id.</summary>
internal sealed class Phrases
{
    private readonly FrozenDictionary<string, Label> _labels;
    private readonly FaultList _faults;
    private readonly string _language;

    internal Phrases(FrozenDictionary<string, Label> labels, FaultList faults, string language = LocalText.Original) => (_labels, _faults, _language) = (labels, faults, language);

    /// <summary>Words of the guidance inside a phrase, marked where they are not in its language.</summary>
    internal string Mark(LocalText text) => Tongues.Mark(text, _language);

    /// <summary>Whether there is such a phrase.</summary>
    internal bool Has(string id) => _labels.ContainsKey(id);

    /// <summary>The phrase, with each name in braces replaced by its value.</summary>
    internal string Say(string id, params (string Name, string Value)[] values) => Fill(Find(id) is { } label ? Mark(label.One) : id, values);

    /// <summary>The phrase in the form for that number, which stands for {n} in it.</summary>
    internal string Count(string id, decimal number, params (string Name, string Value)[] values)
    {
        var label = Find(id);
        var form = number == 1 ? label?.One : label?.Other;
        return Fill(form is null ? id : Mark(form), [("n", Figures.Plain(number)), .. values]);
    }

    /// <summary>The phrase as a run of words in which some names stand for phrases.</summary>
    internal Phrase Compose(string id, params (string Name, Phrase Value)[] values)
    {
        var label = Find(id)?.One;
        var said = Parts(label?.Words ?? id, values);
        return label is null || label.Language == _language ? said : Phrase.Of(new Inline.InLanguage(label.Language, said));
    }

    private static Phrase Parts(string rest, (string Name, Phrase Value)[] values)
    {
        var said = Phrase.Empty;
        while (rest.Length > 0)
        {
            var open = rest.IndexOf('{', StringComparison.Ordinal);
            var shut = open < 0 ? -1 : rest.IndexOf('}', open);
            if (shut < 0)
            {
                return said + Phrase.Of(rest);
            }

            var name = rest[(open + 1)..shut];
            said = said + Phrase.Of(rest[..open]) + values.Where(v => v.Name == name).Select(v => v.Value).FirstOrDefault(Phrase.Empty);
            rest = rest[(shut + 1)..];
        }

        return said;
    }

    private Label? Find(string id)
    {
        if (_labels.TryGetValue(id, out var label))
        {
            return label;
        }

        _faults.Add(RenderingFaults.LabelMissing(id));
        return null;
    }

    private static string Fill(string words, (string Name, string Value)[] values) =>
        values.Aggregate(words, (all, next) => all.Replace("{" + next.Name + "}", next.Value, StringComparison.Ordinal));
}
