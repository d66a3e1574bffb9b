using Pawl.Reports.Records;
using Pawl.Specs.Text;

namespace Pawl.Reports.Machine;

/// <summary>Paths as a service that holds the whole repository knows them.</summary>
/// <param name="project">The folder of the project from the root of the repository, with forward slashes; empty when they are one.</param>
internal sealed class Places(string project)
{
    private const string Shipped = "shipped:";

    private readonly string _before = project.Length == 0 ? "" : project + "/";

    /// <summary>Whether a path is of a file inside the tool.</summary>
    public static bool IsShipped(string file) => file.StartsWith(Shipped, StringComparison.Ordinal);

    /// <summary>A path from the project root as one from the root of the repository.</summary>
    public string Path(string file) => _before + file;

    /// <summary>The same as a relative reference by RFC 3986: each part percent-encoded, so that no part is taken for a scheme.</summary>
    public string Uri(string file) => string.Join('/', Path(file).Split('/').Select(System.Uri.EscapeDataString));

    /// <summary>Where a finding is shown: what governs it, or the spec as a whole where that ships inside the tool.</summary>
    public static PlaceRecord Of(FindingRecord finding, string spec) =>
        IsShipped(finding.Place.File) ? Whole(spec) : finding.Place;

    /// <summary>Where a complaint is shown; null when it is about no file.</summary>
    public static PlaceRecord? Of(Diagnostic diagnostic)
    {
        var (file, start, end) = diagnostic.Span;
        return start.Line < 1 || IsShipped(file)
            ? null
            : new() { File = file, Line = start.Line, Column = start.Column, EndLine = end.Line, EndColumn = end.Column };
    }

    /// <summary>The first place of a file.</summary>
    public static PlaceRecord Whole(string file) => new() { File = file, Line = 1, Column = 1, EndLine = 1, EndColumn = 1 };

    /// <summary>Whether a place covers any text, so that its end says something.</summary>
    public static bool HasExtent(PlaceRecord place) =>
        place.EndLine > place.Line || (place.EndLine == place.Line && place.EndColumn > place.Column);
}
