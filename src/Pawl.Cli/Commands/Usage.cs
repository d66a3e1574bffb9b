using System.CommandLine;
using System.CommandLine.Parsing;
using Pawl.Cli.Output;
using Pawl.Quantities;

namespace Pawl.Cli.Commands;

/// <summary>Says what is wrong with a command line.</summary>
internal static class Usage
{
    /// <summary>Reports every complaint of the parser.</summary>
    public static int Report(ParseResult parsed, CommandContext context)
    {
        var command = parsed.CommandResult.Command;
        foreach (var error in parsed.Errors)
        {
            var words = error.Message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            context.Error.WriteLine($"pawl: error {CliCodes.Usage}: {Plain.Line(string.Join(' ', words))}");
        }

        string[] known = [.. command.Options.Select(o => o.Name), .. command.Subcommands.Select(c => c.Name)];
        foreach (var token in parsed.Tokens)
        {
            if (!known.Contains(token.Value) && token.Type == TokenType.Argument && Nearest.To(token.Value, known) is { } near)
                context.Error.WriteLine($"  hint: Did you mean `{near}`?");
        }

        Hint(context, command);
        return ExitCode.NotJudged;
    }

    /// <summary>Reports one complaint of ours.</summary>
    public static int Report(CommandContext context, Command command, string message, string? hint = null)
    {
        context.Error.WriteLine($"pawl: error {CliCodes.Usage}: {Plain.Line(message)}");
        if (hint is not null)
            context.Error.WriteLine($"  hint: {Plain.Line(hint)}");
        else
            Hint(context, command);
        return ExitCode.NotJudged;
    }

    private static void Hint(CommandContext context, Command command) =>
        context.Error.WriteLine(command is RootCommand ? "  hint: See `pawl --help`." : $"  hint: See `pawl {command.Name} --help`.");
}
