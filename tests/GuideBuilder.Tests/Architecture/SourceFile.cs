using GuideBuilder.Tests.Support;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace GuideBuilder.Tests.Architecture;

/// <summary>One C# file of this repository, parsed.</summary>
internal sealed record SourceFile(string Name, string Text, SyntaxNode Tree)
{
    /// <summary>Every C# file under src and tests, in ordinal order.</summary>
    public static SourceFile[] All { get; } = [.. new[] { "src", "tests" }.SelectMany(Under).OrderBy(file => file.Name, StringComparer.Ordinal)];

    /// <summary>The C# files under src, in ordinal order.</summary>
    public static SourceFile[] Product { get; } = [.. All.Where(file => file.Name.StartsWith("src/", StringComparison.Ordinal))];

    /// <summary>The number of lines, where the last line feed ends a line and begins none.</summary>
    public int Lines => Text.Split('\n').Length - (Text.EndsWith('\n') ? 1 : 0);

    /// <summary>Parses text as if it stood in a file of this name.</summary>
    public static SourceFile Parse(string name, string text) => new(name, text, CSharpSyntaxTree.ParseText(text, path: name).GetRoot());

    /// <summary>Each method, constructor, operator, accessor and local function with its length in lines, from its first word after attributes to its last.</summary>
    public IEnumerable<(string Name, int Lines)> Methods() =>
        from node in Tree.DescendantNodes()
        where node is BaseMethodDeclarationSyntax or AccessorDeclarationSyntax or LocalFunctionStatementSyntax
        let first = FirstAfterAttributes(node).GetLocation().GetLineSpan().StartLinePosition.Line
        let last = node.GetLastToken().GetLocation().GetLineSpan().EndLinePosition.Line
        select ($"{Name}:{first + 1}", last - first + 1);

    private static SyntaxToken FirstAfterAttributes(SyntaxNode node) =>
        node.ChildNodesAndTokens().First(part => !part.IsKind(SyntaxKind.AttributeList)) switch
        {
            { IsToken: true } part => part.AsToken(),
            var part => part.AsNode()!.GetFirstToken(),
        };

    private static IEnumerable<SourceFile> Under(string folder) =>
        from file in Directory.EnumerateFiles(Repository.At(folder), "*.cs", SearchOption.AllDirectories)
        select Parse(Repository.Short(file), File.ReadAllText(file));
}
