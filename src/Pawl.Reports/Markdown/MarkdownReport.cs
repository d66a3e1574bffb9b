using Pawl.Reports.Drawing;
using Pawl.Reports.Records;

namespace Pawl.Reports.Markdown;

/// <summary>The report of one spec as Markdown.</summary>
public static class MarkdownReport
{
    /// <summary>Renders a record. Everything that a spec says is escaped.</summary>
    /// <param name="record">The record.</param>
    /// <param name="figureFolder">Where its figures lie as files, as the report's own folder sees it; null: without figures.</param>
    public static string Render(ConformanceRecord record, string? figureFolder = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        if (!record.IsWhole)
            throw new InvalidOperationException("A record of findings alone has no derivations to report.");
        var markup = Markup.Markdown;
        var model = new ReportModel(
            record, markup, figureFolder is null ? [] : FigureList.Of(record), f => $"![{markup.Escape(f.Title)}: {markup.Escape(f.Description)}]({figureFolder}/{f.Id}.svg)");
        return Templates.Render("report.md", model.Build());
    }
}
