using Pawl.Analysis;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Files;
using Pawl.Specs.Schema;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

internal sealed partial record Engine
{
    /// <summary>The layers as they are shipped.</summary>
    public static Engine Shipped { get; } = new()
    {
        FindProject = (folder, root) => ProjectViews.Find(FileSource.Disk, folder, root),
        OpenSpecs = Opener(FileSource.Disk),
        LoadRules = (root, folders) => RulePacks.Load(root, folders),
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

    /// <summary>The same layers, with everything read from elsewhere.</summary>
    public Engine Reading(FileSource source) => this with
    {
        FindProject = (folder, root) => ProjectViews.Find(source, folder, root),
        OpenSpecs = Opener(source),
        LoadRules = (root, folders) => RulePacks.Load(root, folders, source),
    };

    private static Func<string, ImmutableArray<string>, ImmutableArray<string>, bool, Func<SpecInput, SpecLoad>> Opener(FileSource source) =>
        (root, catalogue, adapters, strict) =>
        {
            var loader = new SpecLoader(root, catalogue, validate: strict, adapters, source);
            return input => input.Bytes is { } bytes ? loader.Load(input.Display, bytes) : loader.Load(input.Display);
        };
}
