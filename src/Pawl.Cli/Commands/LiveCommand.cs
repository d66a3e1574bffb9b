using System.CommandLine;
using Pawl.Cli.Live;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl live</c>: reports in a browser that follow the files.</summary>
internal static class LiveCommand
{
    public static Command Build(CommandContext? context)
    {
        var paths = new Argument<string[]>("PATH")
        {
            Description = "Specs to show: files, folders or patterns. None: the `specs:` of pawl.yaml.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        CheckCommand.RefuseOptions(paths);
        var port = new Option<int?>("--port")
        {
            Description = FormattableString.Invariant($"The port on the loopback address. Default: {LiveRun.UsualPort}, or the next that is free."), HelpName = "NUMBER",
        };
        var asOf = CheckCommand.Text("--as-of", "YYYY-MM-DD", "The day on which concessions are judged. Default: SOURCE_DATE_EPOCH, else today, both in UTC.");
        var rules = new Option<string[]>("--rules")
        {
            Description = "A folder with house rule packs, besides those of pawl.yaml. Repeatable.",
            HelpName = "DIR",
            Arity = ArgumentArity.OneOrMore,
        };
        var root = CheckCommand.Text("--root", "DIR", "The project root. Default: the folder of the nearest pawl.yaml upwards, else the working folder.");
        var baseline = CheckCommand.Text("--baseline", "FILE", "Known findings, as for `pawl check`.");
        var command = new Command("live", "Show reports in a browser on this machine, and renew them whenever a file is saved.") { paths, port, asOf, rules, root, baseline };
        if (context is not null)
        {
            command.SetAction(parsed => LiveRun.Start(
                context, command,
                new()
                {
                    Paths = [.. parsed.GetValue(paths) ?? []],
                    AsOf = parsed.GetValue(asOf),
                    Rules = [.. parsed.GetValue(rules) ?? []],
                    Root = parsed.GetValue(root),
                    Baseline = parsed.GetValue(baseline),
                    NoReports = true,
                },
                parsed.GetValue(port)));
        }

        return command;
    }
}
