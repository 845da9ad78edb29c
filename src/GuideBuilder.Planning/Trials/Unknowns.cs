using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Trials;

/// <summary>The unknown questions that can change a way's steps or lines of money, in written order.</summary>
internal static class Unknowns
{
    /// <summary>Those under the reasons of open steps and lines and of open numbers, and those on which their being asked or their weights depend.</summary>
    public static ImmutableArray<Question> Of(WayCase way, IEnumerable<Because> reasons, IEnumerable<Cost> costs)
    {
        var wanted = reasons.Concat(costs.Select(c => Quantities.Reason(c, way)).OfType<Because>()).SelectMany(b => b.Unsettled).Select(q => q.Name).ToHashSet(StringComparer.Ordinal);
        var found = new List<Question>();
        foreach (var question in way.Guidance.Questions.Reverse().Where(q => wanted.Contains(q.Name) && way.Facts.Answers[q.Name].Standing == Standing.Unknown))
        {
            found.Add(question);
            wanted.UnionWith(question.AskIf.Names.Concat(question.WeightsIf.SelectMany(w => w.When.Names)));
        }

        found.Reverse();
        return [.. found];
    }
}
