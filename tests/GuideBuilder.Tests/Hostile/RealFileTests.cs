using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Hostile;

/// <summary>The files of the repository themselves, made wrong at random: a value or faults, never an exception, a hang or memory without bound. CsCheck prints the seed of what it finds.</summary>
public sealed class RealFileTests
{
    // A guidance is read whole, which takes a thousand times as long as one of its files.
    private const int FilesAGuidance = 40;

    private static readonly string[] Guidance = [.. Directory.EnumerateFiles(Repository.At("content"), "*.yaml", SearchOption.AllDirectories).Select(Repository.Short).Order(StringComparer.Ordinal)];

    private static readonly SourceText[] Whole = [.. Directory.EnumerateFiles(Repository.At("content"), "*", SearchOption.AllDirectories).Select(Repository.Short).Order(StringComparer.Ordinal).Select(AnswersFiles.Load)];

    [Fact]
    public void Mutated_answers_of_real_homes_give_a_value_or_faults() =>
        Gen.OneOf(AnswersFiles.Paths)
            .SelectMany(path => Mutation.Of(AnswersFiles.Text(AnswersFiles.Load(path))))
            .Sample(bytes => MutationTests.IsWhole(AnswerReader.Read(new("home.yaml", bytes), Content.Guidance)), iter: Sizes.Of("mutated-answers") / 10);

    [Fact]
    public void Mutated_files_of_the_guidance_give_a_tree_or_faults() =>
        Gen.OneOf(Guidance)
            .SelectMany(path => Mutation.Of(AnswersFiles.Text(AnswersFiles.Load(path))))
            .Sample(HasTreeOrFaults, iter: Sizes.Of("mutated-guidance") / 2);

    [Fact]
    public void The_guidance_with_one_mutated_file_gives_a_value_or_faults() =>
        Gen.OneOf(Guidance)
            .SelectMany(path => Mutation.Of(AnswersFiles.Text(AnswersFiles.Load(path))).Select(bytes => (path, bytes)))
            .Sample(
                mutated => MutationTests.IsWhole(GuidanceReader.Read([.. Whole.Select(f => f.Path == mutated.path ? f with { Bytes = mutated.bytes } : f)], "content", Home.Today)),
                iter: Sizes.Of("mutated-guidance") / FilesAGuidance);

    private static void HasTreeOrFaults(byte[] bytes)
    {
        var faults = new FaultList();
        var tree = YamlText.Read(new("file.yaml", bytes), Budget.Guidance, faults);
        Assert.True(tree is not null || faults.HasErrors);
    }
}
