using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Data;
using GuideBuilder.Rendering.Pages;
using NodaTime;
using FaultList = GuideBuilder.Rendering.FaultList;
using Items = GuideBuilder.Rendering.Pages.Items;

namespace GuideBuilder.Tests.Support;

/// <summary>A home under the real guidance: its plan with very few trials, and any page of its handbook as words. What rests on many trials must not be asked of it.</summary>
internal sealed class Home
{
    /// <summary>The day on which the tests plan.</summary>
    public static readonly LocalDate Today = new(2026, 11, 24);

    private const int Trials = 20;

    private static readonly string[] ForAllNations = ["glossary-page", "sources-page", "index-page", "how-this-was-worked-out"];

    private readonly Lazy<Bindery> _bindery;

    private readonly Guidance _guidance;

    private Home(Plan plan, Guidance guidance)
    {
        (Plan, _guidance) = (plan, guidance);
        _bindery = new(() => Handbook.Open(plan, guidance, new FaultList()));
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>Every item that the plan judged, with its state.</summary>
    public Items Items => _bindery.Value.Items;

    /// <summary>The ids of the pages of its handbook, in reading order.</summary>
    public IEnumerable<string> Pages => _bindery.Value.Outline.Select(l => l.Id);

    /// <summary>The ids of the hazards that are settled or open.</summary>
    public IEnumerable<string> Hazards => Plan.Hazards.Where(h => h.Hazard.IsPresent).Select(h => h.Hazard.Item.Id);

    /// <summary>The home in an answers file of the repository.</summary>
    public static Home At(string path, Guidance? guidance = null) => Of(new SourceText(path, File.ReadAllBytes(Repository.At(path))), guidance);

    /// <summary>The home in these words, which follow the head of an answers file.</summary>
    public static Home Given(string words, Guidance? guidance = null) => Of(new SourceText("home.yaml", Encoding.UTF8.GetBytes("handbook: {format: 1, id: home}\n" + words)), guidance);

    /// <summary>The home in an answers file, which must have no mistake, under the real guidance or another one.</summary>
    public static Home Of(SourceText file, Guidance? other = null)
    {
        var guidance = other ?? Content.Guidance;
        var answers = AnswerReader.Read(file, guidance);
        var plan = answers.Then(a => FactDeriver.Derive(a, guidance)).Then(f => Planner.Plan(f, guidance, new(Today, Occasion.DefaultSeed, EditionKind.Householder), new(Trials, Trials, -1)));
        Findings.AreNone(plan.Faults.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()));
        return new(plan.Value!, guidance);
    }

    /// <summary>The ids of the pages that have these words, but for those that explain the words, the sources and the reasons of every nation.</summary>
    public IEnumerable<string> PagesWith(string words) => PagesOfThisHome.Where(p => Words(p).Contains(words, StringComparison.Ordinal));

    /// <summary>The ids of the pages, but for those that explain the words, the sources and the reasons of every nation.</summary>
    public IEnumerable<string> PagesOfThisHome => Pages.Except(ForAllNations);

    /// <summary>The pages and their blocks, in reading order.</summary>
    public IEnumerable<Page> Made => _bindery.Value.Outline.Select(l => PageMaker.Make(_bindery.Value, l));

    /// <summary>The plan as the handbook's data file gives it.</summary>
    public string Data => Encoding.UTF8.GetString(PlanData.Write(Plan, _guidance, _bindery.Value.Answers).Span);

    /// <summary>Every file of its handbook as bound, by name.</summary>
    public IReadOnlyDictionary<string, string> Files => Handbook.Render(Plan, _guidance).Value!.Files.ToDictionary(f => f.Name, f => Encoding.UTF8.GetString(f.Bytes.Span), StringComparer.Ordinal);

    /// <summary>A fixed phrase of the handbook.</summary>
    public string Say(string label) => _bindery.Value.Say(label);

    /// <summary>The words of a page, in one line.</summary>
    public string Words(string page) => string.Join(' ', Lines(page));

    /// <summary>The words of a page, a line for each paragraph, cell and point of a list.</summary>
    public IEnumerable<string> Lines(string page)
    {
        var line = _bindery.Value.Outline.FirstOrDefault(l => l.Id == page);
        Assert.True(line is not null, $"The handbook has no page {page}.");
        return PlainText.Of(PageMaker.Make(_bindery.Value, line)).Split('\n').Select(l => string.Join(' ', l.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))).Where(l => l.Length > 0);
    }
}
