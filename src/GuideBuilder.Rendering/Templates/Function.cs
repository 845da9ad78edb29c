using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace GuideBuilder.Rendering.Templates;

/// <summary>A function that templates may call: so many words in, one value out. It is called by its interface, so that no reflection is needed.</summary>
internal sealed class Function : IScriptCustomFunction
{
    private readonly int _count;
    private readonly Func<SourceSpan, ImmutableArray<string>, object> _call;

    internal Function(int count, Func<SourceSpan, ImmutableArray<string>, object> call) => (_count, _call) = (count, call);

    /// <inheritdoc/>
    public int RequiredParameterCount => _count;

    /// <inheritdoc/>
    public int ParameterCount => _count;

    /// <inheritdoc/>
    public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

    /// <inheritdoc/>
    public Type ReturnType => typeof(object);

    /// <inheritdoc/>
    public ScriptParameterInfo GetParameterInfo(int index) => new(typeof(string), "words");

    /// <inheritdoc/>
    public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement)
    {
        var span = callerContext?.Span ?? default;
        if (arguments.Count != _count)
        {
            throw new ScriptRuntimeException(span, Invariant($"it takes {_count} words in quotation marks, and {arguments.Count} are given"));
        }

        return _call(span, [.. arguments.Select(a => a as string ?? throw new ScriptRuntimeException(span, "it takes words in quotation marks"))]);
    }

    /// <inheritdoc/>
    public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        ValueTask.FromResult(Invoke(context, callerContext, arguments, blockStatement));
}

/// <summary>Stops a template with a fault of its own, whose place the runner fills in.</summary>
internal sealed class TemplateFault : ScriptRuntimeException
{
    internal TemplateFault(SourceSpan span, Func<Place, Fault> fault)
        : base(span, "see fault") => Fault = fault;

    /// <summary>Makes the fault once the place is known.</summary>
    internal Func<Place, Fault> Fault { get; }
}
