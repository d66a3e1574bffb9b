using Pawl.Analysis;
using Pawl.Rules;

namespace Pawl.Cli.Checking;

internal sealed partial record Engine
{
    /// <summary>The layers as they are shipped.</summary>
    public static Engine Shipped { get; } = new()
    {
        FindProject = (folder, root) => new ProjectView { Root = root ?? folder },
        OpenSpecs = (_, _) => _ => throw new NotSupportedException("Reading of specs is not yet joined."),
        LoadRules = RulePacks.Load,
        Judge = (spec, rules, asOf) => Rules.Judge.Of(GearboxAnalyser.Analyse(spec), rules, asOf),
        Schemas = () => throw new NotSupportedException("Schemas are not yet joined."),
        Diagnostics = () => [],
        Record = _ => throw new NotSupportedException("Records are not yet joined."),
    };
}
