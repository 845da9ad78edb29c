using GuideBuilder.Cli.Printing;
using Spectre.Console;

namespace GuideBuilder.Cli.Asking;

/// <summary>Says things to the person who fills the questionnaire in: line after line, nothing drawn, nothing told by colour, so that a screen reader and a pipe get it all.</summary>
internal sealed class Teller(IAnsiConsole console)
{
    private static readonly Style Bold = new(decoration: Decoration.Bold);

    /// <summary>A line of words.</summary>
    internal void Say(string words = "") => console.Write(new Text(Harmless(words) + "\n"));

    /// <summary>What the next line that is typed will answer.</summary>
    internal void Prompt(string words) => console.Write(new Text(words + ": "));

    /// <summary>A section: its name, its place among all, and its questions with the answers so far.</summary>
    internal void Section(Filling filling, string section, string name)
    {
        var at = filling.Sections.IndexOf(section) + 1;
        Say();
        console.Write(new Text(Invariant($"{name} (section {at} of {filling.Sections.Length})\n"), Bold));
        foreach (var (question, number) in filling.Asked(section).Select((q, i) => (q, i + 1)))
        {
            Say(Invariant($"{number}. {question.Label.Words}: {Answer(filling, question)}"));
        }
    }

    /// <summary>A question with all that helps to answer it, and how to say the answer.</summary>
    internal void Question(Filling filling, Question question, int number)
    {
        Say();
        console.Write(new Text(Invariant($"{number}. {question.Wording.Words}\n"), Bold));
        Part("What it decides", question.WhatItDecides);
        Part("How to find out", question.HowToFindOut);
        Part("Who can tell", question.WhoCanTell);
        foreach (var (option, at) in question.Options.Select((o, i) => (o, i + 1)))
        {
            Say(Invariant($"   {at}  {(option.Wording.IsEmpty ? option.Id : option.Wording.Words)}"));
        }

        Say(HowToSay(question));
        if (filling.AnswerTo(question) is not null)
        {
            Say($"Answered so far: {Answer(filling, question)}. Enter keeps it.");
        }
    }

    /// <summary>The words that may be said at any question.</summary>
    internal void Help()
    {
        Say("Enter alone goes on and leaves the question for later, or keeps the answer it has.");
        Say("back goes to the question before, next to the one after, go 3 to question 3 of the section, section to its end.");
        Say("sheet shows the section with its answers, why what waits for this answer.");
        Say("later leaves; everything is saved, and ask goes on where it is next time. save says where it is saved.");
        Say("To give one of these words as an answer in your own words, put it between double quotes.");
    }

    /// <summary>The answer to a question in words.</summary>
    internal static string Answer(Filling filling, Question question) => filling.AnswerTo(question) switch
    {
        null => "not answered yet",
        { Standing: Standing.Unknown } => "not known",
        var given => Words(given.Value!, question),
    };

    private static string Words(Value value, Question question) => value switch
    {
        Value.Option option => Wording(option.Id, question),
        Value.Several { Ids.IsEmpty: false } several => string.Join("; ", several.Ids.Select(id => Wording(id, question))),
        Value.Days { Spans.IsEmpty: true } => Value.Several.None,
        _ => ValueText.Of(value),
    };

    private static string Wording(string id, Question question) =>
        question.Options.FirstOrDefault(o => o.Id == id) is { Wording.IsEmpty: false } option ? option.Wording.Words : id;

    // A line that was typed may be said back; a control character in it must not reach the terminal.
    private static string Harmless(string words) => string.Concat(words.Select(c => char.IsControl(c) && c != '\n' ? '·' : c));

    private void Part(string what, LocalText words)
    {
        if (!words.IsEmpty)
        {
            Say($"{what}: {words.Words}");
        }
    }

    private static string HowToSay(Question question) => question.Kind switch
    {
        QuestionKind.Choice => "   0  I don't know",
        QuestionKind.YesNo => "   0  I don't know",
        QuestionKind.Several => "   0  I don't know\nSeveral may be true: type their numbers with spaces between, or none.",
        QuestionKind.Quantity => $"Type {Amount(question.Range!)}, or: don't know.",
        QuestionKind.Date => "Type the day as year-month-day, such as 2027-03-15, or: don't know.",
        QuestionKind.Days => "Type days or spans as year-month-day with commas between, such as 2027-03-15, 2027-04-02 to 2027-04-09, or none, or: don't know.",
        QuestionKind.Text => "Type it in your own words, or: don't know.",
        QuestionKind.NumberName => "Type it as it is printed, or: don't know.",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string Amount(QuantityRange range) => range.Unit == Unit.One
        ? Invariant($"a number from {range.Least:0.###} to {range.Most:0.###}")
        : $"a number from {new Quantity(range.Least, range.Unit)} to {new Quantity(range.Most, range.Unit)}; without a unit it is in {range.Unit.Symbol}";
}
