using Pawl.Reports.Drawing;
using Pawl.Reports.Markdown;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Html;

/// <summary>The report of one spec as one HTML page that needs nothing beside it.</summary>
public static class HtmlReport
{
    /// <summary>Renders a record.</summary>
    public static string Render(ConformanceRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Render(record, MarkdownReport.Render(record, "figures"));
    }

    /// <summary>Renders the Markdown of a record, with the figures that it links to, for a caller that has it already.</summary>
    public static string Render(ConformanceRecord record, string markdown)
    {
        ArgumentNullException.ThrowIfNull(record);
        var identity = record.Identity;
        var revision = identity.Revision.Length == 0 ? "" : $" revision {identity.Revision}";
        return Page.Of(
            SafeText.Line($"Conformance report: {identity.Variant}{revision}"),
            OutcomeClass.Of(Labels.Alike(record.Verdict)),
            $"Report {record.Id}",
            markdown,
            FigureList.Of(record));
    }
}
