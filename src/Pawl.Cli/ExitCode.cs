namespace Pawl.Cli;

/// <summary>What the shell is told.</summary>
public static class ExitCode
{
    /// <summary>Judged; nothing at or above the threshold.</summary>
    public const int Conforms = 0;

    /// <summary>Judged; findings at or above the threshold.</summary>
    public const int Findings = 1;

    /// <summary>Not judged: bad usage, bad spec, bad rule, nothing matched, nothing evaluated.</summary>
    public const int NotJudged = 2;

    /// <summary>A defect in pawl itself (the number is EX_SOFTWARE of BSD's sysexits).</summary>
    public const int Defect = 70;

    /// <summary>Ended by Ctrl+C: 128 and the number of SIGINT, as shells have it.</summary>
    public const int Interrupted = 130;
}
