using System.Xml;

namespace GuideBuilder.Reading;

/// <summary>Lets a logo through if it is a plain drawing or a plain picture, with nothing in it that could run, ask a network, or tell about a person.</summary>
internal static class LogoCheck
{
    private const int MostBytes = 100 * 1024;

    private static readonly FrozenSet<string> Elements = new[]
    {
        "svg", "g", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "title", "desc", "defs", "linearGradient", "radialGradient", "stop", "clipPath", "text", "tspan",
    }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Attributes = new[]
    {
        "xmlns", "version", "viewBox", "width", "height", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry", "d", "points", "id", "transform", "fill", "fill-opacity", "fill-rule",
        "stroke", "stroke-width", "stroke-linecap", "stroke-linejoin", "stroke-miterlimit", "stroke-dasharray", "stroke-opacity", "opacity", "offset", "stop-color", "stop-opacity", "clip-path",
        "clip-rule", "gradientUnits", "gradientTransform", "font-family", "font-size", "font-weight", "text-anchor", "dx", "dy", "role", "preserveAspectRatio",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The logo, or null with the fault added.</summary>
    public static ImprintLogo? Read(SourceText? file, Place place, FaultList faults)
    {
        if (file is null)
        {
            faults.Add(ReadingFaults.NotALogo(place, "there is no such file beside the imprint"));
            return null;
        }

        var (logo, why) = file.Bytes.Length > MostBytes ? (null, Invariant($"it is {file.Bytes.Length:#,0} bytes long"))
            : Png.Holds(file.Bytes.Span) ? Png.Read(file.Bytes.Span)
            : Svg(file.Bytes);
        if (logo is null)
        {
            faults.Add(ReadingFaults.NotALogo(place, why));
        }

        return logo;
    }

    private static (ImprintLogo? Logo, string Why) Svg(ReadOnlyMemory<byte> bytes)
    {
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreComments = true, IgnoreProcessingInstructions = true, MaxCharactersInDocument = MostBytes };
        try
        {
            using var xml = XmlReader.Create(new MemoryStream(bytes.ToArray()), settings);
            using var clean = new MemoryStream();
            using (var writer = XmlWriter.Create(clean, new XmlWriterSettings { OmitXmlDeclaration = true, Encoding = new System.Text.UTF8Encoding(false), NewLineChars = "\n" }))
            {
                if (xml.MoveToContent() != XmlNodeType.Element || xml.LocalName != "svg")
                {
                    return (null, "it is neither SVG nor PNG");
                }

                if (Refusal(xml, writer) is { } why)
                {
                    return (null, why);
                }
            }

            return (new("image/svg+xml", clean.ToArray()), "");
        }
        catch (XmlException)
        {
            return (null, "it is neither a whole SVG nor a PNG");
        }
    }

    // Copies what is allowed; anything else ends the copying with its name.
    private static string? Refusal(XmlReader xml, XmlWriter writer)
    {
        do
        {
            switch (xml.NodeType)
            {
                case XmlNodeType.Element when !Elements.Contains(xml.Name):
                    return $"it holds <{xml.Name}>";
                case XmlNodeType.Element:
                    if (Element(xml, writer) is { } why)
                    {
                        return why;
                    }

                    break;
                case XmlNodeType.EndElement:
                    writer.WriteEndElement();
                    break;
                case XmlNodeType.Text:
                    writer.WriteString(xml.Value);
                    break;
                default:
                    break;
            }
        }
        while (xml.Read());
        return null;
    }

    private static string? Element(XmlReader xml, XmlWriter writer)
    {
        var isEmpty = xml.IsEmptyElement;
        writer.WriteStartElement(xml.LocalName, "http://www.w3.org/2000/svg");
        while (xml.MoveToNextAttribute())
        {
            if (!Attributes.Contains(xml.Name) || IsOutside(xml.Value))
            {
                return $"it holds the attribute {xml.Name}";
            }

            if (xml.Name != "xmlns")
            {
                writer.WriteAttributeString(xml.Name, xml.Value);
            }
        }

        if (isEmpty)
        {
            writer.WriteEndElement();
        }

        return null;
    }

    // A reference inside the drawing is url(#name); anything else with an address is not.
    private static bool IsOutside(string value)
    {
        var calm = value.Replace("url(#", "", StringComparison.Ordinal);
        return calm.Contains("url(", StringComparison.OrdinalIgnoreCase) || (calm.Contains(':', StringComparison.Ordinal) && !calm.StartsWith("http://www.w3.org/", StringComparison.Ordinal));
    }
}
