using System.Text.RegularExpressions;
using GuideBuilder.Tests.Support;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace GuideBuilder.Tests.Architecture;

public sealed partial class FaultCodeTests
{
    private static readonly Dictionary<string, char> FirstDigits = new(StringComparer.Ordinal)
    {
        ["GuideBuilder.Reading"] = '1',
        ["GuideBuilder.Planning"] = '2',
        ["GuideBuilder.Rendering"] = '3',
        ["GuideBuilder.Cli"] = '4',
    };

    [Fact]
    public void Each_fault_code_is_defined_once() => Findings.AreNone(DefinedTwice(SourceFile.Product));

    [Fact]
    public void Each_fault_code_begins_with_the_digit_of_its_stage() => Findings.AreNone(InTheWrongStage(SourceFile.Product));

    [Fact]
    public void A_code_defined_twice_or_in_the_wrong_stage_would_be_found()
    {
        SourceFile[] files =
        [
            SourceFile.Parse("src/GuideBuilder.Reading/A.cs", "class A { string a = \"HB1001\", b = \"HB1002\"; /* \"HB1001\" */ }"),
            SourceFile.Parse("src/GuideBuilder.Planning/B.cs", "class B { string a = \"HB1002\", b = \"HB2001\", c = \"see HB1001\"; }"),
        ];

        Assert.Equal(["HB1002: src/GuideBuilder.Reading/A.cs, src/GuideBuilder.Planning/B.cs"], DefinedTwice(files));
        Assert.Equal(["HB1002 in src/GuideBuilder.Planning/B.cs"], InTheWrongStage(files));
    }

    private static IEnumerable<string> DefinedTwice(IEnumerable<SourceFile> files) =>
        from code in files.SelectMany(Codes)
        group code.File by code.Code into places
        where places.Count() > 1
        select $"{places.Key}: {string.Join(", ", places)}";

    private static IEnumerable<string> InTheWrongStage(IEnumerable<SourceFile> files) =>
        from code in files.SelectMany(Codes)
        let project = code.File.Split('/')[1]
        where !FirstDigits.TryGetValue(project, out var digit) || code.Code[2] != digit
        select $"{code.Code} in {code.File}";

    private static IEnumerable<(string Code, string File)> Codes(SourceFile file) =>
        from token in file.Tree.DescendantTokens()
        where token.IsKind(SyntaxKind.StringLiteralToken) && WholeCode().IsMatch(token.ValueText)
        select (token.ValueText, file.Name);

    [GeneratedRegex(@"\AHB\d{4}\z", RegexOptions.CultureInvariant)]
    private static partial Regex WholeCode();
}
