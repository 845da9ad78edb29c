using GuideBuilder.Cli.Asking;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;
using Spectre.Console;

namespace GuideBuilder.Tests.Cli.Asking;

/// <summary>One sitting with the questionnaire: lines typed, words shown, and the file as it was saved last.</summary>
internal sealed class Session
{
    private Session(Filling filling, IEnumerable<string> lines)
    {
        using var shown = new StringWriter();
        using var typed = lines.GetEnumerator();
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors, Out = new AnsiConsoleOutput(shown) });
        console.Profile.Width = 10_000;
        Filling = Interview.Run(filling, new(Home.Today, Occasion.DefaultSeed, EditionKind.Householder), "home.yaml", () => typed.MoveNext() ? typed.Current : null, new Teller(console), f => Saved = f.Write("home.yaml").Value);
        Shown = shown.ToString();
    }

    /// <summary>What the questionnaire holds at the end.</summary>
    public Filling Filling { get; }

    /// <summary>The file as it was saved last; null if nothing was.</summary>
    public SourceText? Saved { get; private set; }

    /// <summary>All that was shown.</summary>
    public string Shown { get; }

    /// <summary>Types these lines into an empty questionnaire.</summary>
    public static Session Of(params IEnumerable<string> lines) => new(Filling.Of(Content.Guidance, null), lines);

    /// <summary>Types these lines into a questionnaire that goes on with a file.</summary>
    public static Session From(SourceText file, params IEnumerable<string> lines) =>
        new(Filling.Of(Content.Guidance, AnswerReader.ReadUnfinished(file, Content.Guidance).Value), lines);

    /// <summary>The line that goes to a question, by its full name, within its section.</summary>
    public static string GoTo(SourceText file, string name)
    {
        var filling = Filling.Of(Content.Guidance, AnswerReader.ReadUnfinished(file, Content.Guidance).Value);
        return FormattableString.Invariant($"go {filling.Asked(name.Split('.')[0]).Select(q => q.Name).ToList().IndexOf(name) + 1}");
    }

    /// <summary>The lines that give every answer of a file, in the order in which it is asked.</summary>
    public static IEnumerable<string> LinesFor(SourceText file)
    {
        var filling = Filling.Of(Content.Guidance, AnswerReader.ReadWritten(file, Content.Guidance).Value);
        foreach (var section in filling.Sections.Where(s => !filling.Asked(s).IsEmpty))
        {
            foreach (var question in filling.Asked(section))
            {
                yield return filling.AnswerTo(question) is { } answer ? Typed(answer) : "";
            }

            yield return "";
        }
    }

    private static string Typed(Given.Answered answer) => answer.Value switch
    {
        null => "don't know",
        Value.Several { Ids.IsEmpty: false } several => string.Join(' ', several.Ids),
        var value => GuideBuilder.Cli.Printing.ValueText.Of(value),
    };
}
