using Pawl.Reports.Drawing;
using Pawl.Reports.Html;
using Pawl.Reports.Markdown;
using Pawl.Reports.Records;

namespace Pawl.Reports.Output;

/// <summary>The files of a record, and of all records together.</summary>
public static class ReportFiles
{
    /// <summary>What the folder of a report's figures ends in.</summary>
    private const string FigureFolder = "-figures";

    private const string DerivationsEnding = ReportNames.Derivations + ".html";

    /// <summary>The files of one record.</summary>
    /// <param name="record">The record.</param>
    /// <param name="name">Its name by <see cref="ReportNames.Of"/>.</param>
    /// <param name="formats">Which files.</param>
    public static ImmutableArray<OutputFile> Of(ConformanceRecord record, string name, ReportFormats formats)
    {
        ArgumentNullException.ThrowIfNull(record);
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        if (formats.HasFlag(ReportFormats.Json))
            files.Add(new(name + ".json", record.ToJson()));
        var last = name[(name.LastIndexOf('/') + 1)..];
        if (formats.HasFlag(ReportFormats.Markdown))
        {
            files.Add(new(name + ".md", MarkdownReport.Render(record, Uri.EscapeDataString(last + FigureFolder))));
            files.AddRange(FigureList.Of(record).Select(f => new OutputFile($"{name}{FigureFolder}/{f.Id}.svg", f.File())));
        }

        if (formats.HasFlag(ReportFormats.Html))
        {
            var (main, derivations) = HtmlReport.Render(record, Uri.EscapeDataString(last + ".html"), Uri.EscapeDataString(last + DerivationsEnding));
            files.Add(new(name + ".html", main));
            files.Add(new(name + DerivationsEnding, derivations));
        }

        return files.DrainToImmutable();
    }

    /// <summary>The page about all specs.</summary>
    public static ImmutableArray<OutputFile> Index(ImmutableArray<IndexEntry> entries, ReportFormats formats)
    {
        var files = ImmutableArray.CreateBuilder<OutputFile>();
        if (formats.HasFlag(ReportFormats.Markdown))
            files.Add(new(ReportNames.IndexName + ".md", IndexReport.Markdown(entries, ".md")));
        if (formats.HasFlag(ReportFormats.Html))
            files.Add(new(ReportNames.IndexName + ".html", IndexReport.Html(entries)));
        return files.DrainToImmutable();
    }
}
