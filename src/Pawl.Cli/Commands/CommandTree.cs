using System.CommandLine;
using System.CommandLine.Help;

namespace Pawl.Cli.Commands;

/// <summary>Every command and option, put together.</summary>
internal static class CommandTree
{
    /// <param name="context">Where the commands run; null for a tree that is looked at and never run.</param>
    public static RootCommand Build(CommandContext? context)
    {
        var root = new RootCommand("Judges YAML specifications of planetary speed reducers by rules that are data, and reports.")
        {
            CheckCommand.Build(context),
            LiveCommand.Build(context),
            CompareCommand.Build(context),
            BaselineCommand.Build(context),
            VerifyCommand.Build(context),
            VerifyCommand.BuildSign(context),
            ExplainCommand.Build(context),
            SweepCommand.Build(context),
            SolveCommand.Build(context),
            ORingCommand.Build(context),
            SheetCommand.Build(context),
            SchemaCommand.Build(context),
            NewCommand.Build(context),
        };

        // Without a command there is nothing to do; say what could be done instead of an error that says only that.
        root.SetAction(parsed =>
        {
            new HelpAction().Invoke(parsed);
            return ExitCode.NotJudged;
        });

        foreach (var option in root.Options)
        {
            if (option is VersionOption version)
                version.Action = new VersionAction();
            else if (option is HelpOption { Action: HelpAction help } helpOption)
                helpOption.Action = new HelpWithExamples(help);
        }

        return root;
    }
}
