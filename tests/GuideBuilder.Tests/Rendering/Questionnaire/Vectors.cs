using System.Text.Json;

namespace GuideBuilder.Tests.Rendering.Questionnaire;

/// <summary>The cases that the program and the page of the questionnaire must both agree with: which question is asked, and what an amount comes to in the smallest unit.</summary>
internal static class Vectors
{
    /// <summary>The file, from the root of the repository.</summary>
    public const string File = "tests/GuideBuilder.Tests/Rendering/Questionnaire/vectors.json";

    /// <summary>The file as a tree.</summary>
    public static JsonElement Read()
    {
        using var document = JsonDocument.Parse(System.IO.File.ReadAllText(GuideBuilder.Tests.Support.Repository.At(File)));
        return document.RootElement.Clone();
    }
}
