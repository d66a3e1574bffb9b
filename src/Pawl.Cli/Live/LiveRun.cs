using System.CommandLine;
using Pawl.Cli.Checking;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;
using Pawl.Specs.Text;

namespace Pawl.Cli.Live;

/// <summary>One run of <c>pawl live</c>.</summary>
internal static class LiveRun
{
    /// <summary>The port when none is asked for; the next free one after it when another program has it.</summary>
    public const int UsualPort = 8765;

    private const int PortsTried = 20;

    /// <summary>Short enough that a save is answered within a blink, long enough that the processor rests.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    /// <summary>Serves until it is interrupted, which is how it ends well.</summary>
    public static int Start(CommandContext context, Command command, CheckRequest request, int? port)
    {
        if (port is < 1 or > 65535)
            return Usage.Report(context, command, "--port is a number from 1 to 65535.");
        if (request.Paths.Contains("-"))
            return Usage.Report(context, command, "Standard input cannot be watched. Name a spec or a folder.");
        var project = new LiveProject(context, request);
        if (project.Start() is { } usage)
            return Usage.Report(context, command, usage);
        var (state, _) = project.Now;
        if (state.Specs.IsEmpty)
        {
            foreach (var complaint in state.Complaints)
                DiagnosticWriter.Write(context.Error, complaint.Diagnostic);
            return ExitCode.NotJudged;
        }

        using var server = Listening(port, project, context.Cancelled);
        if (server is null)
        {
            context.Error.WriteLine($"pawl: error {CliCodes.PortTaken}: {Taken(port)}");
            return ExitCode.NotJudged;
        }

        context.Out.WriteLine($"{server.Address} shows {Counted(state.Specs.Length)}; Ctrl+C ends it.");
        context.Out.Flush();
        var serving = server.Serve();
        var said = -1;
        while (!context.Cancelled.WaitHandle.WaitOne(Pause))
        {
            said = Say(context, project.Now.State, said);
            project.Look();
        }

        serving.GetAwaiter().GetResult();
        return ExitCode.Conforms;
    }

    private static LiveServer? Listening(int? port, LiveProject project, CancellationToken cancelled)
    {
        if (port is { } asked)
            return LiveServer.Start(asked, project, cancelled);
        for (var i = 0; i < PortsTried; i++)
        {
            if (LiveServer.Start(UsualPort + i, project, cancelled) is { } server)
                return server;
        }

        return null;
    }

    /// <summary>What is wrong now, for who looks at the terminal instead.</summary>
    private static int Say(CommandContext context, LiveState state, int said)
    {
        if (state.Version == said)
            return said;
        foreach (var complaint in state.Complaints.Concat(state.Specs.SelectMany(static s => s.Complaints)))
        {
            if (complaint.Diagnostic.Severity == Severity.Error)
                DiagnosticWriter.Write(context.Error, complaint.Diagnostic);
        }

        context.Error.Flush();
        return state.Version;
    }

    private static string Taken(int? port) => port is { } asked
        ? FormattableString.Invariant($"Port {asked} cannot be listened on: another program has it, or it needs rights that this one lacks. Give another --port.")
        : FormattableString.Invariant($"None of the ports {UsualPort} to {UsualPort + PortsTried - 1} is free. Give one with --port.");

    private static string Counted(int specs) => FormattableString.Invariant($"{specs} {(specs == 1 ? "spec" : "specs")}");
}
