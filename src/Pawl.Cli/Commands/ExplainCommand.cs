using System.CommandLine;
using Pawl.Cli.Explaining;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl explain</c>: what a name means.</summary>
internal static class ExplainCommand
{
    public static Command Build(CommandContext? context)
    {
        var name = new Argument<string>("NAME")
        {
            Description = "A rule (mesh/tip-clearance), a quantity (mesh_gear.tip_clearance or tip_clearance), a kind of subject (mesh), a key of a spec (joints, duty.input.speed), a size of O-ring (as568-238), a steel or a diagnostic (spec/unknown-unit). None: the list of all.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var format = CheckCommand.Text("--format", "FORMAT", "text or json. Default: text.", "-f");
        format.AcceptOnlyFromAmong("text", "json");
        var rules = new Option<string[]>("--rules")
        {
            Description = "A folder with house rule packs, besides those of pawl.yaml. Repeatable.",
            HelpName = "DIR",
            Arity = ArgumentArity.OneOrMore,
        };
        var root = CheckCommand.Text("--root", "DIR", "The project root. Default: the folder of the nearest pawl.yaml upwards, else the working folder.");
        var command = new Command("explain", "Explain a rule, a quantity, a kind of subject, a key of a spec, a size of O-ring, a steel that ships inside or a diagnostic.") { name, format, rules, root };
        if (context is not null)
        {
            command.SetAction(parsed => ExplainRun.Start(
                context, parsed.GetValue(name), parsed.GetValue(format) == "json", [.. parsed.GetValue(rules) ?? []], parsed.GetValue(root)));
        }

        return command;
    }
}
