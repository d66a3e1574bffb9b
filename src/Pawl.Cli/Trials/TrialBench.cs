using System.Collections.Concurrent;
using System.CommandLine;
using System.Runtime.ExceptionServices;
using Pawl.Cli.Checking;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Trials;

/// <summary>Judges one spec with other values, as often as it is asked. Thread-safe.</summary>
internal sealed class TrialBench
{
    private readonly CommandContext _context;
    private readonly Settings _settings;
    private readonly RuleSet _rules;
    private readonly ConcurrentDictionary<FindingName, int> _numbers = new();
    private readonly List<TrialRule> _list = [];
    private readonly Lock _lock = new();

    private TrialBench(CommandContext context, Settings settings, RuleSet rules, SpecTemplate template)
    {
        (_context, _settings, _rules, Template) = (context, settings, rules, template);
        Stated = Judge([]);
    }

    /// <summary>The spec whose values are changed.</summary>
    public SpecTemplate Template { get; }

    /// <summary>The spec as it stands, judged.</summary>
    public Trial Stated { get; }

    /// <summary>Its file, from the project root.</summary>
    public string File => Template.Original.File;

    /// <summary>The rules that were met so far, each on a subject.</summary>
    public ImmutableArray<TrialRule> Rules
    {
        get
        {
            lock (_lock)
                return [.. _list];
        }
    }

    /// <summary>Reads the spec and the rules; null when that cannot be done, which is told, with the exit code.</summary>
    public static TrialBench? Open(CommandContext context, Command command, CheckRequest request, out int code)
    {
        code = ExitCode.NotJudged;
        if (SettingsResolver.Resolve(request, context, out var project, out var usage) is not { } settings)
        {
            code = Usage.Report(context, command, usage!);
            return null;
        }

        var path = SettingsResolver.RelativeTo(settings.Root.Value, context.Absolute(request.Paths[0]));
        var load = context.Engine.LoadRules(settings.Root.Value, settings.Rules.Value);
        var template = new SpecLoader(settings.Root.Value, settings.Catalogue.Value, settings.StrictSchema, settings.Adapters.Value, context.Files).Template(path);
        if (!Told(context, [.. project.Diagnostics, .. load.Diagnostics, .. template.Original.Diagnostics]) || load.Rules is not { } rules)
            return null;
        if (template.Original.Spec is null)
        {
            DiagnosticWriter.Write(context.Error, new(
                CliCodes.BaseNamed, Severity.Error, new(path, default, default), "This file names no variant, so it is a base for others and cannot be judged.", "Name a spec that extends it."));
            return null;
        }

        return new(context, settings, rules, template);
    }

    /// <summary>Judges the spec with some values changed.</summary>
    public Trial Judge(ImmutableArray<ValueChange> changes)
    {
        var load = changes.IsEmpty ? Template.Original : Template.With(changes);
        if (load.Spec is not { } spec)
            return new() { Changes = changes, Refusals = [.. load.Diagnostics.Where(static d => d.Severity == Severity.Error)] };
        var judgement = Judgement(spec);
        var findings = new TrialFinding?[Math.Max(_numbers.Count, judgement.Findings.Length)];
        foreach (var finding in judgement.Findings)
        {
            var number = NumberOf(finding);
            if (number >= findings.Length)
                Array.Resize(ref findings, number + 64);
            findings[number] = new(finding.Outcome, finding.Margin ?? double.NaN, ValueOf(finding));
        }

        return new() { Changes = changes, Findings = [.. findings] };
    }

    /// <summary>The whole judgement of the spec with some values changed; null when it cannot be read so.</summary>
    public Judgement? JudgeWhole(ImmutableArray<ValueChange> changes) => Template.With(changes).Spec is { } spec ? Judgement(spec) : null;

    /// <summary>Judges many, on all processors; what is done when it is interrupted is kept.</summary>
    /// <returns>In order; null where the interruption came first.</returns>
    public Trial?[] JudgeAll(IReadOnlyList<ImmutableArray<ValueChange>> all)
    {
        var trials = new Trial?[all.Count];
        using var progress = Progress.For(_context, _settings, all.Count);
        var chunk = 8 * Environment.ProcessorCount;
        for (var start = 0; start < all.Count && !_context.Cancelled.IsCancellationRequested; start += chunk)
        {
            var from = start;
            try
            {
                Parallel.For(from, Math.Min(all.Count, from + chunk), i => trials[i] = Judge(all[i]));
            }
            catch (AggregateException several)
            {
                ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
            }

            progress.Advance(Math.Min(all.Count, from + chunk));
        }

        return trials;
    }

    private Judgement Judgement(GearboxSpec spec) => _context.Engine.Judge(
        _context.Engine.Analyse(spec with { RequiredSections = spec.RequiredSections.AddRange(_settings.RequiredSections) }), _rules, _settings.AsOf.Value);

    private static double ValueOf(Finding finding) => finding.Measured is { IsEvaluated: true } measured && finding.Margin is not null
        ? measured.Kind.Unit.FromCoherent(finding.Worst ?? measured.Value.Nominal) + 0.0
        : double.NaN;

    private int NumberOf(Finding finding)
    {
        var name = new FindingName(finding.Rule.Id, finding.Subject.Path);
        if (_numbers.TryGetValue(name, out var known))
            return known;
        lock (_lock)
        {
            if (_numbers.TryGetValue(name, out known))
                return known;
            _list.Add(new(name.Rule, name.Subject, finding.Rule.Title, finding.Rule.Severity, finding.Measured?.Kind.Unit.Symbol ?? ""));
            return _numbers[name] = _list.Count - 1;
        }
    }

    private static bool Told(CommandContext context, ImmutableArray<Diagnostic> diagnostics)
    {
        foreach (var diagnostic in diagnostics)
            DiagnosticWriter.Write(context.Error, diagnostic);
        return !diagnostics.Any(static d => d.Severity == Severity.Error);
    }
}
