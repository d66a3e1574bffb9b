using System.CommandLine;
using System.Globalization;
using Pawl.Cli.Checking;
using Pawl.Cli.Output;
using Pawl.Rules;
using Pawl.Specs.Text;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl baseline</c>: writes down what fails today.</summary>
internal static class BaselineCommand
{
    public static Command Build(CommandContext? context)
    {
        var paths = new Argument<string[]>("PATH")
        {
            Description = "Specs to judge: files, folders or patterns. None: the `specs:` of pawl.yaml.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        CheckCommand.RefuseOptions(paths);
        var output = CheckCommand.Text("--output", "FILE", "The file to write, inside the project.", "-o");
        output.Required = true;
        var overwrite = CheckCommand.Flag("--overwrite", "Replace the file if it is there. What is worse by then is listed as it is.");
        var asOf = CheckCommand.Text("--as-of", "YYYY-MM-DD", "The day on which concessions are judged. Default: SOURCE_DATE_EPOCH, else today, both in UTC.");
        var rules = new Option<string[]>("--rules")
        {
            Description = "A folder with house rule packs, besides those of pawl.yaml. Repeatable.",
            HelpName = "DIR",
            Arity = ArgumentArity.OneOrMore,
        };
        var root = CheckCommand.Text("--root", "DIR", "The project root. Default: the folder of the nearest pawl.yaml upwards, else the working folder.");
        var command = new Command("baseline", "List every finding of today in a file, for `pawl check --baseline`: what is listed is known, what is new or worse fails.")
        {
            paths, output, overwrite, asOf, rules, root,
        };
        if (context is not null)
        {
            command.SetAction(parsed => Run(context, command, parsed.GetValue(output)!, parsed.GetValue(overwrite), new()
            {
                Paths = [.. parsed.GetValue(paths) ?? []],
                AsOf = parsed.GetValue(asOf),
                Rules = [.. parsed.GetValue(rules) ?? []],
                Root = parsed.GetValue(root),
                NoReports = true,
            }));
        }

        return command;
    }

    private static int Run(CommandContext context, Command command, string output, bool overwrite, CheckRequest request)
    {
        if (SettingsResolver.Resolve(request, context, out var project, out var usage) is not { } resolved)
            return Usage.Report(context, command, usage!);
        var target = context.Absolute(output);
        var settings = resolved with { Baseline = new(SettingsResolver.RelativeTo(resolved.Root.Value, target), Origins.CommandLine) };
        if (SettingsResolver.IsOutside(settings.Root.Value, target))
            return Usage.Report(context, command, $"{output} lies outside the project {settings.Root.Value}.", "A baseline is kept with the specs that it is of.");
        if (Path.Exists(target) && !overwrite)
            return Usage.Report(context, command, $"{output} is there already; it is not overwritten.", "`pawl check --baseline` with --prune makes it smaller; --overwrite replaces it.");
        if (!Told(context, project.Diagnostics))
            return ExitCode.NotJudged;

        var load = context.Engine.LoadRules(settings.Root.Value, settings.Rules.Value);
        var selection = SpecSelection.Of(settings, request, context);
        if (!Told(context, load.Diagnostics) || !Told(context, selection.Problems) || load.Rules is not { } rules)
            return ExitCode.NotJudged;
        if (selection.Specs.Any(spec => Path.GetFullPath(spec.Display, settings.Root.Value) == target))
            return Usage.Report(context, command, $"{output} is one of the specs.", "Give --output another name.");
        if (Found(context, settings with { Baseline = new(null, Origins.Default) }, selection, rules) is not { } found)
            return ExitCode.NotJudged;

        Files.Write(target, BaselineText.Of(BaselineSchema.From(settings.Root.Value, settings.Baseline.Value!), found.Known));
        context.Out.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{Plain.Line(output)}: {found.Known.Count} {(found.Known.Count == 1 ? "finding" : "findings")} of {found.Specs} {(found.Specs == 1 ? "spec" : "specs")}"));
        return ExitCode.Conforms;
    }

    private static (List<KnownFinding> Known, int Specs)? Found(CommandContext context, Settings settings, SpecSelection selection, RuleSet rules)
    {
        var bench = new Workbench(context.Engine, settings);
        var told = new HashSet<Diagnostic>();
        List<KnownFinding> known = [];
        var (specs, isWhole) = (0, true);
        foreach (var input in selection.Specs)
        {
            context.Cancelled.ThrowIfCancellationRequested();
            var computed = bench.Compute(input);
            isWhole &= Told(context, [.. computed.Loaded.Diagnostics.Where(told.Add)]) && (computed.Analysis is not null || computed.Loaded.IsBase);
            if (computed.Analysis is not { } analysis)
                continue;
            specs++;
            known.AddRange(
                from finding in bench.Judge(analysis, rules, settings.AsOf.Value).Findings
                where finding.Outcome == Outcome.Fails
                select new KnownFinding(input.Display, finding.Rule.Id, finding.Subject.Path, finding.Margin is { } margin ? BaselineText.Percent(margin) : null));
        }

        if (isWhole && specs > 0)
            return (known, specs);
        if (isWhole)
            context.Error.WriteLine($"pawl: error {CliCodes.NoSpec}: No variant is among the files, so there is nothing to list.");
        return null;
    }

    private static bool Told(CommandContext context, ImmutableArray<Diagnostic> diagnostics)
    {
        foreach (var diagnostic in diagnostics)
            DiagnosticWriter.Write(context.Error, diagnostic);
        return !diagnostics.Any(static d => d.Severity == Severity.Error);
    }
}
