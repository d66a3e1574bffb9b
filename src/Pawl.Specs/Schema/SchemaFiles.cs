using System.Text;
using NJsonSchema;
using Pawl.Specs.Model;

namespace Pawl.Specs.Schema;

/// <summary>A schema that is kept in the repository.</summary>
/// <param name="Name">File name in the folder <c>schema</c>.</param>
/// <param name="Generate">Its text as the types have it now.</param>
public sealed record SchemaFile(string Name, Func<string> Generate);

/// <summary>The schemas that are kept in the folder <c>schema</c>, generated from the types.</summary>
public static class SchemaFiles
{
    /// <summary>Those of this layer: specs, catalogues, adapters, project files.</summary>
    public static ImmutableArray<SchemaFile> Specs { get; } =
    [
        new("gearbox.schema.json", () => Text(
            SchemaPurpose.File, typeof(GearboxSpec), "Pawl gearbox",
            "One variant of a gearbox, or a base that variants extend. What a base states, a variant may leave out, and null removes it.")),
        new("gearbox-whole.schema.json", () => Text(
            SchemaPurpose.Whole, typeof(GearboxSpec), "Pawl gearbox, whole", "One variant of a gearbox with everything it extends laid beneath it.")),
        new("catalogue.schema.json", () => Text(
            SchemaPurpose.Whole, typeof(CatalogueFile), "Pawl catalogue", "Materials and lubricants that specs name by id.")),
        new("adapter.schema.json", () => Text(
            SchemaPurpose.Whole, typeof(AdapterSpec), "Pawl adapter", "What a gearbox is joined to: motor flange, coupling, mount.")),
        new("baseline.schema.json", () => Text(
            SchemaPurpose.Whole, typeof(BaselineFile), "Pawl baseline", "Findings that are known and not mended yet. It permits nothing, and only shrinks.")),
        new("project.schema.json", () => Text(
            SchemaPurpose.Whole, typeof(ProjectFile), "Pawl project", "pawl.yaml: which specs, catalogues and rules a project has.")),
    ];

    /// <summary>The text of a schema: indented JSON, line feeds, the same on every desk.</summary>
    public static string Render(JsonSchema schema)
    {
        ArgumentNullException.ThrowIfNull(schema);
        return schema.ToJson().ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
    }

    /// <summary>Writes what differs; the names of the files written.</summary>
    public static ImmutableArray<string> Write(string folder, ImmutableArray<SchemaFile> files)
    {
        ArgumentNullException.ThrowIfNull(folder);
        Directory.CreateDirectory(folder);
        var written = ImmutableArray.CreateBuilder<string>();
        foreach (var file in files)
        {
            var text = file.Generate();
            var path = Path.Combine(folder, file.Name);
            if (IsCurrent(path, text))
                continue;
            File.WriteAllText(path, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            written.Add(file.Name);
        }

        return written.ToImmutable();
    }

    /// <summary>The names of the files that are missing or differ from what the types say.</summary>
    public static ImmutableArray<string> Stale(string folder, ImmutableArray<SchemaFile> files)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var stale = ImmutableArray.CreateBuilder<string>();
        foreach (var file in files)
        {
            if (!IsCurrent(Path.Combine(folder, file.Name), file.Generate()))
                stale.Add(file.Name);
        }

        return stale.ToImmutable();
    }

    private static bool IsCurrent(string path, string text) =>
        File.Exists(path) && File.ReadAllText(path).ReplaceLineEndings("\n") == text;

    private static string Text(SchemaPurpose purpose, Type type, string title, string description) =>
        Render(new SchemaGenerator(purpose).Generate(type, title, description));
}
