using GuideBuilder.Rendering.Templates;
using Markdig.Syntax.Inlines;
using Said = GuideBuilder.Model.Inline;

namespace GuideBuilder.Rendering.Markup;

/// <summary>Turns what stands within a line of CommonMark into a phrase, and checks where links lead.</summary>
internal sealed class InlineReader
{
    /// <summary>The scheme of a gap to fill in; the program writes it for an answer that is missing, and an editor may.</summary>
    internal const string GapScheme = "blank:";

    private const string ItemScheme = "see:";

    private static readonly ImmutableArray<string> OutsideSchemes = ["https:", "http:", "mailto:", "tel:"];

    private readonly LocalText _source;
    private readonly string _pageLanguage;
    private readonly KnownIds _known;
    private readonly FaultList _faults;

    internal InlineReader(LocalText source, string pageLanguage, KnownIds known, FaultList faults) =>
        (_source, _pageLanguage, _known, _faults) = (source, pageLanguage, known, faults);

    /// <summary>The phrase of a line, marked with its language where that is not the page's.</summary>
    internal Phrase Read(ContainerInline? line)
    {
        var said = Inside(line);
        return said.IsEmpty || _source.Language == _pageLanguage ? said : Phrase.Of(new Said.InLanguage(_source.Language, said));
    }

    private Phrase Inside(ContainerInline? line) => new([.. Merge((line ?? []).SelectMany(One))]);

    private IEnumerable<Said> One(Markdig.Syntax.Inlines.Inline inline) => inline switch
    {
        LiteralInline literal => [new Said.Words(literal.Content.ToString())],
        HtmlEntityInline entity => [new Said.Words(entity.Transcoded.ToString())],
        CodeInline code => [new Said.Exact(code.Content)],
        EmphasisInline { DelimiterCount: >= 2 } strong => [new Said.Strong(Inside(strong))],
        EmphasisInline stressed => [new Said.Stressed(Inside(stressed))],
        LineBreakInline { IsHard: true } => [new Said.LineEnd()],
        LineBreakInline => [new Said.Words(" ")],
        LinkInline { IsImage: true } => Image(),
        LinkInline link => Link(link.Url ?? "", Inside(link)),
        AutolinkInline auto => Link(auto.IsEmail ? "mailto:" + auto.Url : auto.Url, Phrase.Of(auto.Url)),
        HtmlInline html => [new Said.Words(html.Tag)],
        ContainerInline other => Inside(other).Parts,
        _ => [],
    };

    private ImmutableArray<Said> Link(string address, Phrase inside)
    {
        if (address.StartsWith(GapScheme, StringComparison.Ordinal))
        {
            return [new Said.Gap(inside.PlainWords)];
        }

        if (address.StartsWith(ItemScheme, StringComparison.Ordinal))
        {
            return See(address[ItemScheme.Length..], inside);
        }

        if (OutsideSchemes.Any(s => address.StartsWith(s, StringComparison.Ordinal)) && !address.Any(char.IsControl))
        {
            return [new Said.Link(new Target.Outside(address), inside)];
        }

        _faults.Add(RenderingFaults.LinkRefused(TemplatePlaces.Of(_source, address), address));
        return inside.Parts;
    }

    private ImmutableArray<Said> See(string id, Phrase inside)
    {
        if (_known.Has(id))
        {
            return [new Said.Link(new Target.Item(id), inside)];
        }

        _faults.Add(RenderingFaults.LinkUnresolved(TemplatePlaces.Of(_source, ItemScheme + id), id, _known.Nearest(id)));
        return inside.Parts;
    }

    private ImmutableArray<Said> Image()
    {
        _faults.Add(RenderingFaults.ImageRefused(TemplatePlaces.Of(_source, "![")));
        return [];
    }

    // The words before a gap may already be its name; it is not said twice.
    private static bool IsNamed(string before, string name) => before.TrimEnd(' ', ':').EndsWith(name, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<Said> Merge(IEnumerable<Said> parts)
    {
        Said.Words? held = null;
        var before = "";
        foreach (var part in parts)
        {
            var heard = before;
            before += part.PlainWords;
            if (part is Said.Words words)
            {
                held = held is null ? words : new(held.Text + words.Text);
                continue;
            }

            var said = part is Said.Gap gap && IsNamed(heard, gap.Name) ? new Said.Gap("") : part;
            if (held is not null)
            {
                yield return held;
                held = null;
            }

            yield return said;
        }

        if (held is not null)
        {
            yield return held;
        }
    }
}
