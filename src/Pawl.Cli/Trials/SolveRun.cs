using System.CommandLine;
using System.Globalization;
using Pawl.Cli.Checking;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;
using Pawl.Specs.Text;

namespace Pawl.Cli.Trials;

/// <summary>What <c>pawl solve</c> was asked.</summary>
/// <param name="Key">The value that is looked for.</param>
/// <param name="From">Where the search begins, as written; null: by what is stated.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Among">Values to choose from; empty: a range of numbers, or the standard values of the key.</param>
/// <param name="Classes">Whether the tolerance class is looked for, not the size.</param>
/// <param name="Rule">Id of the one rule that is to hold; null: all that depend on the value.</param>
internal sealed record SolveRequest(string Key, string? From, string? To, ImmutableArray<string> Among, bool Classes, string? Rule);

/// <summary>One run of <c>pawl solve</c>: where a value of a spec may lie.</summary>
internal static class SolveRun
{
    public static int Start(CommandContext context, Command command, CheckRequest check, SolveRequest request)
    {
        if ((request.From is null) != (request.To is null))
            return Usage.Report(context, command, "--from and --to belong together.");
        if (TrialBench.Open(context, command, check, out var code) is not { } bench)
            return code;
        if (request.Rule is { } rule && !bench.Rules.Any(r => r.Rule == rule))
        {
            var near = Quantities.Nearest.To(rule, [.. bench.Rules.Select(static r => r.Rule).Distinct()]);
            return Usage.Report(context, command, $"No rule `{rule}` is put to this spec.", near is null ? "`pawl explain` lists the rules." : $"Did you mean `{near}`?");
        }

        if (!bench.Template.HasPlace(request.Key))
            return Usage.Report(context, command, bench.Template.NoPlace(request.Key).Message, bench.Template.NoPlace(request.Key).Hint);
        var stated = bench.Template.Find(request.Key)?.Value;
        var choices = StandardValues.Of(request, stated, bench.Template, out var error);
        if (error.Message is not null)
            return Usage.Report(context, command, error.Message, error.Hint);
        return choices.IsEmpty ? Range(context, command, bench, request, stated) : Choice(context, bench, request, stated, choices);
    }

    private static int Range(CommandContext context, Command command, TrialBench bench, SolveRequest request, string? stated)
    {
        if (request.From is { } from)
        {
            if (Variable.Of($"{request.Key}={from}..{request.To}", bench.Template, Solver.MostValues, out var wrong) is not { Numbers.Length: > 1 } range)
                return Usage.Report(context, command, wrong.Message ?? "--from and --to are numbers.", wrong.Hint);
            var pattern = StatedNumber.Of(range.Values[0])!;
            return Told(context, bench, request, stated, new Solver(bench, request.Key, pattern, request.Rule).Within(range.Numbers[0], range.Numbers[^1]), pattern);
        }

        if (stated is null)
        {
            var place = bench.Template.NoPlace(request.Key);
            return Usage.Report(context, command, $"The spec states no value at {request.Key}.", $"{place.Hint} Or give --from and --to, with units, for a key that is to be added.");
        }

        if (StatedNumber.Of(stated) is not { } number)
            return Usage.Report(context, command, $"{request.Key} states `{stated}`, which is no single number.", "Give what to choose from: --among ONE,TWO.");
        return Told(context, bench, request, stated, new Solver(bench, request.Key, number, request.Rule).Around(number.Value), number);
    }

    private static int Told(CommandContext context, TrialBench bench, SolveRequest request, string? stated, Solution solution, StatedNumber number)
    {
        if (Idle(context, bench, request, solution.Depending.Length, solution.Ranges.IsEmpty ? solution.Best.Blocked.Refusal : null))
            return ExitCode.NotJudged;
        Head(context.Out, bench, request, stated, solution.Depending.Length);
        foreach (var failing in solution.Besides)
            context.Out.WriteLine($"  fails whatever the value: {failing.Rule} on {Plain.Line(failing.Subject)}");
        if (solution.Ranges.IsEmpty)
        {
            context.Out.WriteLine($"  no value between {number.With(solution.Searched.From)} and {number.With(solution.Searched.To)} lets all of them hold");
            context.Out.WriteLine($"  the nearest miss: {number.With(solution.Best.At)}, {Why(solution.Best.Blocked)}");
            return Ended(context, ExitCode.Findings);
        }

        foreach (var range in solution.Ranges)
        {
            context.Out.WriteLine($"  {(request.Rule is null ? "all of them hold" : "it holds")} from {number.With(range.From)} to {number.With(range.To)}");
            context.Out.WriteLine($"    below: {(range.Below is { } below ? Why(below) : "not searched")}");
            context.Out.WriteLine($"    above: {(range.Above is { } above ? Why(above) : "not searched")}");
            if (range.Best is { } best)
                context.Out.WriteLine($"    most is in hand at {number.With(best.At)}: {Margin(best.Margin)}");
        }

        return Ended(context, ExitCode.Conforms);
    }

    private static int Choice(CommandContext context, TrialBench bench, SolveRequest request, string? stated, ImmutableArray<string> choices)
    {
        var choice = new Chooser(bench, request.Key, request.Rule).Among(choices);
        if (Idle(context, bench, request, choice.Depending.Length, choice.Tried is [{ Blocked.Refusal: { } refusal }, ..] ? refusal : null))
            return ExitCode.NotJudged;
        Head(context.Out, bench, request, stated, choice.Depending.Length);
        foreach (var failing in choice.Besides)
            context.Out.WriteLine($"  fails whatever the value: {failing.Rule} on {Plain.Line(failing.Subject)}");
        var width = choice.Tried.Max(static t => t.Text.Length);
        foreach (var tried in choice.Tried.Where(static t => t.Blocked is null))
            context.Out.WriteLine($"  ✓ {Plain.Line(tried.Text).PadRight(width)}  {(double.IsFinite(tried.Margin) ? $"least margin {Margin(tried.Margin)}, {tried.Least}" : "")}".TrimEnd());
        var misses = choice.Tried.Where(static t => t.Blocked is not null).ToArray();
        foreach (var tried in misses.Take(Chooser.MissesShown))
            context.Out.WriteLine($"  ✗ {Plain.Line(tried.Text).PadRight(width)}  {Why(tried.Blocked!)}");
        if (misses.Length > Chooser.MissesShown)
            context.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  and {misses.Length - Chooser.MissesShown} more that do not do"));
        return Ended(context, misses.Length == choice.Tried.Length ? ExitCode.Findings : ExitCode.Conforms);
    }

    private static int Ended(CommandContext context, int code) =>
        context.Cancelled.IsCancellationRequested ? SweepRun.Interrupted(context) : code;

    private static bool Idle(CommandContext context, TrialBench bench, SolveRequest request, int depending, string? refusal)
    {
        if (depending > 0)
            return false;
        if (refusal is { Length: > 0 })
        {
            DiagnosticWriter.Write(context.Error, new(
                CliCodes.NothingDepends, Severity.Error, new(bench.File, default, default), $"With no other value at {request.Key} can the spec be read: {refusal}", "Change what it is held against first, or name another key."));
            return true;
        }

        var what = request.Rule is { } rule ? $"{rule} does not depend on {request.Key}" : $"No rule depends on {request.Key}";
        DiagnosticWriter.Write(context.Error, new(
            CliCodes.NothingDepends, Severity.Error, new(bench.File, default, default), $"{what} in this spec, over what was tried.", "Name another key, or a wider range by --from and --to."));
        return true;
    }

    private static void Head(TextWriter to, TrialBench bench, SolveRequest request, string? stated, int depending) =>
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Plain.Line(bench.File)}: {Plain.Line(request.Key)} {(stated is null ? "is not stated" : $"is {Plain.Line(stated)}")}; {depending} {(depending == 1 ? "rule depends" : "rules depend")} on it"));

    private static string Why(Blocked blocked) => blocked.Refusal is { } refusal
        ? $"the spec cannot be judged: {Plain.Line(refusal.TrimEnd('.'))}"
        : string.Create(CultureInfo.InvariantCulture, $"{blocked.Rule!.Rule} {(blocked.IsOpen ? "waits for an input" : "fails")} on {Plain.Line(blocked.Rule.Subject)}{(double.IsFinite(blocked.Margin) ? $", margin {Margin(blocked.Margin)}" : "")}{(blocked.Others > 0 ? $", and {blocked.Others} more" : "")}");

    private static string Margin(double margin) => Reports.Trials.SweepReport.Margin(margin);
}
