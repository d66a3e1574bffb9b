using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace Pawl.Cli.Tests;

/// <summary>What only a process of its own shows.</summary>
public sealed class ProcessTests
{
    private static readonly string Tool = Path.Combine(AppContext.BaseDirectory, "pawl.dll");

    [DllImport("libc", EntryPoint = "kill")]
    private static extern int Kill(int process, int signal);

    private static Process Start(string folder, params string[] arguments) => Process.Start(new ProcessStartInfo("dotnet", [Tool, .. arguments])
    {
        WorkingDirectory = folder,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    [Fact]
    public async Task Ctrl_C_ends_a_long_run_with_130_and_only_whole_files()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "signals are of POSIX");
        Assert.SkipWhen(InterruptIsIgnored(), "whoever started the tests has them ignore interrupts, as a shell does with what it starts in the background");
        using var place = new Workplace();
        place.Run("new", "Works", "--project");
        place.Run("new", "R450");
        var spec = File.ReadAllText(place.PathOf("specs/r450.yaml"));
        for (var i = 0; i < 3000; i++)
            place.With(string.Create(CultureInfo.InvariantCulture, $"specs/many/{i:0000}.yaml"), spec.Replace("../schema", "../../schema", StringComparison.Ordinal));

        using var process = Start(place.Folder, "check", "--output", "out", "--format", "json");
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        while (!process.HasExited && (!Directory.Exists(place.PathOf("out/many")) || Directory.GetFiles(place.PathOf("out/many")).Length < 20))
            await Task.Delay(5, TestContext.Current.CancellationToken);
        Assert.Equal(0, Kill(process.Id, 2));
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        await output;

        Assert.Equal((130, "pawl: interrupted; what was written so far is whole.\n"), (process.ExitCode, await error));
        var written = Directory.GetFiles(place.PathOf("out/many"));
        Assert.InRange(written.Length, 20, 2999);
        foreach (var file in written)
        {
            Assert.EndsWith(".json", file, StringComparison.Ordinal);
            using var whole = System.Text.Json.JsonDocument.Parse(await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
        }
    }

    [Fact]
    public async Task A_process_ends_with_the_exit_code_and_prints_UTF_8_without_a_mark()
    {
        using var place = new Workplace().With("größe.txt", "");

        using var process = Start(place.Folder, "check", "größe.txt");
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal(2, process.ExitCode);
        Assert.StartsWith("größe.txt:", await error, StringComparison.Ordinal);
    }

    // A process inherits what its parent ignores. proc(5): SigIgn is a mask in hexadecimal; SIGINT is the second bit.
    private static bool InterruptIsIgnored()
    {
        const string Status = "/proc/self/status";
        const string Key = "SigIgn:";
        return File.Exists(Status)
            && File.ReadLines(Status).FirstOrDefault(static line => line.StartsWith(Key, StringComparison.Ordinal)) is { } mask
            && (ulong.Parse(mask.AsSpan(Key.Length).Trim(), NumberStyles.HexNumber, CultureInfo.InvariantCulture) & 2) != 0;
    }
}
