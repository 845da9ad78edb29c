using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Architecture;

public sealed class AskedByProgramTests
{
    [Fact]
    public void The_list_of_the_questions_that_the_program_reads_is_what_the_code_names()
    {
        var code = string.Concat(SourceFile.Product.Where(f => !f.Name.EndsWith("AskedByProgram.cs", StringComparison.Ordinal) && (f.Name.Contains("GuideBuilder.Model/", StringComparison.Ordinal) || f.Name.Contains("GuideBuilder.Planning/", StringComparison.Ordinal) || f.Name.Contains("GuideBuilder.Rendering/", StringComparison.Ordinal))).Select(f => f.Text));

        Assert.Equal(Content.Guidance.Questions.Select(q => q.Name).Where(n => code.Contains($"\"{n}\"", StringComparison.Ordinal)).Order(StringComparer.Ordinal), AskedByProgram.All);
    }
}
