using System.Xml.Linq;
using Pawl.Reports.Markdown;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Drawing;

/// <summary>A figure of a report, drawn from the record: inside a page, or as a file of its own beside the Markdown.</summary>
internal sealed record Figure
{
    private static readonly XNamespace Namespace = "http://www.w3.org/2000/svg";

    /// <summary>Its name in links and files: lower-case ASCII letters, digits, points and hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>The part of the report that it stands in.</summary>
    public required FigureSection Section { get; init; }

    /// <summary>What it shows, in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>What a reader who cannot see it must know: the values that it shows, in sentences.</summary>
    public required string Description { get; init; }

    /// <summary>Width of the drawing area, in its own units; text of the figures is 12 of them high.</summary>
    public required double Width { get; init; }

    /// <summary>Height of the drawing area, in its own units.</summary>
    public required double Height { get; init; }

    /// <summary>What is drawn, by <see cref="Svg"/>: classes of figure.css for all that has a colour, no style attributes.</summary>
    public required ImmutableArray<XElement> Content { get; init; }

    /// <summary>The element for a page, whose style sheet holds figure.css.</summary>
    public string Inline() => Write(Root(standsAlone: false));

    /// <summary>The file, with its style inside.</summary>
    public string File() => Write(Root(standsAlone: true)) + "\n";

    private XElement Root(bool standsAlone)
    {
        XName Name(string local) => standsAlone ? Namespace + local : local;
        var (title, description) = ($"figure.{Id}.title", $"figure.{Id}.description");
        var root = new XElement(
            Name("svg"),
            new XAttribute("role", "img"),
            new XAttribute("class", "drawing"),
            new XAttribute("viewBox", $"0 0 {Svg.Number(Width)} {Svg.Number(Height)}"),
            new XAttribute("width", Svg.Number(Width)),
            new XAttribute("height", Svg.Number(Height)),
            new XAttribute("aria-labelledby", $"{title} {description}"),
            new XElement(Name("title"), new XAttribute("id", title), SafeText.Line(Title)),
            new XElement(Name("desc"), new XAttribute("id", description), SafeText.Line(Description)));
        if (standsAlone)
            root.Add(new XElement(Name("style"), Templates.Read("figure.css")));
        foreach (var element in Content)
            root.Add(standsAlone ? InNamespace(element) : element);
        return root;
    }

    private static XElement InNamespace(XElement element) => new(
        Namespace + element.Name.LocalName,
        element.Attributes(),
        element.Nodes().Select(static node => node is XElement child ? InNamespace(child) : node));

    private static string Write(XElement root) => root.ToString(SaveOptions.DisableFormatting);
}

/// <summary>Parts of a report that hold figures.</summary>
internal enum FigureSection
{
    Summary,
    Train,
    Meshes,
    Bearings,
    Seals,
    Joints,
    Fits,
    Stacks,

    /// <summary>Shafts, splines, lubrication and what else has no part of its own.</summary>
    Others,
}
