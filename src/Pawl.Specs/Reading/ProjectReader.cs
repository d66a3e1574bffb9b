using Pawl.Specs.Files;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using Pawl.Specs.Yaml;

namespace Pawl.Specs.Reading;

/// <summary>A project file as read.</summary>
/// <param name="Project">Null when anything is wrong with it.</param>
/// <param name="Diagnostics">What is wrong.</param>
public sealed record ProjectLoad(ProjectFile? Project, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>Finds and reads <c>pawl.yaml</c>.</summary>
public static class ProjectReader
{
    private static readonly string[] Severities = ["error", "warning", "note"];
    private static readonly string[] Formats = ["markdown", "html", "json"];

    /// <summary>The nearest project file from a folder upwards, or null. The folder that holds <c>.git</c> is the last one looked at.</summary>
    public static string? Find(string folder)
    {
        for (var at = Path.GetFullPath(folder); at is not null; at = Path.GetDirectoryName(at))
        {
            var file = Path.Combine(at, ProjectFile.FileName);
            if (File.Exists(file))
                return file;

            // A work tree of its own has a file of that name, a repository a folder.
            var git = Path.Combine(at, ".git");
            if (Directory.Exists(git) || File.Exists(git))
                return null;
        }

        return null;
    }

    /// <summary>Reads a project file.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="shown">The path that messages carry.</param>
    public static ProjectLoad Read(string path, string shown)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(shown);
        var file = FileStore.Read(new(path, shown));
        List<Diagnostic> diagnostics = [.. file.Diagnostics];
        if (file.Unreadable is { } unreadable)
            diagnostics.Add(unreadable(SourceSpan.Whole(shown), shown));

        var project = file.Tree is null ? null : Read(file.Tree, diagnostics);
        return new(diagnostics.Exists(diagnostic => diagnostic.Severity == Severity.Error) ? null : project, SpecLoader.InFileOrder(diagnostics));
    }

    /// <summary>Reads a project file's tree.</summary>
    public static ProjectFile? Read(YamlNode tree, ICollection<Diagnostic> diagnostics)
    {
        var reader = new MapReader(tree, "", diagnostics);
        var pawl = reader.Whole("pawl", Limits.Format, Limits.Format, required: true);
        var specs = reader.Texts("specs");
        var exclude = reader.Texts("exclude");
        var catalogues = reader.Texts("catalogues");
        var adapters = reader.Texts("adapters");
        var rules = reader.Texts("rules");
        var reports = reader.Map("reports") is { } map ? Reports(map) : null;
        var failOn = reader.Word("fail_on", Severities);
        var requireComplete = reader.Truth("require_complete");
        reader.Finish();

        return pawl is null
            ? null
            : new()
            {
                Pawl = pawl,
                Specs = specs,
                Exclude = exclude,
                Catalogues = catalogues,
                Adapters = adapters,
                Rules = rules,
                Reports = reports,
                FailOn = failOn,
                RequireComplete = requireComplete,
            };
    }

    private static ReportsSpec Reports(MapReader reader)
    {
        var folder = reader.Text("folder");
        var formats = reader.Words("formats", Formats);
        reader.Finish();
        return new() { Folder = folder, Formats = formats };
    }
}
