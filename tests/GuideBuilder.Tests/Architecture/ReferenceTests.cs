using System.Reflection;

namespace GuideBuilder.Tests.Architecture;

public sealed class ReferenceTests
{
    public static TheoryData<string> Names => [.. Projects.Allowed.Keys];

    [Fact]
    public void No_project_stands_in_src_that_these_tests_do_not_know() => Assert.Equal(Projects.Allowed.Keys, Projects.Found);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_project_file_references_exactly_what_it_may_know(string project)
    {
        var references = Projects.Read(project).Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/')))
            .Order(StringComparer.Ordinal);

        Assert.Equal(Projects.Allowed[project], references);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_compiled_project_uses_only_what_it_may_know(string project)
    {
        var ours = Projects.Found.Select(Projects.AssemblyOf).ToHashSet(StringComparer.Ordinal);
        var used = Assembly.Load(Projects.AssemblyOf(project)).GetReferencedAssemblies()
            .Select(reference => reference.Name!)
            .Where(ours.Contains);

        Assert.Empty(used.Except(Projects.Allowed[project], StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_project_references_no_assembly_by_file(string project) => Assert.Empty(Projects.Read(project).Descendants("Reference"));
}
