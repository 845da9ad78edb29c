using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

internal static class SequenceCalendar
{
    internal static ImmutableArray<Block> Of(Bindery bindery) => bindery.Plan.Ways.IsEmpty ? [] : [];
}
