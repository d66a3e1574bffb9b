using Pawl.Analysis.Core;
using Pawl.Specs.Model;

namespace Pawl.Analysis;

/// <summary>Everything computed of one spec. Nothing here is judged.</summary>
public sealed record GearboxAnalysis
{
    public required GearboxSpec Spec { get; init; }

    /// <summary>Every subject, in the order of a report: train, bodies, planet sets, gears, meshes.</summary>
    public required ImmutableArray<Subject> Subjects { get; init; }

    /// <summary>The topology in words; empty when there is no train.</summary>
    public string Topology { get; init; } = "";

    /// <summary>Standard tables that were used for what has been computed so far, by id, in order.</summary>
    public ImmutableArray<string> TablesUsed
    {
        get => Context?.TablesUsed ?? field;
        init;
    }
    = [];

    /// <summary>Where tables are noted as quantities are asked for.</summary>
    internal AnalysisContext? Context { get; init; }
}
