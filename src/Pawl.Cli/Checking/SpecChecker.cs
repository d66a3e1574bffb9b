using Pawl.Analysis;
using Pawl.Cli.Output;
using Pawl.Reports;
using Pawl.Reports.Html;
using Pawl.Reports.Markdown;
using Pawl.Reports.Output;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Pawl.Reports.Sheets;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>A spec as read, with what follows from it; no analysis of a base or a spec that cannot be read.</summary>
internal sealed record ComputedSpec(SpecInput Input, SpecLoad Loaded, GearboxAnalysis? Analysis);

/// <summary>Judges and renders one spec, and writes its reports. Thread-safe.</summary>
internal sealed class SpecChecker(Workbench bench, Settings settings, RuleSet rules)
{
    /// <param name="computed">The spec as read and computed.</param>
    /// <param name="reportName">Name of its report files, without an ending.</param>
    public SpecResult Check(ComputedSpec computed, string reportName)
    {
        var (input, loaded, analysis) = computed;
        var result = new SpecResult
        {
            Input = input,
            State = loaded.IsBase ? SpecState.Base : SpecState.Refused,
            Diagnostics = loaded.Diagnostics,
            FilesRead = [.. loaded.FilesRead.Select(f => f.Path)],
        };
        if (loaded.IsBase && input.Named)
        {
            return Refused(
                result, CliCodes.BaseNamed, "This file names no variant, so it is a base for others and cannot be judged.", "Name a spec that extends it.");
        }

        return analysis is null ? result : Judged(result, bench.Judge(analysis, rules, settings.AsOf.Value), reportName);
    }

    private SpecResult Judged(SpecResult result, Judgement judgement, string reportName)
    {
        // Text for a terminal shows findings alone; only what is kept or read elsewhere needs all that was computed.
        var isPrinted = settings is { Out.Value: Format.Text or Format.Junit or Format.Annotations, ReportPlace.Value: null };
        var record = RecordBuilder.Build(judgement, isPrinted ? RecordScope.Findings : RecordScope.Whole);
        WriteReports(record, reportName);
        result = result with
        {
            State = SpecState.Judged,
            Record = record,
            Rendered = Render(record, settings.Out.Value, settings.Level, settings.Color.Value, settings.Width),
            ForFile = settings is { ReportIsFile: true, ReportPlace.Value: not null } ? Render(record, settings.ReportFormats.Value[0], settings.Level, color: false, width: null) : null,
            Fails = Fails(judgement, record.Verdict.Word),
            Margins = Margins(judgement),
        };
        return judgement.Coverage.Evaluated > 0
            ? result
            : Refused(result, CliCodes.NothingEvaluated, "Not one rule could be evaluated, so the spec is not judged.", "State the inputs that the report lists as missing.");
    }

    private static SpecResult Refused(SpecResult result, string code, string message, string hint) => result with
    {
        State = SpecState.Refused,
        Diagnostics = result.Diagnostics.Add(new(code, Severity.Error, SourceSpan.Whole(result.Input.Display), message, hint)),
    };

    private bool Fails(Judgement judgement, VerdictWord verdict)
    {
        if (settings.RequireComplete.Value && judgement.Coverage.NotEvaluated > 0)
            return true;
        if (settings.FailOn.Value is not { } least)
            return false;
        var (fails, open) = (false, verdict == VerdictWord.Incomplete);
        foreach (var finding in judgement.Findings)
        {
            fails |= finding.Outcome == Outcome.Fails && finding.Rule.Severity >= least && finding.Known is not { Holds: true };

            // What does not conform may wait for inputs as well; the baseline passes over what is known, not over that.
            open |= finding.Outcome == Outcome.NotEvaluated && finding.Rule.Severity == Severity.Error && verdict == VerdictWord.DoesNotConform;
        }

        return fails || (open && !settings.AllowIncomplete.Value);
    }

    /// <summary>The margins of the known findings that still fail, to make the baseline smaller by.</summary>
    private static ImmutableDictionary<FindingName, double?> Margins(Judgement judgement) => judgement.Baseline is null
        ? ImmutableDictionary<FindingName, double?>.Empty
        : judgement.Findings.Where(static finding => finding.Known is not null)
            .ToImmutableDictionary(static finding => new FindingName(finding.Rule.Id, finding.Subject.Path), static finding => finding.Margin);

    /// <summary>The text of one spec; null in a format that is of the whole run.</summary>
    private static string? Render(ConformanceRecord record, Format format, TextLevel level, bool color, int? width) => format switch
    {
        _ when Formats.IsOfRun(format) => null,
        Format.Json => LogText.Json(record.ToJson()),
        Format.Html => LogText.Markup(HtmlReport.Render(record)),
        Format.Markdown => LogText.Lines(MarkdownReport.Render(record)),
        _ => Text(record, level, color, width),
    };

    private static string Text(ConformanceRecord record, TextLevel level, bool color, int? width)
    {
        using var text = new StringWriter { NewLine = "\n" };
        new TextReport(level, color, width).Write(record, text);
        return text.ToString();
    }

    private void WriteReports(ConformanceRecord record, string name)
    {
        if (settings.ReportPlace.Value is not { } folder || settings.ReportIsFile)
            return;

        var files = ReportFiles.Of(record, name, Formats.FilesOf(settings.ReportFormats.Value));
        if (settings.ReportFormats.Value.Contains(Format.Text))
            files = files.Add(new(name + ".txt", Text(record, TextLevel.Verbose, color: false, width: null)));
        if (settings.Sheets)
        {
            var formats = Formats.FilesOf(settings.ReportFormats.Value) & (ReportFormats.Markdown | ReportFormats.Html);
            files = files.AddRange(RoleSheet.Files(record, name, formats == ReportFormats.None ? ReportFormats.Html : formats, [.. Enum.GetValues<SheetRole>()]));
        }

        Written(ReportWriter.Write(folder, files));
    }

    /// <summary>Throws for the first file that could not be written.</summary>
    internal static void Written(ImmutableArray<WriteFailure> failures)
    {
        if (failures is [var first, ..])
            throw new CannotWriteException($"{first.Path} cannot be written: {first.Reason}.");
    }
}
