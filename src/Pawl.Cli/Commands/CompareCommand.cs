using System.CommandLine;
using Pawl.Cli.Checking;
using Pawl.Cli.Comparing;

namespace Pawl.Cli.Commands;

/// <summary><c>pawl compare</c>: its options, and what they ask for.</summary>
internal static class CompareCommand
{
    public static Command Build(CommandContext? context)
    {
        var @base = new Argument<string>("BASE")
        {
            Description = "What is compared with: a file, a folder, a record (JSON), or a git revision: main, v1.2, HEAD~3, main:specs/tarn-180.",
        };
        var head = new Argument<string?>("HEAD")
        {
            Description = "What is compared, in the same words. A folder with a pawl.yaml means the specs that it names; none with --family.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        CheckCommand.RefuseOptions(@base);
        CheckCommand.RefuseOptions(head);
        var family = CheckCommand.Flag("--family", "One side: its variants beside each other, the rules, the least margins and the declared values that differ.");
        var format = CheckCommand.Text("--format", "FORMAT", "text, markdown (fit for a comment), html or json. Default: text.", "-f");
        format.AcceptOnlyFromAmong([.. Formats.Names.Where(static name => !Formats.IsOfRun(Formats.Find(name)!.Value))]);
        var output = CheckCommand.Text("--output", "FILE", "Write it there; the ending says the format unless --format does. Standard output then carries text.", "-o");
        var failOn = CheckCommand.Text("--fail-on", "SEVERITY", "Minimum severity of a rule that newly fails for the exit code 1: error, warning, note; a worse verdict counts as well. never: neither. Default: error.");
        failOn.AcceptOnlyFromAmong("error", "warning", "note", "never");
        var loss = CheckCommand.Text("--fail-on-loss", "SHARE", "A rule of that severity that loses this share of its margin or more makes the exit code 1: '10 %'.");
        var coverage = CheckCommand.Flag("--fail-on-lost-coverage", "A check that BASE evaluates and HEAD does not makes the exit code 1.");
        var asOf = CheckCommand.Text("--as-of", "YYYY-MM-DD", "The day on which concessions of both sides are judged. Default: SOURCE_DATE_EPOCH, else today.");
        var verbose = CheckCommand.Flag("--verbose", "Every check and every quantity that moved, not only the few that matter most.", "-v");
        var color = CheckCommand.Text("--color", "WHEN", "auto, always or never. auto: colours on a terminal unless NO_COLOR is set.");
        color.AcceptOnlyFromAmong("auto", "always", "never");

        var command = new Command("compare", "Compare two states of specs: what a change does to every margin; or the variants of one family.")
        {
            @base, head, family, format, output, failOn, loss, coverage, asOf, verbose, color,
        };
        if (context is null)
            return command;

        command.SetAction(parsed => CompareRun.Start(context, command, new CompareRequest
        {
            Base = parsed.GetValue(@base) ?? "",
            Head = parsed.GetValue(head),
            Family = parsed.GetValue(family),
            Format = parsed.GetValue(format),
            Output = parsed.GetValue(output),
            FailOn = parsed.GetValue(failOn),
            FailOnLoss = parsed.GetValue(loss),
            FailOnLostCoverage = parsed.GetValue(coverage),
            AsOf = parsed.GetValue(asOf),
            Verbose = parsed.GetValue(verbose),
            Color = parsed.GetValue(color),
        }));
        return command;
    }
}
