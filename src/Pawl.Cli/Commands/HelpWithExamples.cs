using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Pawl.Cli.Commands;

/// <summary>The usual help, then commands that can be pasted.</summary>
internal sealed class HelpWithExamples(HelpAction help) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        help.Invoke(parseResult);
        var command = parseResult.CommandResult.Command;
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Examples:");
        foreach (var (line, meaning) in Examples.Of(command.Name))
            output.WriteLine($"  {line,-58} {meaning}");
        output.WriteLine();
        output.WriteLine("Exit codes: 0 conforms, 1 findings, 2 not judged (bad input or usage), 70 defect of pawl, 130 interrupted.");
        return ExitCode.Conforms;
    }
}

/// <summary>Prints the version of this tool, whatever program hosts it.</summary>
internal sealed class VersionAction : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine(Tool.Version);
        return ExitCode.Conforms;
    }
}
