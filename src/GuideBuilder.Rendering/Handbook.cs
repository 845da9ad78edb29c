using System.Text;
using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Data;
using GuideBuilder.Rendering.Markup;
using GuideBuilder.Rendering.Pages;
using GuideBuilder.Rendering.Templates;

namespace GuideBuilder.Rendering;

/// <summary>Binds a plan into a handbook.</summary>
public static class Handbook
{
    private static readonly ImmutableArray<string> LookFiles = ["stylesheet.css", "ticks.js"];

    private const string FrameFile = "frame.html";

    /// <summary>The files of the handbook: pages, stylesheet, script, plan data and the paper edition. Every mistake in pages, labels and look is reported at once.</summary>
    public static Staged<BoundBook> Render(Plan plan, Guidance guidance)
    {
        var faults = new FaultList();
        foreach (var name in LookFiles.Add(FrameFile).Add(BookOrder.FileName).Where(n => !guidance.Look.Files.ContainsKey(n)))
        {
            faults.Add(RenderingFaults.LookMissing(name));
        }

        return faults.All.Any() ? Staged<BoundBook>.From(null, faults.All) : Bind(plan, guidance, faults);
    }

    private static Staged<BoundBook> Bind(Plan plan, Guidance guidance, FaultList faults)
    {
        var bindery = Open(plan, guidance, faults);
        var pages = Pages(bindery);
        var addresses = Addresses.Of(pages, bindery.LeftOut, faults);
        var frame = new Frame(guidance.Look.Files[FrameFile], bindery);
        ImmutableArray<BoundFile> files =
        [
            .. pages.Select((p, i) => Text(Manner.FileOf(p.Id), frame.Around(p.Id, KindOf(p.Kind), p.Title, p.Number, PageWriter.Write(p, Manner.Files, addresses, bindery.Labels, faults), i + 1 < pages.Count ? bindery.Outline[i + 1] : null))),
            Text(PaperEdition.FileName, PaperEdition.Of(pages, frame, addresses, bindery)),
            .. LookFiles.Select(n => Text(n == "stylesheet.css" ? "style.css" : n, guidance.Look.Files[n].Words.ReplaceLineEndings("\n"))),
            new BoundFile("plan.json", PlanData.Write(plan)),
            .. CalendarFile.Of(bindery),
        ];
        return Staged<BoundBook>.From(new BoundBook(plan.Answers.Handbook.Id, files), faults.All);
    }

    private static string KindOf(PageKind kind) => kind.ToString().ToLowerInvariant();

    private static BoundFile Text(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    // Pages that look over the whole book are made twice: the second time they see the others.
    private static IReadOnlyList<Page> Pages(Bindery bindery)
    {
        var first = bindery.Outline.Select(l => PageMaker.Make(bindery, l)).ToList();
        var over = bindery with { Written = [.. first.Where(p => p.Kind != PageKind.Cover && !BlockMakers.BackMatter.Any(b => Calls(bindery, p.Id, b)))] };
        return [.. first.Select((p, i) => Calls(bindery, p.Id, BlockMakers.Index) ? PageMaker.Make(over, bindery.Outline[i]) : p)];
    }

    private static bool Calls(Bindery bindery, string page, string block) =>
        bindery.Guidance.Pages.Any(p => p.Id == page && p.Text.Words.Contains($"block \"{block}\"", StringComparison.Ordinal));

    /// <summary>Everything that the pages are made of.</summary>
    internal static Bindery Open(Plan plan, Guidance guidance, FaultList faults)
    {
        var labels = new Phrases(guidance.Labels, faults);
        var dates = new Dates(labels, plan.Occasion.Edition == EditionKind.Public ? plan.Schedule.Start : null);
        var ranges = new Ranges(labels);
        var answers = new AnswerWords(labels, dates, plan.Occasion.Edition);
        var items = new Items(plan, guidance);
        var chapters = BookOrder.Read(guidance.Look.Files[BookOrder.FileName], guidance.Pages, faults);
        var bindery = new Bindery(plan, guidance, labels, faults)
        {
            Known = KnownIds.Of(guidance),
            Names = TemplateNames.Of(plan, items, labels, dates, ranges, answers),
            Dates = dates,
            Ranges = ranges,
            Answers = answers,
            Items = items,
        };
        var leftOut = guidance.Letters.Where(l => bindery.ReadPage(PageTitle.Rest(l)).IsEmpty).Select(l => l.Id).ToFrozenSet(StringComparer.Ordinal);
        return bindery with { LeftOut = leftOut, Outline = Outline.Of(chapters, plan, guidance, leftOut, faults) };
    }
}
