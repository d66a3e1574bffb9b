using System.Runtime.InteropServices;

namespace Pawl.Cli;

/// <summary>The standard input of this process.</summary>
internal static class StandardInput
{
    private const int GetDescriptorFlags = 1;
    private const int ClosesOnExec = 1;

    /// <summary>Opens it; null when the process was started with it closed.</summary>
    /// <remarks>
    /// The runtime then has a pipe of its own under number 0, from which nothing ever comes. It tells itself apart by the flag to be
    /// closed on exec: what was inherited over an exec cannot bear it.
    /// </remarks>
    public static Stream? Open() =>
        OperatingSystem.IsWindows() || (Control(0, GetDescriptorFlags) is var flags && flags >= 0 && (flags & ClosesOnExec) == 0)
            ? Console.OpenStandardInput()
            : null;

    [DllImport("libc", EntryPoint = "fcntl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Control(int descriptor, int command);
}
