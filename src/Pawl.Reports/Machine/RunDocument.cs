using Pawl.Reports.Records;
using Pawl.Specs.Text;

namespace Pawl.Reports.Machine;

/// <summary>One spec of a run, as far as it came.</summary>
public sealed record SpecOutcome
{
    /// <summary>The spec file, from the project root.</summary>
    public required string File { get; init; }

    /// <summary>Name of its report files without the ending.</summary>
    public required string Name { get; init; }

    /// <summary>Null when it could not be judged.</summary>
    public ConformanceRecord? Record { get; init; }

    /// <summary>What was wrong with what is written.</summary>
    public ImmutableArray<Diagnostic> Diagnostics { get; init; } = [];

    /// <summary>What is said of a defect of Pawl that the spec brought to light, or null.</summary>
    public string? Defect { get; init; }

    /// <summary>Whether it makes the exit code 1.</summary>
    public bool Fails { get; init; }
}

/// <summary>How a run ended.</summary>
/// <param name="ExitCode">The exit code.</param>
/// <param name="Successful">Whether all that was asked for could be judged.</param>
public sealed record RunEnd(int ExitCode, bool Successful);

/// <summary>One document about all specs of a run, for machines. Specs are added in the order of the run, one at a time.</summary>
public abstract class RunDocument
{
    /// <summary>A complaint about what was written or asked for; each is told once in a run.</summary>
    public abstract void Complain(Diagnostic diagnostic);

    /// <summary>The next spec. Its record is not kept.</summary>
    public abstract void Add(SpecOutcome spec);

    /// <summary>The whole text; nothing can be added after it.</summary>
    public abstract string Finish(RunEnd ended);
}
