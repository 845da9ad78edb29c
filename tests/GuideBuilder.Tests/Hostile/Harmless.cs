using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace GuideBuilder.Tests.Hostile;

/// <summary>What no page of a handbook may hold, whoever wrote its words.</summary>
internal static class Harmless
{
    private static readonly string[] Never = ["iframe", "object", "embed", "applet", "frame", "frameset", "base", "form", "template", "style", "math", "foreignobject", "animate", "use", "noscript", "textarea", "plaintext", "video", "audio"];

    private static readonly string[] Addresses = ["href", "src", "action", "formaction", "srcset", "poster", "data", "xlink:href"];

    private static readonly string[] Dangerous = ["javascript:", "vbscript:", "data:text", "//", "\\", "file:"];

    /// <summary>What it holds all the same, a line each.</summary>
    public static IEnumerable<string> Wrong(string html)
    {
        foreach (var element in new HtmlParser().ParseDocument(html).All)
        {
            if (Never.Contains(element.LocalName, StringComparer.OrdinalIgnoreCase) || (element.LocalName == "script" && (element.GetAttribute("src") != "ticks.js" || element.TextContent.Length > 0)))
            {
                yield return $"<{element.LocalName}>";
            }

            foreach (var attribute in element.Attributes.Where(a => IsWrong(element, a)))
            {
                yield return $"{element.LocalName} {attribute.Name}={attribute.Value}";
            }
        }
    }

    private static bool IsWrong(IElement element, IAttr attribute)
    {
        var address = string.Concat(attribute.Value.Where(c => c > ' ')).ToLowerInvariant();
        return attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase)
            || attribute.Name is "style" or "srcdoc" or "autofocus"
            || (Addresses.Contains(attribute.Name) && Dangerous.Any(d => address.StartsWith(d, StringComparison.Ordinal)))
            || (attribute.Name is "src" && element.LocalName != "img" && address.Contains(':', StringComparison.Ordinal));
    }
}
