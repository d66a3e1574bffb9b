using System.CommandLine;
using Pawl.Cli.Output;
using Pawl.Quantities;

namespace Pawl.Cli.Commands;

/// <summary>Says what is wrong with a command line.</summary>
internal static class Usage
{
    /// <summary>Reports every complaint of the parser.</summary>
    public static int Report(ParseResult parsed, Desk desk)
    {
        var command = parsed.CommandResult.Command;
        foreach (var error in parsed.Errors)
        {
            // The parser explains a missing subcommand in its own words; ours say which there are.
            desk.Error.WriteLine($"pawl: error {CliCodes.Usage}: {Plain.Line(error.Message)}");
        }

        foreach (var token in parsed.UnmatchedTokens)
        {
            var known = command.Options.Select(o => o.Name).Concat(command.Subcommands.Select(c => c.Name));
            if (Nearest.To(token, known) is { } near)
                desk.Error.WriteLine($"  hint: Did you mean `{near}`?");
        }

        Hint(desk, command);
        return ExitCode.NotJudged;
    }

    /// <summary>Reports one complaint of ours.</summary>
    public static int Report(Desk desk, Command command, string message, string? hint = null)
    {
        desk.Error.WriteLine($"pawl: error {CliCodes.Usage}: {Plain.Line(message)}");
        if (hint is not null)
            desk.Error.WriteLine($"  hint: {Plain.Line(hint)}");
        else
            Hint(desk, command);
        return ExitCode.NotJudged;
    }

    private static void Hint(Desk desk, Command command) =>
        desk.Error.WriteLine(command is RootCommand ? "  hint: See `pawl --help`." : $"  hint: See `pawl {command.Name} --help`.");
}
