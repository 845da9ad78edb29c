using System.Security.Cryptography;
using System.Text;
using GuideBuilder.Rendering.Templates;
using Scriban.Runtime;

namespace GuideBuilder.Rendering.Form;

/// <summary>Writes the questionnaire as one page that needs nothing else: no other file, no network. Its policy lets only its own style and its two scripts run, each by its hash.</summary>
public static class FormPage
{
    private const string FrameFile = "form.html";

    private static readonly ImmutableArray<string> Styles = ["stylesheet.css", "form.css"];
    private static readonly ImmutableArray<string> Scripts = ["form-answers.js", "form.js"];

    /// <summary>The page; a missing label, a missing file of the look, and a limit too fine for the page are faults.</summary>
    public static Staged<BoundFile> Render(Guidance guidance)
    {
        var faults = new FaultList();
        foreach (var name in Styles.Concat(Scripts).Append(FrameFile).Where(n => !guidance.Look.Files.ContainsKey(n)))
        {
            faults.Add(RenderingFaults.LookMissing(name));
        }

        return faults.All.Any() ? Staged<BoundFile>.From(null, faults.All) : Render(guidance, new Phrases(guidance.Labels, faults), faults);
    }

    private static Staged<BoundFile> Render(Guidance guidance, Phrases phrases, FaultList faults)
    {
        var style = "\n" + string.Concat(Styles.Select(n => Look(guidance, n)));
        var scripts = Scripts.Select(n => "\n" + Look(guidance, n)).ToArray();
        var names = new ScriptObject(StringComparer.Ordinal)
        {
            ["lang"] = guidance.Head.Languages[0],
            ["book"] = guidance.Head.Title.Words,
            ["title"] = phrases.Say("form-title"),
            ["skip"] = phrases.Say("frame-skip"),
            ["intro"] = phrases.Say("form-intro"),
            ["needs_script"] = phrases.Say("form-needs-script"),
            ["letter_first"] = phrases.Say("letter-comes-first"),
            ["check"] = phrases.Say("frame-check", ("date", new Dates(phrases, null).Short(guidance.Head.ReviewBy))),
            ["body"] = new Ready(new FormQuestions(guidance, phrases).Write()),
            ["data"] = new Ready(new FormData(guidance, phrases, faults).Write()),
            ["style"] = new Ready(style),
            ["first"] = new Ready(scripts[0]),
            ["second"] = new Ready(scripts[1]),
            ["style_hash"] = Hash(style),
            ["first_hash"] = Hash(scripts[0]),
            ["second_hash"] = Hash(scripts[1]),
        };
        var page = TemplateRunner.Html(guidance.Look.Files[FrameFile], names, faults);
        return Staged<BoundFile>.From(new("questionnaire.html", Encoding.UTF8.GetBytes(page)), faults.All);
    }

    private static string Look(Guidance guidance, string name) => guidance.Look.Files[name].Words.ReplaceLineEndings("\n");

    private static string Hash(string text) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
