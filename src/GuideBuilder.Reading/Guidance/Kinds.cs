namespace GuideBuilder.Reading;

/// <summary>The kinds of entries, as faults and reasons name them.</summary>
internal static class Kinds
{
    public const string Question = "question";
    public const string Fact = "fact";
    public const string Party = "party";
    public const string Way = "way";
    public const string Step = "step";
    public const string Cost = "cost";
    public const string Hazard = "hazard";
    public const string Consent = "consent";
    public const string Clock = "clock";
    public const string Meeting = "meeting";
    public const string Event = "chance event";
    public const string Source = "source";
    public const string Term = "glossary term";
    public const string Page = "page";
    public const string Letter = "letter";
    public const string Label = "label";
    public const string Price = "price";
    public const string Vat = "VAT rate";
    public const string Index = "price index";
    public const string Region = "region factor";
    public const string Holidays = "holiday list";
    public const string Nation = "nation";
    public const string Disclosure = "disclosure";
    public const string Language = "language";

    /// <summary>What a step makes and another needs; not an entry of its own.</summary>
    public const string Made = "thing made";

    /// <summary>Kinds whose ids share one space, because links and reasons name them by id alone.</summary>
    public static ImmutableArray<string> SharingIds { get; } = [Fact, Party, Way, Step, Cost, Hazard, Consent, Clock, Event, Source, Term, Page, Letter];
}
