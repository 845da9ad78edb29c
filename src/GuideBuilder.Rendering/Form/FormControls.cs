namespace GuideBuilder.Rendering.Form;

/// <summary>What a reader can do with the page besides answering: keep, go on with a file, download, clear, and see how far they are.</summary>
internal static class FormControls
{
    /// <summary>What stands before the questions.</summary>
    internal static void Begin(HtmlWriter page, Phrases phrases)
    {
        page.Open("section", ("class", "part"), ("aria-label", phrases.Say("form-begin"))).Line();
        page.Open("div", ("class", "box keeping")).Void("input", ("type", "checkbox"), ("id", "own-device"), ("aria-describedby", "kept"));
        page.Open("label", ("for", "own-device")).Text(phrases.Say("form-own-device")).Close().CloseLine();
        page.Open("p", ("id", "kept"), ("role", "status")).CloseLine();
        page.Open("p", ("class", "keeping")).Open("label", ("for", "file")).Text(phrases.Say("form-load")).Close().Void("br");
        page.Void("input", ("type", "file"), ("id", "file"), ("accept", ".yaml,.yml,text/yaml")).CloseLine();
        page.CloseLine();
    }

    /// <summary>What stands after them.</summary>
    internal static void End(HtmlWriter page, Phrases phrases)
    {
        page.Open("section", ("class", "part"), ("aria-labelledby", "t-end")).Line();
        page.Open("h2", ("id", "t-end")).Text(phrases.Say("form-end")).CloseLine();
        page.Open("p", ("id", "progress")).CloseLine();
        page.Open("p").Open("progress", ("class", "bar"), ("id", "bar"), ("aria-labelledby", "progress"), ("max", "1"), ("value", "0")).Close().CloseLine();
        page.Open("p").Text(phrases.Say("form-what-then")).CloseLine();
        page.Open("p");
        Button(page, "download", phrases.Say("form-download"));
        Button(page, "clear", phrases.Say("form-clear"));
        page.CloseLine();
        page.Open("div", ("id", "sure"), ("role", "group"), ("aria-labelledby", "sure-words"), ("hidden", "hidden")).Line();
        page.Open("p", ("id", "sure-words")).Text(phrases.Say("form-sure")).CloseLine();
        page.Open("p");
        Button(page, "clear-yes", phrases.Say("form-clear-yes"));
        Button(page, "clear-no", phrases.Say("form-clear-no"));
        page.CloseLine().CloseLine();
        page.Open("p", ("id", "told"), ("role", "status")).CloseLine();
        page.CloseLine();
    }

    private static void Button(HtmlWriter page, string id, string words) =>
        page.Open("button", ("type", "button"), ("class", "press"), ("id", id)).Text(words).Close().Text(" ");
}
