using System.Collections.Frozen;
using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>The hazard register of a home over every way that is still possible, without dates and trials.</summary>
internal static class HazardRegister
{
    /// <summary>Answers under the real guidance; a mistake fails the test.</summary>
    public static AnswerSet Answers(string words)
    {
        var read = AnswerReader.Read(new SourceText("home.yaml", Encoding.UTF8.GetBytes("handbook: {format: 1, id: home}\n" + words)), Content.Guidance);
        Findings.AreNone(read.Faults.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()));
        return read.Value!;
    }

    /// <summary>The ids of the hazards that are settled or open.</summary>
    public static FrozenSet<string> Of(AnswerSet answers)
    {
        var guidance = Content.Guidance;
        var before = FactDeriver.Derive(answers, guidance).Value!;
        return Items.Plan(guidance.Ways, name => before[name])
            .Where(w => w.IsPresent)
            .Select(w => FactDeriver.Under(answers, guidance, w.Item).Facts)
            .SelectMany(facts => Items.Plan(guidance.Hazards, name => facts[name]))
            .Where(h => h.IsPresent)
            .Select(h => h.Item.Id)
            .ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>The same home with one answer changed: an option, or null where nobody knows.</summary>
    public static AnswerSet With(this AnswerSet answers, string name, string? option)
    {
        var was = answers[name];
        var now = option is null ? was with { Standing = Standing.Unknown, Value = null } : was with { Standing = Standing.Known, Value = new Value.Option(option) };
        return answers with { ByName = answers.ByName.Select(p => p.Key == name ? KeyValuePair.Create(name, now) : p).ToFrozenDictionary(StringComparer.Ordinal) };
    }
}
