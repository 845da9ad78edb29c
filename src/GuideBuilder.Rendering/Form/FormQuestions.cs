namespace GuideBuilder.Rendering.Form;

/// <summary>The questions of the page, each an entry of the field book with boxes to tick or a line to fill in. All stand in the page; the script hides those that do not matter.</summary>
internal sealed class FormQuestions(Guidance guidance, Phrases phrases)
{
    private readonly HtmlWriter _out = new();

    /// <summary>Every section, and before and after them what the page can do.</summary>
    internal string Write()
    {
        _out.Open("div", ("id", "with-script"), ("hidden", "hidden")).Line();
        FormControls.Begin(_out, phrases);
        foreach (var section in guidance.Questions.GroupBy(q => q.Section, StringComparer.Ordinal))
        {
            _out.Open("section", ("class", "part"), ("id", "section-" + section.Key), ("aria-labelledby", "t-" + section.Key)).Line();
            _out.Open("h2", ("id", "t-" + section.Key)).Text(phrases.Say("section-" + section.Key)).CloseLine();
            foreach (var question in section)
            {
                Question(question);
            }

            _out.CloseLine();
        }

        FormControls.End(_out, phrases);
        _out.CloseLine();
        return _out.ToString();
    }

    /// <summary>Which amounts a question takes, in words.</summary>
    internal static string Amount(QuantityRange range, Phrases phrases) => phrases.Say(
        "form-amount",
        ("from", new Quantity(range.Least, range.Unit).ToString()),
        ("to", new Quantity(range.Most, range.Unit).ToString()));

    private void Question(Question question)
    {
        var name = question.Name;
        var described = "h-" + name;
        _out.Open("div", ("class", "entry"), ("id", "q-" + name), ("role", question.Kind is QuestionKind.Choice or QuestionKind.YesNo ? "radiogroup" : "group"), ("aria-labelledby", "w-" + name), ("aria-describedby", described)).Line();
        _out.Open("h3", ("id", "w-" + name)).Text(question.Wording.Words).CloseLine();
        _out.Open("div", ("class", "side")).Line();
        Side("left-decides", question.WhatItDecides);
        Side("left-who-can-tell", question.WhoCanTell);
        _out.CloseLine();
        _out.Open("div", ("class", "text")).Line();
        _out.Open("p", ("id", described)).Text(question.HowToFindOut.Words).CloseLine();
        Answer(question);
        _out.Open("p", ("class", "wrong"), ("id", "f-" + name), ("role", "alert"), ("hidden", "hidden")).CloseLine();
        _out.CloseLine();
        _out.CloseLine();
    }

    private void Side(string label, LocalText words)
    {
        if (!words.IsEmpty)
        {
            _out.Open("p").Open("b").Text(phrases.Say(label) + ":").Close().Text(" " + words.Words).CloseLine();
        }
    }

    private void Answer(Question question)
    {
        var isChoice = question.Kind is QuestionKind.Choice or QuestionKind.YesNo;
        var type = isChoice ? "radio" : "checkbox";
        foreach (var option in question.Options)
        {
            Box(question, type, option.Id, option.Wording.IsEmpty ? phrases.Say("answer-" + option.Id) : option.Wording.Words);
        }

        if (question.Kind == QuestionKind.Several)
        {
            Box(question, type, Value.Several.None, phrases.Say("form-none"));
        }
        else if (question.Options.IsEmpty)
        {
            Line(question);
        }

        Box(question, type, "unknown", phrases.Say("form-dont-know"));
    }

    private void Box(Question question, string type, string value, string words)
    {
        var id = $"o-{question.Name}-{value}";
        _out.Open("div", ("class", "box")).Void("input", ("type", type), ("name", question.Name), ("id", id), ("value", value));
        _out.Open("label", ("for", id)).Text(words).Close().CloseLine();
    }

    private void Line(Question question)
    {
        var (id, hint) = ("a-" + question.Name, "n-" + question.Name);
        var described = $"{hint} h-{question.Name} f-{question.Name}";
        _out.Open("p", ("id", hint)).Text(Hint(question)).CloseLine();
        _out.Open("p");
        if (question.Kind is QuestionKind.Text or QuestionKind.Days)
        {
            _out.Open("textarea", ("class", "blank-lines"), ("id", id), ("aria-labelledby", "w-" + question.Name), ("aria-describedby", described), ("autocomplete", "off")).Close();
        }
        else
        {
            _out.Void("input", ("class", "blank-line"), ("type", "text"), ("id", id), ("aria-labelledby", "w-" + question.Name), ("aria-describedby", described), ("autocomplete", "off"));
        }

        _out.CloseLine();
    }

    private string Hint(Question question) => question.Kind switch
    {
        QuestionKind.Quantity when question.Range!.Unit == Unit.One => phrases.Say("form-hint-number", ("amount", Amount(question.Range, phrases))),
        QuestionKind.Quantity => phrases.Say("form-hint-quantity", ("amount", Amount(question.Range!, phrases)), ("unit", question.Range!.Unit.Symbol)),
        QuestionKind.Date => phrases.Say("form-hint-day"),
        QuestionKind.Days => phrases.Say("form-hint-days"),
        QuestionKind.Text => phrases.Say("form-hint-text"),
        QuestionKind.NumberName => phrases.Say("form-hint-number-name"),
        _ => throw new UnreachableException(),
    };
}
