using Pawl.Analysis;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Schema;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

internal sealed partial record Engine
{
    /// <summary>The layers as they are shipped.</summary>
    public static Engine Shipped { get; } = new()
    {
        FindProject = ProjectViews.Find,
        OpenSpecs = (root, catalogue, adapters, strict) =>
        {
            var loader = new SpecLoader(root, catalogue, validate: strict, adapters);
            return input => input.Bytes is { } bytes ? loader.Load(input.Display, bytes) : loader.Load(input.Display);
        },
        LoadRules = RulePacks.Load,
        Analyse = GearboxAnalyser.Analyse,
        Judge = Rules.Judge.Of,
        Schemas = () => ((ImmutableArray<SchemaFile>)[.. SchemaFiles.Specs, .. Rules.Schema.RuleSchemas.Files, .. RecordSchema.Files]).ToImmutableSortedDictionary(
            f => f.Name.Replace(".schema.json", "", StringComparison.Ordinal), f => f.Generate, StringComparer.Ordinal),
        Diagnostics = () =>
        [
            .. DiagnosticCatalogue.All.Select(d => (d.Code, d.Meaning, d.Mend)),
            .. RuleDiagnosticCatalogue.All.Select(d => (d.Code, d.Meaning, d.Mend)),
        ],
    };
}
