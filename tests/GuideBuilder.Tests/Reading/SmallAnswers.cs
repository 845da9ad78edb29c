using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using NodaTime;

namespace GuideBuilder.Tests.Reading;

/// <summary>An answers file for the small guidance that is right, to be made wrong in one place.</summary>
internal static class SmallAnswers
{
    public const string Path = "answers/our-house.yaml";

    /// <summary>Lines that begin with two spaces are answers of the section home; other lines are further sections.</summary>
    public static string Around(string lines) => "handbook: {format: 1}\nwish: {moves: [meter]}\nhome:\n  nation: england\n" + lines + "\n";

    public static Staged<AnswerSet> Read(string text, string path = Path, LocalDate? today = null) => AnswerReader.Read(new(path, Encoding.UTF8.GetBytes(text)), SmallGuidance.Value, today);

    /// <summary>The answers in a file that has no faults.</summary>
    public static AnswerSet Given(string lines)
    {
        var staged = Read(Around(lines));
        return staged.Value ?? throw new InvalidOperationException(string.Join('\n', staged.Faults));
    }

    /// <summary>Fails unless the lines have these faults at their marks, and no other.</summary>
    public static void Finds(string lines, params string[] codes) => FindsIn(Around(lines), codes);

    /// <summary>Fails unless the whole file has these faults at its marks, and no other.</summary>
    public static void FindsIn(string file, params string[] codes)
    {
        var marked = Marked.Parse(file);
        marked.HasExactly(Read(marked.Text).Faults, Path, codes);
    }
}
