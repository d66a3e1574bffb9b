using System.CommandLine;
using Pawl.Cli.Checking;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;
using Pawl.Reports.Records;
using Pawl.Reports.Trials;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Text;

namespace Pawl.Cli.Trials;

/// <summary>What <c>pawl sweep</c> was asked.</summary>
/// <param name="Vary">Values to vary, one or two.</param>
/// <param name="Format">Form of the answer.</param>
/// <param name="Output">A file for it; null for standard output.</param>
internal sealed record SweepRequest(ImmutableArray<string> Vary, string Format, string? Output);

/// <summary>One run of <c>pawl sweep</c>: a spec judged over a range of one or two of its values.</summary>
internal static class SweepRun
{
    /// <summary>Most combinations of values.</summary>
    public const int MostPoints = 10_000;

    public static int Start(CommandContext context, Command command, CheckRequest check, SweepRequest request)
    {
        if (request.Vary.Length is not (1 or 2))
            return Usage.Report(context, command, "--vary is given once or twice: a sweep goes over one or two values.");
        if (TrialBench.Open(context, command, check, out var code) is not { } bench)
            return code;
        List<Variable> variables = [];
        foreach (var text in request.Vary)
        {
            if (Variable.Of(text, bench.Template, MostPoints, out var error) is not { } variable)
                return Usage.Report(context, command, $"--vary: {error.Message}", error.Hint);
            if (variables.Any(v => v.Path == variable.Path))
                return Usage.Report(context, command, $"--vary names {variable.Path} twice.");
            variables.Add(variable);
        }

        if (variables.Aggregate(1L, static (count, v) => count * v.Values.Length) > MostPoints)
            return Usage.Report(context, command, FormattableString.Invariant($"That is more than {MostPoints} combinations. Take larger steps."));
        if (request.Format == "svg" && variables is [{ Numbers.Length: < 2 }])
            return Usage.Report(context, command, "Margins are drawn over numbers, two at least; a list of words has no scale.", "Take another --format.");
        var sweep = Of(bench, [.. variables]);
        if (IsIdle(sweep, out var why))
        {
            DiagnosticWriter.Write(context.Error, new(CliCodes.NothingDepends, Severity.Error, new(bench.File, default, default), why, "Vary another value; `pawl explain KEY` lists the rules that a key governs."));
            return ExitCode.NotJudged;
        }

        if (Rendered(sweep, request.Format) is not { } rendered)
            return Usage.Report(context, command, "There is too much, or nothing, to draw.", "Take larger steps, or another --format.");
        if (request.Output is { } output)
            Files.Write(context.Absolute(output), rendered);
        else
            context.Out.Write(rendered);
        return context.Cancelled.IsCancellationRequested ? Interrupted(context) : ExitCode.Conforms;
    }

    /// <summary>Judges all combinations, the first value fastest.</summary>
    public static SweepRecord Of(TrialBench bench, ImmutableArray<Variable> variables)
    {
        var (first, second) = (variables[0], variables.Length > 1 ? variables[1] : null);
        List<ImmutableArray<ValueChange>> all = [];
        for (var row = 0; row < (second?.Values.Length ?? 1); row++)
        {
            for (var column = 0; column < first.Values.Length; column++)
                all.Add(second is null ? [first.At(column)] : [first.At(column), second.At(row)]);
        }

        var trials = bench.JudgeAll(all);
        var lines = bench.Rules
            .Select((rule, i) => new SweepLine
            {
                Rule = rule.Rule,
                Subject = rule.Subject,
                Title = rule.Title,
                Severity = RecordWords.Of(rule.Severity),
                Unit = rule.Unit,
                Findings = [.. trials.Select(trial => trial?[i] is { } finding ? new SweepFinding(RecordWords.Of(finding.Outcome), Finite(finding.Margin), Finite(finding.Value)) : null)],
                IsSame = trials.Where(static t => t is { IsRefused: false }).Select(t => t![i]).Distinct().Count() < 2,
            })
            .OrderBy(static l => l.Rule, StringComparer.Ordinal).ThenBy(static l => l.Subject, StringComparer.Ordinal);
        return new()
        {
            SpecFile = bench.File,
            First = AxisOf(first),
            Second = second is null ? null : AxisOf(second),
            Points = [.. trials.Select(static t => new SweepPoint(t is { IsRefused: true } ? t.Refusals[0].Message : "", t is { IsRefused: false }))],
            Lines = [.. lines],
        };
    }

    internal static int Interrupted(CommandContext context)
    {
        context.Error.WriteLine("pawl: interrupted; what was found so far is above.");
        return ExitCode.Interrupted;
    }

    private static bool IsIdle(SweepRecord sweep, out string why)
    {
        why = "";
        if (sweep.Points.FirstOrDefault(static p => p.IsJudged) is null)
        {
            why = sweep.Points.FirstOrDefault(static p => p.Refusal.Length > 0) is { } refused ? $"The spec cannot be judged at any of the values: {refused.Refusal}" : "Nothing was reached before the interruption.";
            return true;
        }

        if (sweep.Points.Length > 1 && sweep.Lines.All(static l => l.IsSame) && sweep.Points.All(static p => p.IsJudged))
            why = $"No rule depends on {sweep.First.Path}{(sweep.Second is { } second ? $" or {second.Path}" : "")} in this spec.";
        return why.Length > 0;
    }

    private static string? Rendered(SweepRecord sweep, string format)
    {
        switch (format)
        {
            case "csv":
                return SweepReport.Csv(sweep);
            case "json":
                return SweepReport.Json(sweep);
            case "svg":
                return SweepReport.Svg(sweep);
            default:
                using (var text = new StringWriter { NewLine = "\n" })
                {
                    SweepReport.Write(sweep, text);
                    return text.ToString();
                }
        }
    }

    private static SweepAxis AxisOf(Variable variable) => new(variable.Path, variable.Unit?.Symbol ?? "", variable.Values, variable.Numbers);

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}

/// <summary>Words of the record for those of the rules.</summary>
internal static class RecordWords
{
    public static SeverityWord Of(Severity severity) => severity switch
    {
        Severity.Error => SeverityWord.Error,
        Severity.Warning => SeverityWord.Warning,
        _ => SeverityWord.Note,
    };

    public static OutcomeWord Of(Outcome outcome) => outcome switch
    {
        Outcome.Conforms => OutcomeWord.Conforms,
        Outcome.Fails => OutcomeWord.Fails,
        Outcome.UnderConcession => OutcomeWord.UnderConcession,
        Outcome.NotEvaluated => OutcomeWord.NotEvaluated,
        _ => OutcomeWord.NotApplicable,
    };
}
