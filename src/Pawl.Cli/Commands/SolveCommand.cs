using System.CommandLine;
using Pawl.Cli.Trials;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl solve</c>: where one value of a spec may lie.</summary>
internal static class SolveCommand
{
    public static Command Build(CommandContext? context)
    {
        var spec = new Argument<string>("SPEC") { Description = "The spec, a file." };
        var key = CheckCommand.Text("--for", "KEY", "The value that is looked for, as messages write its key: train.meshes[0].centre_distance.");
        key.Required = true;
        var from = CheckCommand.Text("--from", "VALUE", "Search from this value; without a unit it takes that of the spec. Default: half of what is stated, or 1 less.");
        var to = CheckCommand.Text("--to", "VALUE", "Search to this value. Default: double of what is stated, or 1 more.");
        var among = CheckCommand.Text("--among", "ONE,TWO", "Choose from these. Default for names: the catalogue, the sizes of the standard, the words of the key.");
        var classes = CheckCommand.Flag("--classes", "Look for the tolerance class of ISO 286, not for the size.");
        var rule = CheckCommand.Text("--rule", "ID", "The one rule that is to hold. Default: all of severity error that depend on the value.");
        var trial = new TrialOptions();
        var command = new Command("solve", "Find where one value of a spec may lie: the range, or the standard sizes, in which all rules hold that depend on it.")
        {
            spec, key, from, to, among, classes, rule,
        };
        trial.AddTo(command);
        if (context is not null)
        {
            command.SetAction(parsed => SolveRun.Start(
                context, command, trial.Read(parsed, parsed.GetValue(spec)!), new(
                    parsed.GetValue(key)!, parsed.GetValue(from), parsed.GetValue(to),
                    [.. (parsed.GetValue(among) ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)],
                    parsed.GetValue(classes), parsed.GetValue(rule))));
        }

        return command;
    }
}
