using System.Text;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Model;
using GuideBuilder.Reading;

namespace GuideBuilder.Tests.Support;

/// <summary>Every answers file of the repository that is right, and what one means.</summary>
internal static class AnswersFiles
{
    /// <summary>The demo homes and the situations, by path.</summary>
    public static string[] Paths { get; } =
    [
        .. new[] { "answers", "tests/GuideBuilder.Tests/Situations" }
            .SelectMany(folder => Directory.EnumerateFiles(Repository.At(folder), "*.yaml"))
            .Select(Repository.Short)
            .Where(path => !path.EndsWith(".says.yaml", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The bytes of one.</summary>
    public static SourceText Load(string path) => new(path, File.ReadAllBytes(Repository.At(path)));

    /// <summary>A file of these words.</summary>
    public static SourceText Of(string text) => new("home.yaml", Encoding.UTF8.GetBytes(text));

    /// <summary>The text of one.</summary>
    public static string Text(SourceText file) => Encoding.UTF8.GetString(file.Bytes.Span);

    /// <summary>The answers in one, which must be right.</summary>
    public static AnswerSet Read(SourceText file)
    {
        var answers = AnswerReader.Read(file, Content.Guidance);
        return answers.Value ?? throw new InvalidOperationException(string.Join('\n', answers.Faults));
    }

    /// <summary>All that an answers file says, a line each, wherever it stands in the file.</summary>
    public static string[] Meaning(SourceText file)
    {
        var answers = Read(file);
        var handbook = answers.Handbook;
        return
        [
            $"{handbook.Format} {handbook.Id} {handbook.Edition} {handbook.FilledInBy} {handbook.Imprint?.Value}",
            .. Content.Guidance.Questions.Select(q => answers[q.Name]).Select(a => $"{a.Name} {a.Standing} {Of(a.Value)}"),
            .. answers.Papers.Select(p => $"{p with { Place = Place.None, Covers = [], LeavesOut = [] }} {Listed(p.Covers)}; {Listed(p.LeavesOut)}"),
            .. answers.Log.Select(e => $"{e with { Place = Place.None }}"),
        ];
    }

    // Words keep their line ends, and a sum says what it says of VAT.
    private static string Of(Value? value) => value switch
    {
        null => "",
        Value.Words words => words.Text,
        Value.Amount amount => $"{amount.Quantity} {amount.Vat}",
        _ => ValueText.Of(value),
    };

    private static string Listed(IEnumerable<Sourced<string>> ids) => string.Join(", ", ids.Select(i => i.Value));
}
