using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>What became of a spec.</summary>
internal enum SpecState
{
    Judged,

    /// <summary>A base for others; nothing to judge.</summary>
    Base,

    /// <summary>Not judged, for the reasons in its diagnostics.</summary>
    Refused,

    /// <summary>Not judged, for a defect of Pawl.</summary>
    Defect,
}

/// <summary>One spec, done with: what is needed to print it and to count it.</summary>
internal sealed record SpecResult
{
    public required SpecInput Input { get; init; }

    public required SpecState State { get; init; }

    public ImmutableArray<Diagnostic> Diagnostics { get; init; } = [];

    /// <summary>What was thrown, when the state says so.</summary>
    public Exception? Defect { get; init; }

    /// <summary>Null when there is nothing to record.</summary>
    public ConformanceRecord? Record { get; init; }

    /// <summary>For standard output.</summary>
    public string? Rendered { get; init; }

    /// <summary>For the one file of <c>--output</c>; null when there is none.</summary>
    public string? ForFile { get; init; }

    /// <summary>Whether a finding reaches the threshold, or a gap counts as one.</summary>
    public bool Fails { get; init; }

    /// <summary>The known findings that still fail, with their margins now.</summary>
    public ImmutableDictionary<FindingName, double?> Margins { get; init; } = ImmutableDictionary<FindingName, double?>.Empty;

    /// <summary>The files that it was read from, to tell which bases are of use.</summary>
    public ImmutableArray<string> FilesRead { get; init; } = [];
}
