using GuideBuilder.Rendering.Drawings;
using GuideBuilder.Rendering.Pages;
using GuideBuilder.Rendering.Sheets;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Makes the blocks of one name from a plan.</summary>
internal delegate ImmutableArray<Block> BlockMaker(Bindery bindery);

/// <summary>Every block that an editor can call by name.</summary>
internal static class BlockMakers
{
    /// <summary>The name of the block that looks over the finished pages; a page that calls it is made once more when the others are there.</summary>
    internal const string Index = "index";

    /// <summary>The blocks of the back of the book, where every term stands; the index does not lead there.</summary>
    internal static ImmutableArray<string> BackMatter { get; } = [Index, "glossary", "sources", "because", "open-questions", "open-questions-more"];

    /// <summary>The makers by name.</summary>
    internal static FrozenDictionary<string, BlockMaker> ByName { get; } = new Dictionary<string, BlockMaker>(StringComparer.Ordinal)
    {
        ["stop-signs"] = HazardPanels.StopSigns,
        ["changes"] = SinceBlocks.All,
        ["wish"] = CoverBlocks.Wish,
        ["key-figures"] = FigureBlocks.All,
        ["where-in-short"] = WhereBlocks.InShort,
        ["before-you-pay"] = WhereBlocks.BeforeYouPay,
        ["where-you-are"] = WhereBlocks.WhereYouAre,
        ["next-actions"] = CoverBlocks.NextActions,
        ["top-hazards"] = WorstHazards.Top,
        ["find-out-first"] = OpenBlocks.FindOutFirst,
        ["emergency-numbers"] = CoverBlocks.EmergencyNumbers,
        ["contents"] = BackBlocks.Contents,
        ["whose-is-it"] = WhoseIsIt.Of,
        ["parties"] = PartyBlocks.All,
        ["ways"] = WayBlocks.All,
        ["sequence-calendar"] = SequenceCalendar.Of,
        ["steps"] = StepBlocks.Undated,
        ["day-timetable"] = DayTimetable.Of,
        ["day-order"] = DayTimetable.Order,
        ["day-turns"] = DayTimetable.Turns,
        ["if-they-do-not-come"] = DayBlocks.IfTheyDoNotCome,
        ["works-days"] = DayBlocks.Days,
        ["eve"] = DayBlocks.Eve,
        ["prospect"] = ProspectBlocks.All,
        ["calendar-file"] = BackBlocks.CalendarLink,
        ["duties"] = StepBlocks.Duties,
        ["hole-drawing"] = HoleDrawing.Of,
        ["cabinet-drawing"] = CabinetDrawing.Of,
        ["costs"] = MoneyBlocks.Costs,
        ["cost-range"] = CostRange.Of,
        ["cash-flow"] = CashBlocks.Of,
        ["finish-chances"] = FinishChances.Of,
        ["money-so-far"] = PaidBlocks.SoFar,
        ["quotations"] = QuotationBlocks.OnMoney,
        ["papers"] = MoneyBlocks.Papers,
        ["fatal-hazards"] = WorstHazards.Fatal,
        ["data-files"] = BackBlocks.DataFiles,
        ["hazards"] = HazardPanels.Register,
        ["off-supply"] = StepBlocks.OffSupply,
        ["consents"] = PaperworkBlocks.Consents,
        ["clocks"] = ClockBlocks.All,
        ["electrical-sheet"] = ElectricalBlock.Of,
        ["ground-sheet"] = GroundBlock.Of,
        ["siting"] = SitingBlock.Of,
        ["supply-number"] = SupplyBlock.Of,
        ["letters"] = PaperworkBlocks.Letters,
        ["open-questions"] = OpenBlocks.All,
        ["open-questions-more"] = OpenBlocks.More,
        ["unasked"] = OpenBlocks.Unasked,
        ["assumptions"] = OpenBlocks.Assumptions,
        ["because"] = ReasonBlocks.All,
        ["method"] = ReasonBlocks.Method,
        ["imprint"] = ImprintBlocks.Head,
        ["imprint-closing"] = ImprintBlocks.Closing,
        ["imprint-terms"] = ImprintBlocks.Terms,
        ["in-our-price"] = ImprintBlocks.InPrice,
        ["ours-to-be-priced"] = ImprintBlocks.ToBePriced,
        ["price-rests-on"] = ImprintBlocks.RestsOn,
        ["done-by-others"] = ImprintBlocks.ByOthers,
        ["not-included"] = ImprintBlocks.NotIncluded,
        ["prices-hold"] = ImprintBlocks.PricesHold,
        ["certificates-due"] = ImprintBlocks.Certificates,
        ["glossary"] = BackBlocks.Glossary,
        ["sources"] = BackBlocks.Sources,
        [Index] = IndexBlock.All,
    }.ToFrozenDictionary(StringComparer.Ordinal);
}
