using System.CommandLine;
using Pawl.Cli.Checking;
using Pawl.Cli.Trials;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl sweep</c>: a spec judged over a range of its values.</summary>
internal static class SweepCommand
{
    public static Command Build(CommandContext? context)
    {
        var spec = new Argument<string>("SPEC") { Description = "The spec, a file." };
        var vary = new Option<string[]>("--vary")
        {
            Description = "A key and what it is to be: KEY=FROM..TO:STEP, or KEY=ONE,TWO. A bare number keeps unit and tolerance as stated. Once or twice.",
            HelpName = "KEY=VALUES",
            Arity = ArgumentArity.OneOrMore,
            Required = true,
        };
        var format = CheckCommand.Text("--format", "FORMAT", "text, csv, json or svg. Default: text.", "-f");
        format.AcceptOnlyFromAmong("text", "csv", "json", "svg");
        var output = CheckCommand.Text("--output", "FILE", "Write it to a file.", "-o");
        var trial = new TrialOptions();
        var command = new Command("sweep", "Judge a spec over a range of one or two of its values: where each rule begins to fail.") { spec, vary, format, output };
        trial.AddTo(command);
        if (context is not null)
        {
            command.SetAction(parsed => SweepRun.Start(
                context, command, trial.Read(parsed, parsed.GetValue(spec)!), new([.. parsed.GetValue(vary) ?? []], parsed.GetValue(format) ?? "text", parsed.GetValue(output))));
        }

        return command;
    }
}

/// <summary>Options of every command that tries values.</summary>
internal sealed class TrialOptions
{
    private readonly Option<string> _asOf = CheckCommand.Text("--as-of", "YYYY-MM-DD", "The day on which concessions are judged. Default: SOURCE_DATE_EPOCH, else today, both in UTC.");
    private readonly Option<string> _root = CheckCommand.Text("--root", "DIR", "The project root. Default: the folder of the nearest pawl.yaml upwards, else the working folder.");
    private readonly Option<string[]> _rules = new("--rules")
    {
        Description = "A folder with house rule packs, besides those of pawl.yaml. Repeatable.",
        HelpName = "DIR",
        Arity = ArgumentArity.OneOrMore,
    };

    public void AddTo(Command command)
    {
        command.Add(_asOf);
        command.Add(_rules);
        command.Add(_root);
    }

    public CheckRequest Read(ParseResult parsed, string spec) => new()
    {
        Paths = [spec], AsOf = parsed.GetValue(_asOf), Rules = [.. parsed.GetValue(_rules) ?? []], Root = parsed.GetValue(_root), NoReports = true,
    };
}
