using Pawl.Reports.Output;

namespace Pawl.Cli.Checking;

/// <summary>What a report can be written as.</summary>
public enum Format
{
    Text,
    Markdown,
    Html,
    Json,
    Sarif,
    Junit,
    Annotations,
}

/// <summary>Names and file extensions of the formats.</summary>
internal static class Formats
{
    public static readonly string[] Names = ["text", "markdown", "html", "json", "sarif", "junit", "annotations"];

    public static Format? Find(string name) => Array.IndexOf(Names, name) is >= 0 and var number ? (Format)number : null;

    public static string NameOf(Format format) => Names[(int)format];

    /// <summary>Whether it is one document about all specs of a run, rather than one of each.</summary>
    public static bool IsOfRun(Format format) => format is Format.Sarif or Format.Junit or Format.Annotations;

    /// <summary>The name of a document about all specs in a folder of reports; no report of a spec ends like these.</summary>
    public static string FileOfRun(Format format) => format == Format.Sarif ? "findings.sarif" : "findings.junit.xml";

    /// <summary>The kinds of report files among the formats.</summary>
    public static ReportFormats FilesOf(ImmutableArray<Format> formats)
    {
        var files = ReportFormats.None;
        foreach (var format in formats)
        {
            files |= format switch
            {
                Format.Json => ReportFormats.Json,
                Format.Markdown => ReportFormats.Markdown,
                Format.Html => ReportFormats.Html,
                _ => ReportFormats.None,
            };
        }

        return files;
    }

    /// <summary>What a file of that name is to hold; null when its ending says nothing.</summary>
    public static Format? FromName(string path) => Path.GetExtension(path) switch
    {
        ".txt" => Format.Text,
        ".md" => Format.Markdown,
        ".html" or ".htm" => Format.Html,
        ".json" => path.EndsWith(".sarif.json", StringComparison.Ordinal) ? Format.Sarif : Format.Json,
        ".sarif" => Format.Sarif,
        ".xml" => Format.Junit,
        _ => null,
    };
}
