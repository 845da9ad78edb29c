using System.Text;
using GuideBuilder.Rendering.Templates;

namespace GuideBuilder.Rendering.Html;

/// <summary>Writes elements one by one; text and attribute values are escaped, and what is opened is closed in turn.</summary>
internal sealed class HtmlWriter
{
    private readonly StringBuilder _text = new();
    private readonly Stack<string> _open = new();

    /// <summary>Opens an element; an attribute whose value is null is left out.</summary>
    internal HtmlWriter Open(string tag, params (string Name, string? Value)[] attributes)
    {
        Start(tag, attributes);
        _open.Push(tag);
        return this;
    }

    /// <summary>Closes the element opened last.</summary>
    internal HtmlWriter Close()
    {
        _text.Append("</").Append(_open.Pop()).Append('>');
        return this;
    }

    /// <summary>Closes the element opened last and ends the line.</summary>
    internal HtmlWriter CloseLine()
    {
        Close();
        _text.Append('\n');
        return this;
    }

    /// <summary>Writes an element that has no content.</summary>
    internal HtmlWriter Void(string tag, params (string Name, string? Value)[] attributes)
    {
        Start(tag, attributes);
        return this;
    }

    /// <summary>Writes a drawing's element that has no content.</summary>
    internal HtmlWriter Mark(string tag, params (string Name, string? Value)[] attributes)
    {
        Start(tag, attributes);
        _text.Length--;
        _text.Append("/>");
        return this;
    }

    /// <summary>Writes words.</summary>
    internal HtmlWriter Text(string words)
    {
        _text.Append(Tongues.Html(words));
        return this;
    }

    /// <summary>Writes words where no element may stand among them, as inside a drawing.</summary>
    internal HtmlWriter Bare(string words)
    {
        _text.Append(Escaping.Html(Tongues.Plain(words)));
        return this;
    }

    /// <summary>Writes what was written elsewhere as HTML.</summary>
    internal HtmlWriter Raw(string html)
    {
        _text.Append(html);
        return this;
    }

    /// <summary>Ends the line of the source.</summary>
    internal HtmlWriter Line()
    {
        _text.Append('\n');
        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => _open.Count == 0 ? _text.ToString() : throw new UnreachableException($"<{_open.Peek()}> is open");

    private void Start(string tag, (string Name, string? Value)[] attributes)
    {
        _text.Append('<').Append(tag);
        foreach (var (name, value) in attributes)
        {
            if (value is not null)
            {
                _text.Append(' ').Append(name).Append("=\"").Append(Escaping.Html(Tongues.Plain(value))).Append('"');
            }
        }

        _text.Append('>');
    }
}
