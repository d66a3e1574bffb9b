using System.Runtime.InteropServices;

namespace Pawl.Cli;

internal static class Program
{
    private static int Main(string[] args)
    {
        using var cancel = new CancellationTokenSource();
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
        {
            // The run ends between two specs, with whole files only; a second Ctrl+C ends it at once.
            signal.Cancel = !cancel.IsCancellationRequested;
            cancel.Cancel();
        });

        WarmUp.Start(args);
        return PawlCommand.Run(args, CommandContext.OfProcess(cancel.Token));
    }
}
