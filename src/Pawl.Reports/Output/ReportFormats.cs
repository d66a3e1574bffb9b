namespace Pawl.Reports.Output;

/// <summary>Kinds of files that a record is rendered to.</summary>
[Flags]
public enum ReportFormats
{
    None = 0,
    Json = 1,
    Markdown = 2,
    Html = 4,
    All = Json | Markdown | Html,
}
