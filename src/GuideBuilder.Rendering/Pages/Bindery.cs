using GuideBuilder.Rendering.Data;
using GuideBuilder.Rendering.Markup;
using GuideBuilder.Rendering.Templates;
using Scriban.Runtime;

namespace GuideBuilder.Rendering.Pages;

/// <summary>Everything that makes of a plan the pages of a book: the plan, the guidance, the words, and one way to read a text.</summary>
internal sealed record Bindery(Plan Plan, Guidance Guidance, Phrases Labels, FaultList Faults)
{
    private readonly Dictionary<(LocalText Text, int Level, string Language, string May), ImmutableArray<Block>> _read = [];

    /// <summary>The pages of the book in reading order, by title.</summary>
    internal ImmutableArray<OutlineLine> Outline { get; init; } = [];

    /// <summary>What an earlier binding said; null when none was given.</summary>
    internal EarlierPlan? Earlier { get; init; }

    /// <summary>The pages that are bound beside the book: short editions for paper.</summary>
    internal ImmutableArray<OutlineLine> Apart { get; init; } = [];

    /// <summary>Letters that have nothing to say in this plan: they get no page, and links to them are words.</summary>
    internal FrozenSet<string> LeftOut { get; init; } = FrozenSet<string>.Empty;

    /// <summary>The pages made so far, for those blocks that look over the whole book.</summary>
    internal ImmutableArray<Page> Written { get; init; } = [];

    /// <summary>What links may name.</summary>
    internal required KnownIds Known { get; init; }

    /// <summary>What templates may call.</summary>
    internal required ScriptObject Names { get; init; }

    /// <summary>How days are written.</summary>
    internal required Dates Dates { get; init; }

    /// <summary>How uncertain amounts are written.</summary>
    internal required Ranges Ranges { get; init; }

    /// <summary>How answers are written.</summary>
    internal required AnswerWords Answers { get; init; }

    /// <summary>The items of the plan by id.</summary>
    internal required Items Items { get; init; }

    /// <summary>The language in which it speaks.</summary>
    internal string Language { get; init; } = LocalText.Original;

    /// <summary>What it may print.</summary>
    internal required Discretion May { get; init; }

    /// <summary>The same things said in another language, or by a page that may print less.</summary>
    internal Bindery Speak(string language, Discretion may)
    {
        if (language == Language && may.Name == May.Name)
        {
            return this;
        }

        var voice = Voice.Of(Plan, Guidance, language, may, Faults);
        return this with { Language = language, May = may, Labels = voice.Labels, Dates = voice.Dates, Ranges = voice.Ranges, Answers = voice.Answers, Names = TemplateNames.Of(Plan, Items, voice, may) };
    }

    /// <summary>A letter, which goes to others: whether it has anything to say is for itself to tell.</summary>
    internal ImmutableArray<Block> ReadLetter(Template letter) => Speak(letter.Text.Language, Discretion.OfLetter(Plan, Guidance, letter.Id)).ReadPage(PageTitle.Rest(letter));

    /// <summary>The fixed phrase of that id.</summary>
    internal string Say(string id, params (string Name, string Value)[] values) => Labels.Say(id, values);

    /// <summary>A text of an entry as blocks, its headings under that level.</summary>
    internal ImmutableArray<Block> Read(LocalText text, int level = 1)
    {
        if (!_read.TryGetValue((text, level, Language, May.Name), out var blocks))
        {
            // Editors' headings in entries begin at level 3.
            blocks = text.IsEmpty ? [] : TextReader.Read(this, text, 3 - level);
            _read[(text, level, Language, May.Name)] = blocks;
        }

        return blocks;
    }

    /// <summary>A page's own text as blocks.</summary>
    internal ImmutableArray<Block> ReadPage(LocalText text) => TextReader.Read(this, text, 1);

    /// <summary>A text of one paragraph as a phrase; several are joined.</summary>
    internal Phrase ReadLine(LocalText text) => Phrase.Join(" ", Read(text).OfType<Block.Prose>().Select(p => p.Words));

    /// <summary>A title, marked with its language where that is not the book's.</summary>
    internal Phrase Words(LocalText text) =>
        text.Language == Language || text.IsEmpty ? Phrase.Of(text.Words) : Phrase.Of(new Inline.InLanguage(text.Language, Phrase.Of(text.Words)));

    /// <summary>The same inside a longer phrase.</summary>
    internal string Mark(LocalText text) => Labels.Mark(text);

    /// <summary>An item's title as a link to its home.</summary>
    internal Phrase Link(string id) => Link(id, Items.Find(id) is { } rule ? Words(rule.Title) : Phrase.Of(id));

    /// <summary>Words as a link to an item's home.</summary>
    internal static Phrase Link(string id, Phrase words) => Phrase.Of(new Inline.Link(new Target.Item(id), words));

    /// <summary>A question's short name as a link to its home.</summary>
    internal Phrase Link(Question question) => Link(question.Name, Words(question.Label));

    /// <summary>A sum to the nearest whole pound or euro, as a range.</summary>
    internal string Money(ThreePoint sums) => Ranges.Money(sums, Plan.Nation.Currency);

    /// <summary>Why a total or a date is not told: a stop sign stands, or the home is beyond what can be counted.</summary>
    internal string NotTold => Say(Plan.IsSuspended ? "figure-suspended" : "figure-beyond");

    /// <summary>What a way comes to, or why it is not told.</summary>
    internal Phrase Total(ThreePoint sums) => Phrase.Of(Plan.IsCounted ? Ranges.Total(sums, Plan.Nation.Currency) : NotTold);

    /// <summary>When a way ends, or why it is not told.</summary>
    internal Phrase Finish(DateRange days) => Plan.IsCounted ? Dates.Range(days) : Phrase.Of(NotTold);
}
