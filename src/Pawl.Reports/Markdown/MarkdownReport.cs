using Pawl.Reports.Records;

namespace Pawl.Reports.Markdown;

/// <summary>The report of one spec as Markdown.</summary>
public static class MarkdownReport
{
    /// <summary>Renders a record. Everything that a spec says is escaped.</summary>
    public static string Render(ConformanceRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        if (!record.IsWhole)
            throw new InvalidOperationException("A record of findings alone has no derivations to report.");
        return Templates.Render("report.md", new ReportModel(record).Build());
    }
}
