using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;
using Template = Scriban.Template;

namespace GuideBuilder.Rendering.Templates;

/// <summary>Runs a text as a template, or reports why it cannot.</summary>
internal static class TemplateRunner
{
    /// <summary>The pieces that a text writes, its values escaped for CommonMark; none when it has faults.</summary>
    internal static ImmutableArray<Piece> CommonMark(LocalText text, ScriptObject names, FaultList faults) => Run(text, names, Escaping.CommonMark, faults, guardCode: true);

    /// <summary>What a text writes, its values escaped for HTML; empty when it has faults.</summary>
    internal static string Html(LocalText text, ScriptObject names, FaultList faults) =>
        string.Concat(Run(text, names, Tongues.Html, faults, guardCode: false).Select(p => p.Text));

    private static ImmutableArray<Piece> Run(LocalText text, ScriptObject names, Func<string, string> escape, FaultList faults, bool guardCode)
    {
        if (!text.Words.Contains("{{", StringComparison.Ordinal))
        {
            return [new Piece(text.Words, null)];
        }

        var template = Template.Parse(text.Words, text.Place.Path);
        var wrong = Unreadable(template, text).Concat(Refused(template, text));
        if (guardCode)
        {
            wrong = wrong.Concat(CodeGuard.Check(text));
        }

        var found = wrong.ToList();
        found.ForEach(faults.Add);
        return found.Count > 0 ? [] : Fill(template, new GuardedContext(names, escape), text, faults);
    }

    private static IEnumerable<Fault> Unreadable(Template template, LocalText text) =>
        template.Messages
            .Where(m => m.Type == ParserMessageType.Error)
            .Select(m => RenderingFaults.TemplateUnreadable(TemplatePlaces.At(text, m.Span.Start), m.Message));

    private static IEnumerable<Fault> Refused(Template template, LocalText text)
    {
        if (template.Page is null)
        {
            return [];
        }

        var guard = new StatementGuard(text);
        guard.Visit(template.Page);
        return guard.Found;
    }

    private static ImmutableArray<Piece> Fill(Template template, GuardedContext context, LocalText text, FaultList faults)
    {
        try
        {
            return context.Fill(template);
        }
        catch (ScriptRuntimeException stop)
        {
            faults.Add(FaultOf(stop, TemplatePlaces.At(text, stop.Span.Start)));
            return [];
        }
    }

    private static Fault FaultOf(ScriptRuntimeException stop, Place place) => stop switch
    {
        TemplateFault own => own.Fault(place),
        { InnerException: TemplateFault own } => own.Fault(place),
        _ when stop.OriginalMessage.Contains("limit", StringComparison.OrdinalIgnoreCase) => RenderingFaults.TooLong(place),
        _ => RenderingFaults.TemplateFails(place, stop.OriginalMessage),
    };
}
