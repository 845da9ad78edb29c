namespace GuideBuilder.Reading;

/// <summary>What has to be known of an answers file before the guidance is read for it: its id, its edition, its language and its imprint. Whatever is wrong with them is left to the reading itself.</summary>
public sealed record AnswersHead(string Id, string? PublicId, EditionKind Edition, string? Language, string? Imprint)
{
    /// <summary>A first, silent look into the section <c>handbook</c>.</summary>
    public static AnswersHead Of(SourceText answers)
    {
        var handbook = (YamlText.Read(answers, Budget.Answers, new FaultList()) as Mapping)?["handbook"] as Mapping;
        var name = answers.Path[(answers.Path.LastIndexOfAny(['/', '\\']) + 1)..];
        var imprint = Text(handbook, "imprint");
        return new(Text(handbook, "id") ?? HandbookReader.IdOf(name), Text(handbook, "public-id"), EditionOf(handbook, imprint), Text(handbook, "language"), imprint);
    }

    private static EditionKind EditionOf(Mapping? handbook, string? imprint) => Text(handbook, "edition") is { } word
        ? HandbookReader.Editions.Where(e => e.Word == word).Select(e => e.Means).FirstOrDefault(EditionKind.Householder)
        : imprint is null ? EditionKind.Householder : EditionKind.Customer;

    private static string? Text(Mapping? handbook, string key) => handbook?[key] is Scalar { IsEmpty: false } scalar ? scalar.Text : null;
}
