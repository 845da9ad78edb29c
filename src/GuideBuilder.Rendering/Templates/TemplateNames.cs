using GuideBuilder.Rendering.Markup;
using GuideBuilder.Rendering.Pages;
using Scriban.Parsing;
using Scriban.Runtime;

namespace GuideBuilder.Rendering.Templates;

/// <summary>The values and functions that texts, pages and letters may use: the whole of what templates can name.</summary>
internal sealed class TemplateNames
{
    private readonly Plan _plan;
    private readonly Items _items;
    private readonly Phrases _labels;
    private readonly Dates _dates;
    private readonly Ranges _ranges;
    private readonly AnswerWords _answers;
    private readonly Discretion _may;

    private TemplateNames(Plan plan, Items items, Voice voice, Discretion may) =>
        (_plan, _items, _labels, _dates, _ranges, _answers, _may) = (plan, items, voice.Labels, voice.Dates, voice.Ranges, voice.Answers, may);

    /// <summary>The names for a plan.</summary>
    internal static ScriptObject Of(Plan plan, Items items, Voice voice, Discretion may)
    {
        var names = new TemplateNames(plan, items, voice, may);
        var all = new ScriptObject(StringComparer.Ordinal)
        {
            ["nation"] = plan.Nation.Id,
            ["body"] = new Function(1, names.Body),
            ["answer"] = new Function(1, (span, words) => names.Answer(span, words[0])),
            ["known"] = new Function(1, (span, words) => names.Given(span, words[0]) is { Standing: Standing.Known } given && may.Allows(given)),
            ["holds"] = new Function(2, (span, words) => names.Holds(names.Given(span, words[0]), words[1])),
            ["present"] = new Function(1, (span, words) => names.State(span, words[0]) != ItemState.RuledOut),
            ["settled"] = new Function(1, (span, words) => names.State(span, words[0]) == ItemState.Settled),
            ["start_of"] = new Function(1, (span, words) => names.Date(span, words[0], d => d.EarliestStart)),
            ["finish_of"] = new Function(1, (span, words) => names.Date(span, words[0], d => d.EarliestFinish)),
            ["book_by"] = new Function(1, (span, words) => names.Date(span, words[0], d => d.BookBy)),
            ["amount_of"] = new Function(1, (span, words) => names.Amount(span, words[0])),
            ["label"] = new Function(1, (_, words) => voice.Labels.Say(words[0])),
            ["block"] = new Function(1, (span, words) => new BlockCall(words[0], span)),
            ["missed"] = new Function(2, (span, words) => names.Missed(span, words[0]) ?? (object)Gap(words[1])),
            ["note"] = new Function(1, (_, words) => Gap(words[0])),
        };
        all.IsReadOnly = true;
        return all;
    }

    private static Ready Gap(string name) => new($"[{Escaping.CommonMark(name)}]({InlineReader.GapScheme}fill)");

    // What the log knows of the last visit that did not come about; null where it knows nothing. A note in the log is the household's own, and goes to nobody.
    private string? Missed(SourceSpan span, string what)
    {
        var missed = _plan.Answers.Log.Where(e => e.What == LogKind.Missed).OrderBy(e => e.On).LastOrDefault();
        return what switch
        {
            "date" => missed is null ? null : _dates.Long(missed.On),
            "party" => _plan.Parties.FirstOrDefault(p => p.Item.Id == missed?.Party) is { } party ? _labels.Mark(party.Item.Title) : null,
            "reference" => missed?.Reference,
            "supply" => _plan.Whereabouts.DarkSince is { } since ? _labels.Say("letter-dark-since", ("date", _dates.Long(since))) : null,
            _ => throw new TemplateFault(span, p => RenderingFaults.UnknownItem(p, "part of a missed visit", what, Nearest.To(what, ["date", "party", "reference", "supply"]))),
        };
    }

    // What rests on an answer that may not be told here is not told either.
    private ItemState State(SourceSpan span, string id)
    {
        var item = Item(span, id);
        return _items.Reason(item) is { } because && !_may.Allows(because) ? ItemState.RuledOut : _items.State(item);
    }

    private bool Holds(Given given, string option) => given is { Standing: Standing.Known } && _may.Allows(given) && given.Value switch
    {
        Value.Option one => one.Id == option,
        Value.Several several => several.Ids.Contains(option),
        _ => false,
    };

    private string Body(SourceSpan span, ImmutableArray<string> words) =>
        _plan.Nation.Bodies.GetValueOrDefault(words[0]) is { } body ? _labels.Mark(body)
        : throw new TemplateFault(span, p => RenderingFaults.UnknownItem(p, "body", words[0], Nearest.To(words[0], _plan.Nation.Bodies.Keys)));

    private object Answer(SourceSpan span, string name)
    {
        var given = Given(span, name);
        return _answers.Of(given) ?? (object)Gap(given is Given.Answered answered ? answered.Question.Label.Words : name);
    }

    private Given Given(SourceSpan span, string name)
    {
        if (name == CalculatedFact.Way)
        {
            return new Given.Set(name, new Value.Option(_plan.ChosenWay.Item.Id));
        }

        return _plan.Facts.Derived.TryGetValue(name, out var fact) ? fact
            : _plan.Answers.ByName.TryGetValue(name, out var answer) ? answer
            : throw new TemplateFault(span, p => RenderingFaults.UnknownItem(p, "answer or fact", name, Nearest.To(name, [.. _plan.Answers.ByName.Keys, .. _plan.Facts.Derived.Keys])));
    }

    private string Item(SourceSpan span, string id) =>
        _items.Find(id) is not null ? id : throw new TemplateFault(span, p => RenderingFaults.UnknownItem(p, "item", id, Nearest.To(id, _items.Ids)));

    private string Date(SourceSpan span, string id, Func<StepDates, LocalDate> which)
    {
        var step = _items.Step(id) ?? throw new TemplateFault(span, p => RenderingFaults.UnknownItem(p, "step", id, Nearest.To(id, _items.StepIds)));
        return step.Dates is { Done: false } && _plan.Schedule.Meetings.Any(m => m.IsHeld && m.Meeting == step.Step.Item.Meeting) ? _labels.Say("date-held")
            : step.Dates is { } dates ? _dates.Long(which(dates)) : _labels.Say("date-open");
    }

    private string Amount(SourceSpan span, string id)
    {
        var cost = _items.Cost(id) ?? throw new TemplateFault(span, p => RenderingFaults.UnknownItem(p, "cost", id, Nearest.To(id, _items.CostIds)));
        return _ranges.Money(cost.Gross, _plan.Nation.Currency);
    }
}
