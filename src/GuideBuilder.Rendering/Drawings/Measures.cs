using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>Reads lengths and areas for drawings out of answers and facts.</summary>
internal static class Measures
{
    /// <summary>The known quantity of that answer or fact in its base unit; null when it is not known or not there.</summary>
    internal static decimal? Of(Bindery bindery, string name)
    {
        Given? given = bindery.Plan.Facts.Derived.TryGetValue(name, out var fact) ? fact : bindery.Plan.Answers.ByName.GetValueOrDefault(name);
        return given is { Standing: Standing.Known, Value: Value.Amount amount } ? amount.Quantity.Base : null;
    }

    /// <summary>A length as drawings write it: metres to two places.</summary>
    internal static string Metres(decimal length) => Invariant($"{length:0.##} m");
}
