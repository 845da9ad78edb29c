namespace GuideBuilder.Model;

/// <summary>A chance event of a step (id), the share of trials in which it happens, and the line of what it costs then (null for nothing).</summary>
public sealed record PlannedEvent(string Step, ChanceEvent Event, double Share, PlannedCost? Cost);
