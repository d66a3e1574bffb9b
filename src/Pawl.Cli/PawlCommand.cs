using System.CommandLine;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;

namespace Pawl.Cli;

/// <summary>The command line: reads the arguments, runs the command, says how it ended.</summary>
public static class PawlCommand
{
    /// <summary>Runs one command and returns the exit code. Never throws.</summary>
    public static int Run(string[] args, CommandContext context)
    {
        ArgumentNullException.ThrowIfNull(args);
        ArgumentNullException.ThrowIfNull(context);
        var verbose = args.Contains("--verbose", StringComparer.Ordinal);
        try
        {
            var code = Invoke(args, context);
            context.Out.Flush();
            context.Error.Flush();
            return code;
        }
        catch (OperationCanceledException) when (context.Cancelled.IsCancellationRequested)
        {
            return Last(context, "pawl: interrupted; what was written so far is whole.", ExitCode.Interrupted);
        }
        catch (CannotWriteException problem)
        {
            return Last(context, $"pawl: error {CliCodes.CannotWrite}: {Plain.Line(problem.Message)}", ExitCode.NotJudged);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // What is read is guarded where it is read; what is left is a stream of this process: a full disk, a closed pipe.
            return Last(context, $"pawl: error {CliCodes.CannotWrite}: A stream failed: {Plain.Line(problem.Message)}", ExitCode.NotJudged);
        }
#pragma warning disable CA1031 // The last line of defence: whatever it is, it is ours, and the shell must not take it for a verdict.
        catch (Exception defect)
#pragma warning restore CA1031
        {
            return Last(context, DefectText.Of(defect, spec: null, verbose), ExitCode.Defect);
        }
    }

    /// <summary>The tree of commands, for help, completion and tests.</summary>
    public static RootCommand Tree() => CommandTree.Build(context: null);

    private static int Invoke(string[] args, CommandContext context)
    {
        var root = CommandTree.Build(context);

        // No @file expansion: a spec may be called @something, and arguments come from where the user typed them.
        var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0)
            return Usage.Report(parsed, context);

        return parsed.Invoke(new InvocationConfiguration
        {
            EnableDefaultExceptionHandler = false,
            Output = context.Out,
            Error = context.Error,
        });
    }

    private static int Last(CommandContext context, string line, int code)
    {
        try
        {
            context.Out.Flush();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Said by the line that follows.
        }
        catch (InvalidOperationException)
        {
            // A writer that is itself the defect.
        }

        try
        {
            context.Error.WriteLine(line);
            context.Error.Flush();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Nowhere left to say it, as when the stream is closed; the exit code does.
        }

        return code;
    }
}
