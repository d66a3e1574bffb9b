using System.Text;
using Pawl.Cli.Output;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>Reads, computes, judges and renders one spec. Thread-safe; keeps nothing of a spec when it is done.</summary>
internal sealed class SpecChecker(Engine engine, Settings settings, RuleSet rules)
{
    public SpecResult Check(SpecInput input, SpecLoad loaded)
    {
        if (loaded.IsBase)
        {
            return input.Named
                ? Refuse(input, loaded.Diagnostics, new(
                    CliCodes.BaseNamed, Severity.Error, SourceSpan.Whole(input.Display),
                    "This file names no variant, so it is a base for others and cannot be judged.", "Name a spec that extends it."))
                : new SpecResult { Input = input, State = SpecState.Base, Diagnostics = loaded.Diagnostics };
        }

        if (loaded.Spec is not { } spec || loaded.Diagnostics.Any(d => d.Severity == Severity.Error))
            return new SpecResult { Input = input, State = SpecState.Refused, Diagnostics = loaded.Diagnostics, FilesRead = [.. loaded.FilesRead.Select(f => f.Path)] };

        var judgement = engine.Judge(spec, rules, settings.AsOf.Value);
        var render = engine.Record(judgement);
        WriteReports(input, render);

        var result = new SpecResult
        {
            Input = input,
            State = SpecState.Judged,
            Diagnostics = loaded.Diagnostics,
            Rendered = settings.Quiet && settings.Out.Value == Format.Text ? null : Rendered(render, settings.Out.Value, settings.Color.Value),
            ForFile = settings is { ReportIsFile: true, ReportPlace.Value: not null } ? Rendered(render, settings.ReportFormats.Value[0], color: false) : null,
            Coverage = judgement.Coverage,
            Fails = Fails(judgement),
            FilesRead = [.. loaded.FilesRead.Select(f => f.Path)],
        };
        return judgement.Coverage.Evaluated > 0
            ? result
            : result with
            {
                State = SpecState.Refused,
                Diagnostics = loaded.Diagnostics.Add(new(
                    CliCodes.NothingEvaluated, Severity.Error, SourceSpan.Whole(input.Display),
                    "Not one rule could be evaluated, so the spec is not judged.", "State the inputs that the report lists as missing.")),
            };
    }

    private static SpecResult Refuse(SpecInput input, ImmutableArray<Diagnostic> diagnostics, Diagnostic reason) =>
        new() { Input = input, State = SpecState.Refused, Diagnostics = diagnostics.Add(reason) };

    private string Rendered(Func<Rendering, string> render, Format format, bool color)
    {
        var text = render(new(format, color, settings.Verbose));
        return format is Format.Text or Format.Markdown ? Plain.GuardLines(text) : text;
    }

    private bool Fails(Judgement judgement)
    {
        if (settings.RequireComplete.Value && judgement.Coverage.NotEvaluated > 0)
            return true;
        if (settings.FailOn.Value is not { } least)
            return false;

        foreach (var finding in judgement.Findings)
        {
            if (finding.Outcome == Outcome.Fails && finding.Rule.Severity >= least)
                return true;
        }

        return false;
    }

    private void WriteReports(SpecInput input, Func<Rendering, string> render)
    {
        if (settings.ReportPlace.Value is not { } place || settings.ReportIsFile)
            return;

        foreach (var format in settings.ReportFormats.Value)
        {
            var text = render(new(format, Verbose: true));
            AtomicFile.Write(Path.Combine(place, ReportNames.Of(input.Display, format)), Encoding.UTF8.GetBytes(text));
        }
    }
}

/// <summary>Names of report files: the path of the spec, so that two variants of one name do not meet.</summary>
internal static class ReportNames
{
    public static string Of(string display, Format format)
    {
        var path = display == "-" ? "stdin" : Path.ChangeExtension(display, null);
        return path + Formats.ExtensionOf(format);
    }
}
