using System.Text;
using System.Text.Json;
using GuideBuilder.Rendering.Questionnaire;

namespace GuideBuilder.Rendering.Form;

/// <summary>What the script of the page needs to know: sections, questions with their conditions, units, and its words. Written so that it can stand in a block of the page that runs nothing.</summary>
internal sealed class FormData(Guidance guidance, Phrases phrases, FaultList faults)
{
    private static readonly ImmutableArray<string> Words =
    [
        "progress", "kept", "not-kept", "kept-unreadable", "cannot-keep", "loaded", "not-plain", "not-here", "first-correct", "downloaded", "downloaded-short", "cleared",
        "fault-number", "fault-unit", "fault-range", "fault-pence", "fault-vat", "fault-day", "fault-span", "fault-year", "fault-option", "fault-line",
    ];

    /// <summary>The name of the file that the page makes.</summary>
    internal const string FileName = "answers.yaml";

    /// <summary>The block, as JSON.</summary>
    internal string Write()
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            json.WriteString("file", FileName);
            json.WriteString("head", " " + phrases.Say("answers-file-head"));
            Sections(json);
            json.WriteStartObject("labels");
            foreach (var (name, label) in PlainLayout.Names(guidance, phrases).OrderBy(n => n.Key, StringComparer.Ordinal))
            {
                json.WriteString(name, label);
            }

            json.WriteEndObject();
            Units(json);
            json.WriteStartObject("words");
            foreach (var word in Words)
            {
                json.WriteString(word, phrases.Say("form-" + word));
            }

            json.WriteEndObject();
            json.WriteStartArray("questions");
            foreach (var question in guidance.Questions)
            {
                Question(json, question);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.ToArray());
    }

    /// <summary>The kind of a question for the script: yes and no are options.</summary>
    internal static string KindOf(QuestionKind kind) => kind switch
    {
        QuestionKind.Choice or QuestionKind.YesNo => "choice",
        QuestionKind.Several => "several",
        QuestionKind.Quantity => "quantity",
        QuestionKind.Date => "day",
        QuestionKind.Days => "days",
        QuestionKind.Text => "text",
        QuestionKind.NumberName => "number-name",
        _ => throw new UnreachableException(),
    };

    private void Sections(Utf8JsonWriter json)
    {
        json.WriteStartArray("sections");
        foreach (var section in PlainLayout.Sections(guidance))
        {
            json.WriteStartObject();
            json.WriteString("key", section);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("isAsked");
        foreach (var section in guidance.Questions.Select(q => q.Section).Distinct(StringComparer.Ordinal))
        {
            json.WriteBoolean(section, true);
        }

        json.WriteEndObject();
    }

    private static void Units(Utf8JsonWriter json)
    {
        json.WriteStartObject("units");
        foreach (var (spelling, unit) in Enum.GetValues<Dimension>().SelectMany(Unit.SpellingsOf))
        {
            json.WriteStartObject(spelling);
            json.WriteString("dimension", unit.Dimension.ToString());
            json.WriteNumber("size", SmallestUnits.Size(unit));
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private void Question(Utf8JsonWriter json, Question question)
    {
        json.WriteStartObject();
        json.WriteString("name", question.Name);
        json.WriteString("kind", KindOf(question.Kind));
        if (!question.Options.IsEmpty)
        {
            json.WriteStartArray("options");
            foreach (var option in question.Options)
            {
                json.WriteStringValue(option.Id);
            }

            json.WriteEndArray();
        }

        if (question.Range is { } range)
        {
            json.WriteString("unit", range.Unit.Symbol);
            json.WriteString("example", FormQuestions.Amount(range, phrases));
            Number(json, "least", new Quantity(range.Least, range.Unit), question.Place);
            if (range.Most != decimal.MaxValue)
            {
                Number(json, "most", new Quantity(range.Most, range.Unit), question.Place);
            }
        }

        if (question.AskIf is not Condition.AllOf { Parts.IsEmpty: true })
        {
            json.WritePropertyName("ask");
            Ask(json, question.AskIf);
        }

        json.WriteEndObject();
    }

    private void Ask(Utf8JsonWriter json, Condition condition)
    {
        json.WriteStartObject();
        switch (condition)
        {
            case Condition.AllOf all:
                Parts(json, "all", all.Parts);
                break;
            case Condition.AnyOf any:
                Parts(json, "any", any.Parts);
                break;
            case Condition.NoneOf none:
                Parts(json, "none", none.Parts);
                break;
            case Condition.Asks asks:
                json.WriteString("name", asks.Name);
                Comparison(json, asks);
                break;
            default:
                throw new UnreachableException();
        }

        json.WriteEndObject();
    }

    private void Parts(Utf8JsonWriter json, string name, ImmutableArray<Condition> parts)
    {
        json.WriteStartArray(name);
        foreach (var part in parts)
        {
            Ask(json, part);
        }

        json.WriteEndArray();
    }

    private void Comparison(Utf8JsonWriter json, Condition.Asks asks)
    {
        switch (asks.Comparison)
        {
            case Model.Comparison.IsOneOf one:
                json.WriteStartArray("is");
                foreach (var option in one.Options)
                {
                    json.WriteStringValue(option);
                }

                json.WriteEndArray();
                break;
            case Model.Comparison.Within within:
                End(json, "from", within.From, asks.Place);
                End(json, "to", within.To, asks.Place);
                break;
            default:
                throw new UnreachableException();
        }
    }

    private void End(Utf8JsonWriter json, string name, Limit? limit, Place place)
    {
        if (limit?.Date is { } day)
        {
            json.WriteString(name, NodaTime.Text.LocalDatePattern.Iso.Format(day));
        }
        else if (limit?.Quantity is { } quantity)
        {
            Number(json, name, quantity, place);
        }

        if (limit is { Included: false })
        {
            json.WriteBoolean(name + "Open", true);
        }
    }

    private void Number(Utf8JsonWriter json, string name, Quantity quantity, Place place)
    {
        if (SmallestUnits.Of(quantity) is { } whole)
        {
            json.WriteNumber(name, whole);
        }
        else
        {
            faults.Add(RenderingFaults.TooFineForTheForm(place, quantity));
        }
    }
}
