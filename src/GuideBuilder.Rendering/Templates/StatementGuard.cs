using Scriban.Syntax;

namespace GuideBuilder.Rendering.Templates;

/// <summary>Finds the statements that templates may not use: those that keep output aside or bring in more template.</summary>
internal sealed class StatementGuard : ScriptVisitor
{
    private readonly LocalText _text;
    private readonly List<Fault> _found = [];

    internal StatementGuard(LocalText text) => _text = text;

    /// <summary>The faults met.</summary>
    internal IEnumerable<Fault> Found => _found;

    /// <inheritdoc/>
    public override void Visit(ScriptCaptureStatement node) => Refuse(node, "capture");

    /// <inheritdoc/>
    public override void Visit(ScriptFunction node) => Refuse(node, "func");

    /// <inheritdoc/>
    public override void Visit(ScriptImportStatement node) => Refuse(node, "import");

    /// <inheritdoc/>
    public override void Visit(ScriptWithStatement node) => Refuse(node, "with");

    /// <inheritdoc/>
    public override void Visit(ScriptWrapStatement node) => Refuse(node, "wrap");

    /// <inheritdoc/>
    public override void Visit(ScriptVariableGlobal node)
    {
        if (node.Name is "include" or "include_join" or "html" or "object")
        {
            Refuse(node, node.Name);
        }
    }

    private void Refuse(ScriptNode node, string statement) => _found.Add(RenderingFaults.StatementRefused(TemplatePlaces.At(_text, node.Span.Start), statement));
}
