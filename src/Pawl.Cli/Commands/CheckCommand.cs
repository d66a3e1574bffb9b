using System.CommandLine;
using Pawl.Cli.Checking;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl check</c>: its options, and what they ask for.</summary>
internal static class CheckCommand
{
    public static Command Build(CommandContext? context)
    {
        var paths = new Argument<string[]>("PATH")
        {
            Description = "Specs to judge: files, folders, patterns such as 'specs/**/*.yaml', or - for standard input. None: the `specs:` of pawl.yaml.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        RefuseOptions(paths);
        var format = new Option<string[]>("--format", "-f")
        {
            Description = "text, markdown, html, json, sarif, junit or annotations. Once for standard output; several with --output. Default: text.",
            HelpName = "FORMAT",
            Arity = ArgumentArity.OneOrMore,
        };
        format.AcceptOnlyFromAmong(Formats.Names);
        var output = Text("--output", "DIR|FILE", "Write reports in the given formats there; a name with an extension is a file. Standard output then carries text, or annotations.", "-o");
        var failOn = Text("--fail-on", "SEVERITY", "Minimum severity of a finding that makes the exit code 1: error, warning, note or never. Default: error.");
        failOn.AcceptOnlyFromAmong("error", "warning", "note", "never");
        var requireComplete = Flag("--require-complete", "A rule of any severity that could not be evaluated makes the exit code 1.");
        var allowIncomplete = Flag("--allow-incomplete", "A spec that is incomplete does not make the exit code 1.");
        var asOf = Text("--as-of", "YYYY-MM-DD", "The day on which concessions are judged; on its last day one still holds. Default: SOURCE_DATE_EPOCH, else today, both in UTC.");
        var rules = new Option<string[]>("--rules")
        {
            Description = "A folder with house rule packs, besides those of pawl.yaml. Repeatable.",
            HelpName = "DIR",
            Arity = ArgumentArity.OneOrMore,
        };
        var root = Text("--root", "DIR", "The project root. Default: the folder of the nearest pawl.yaml upwards, else the working folder.");
        var baseline = Text("--baseline", "FILE", "Known findings: what it lists and is no worse does not count towards the exit code. Default: the `baseline:` of pawl.yaml, else none.");
        var prune = Flag("--prune", "Make the baseline smaller: remove what is gone, tighten what has become better.");
        var stdinPath = Text("--stdin-path", "PATH", "The path that standard input stands for: in messages, and for `extends:`.");
        var quiet = Flag("--quiet", "Only the verdict of each spec, the last line, and what kept a spec from being judged.", "-q");
        var verbose = Flag("--verbose", "Every rule put to every subject, not only what needs attention.", "-v");
        var noReports = Flag("--no-reports", "Write no reports, whatever pawl.yaml asks for.");
        var sheets = Flag("--sheets", "Write the sheets of every role beside the reports: assembly, inspection, part by part, audit.");
        var color = Text("--color", "WHEN", "auto, always or never. auto: colours on a terminal unless NO_COLOR is set.");
        color.AcceptOnlyFromAmong("auto", "always", "never");
        var strictSchema = Flag("--strict-schema", "Put specs before the JSON Schema too, a second judge beside the reader; slower.");
        var showConfig = Flag("--show-config", "Print the settings in force with the origin of each, and judge nothing.");

        var command = new Command("check", "Judge specs: print findings, write records and reports.")
        {
            paths, format, output, failOn, requireComplete, allowIncomplete, asOf, rules, root, baseline, prune, stdinPath, quiet, verbose, noReports, sheets, color, strictSchema, showConfig,
        };
        if (context is null)
            return command;

        command.SetAction(parsed => CheckRun.Start(context, command, new CheckRequest
        {
            Paths = [.. parsed.GetValue(paths) ?? []],
            Formats = [.. parsed.GetValue(format) ?? []],
            Output = parsed.GetValue(output),
            FailOn = parsed.GetValue(failOn),
            RequireComplete = parsed.GetValue(requireComplete),
            AllowIncomplete = parsed.GetValue(allowIncomplete),
            AsOf = parsed.GetValue(asOf),
            Rules = [.. parsed.GetValue(rules) ?? []],
            Root = parsed.GetValue(root),
            Baseline = parsed.GetValue(baseline),
            Prune = parsed.GetValue(prune),
            StdinPath = parsed.GetValue(stdinPath),
            Quiet = parsed.GetValue(quiet),
            Verbose = parsed.GetValue(verbose),
            NoReports = parsed.GetValue(noReports),
            Sheets = parsed.GetValue(sheets),
            Color = parsed.GetValue(color),
            StrictSchema = parsed.GetValue(strictSchema),
            ShowConfig = parsed.GetValue(showConfig),
        }));
        return command;
    }

    /// <summary>What looks like an option and is none would be taken for a path.</summary>
    internal static void RefuseOptions(Argument argument) => argument.Validators.Add(result =>
    {
        foreach (var token in result.Tokens)
        {
            if (token.Value.Length > 1 && token.Value[0] == '-')
                result.AddError($"There is no option `{token.Value}`.");
        }
    });

    internal static Option<string> Text(string name, string value, string description, params string[] aliases) =>
        new(name, aliases) { Description = description, HelpName = value };

    internal static Option<bool> Flag(string name, string description, params string[] aliases) =>
        new(name, aliases) { Description = description };
}
