using System.Text;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace GuideBuilder.Rendering.Templates;

/// <summary>Words already in the language that a template writes; only the program makes them.</summary>
internal sealed record Ready(string Text);

/// <summary>A block that the program makes, on its way through a template.</summary>
internal sealed record BlockCall(string Name, SourceSpan Span);

/// <summary>A Scriban context that escapes every value on write, is strict about names and members, and stops rather than cuts.</summary>
internal sealed class GuardedContext : TemplateContext
{
    /// <summary>Most characters that one text may write; a page of the handbook stays far below.</summary>
    internal const int LongestText = 4_000_000;

    private const int MostTurns = 100_000;

    private readonly Func<string, string> _escape;
    private readonly List<Piece> _pieces = [];
    private readonly StringBuilder _text = new();

    internal GuardedContext(ScriptObject names, Func<string, string> escape, int longest = LongestText)
        : base(names)
    {
        _escape = escape;
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedIndexerAccess = false;
        EnableRelaxedTargetAccess = false;
        EnableRelaxedFunctionAccess = false;
        LoopLimit = MostTurns;
        LimitToString = longest;
        OutputLimit = longest;
        OnStringLimit = ScriptLimitBehavior.Throw;
        OnOutputLimit = ScriptLimitBehavior.Throw;
        PushOutput(new StringBuilderOutput(_text));
    }

    /// <summary>What a template writes here: text between blocks, in order.</summary>
    internal ImmutableArray<Piece> Fill(Scriban.Template template)
    {
        // Rendering gives back, and clears, what was written since the last block.
        var rest = template.Render(this);
        return [.. _pieces, new Piece(rest, null)];
    }

    /// <inheritdoc/>
    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        switch (textAsObject)
        {
            case null:
                return this;
            case Ready ready:
                return Write(ready.Text);
            case BlockCall call:
                _pieces.Add(new(_text.ToString(), call));
                _text.Clear();
                return this;
            default:
                return Write(_escape(ObjectToString(textAsObject) ?? ""));
        }
    }
}

/// <summary>A stretch of text that a template wrote, and the block that follows it (null at the end).</summary>
internal sealed record Piece(string Text, BlockCall? Then);
