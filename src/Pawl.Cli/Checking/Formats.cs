using Pawl.Reports.Output;

namespace Pawl.Cli.Checking;

/// <summary>What a report can be written as.</summary>
public enum Format
{
    Text,
    Markdown,
    Html,
    Json,
}

/// <summary>Names and file extensions of the formats.</summary>
internal static class Formats
{
    public static readonly string[] Names = ["text", "markdown", "html", "json"];

    public static Format? Find(string name) => name switch
    {
        "text" => Format.Text,
        "markdown" => Format.Markdown,
        "html" => Format.Html,
        "json" => Format.Json,
        _ => null,
    };

    public static string NameOf(Format format) => Names[(int)format];

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

    public static Format? FromExtension(string extension) => extension switch
    {
        ".txt" => Format.Text,
        ".md" => Format.Markdown,
        ".html" or ".htm" => Format.Html,
        ".json" => Format.Json,
        _ => null,
    };
}
