using System.CommandLine;
using Pawl.Cli.Checking;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;
using Pawl.Quantities;
using Pawl.Reports;
using Pawl.Reports.Output;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Pawl.Reports.Sheets;
using Pawl.Specs.Text;

namespace Pawl.Cli.Sheets;

/// <summary>One run of <c>pawl sheet</c>: judges the spec and prints the sheet, whatever the verdict; the sheet and the exit code say it.</summary>
internal sealed class SheetRun
{
    private readonly CommandContext _context;
    private readonly SheetRequest _request;
    private readonly CheckRequest _check;
    private readonly Settings _settings;
    private readonly ProjectView _project;

    private SheetRun(CommandContext context, SheetRequest request, CheckRequest check, Settings settings, ProjectView project) =>
        (_context, _request, _check, _settings, _project) = (context, request, check, settings, project);

    public static int Start(CommandContext context, Command command, SheetRequest request)
    {
        if (request.Part is not null && request.Role != SheetRole.Part)
            return Usage.Report(context, command, "--part is of the part sheet.", $"Write `pawl sheet part {request.Spec} --part {request.Part}`.");
        if (request.Output is { Length: 0 })
            return Usage.Report(context, command, "--output names no folder.");
        if (request.Output is { } folder && context.Files.IsFile(context.Absolute(folder)))
            return Usage.Report(context, command, $"--output is a file, not a folder: {folder}", "Give a folder; the sheet gets the name of the spec in it.");
        var check = new CheckRequest { Paths = [request.Spec], Rules = request.Rules, Root = request.Root, AsOf = request.AsOf, NoReports = true };
        return SettingsResolver.Resolve(check, context, out var project, out var usage) is { } settings
            ? new SheetRun(context, request, check, settings, project).Go()
            : Usage.Report(context, command, usage!);
    }

    private int Go()
    {
        if (!Told(_project.Diagnostics))
            return ExitCode.NotJudged;
        var load = _context.Engine.LoadRules(_settings.Root.Value, _settings.Rules.Value);
        if (!Told(load.Diagnostics) || load.Rules is not { } rules)
            return ExitCode.NotJudged;
        if (rules.Rules.IsEmpty)
            return Refuse(CliCodes.NoRules, "pawl", "No rule is in force, so nothing can be judged.", "Check --rules, and `rules:` in pawl.yaml.");
        var selection = SpecSelection.Of(_settings, _check, _context);
        if (!Told(selection.Problems))
            return ExitCode.NotJudged;
        if (selection.Specs is not [var input])
            return Refuse(CliCodes.NoSpec, _request.Spec, "A sheet is of one spec; this means several.", "Name the file of the variant.");
        var bench = new Workbench(_context.Engine, _settings);
        if (!Told(bench.Diagnostics))
            return ExitCode.NotJudged;
        var computed = bench.Compute(input);
        if (!Told(computed.Loaded.Diagnostics))
            return ExitCode.NotJudged;
        if (computed.Loaded.IsBase)
            return Refuse(CliCodes.BaseNamed, input.Display, "This file names no variant, so it is a base for others and cannot be judged.", "Name a spec that extends it.");
        if (computed.Analysis is not { } analysis)
            return ExitCode.NotJudged;
        var judgement = bench.Judge(analysis, rules, _settings.AsOf.Value);
        if (judgement.Coverage.Evaluated == 0)
            return Refuse(CliCodes.NothingEvaluated, input.Display, "Not one rule could be evaluated, so the spec is not judged.", "State the inputs that the report lists as missing.");
        return Write(RecordBuilder.Build(judgement, RecordScope.Whole), input.Display);
    }

    private int Write(ConformanceRecord record, string display)
    {
        string? part = null;
        if (_request.Part is { } asked && (part = Find(RoleSheet.Parts(record), asked)) is null)
        {
            var near = Nearest.To(asked, RoleSheet.Parts(record).Concat(RoleSheet.Parts(record).Select(Short)));
            return Refuse(
                CliCodes.UnknownName, display, $"No part of the spec is called `{asked}`.",
                near is not null ? $"Did you mean `{near}`?" : $"Parts with something to be made to: {string.Join(", ", RoleSheet.Parts(record))}.");
        }

        if (_request.Output is { } folder)
        {
            var files = RoleSheet.Files(record, ReportNames.Of([display])[0], _request.IsMarkdown ? ReportFormats.Markdown : ReportFormats.Html, [_request.Role], part);
            SpecChecker.Written(ReportWriter.Write(_context.Absolute(folder), files));
            foreach (var file in files)
                _context.Out.WriteLine(Plain.Line(Path.Join(folder, file.Path).Replace('\\', '/')));
        }
        else
        {
            _context.Out.Write(_request.IsMarkdown ? LogText.Lines(RoleSheet.Markdown(record, _request.Role, part)) : LogText.Markup(RoleSheet.Html(record, _request.Role, part)));
        }

        return record.Verdict.Word is VerdictWord.Conforms or VerdictWord.ConformsUnderConcession ? ExitCode.Conforms : ExitCode.Findings;
    }

    /// <summary>A part by its id, or by the end of its id where that means one alone.</summary>
    private static string? Find(ImmutableArray<string> parts, string asked) =>
        parts.Contains(asked) ? asked : parts.Where(part => Short(part) == asked).ToArray() is [var only] ? only : null;

    private static string Short(string part) => part[(part.LastIndexOf('.') + 1)..];

    private bool Told(ImmutableArray<Diagnostic> diagnostics)
    {
        foreach (var diagnostic in diagnostics)
            DiagnosticWriter.Write(_context.Error, diagnostic);
        return !diagnostics.Any(static d => d.Severity == Severity.Error);
    }

    private int Refuse(string code, string path, string message, string hint)
    {
        DiagnosticWriter.Write(_context.Error, new(code, Severity.Error, SourceSpan.Whole(path), message, hint));
        return ExitCode.NotJudged;
    }
}
