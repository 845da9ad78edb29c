using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Html;

/// <summary>Writes what stands within a line, and gives links their addresses.</summary>
internal sealed class PhraseWriter
{
    private readonly HtmlWriter _out;
    private readonly string _page;
    private string _language;
    private readonly Manner _manner;
    private readonly Addresses _addresses;
    private readonly Phrases _labels;
    private readonly FaultList _faults;

    internal PhraseWriter(HtmlWriter html, Page page, Manner manner, Addresses addresses, Phrases labels, FaultList faults) =>
        (_out, _page, _language, _manner, _addresses, _labels, _faults) = (html, page.Id, page.Language, manner, addresses, labels, faults);

    /// <summary>Writes a phrase.</summary>
    internal void Write(Phrase phrase)
    {
        foreach (var part in phrase.Parts)
        {
            Write(part);
        }
    }

    private void Write(Inline part)
    {
        switch (part)
        {
            case Inline.Words words:
                _out.Text(words.Text);
                break;
            case Inline.Strong strong:
                Element("strong", strong.Inside);
                break;
            case Inline.Stressed stressed:
                Element("em", stressed.Inside);
                break;
            case Inline.Exact exact:
                _out.Open("code", ("translate", "no")).Text(exact.Text).Close();
                break;
            case Inline.Link link:
                Link(link);
                break;
            case Inline.Gap gap:
                Gap(gap.Name);
                break;
            case Inline.Date date:
                _out.Open("time", ("datetime", NodaTime.Text.LocalDatePattern.Iso.Format(date.Day))).Text(date.Text).Close();
                break;
            case Inline.InLanguage other:
                Other(other);
                break;
            case Inline.Unseen unseen:
                Element("span", unseen.Inside, ("class", "unseen"));
                break;
            case Inline.LineEnd:
                _out.Void("br");
                break;
            default:
                throw new UnreachableException();
        }
    }

    // The line to write on is empty; what belongs there follows it, and in a table, whose heads say it, is heard only.
    private void Gap(string name) =>
        _out.Open("span", ("class", "gap")).Close().Open("span", ("class", name.Length == 0 ? "unseen" : "gap-name")).Text(name.Length == 0 ? _labels.Say("gap-unnamed") : _labels.Say("gap", ("name", name))).Close();

    // Words need no mark inside others of their language.
    private void Other(Inline.InLanguage other)
    {
        if (other.Language == _language)
        {
            Write(other.Inside);
            return;
        }

        var around = _language;
        _language = other.Language;
        Element("span", other.Inside, ("lang", other.Language));
        _language = around;
    }

    private void Link(Inline.Link link)
    {
        var address = link.To switch
        {
            Target.Outside outside => outside.Address,
            Target.File file => file.Name,
            _ => Inside(link.To),
        };

        if (address is null)
        {
            Write(link.Inside);
            return;
        }

        Element("a", link.Inside, ("href", address));
    }

    private string? Inside(Target target)
    {
        if (_addresses.Find(target) is { } home)
        {
            return home == new Home(_page, null) ? null : _manner.Address(_page, home);
        }

        if (!_addresses.IsLeftOut(target))
        {
            _faults.Add(RenderingFaults.LinkUnresolved(Place.None, target is Target.Item item ? item.Id : ((Target.Reason)target).Id, ""));
        }

        return null;
    }

    private void Element(string tag, Phrase inside, params (string Name, string? Value)[] attributes)
    {
        _out.Open(tag, attributes);
        Write(inside);
        _out.Close();
    }
}
