using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace GuideBuilder.Reading;

/// <summary>Text to node tree. The one file that knows the YAML library: it counts lines and columns from one, as editors do.</summary>
internal static class YamlText
{
    /// <summary>The tree of a file that holds exactly one document, or null; every reason is among the faults.</summary>
    public static Node? Read(SourceText source, Budget budget, FaultList faults) =>
        Utf8Text.Decode(source, budget, faults) is { } text ? Read(source.Path, text, new(budget, faults), faults) : null;

    /// <summary>The comments of a file that reads without a fault, in written order, each without its #.</summary>
    public static ImmutableArray<Comment> Comments(SourceText source, Budget budget)
    {
        var text = Utf8Text.Decode(source, budget, new FaultList()) ?? "";
        var scanner = new Scanner(new StringReader(text), skipComments: false);
        var found = ImmutableArray.CreateBuilder<Comment>();
        while (scanner.MoveNext())
        {
            if (scanner.Current is YamlDotNet.Core.Tokens.Comment comment)
            {
                var start = (int)comment.Start.Index + 1;
                var end = text.AsSpan(start).IndexOfAny('\r', '\n');
                found.Add(new((end < 0 ? text[start..] : text.Substring(start, end)).TrimEnd(), AloneOnItsLine(text, start - 1), (int)comment.Start.Line));
            }
        }

        return found.ToImmutable();
    }

    private static bool AloneOnItsLine(string text, int at)
    {
        var line = text.AsSpan(0, at);
        return line[(line.LastIndexOfAny('\r', '\n') + 1)..].IsWhiteSpace();
    }

    private static Node? Read(string path, string text, TreeBuilder tree, FaultList faults)
    {
        var documents = 0;
        try
        {
            var parser = new Parser(new StringReader(text));
            while (!tree.Stopped && documents < 2 && parser.MoveNext())
            {
                documents += parser.Current is DocumentStart start ? Begin(start, documents, path, faults) : 0;
                Take(parser.Current!, path, tree, faults);
            }
        }
        catch (YamlException e)
        {
            faults.Add(Malformed(e, path, text));
            return null;
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or IndexOutOfRangeException or FormatException or OverflowException)
        {
            // The library throws these for a bracket that is never closed, without saying where.
            faults.Add(ReadingFaults.NotClosed(tree.InnermostOpen ?? new(path, 1, 1)));
            return null;
        }

        return tree.Stopped ? null : Checked(tree.Root, path, faults);
    }

    private static Node? Checked(Node? root, string path, FaultList faults)
    {
        if (root is null or Scalar { IsEmpty: true })
        {
            faults.Add(ReadingFaults.EmptyFile(new(path, 1, 1)));
            return null;
        }

        return root;
    }

    private static int Begin(DocumentStart start, int before, string path, FaultList faults)
    {
        if (before > 0)
        {
            faults.Add(ReadingFaults.SeveralDocuments(At(path, start.Start)));
        }

        // The two handles that every document has (! and !!) are listed even where nobody wrote them.
        if (start.Version is not null || start.Tags is { Count: > 2 })
        {
            faults.Add(ReadingFaults.Directive(At(path, start.Start)));
        }

        return 1;
    }

    private static void Take(ParsingEvent happened, string path, TreeBuilder tree, FaultList faults)
    {
        var place = At(path, happened.Start);
        if (happened is AnchorAlias || happened is NodeEvent { Anchor.IsEmpty: false })
        {
            faults.Add(ReadingFaults.Anchor(place));
        }

        if (happened is NodeEvent { Tag: { IsEmpty: false, IsNonSpecific: false } } or NodeEvent { Tag: { IsEmpty: false, Value: "!" } })
        {
            faults.Add(ReadingFaults.Tag(place));
        }

        switch (happened)
        {
            case SequenceStart or MappingStart:
                tree.Open(happened is MappingStart, place);
                break;
            case SequenceEnd or MappingEnd:
                tree.Close();
                break;
            case YamlDotNet.Core.Events.Scalar scalar:
                tree.Add(new(Clean(scalar.Value, place, faults), FormOf(scalar.Style), place));
                break;
            case AnchorAlias:
                tree.Add(new("", ScalarForm.Quoted, place));
                break;
        }
    }

    // A character written as an escape ("\u202e") comes out of the library as itself.
    private static string Clean(string value, Place place, FaultList faults)
    {
        foreach (var c in value)
        {
            if (Characters.Forbidden(c) is { } why)
            {
                faults.Add(ReadingFaults.EscapedCharacter(place, Characters.Code(c), why));
                return "?";
            }
        }

        return value;
    }

    private static ScalarForm FormOf(ScalarStyle style) => style switch
    {
        ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted => ScalarForm.Quoted,
        ScalarStyle.Literal or ScalarStyle.Folded => ScalarForm.Block,
        _ => ScalarForm.Plain,
    };

    private static Fault Malformed(YamlException e, string path, string text)
    {
        var tab = e.Message.Contains("tab", StringComparison.Ordinal) ? Positions.FirstTabInIndentation(path, text) : null;
        return tab is null ? ReadingFaults.Malformed(At(path, e.Start), e.Message) : ReadingFaults.TabIndents(tab);
    }

    private static Place At(string path, in YamlDotNet.Core.Mark mark) => new(path, (int)Math.Max(1, mark.Line), (int)Math.Max(1, mark.Column));
}
