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

    // Each is the whole book for paper; the stylesheet sets the second in large letters.
    private static readonly ImmutableArray<string> Editions = ["paper", "large-print"];

    private const string FrameFile = "frame.html";

    /// <summary>The files of the handbook: pages, stylesheet, script, plan data and the paper edition; given the plan of an earlier binding, the cover says what changed. Every mistake in pages, labels and look is reported at once.</summary>
    public static Staged<BoundBook> Render(Plan plan, Guidance guidance, EarlierPlan? earlier = null)
    {
        var faults = new FaultList();
        foreach (var name in LookFiles.Add(FrameFile).Add(BookOrder.FileName).Where(n => !guidance.Look.Files.ContainsKey(n)))
        {
            faults.Add(RenderingFaults.LookMissing(name));
        }

        if (earlier is not null && earlier.Handbook != plan.Answers.Handbook.Id)
        {
            faults.Add(RenderingFaults.EarlierPlanOfAnother(earlier.Handbook, plan.Answers.Handbook.Id));
        }

        return faults.All.Any() ? Staged<BoundBook>.From(null, faults.All) : Bind(plan, guidance, earlier, faults);
    }

    private static Staged<BoundBook> Bind(Plan plan, Guidance guidance, EarlierPlan? earlier, FaultList faults)
    {
        var told = EditionPages.Told(plan);
        var bindery = Open(told, guidance, faults) with { Earlier = earlier };
        var pages = Pages(bindery);
        IReadOnlyList<Page> apart = [.. bindery.Apart.Select(l => PageMaker.Make(bindery, l))];
        var addresses = Addresses.Of([.. pages, .. apart], bindery.LeftOut, plan.Occasion.Edition != EditionKind.Householder, faults);
        var frame = new Frame(guidance.Look.Files[FrameFile], bindery);
        var data = bindery.Speak(LocalText.Original, bindery.May);
        ImmutableArray<BoundFile> files =
        [
            .. pages.Select((p, i) => Text(Manner.FileOf(p.Id), frame.Around(p, KindOf(p.Kind), PageWriter.Write(p, Manner.Files, addresses, bindery, faults), i + 1 < pages.Count ? bindery.Outline[i + 1] : null))),
            .. apart.Select(p => Text(Manner.FileOf(p.Id), frame.Around(p, "apart", PageWriter.Write(p, Manner.Files, addresses, bindery, faults), null))),
            .. Editions.SelectMany(e => PaperEdition.Of(e, pages, frame, addresses, bindery)).Select(f => Text(f.Name, f.Text)),
            Text("style.css", Look(guidance, "stylesheet.css") + frame.PaperEdges() + ImprintLook.Of(guidance, faults)),
            Text("ticks.js", Look(guidance, "ticks.js")),
            .. PlanFiles.Of(data),
            .. CalendarFile.Of(data),
        ];
        return Staged<BoundBook>.From(
            new BoundBook(plan.Answers.Handbook.Id, files)
            {
                ForPaper = [.. apart.Select(p => Manner.FileOf(p.Id)), .. files.Select(f => f.Name).Where(n => n.StartsWith(Editions[0], StringComparison.Ordinal))],
                About = BookAbout.Of(told, guidance),
            },
            faults.All);
    }

    private static string Look(Guidance guidance, string name) => guidance.Look.Files[name].Words.ReplaceLineEndings("\n");

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
        var (told, chapters) = EditionPages.Of(plan, guidance, faults);
        var (items, may) = (new Items(plan, told), Discretion.OfPage(plan, guidance, ""));
        var voice = Voice.Of(plan, told, told.Language.Id, may, faults);
        var bindery = new Bindery(plan, told, voice.Labels, faults)
        {
            Language = voice.Language,
            May = may,
            Known = KnownIds.Of(guidance),
            Names = TemplateNames.Of(plan, items, voice, may),
            Dates = voice.Dates,
            Ranges = voice.Ranges,
            Answers = voice.Answers,
            Items = items,
        };
        var leftOut = told.Letters.Where(l => bindery.ReadLetter(l).IsEmpty).Select(l => l.Id).ToFrozenSet(StringComparer.Ordinal);
        return bindery with { LeftOut = leftOut, Outline = Outline.Of(chapters, plan, told, leftOut, faults), Apart = Outline.Apart(chapters, told, faults) };
    }
}
