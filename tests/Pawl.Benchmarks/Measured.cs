using System.Diagnostics;

namespace Pawl.Benchmarks;

/// <summary>A command line to be timed as a whole process.</summary>
internal sealed record Contender(string Name, string Program, string[] Arguments, string Folder, int ExpectedExitCode = 0);

/// <summary>Wall times of a contender, seconds, and the peak of its memory, megabytes.</summary>
internal sealed record Measured(Contender Contender, double[] Seconds, double PeakMegabytes)
{
    public double Median
    {
        get
        {
            double[] sorted = [.. Seconds.Order()];
            return sorted[sorted.Length / 2];
        }
    }

    public double Min => Seconds.Min();

    /// <summary>Runs the contenders in turn, so that what else the machine does falls on all of them.</summary>
    public static List<Measured> InTurn(int repeats, params ReadOnlySpan<Contender> contenders)
    {
        var seconds = new double[contenders.Length][];
        var peaks = new double[contenders.Length];
        for (var c = 0; c < contenders.Length; c++)
        {
            seconds[c] = new double[repeats];

            // Once unmeasured: files come into the page cache.
            _ = Once(contenders[c]);
        }

        for (var r = 0; r < repeats; r++)
        {
            for (var c = 0; c < contenders.Length; c++)
            {
                (seconds[c][r], var peak) = Once(contenders[c]);
                peaks[c] = Math.Max(peaks[c], peak);
            }
        }

        var results = new List<Measured>();
        for (var c = 0; c < contenders.Length; c++)
            results.Add(new(contenders[c], seconds[c], peaks[c]));
        return results;
    }

    private static (double Seconds, double PeakMegabytes) Once(Contender contender)
    {
        var start = Stopwatch.GetTimestamp();
        using var process = Process.Start(new ProcessStartInfo(contender.Program, contender.Arguments)
        {
            WorkingDirectory = contender.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        var peak = 0.0;
        while (!process.WaitForExit(2))
            peak = Math.Max(peak, PeakOf(process.Id));
        process.WaitForExit();
        var seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
        if (process.ExitCode != contender.ExpectedExitCode)
            throw new InvalidOperationException($"{contender.Name} ended with {process.ExitCode}:\n{Tail(output.Result)}\n{Tail(error.Result)}");
        return (seconds, peak);
    }

    // VmHWM of /proc: the high-water mark of resident memory, so the last reading before the end is what counts.
    private static double PeakOf(int process)
    {
        try
        {
            foreach (var line in File.ReadLines($"/proc/{process}/status"))
            {
                if (line.StartsWith("VmHWM:", StringComparison.Ordinal))
                    return double.Parse(line.AsSpan(6).TrimEnd("kB").Trim(), CultureInfo.InvariantCulture) / 1024;
            }
        }
        catch (IOException)
        {
            // It ended in between.
        }

        return 0;
    }

    private static string Tail(string text) => text.Length < 2000 ? text : text[^2000..];
}
