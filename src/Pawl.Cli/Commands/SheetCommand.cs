using System.CommandLine;
using Pawl.Cli.Sheets;
using Pawl.Reports.Sheets;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl sheet</c>: a sheet to work from.</summary>
internal static class SheetCommand
{
    public static Command Build(CommandContext? context)
    {
        var role = new Argument<string>("ROLE") { Description = "assembly (for the fitter), inspection (every toleranced feature), part (one part a sheet, for the machinist) or audit (for the reviewer)." };
        role.AcceptOnlyFromAmong([.. SheetRoles.Names]);
        var spec = new Argument<string>("SPEC") { Description = "The spec." };
        CheckCommand.RefuseOptions(role);
        CheckCommand.RefuseOptions(spec);
        var part = CheckCommand.Text("--part", "ID", "Of a part sheet the one part: gears.sun, bodies.carrier, or sun alone. Default: every part.");
        var format = CheckCommand.Text("--format", "FORMAT", "html (prints on A4 and Letter) or markdown. Default: html.", "-f");
        format.AcceptOnlyFromAmong("html", "markdown");
        var output = CheckCommand.Text("--output", "DIR", "Write the sheet there, beside the reports of the spec. Default: standard output.", "-o");
        var asOf = CheckCommand.Text("--as-of", "YYYY-MM-DD", "The day on which concessions are judged. Default: SOURCE_DATE_EPOCH, else today, both in UTC.");
        var rules = new Option<string[]>("--rules") { Description = "A folder with house rule packs, besides those of pawl.yaml. Repeatable.", HelpName = "DIR", Arity = ArgumentArity.OneOrMore };
        var root = CheckCommand.Text("--root", "DIR", "The project root. Default: the folder of the nearest pawl.yaml upwards, else the working folder.");
        var command = new Command("sheet", "Print a sheet to work from: assembly, inspection, part or audit.") { role, spec, part, format, output, asOf, rules, root };
        if (context is not null)
        {
            command.SetAction(parsed => SheetRun.Start(context, command, new()
            {
                Role = SheetRoles.Find(parsed.GetValue(role)!)!.Value,
                Spec = parsed.GetValue(spec)!,
                Part = parsed.GetValue(part),
                IsMarkdown = parsed.GetValue(format) == "markdown",
                Output = parsed.GetValue(output),
                AsOf = parsed.GetValue(asOf),
                Rules = [.. parsed.GetValue(rules) ?? []],
                Root = parsed.GetValue(root),
            }));
        }

        return command;
    }
}
