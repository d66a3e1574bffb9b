using Pawl.Specs.Files;
using Pawl.Specs.Model;
using Pawl.Specs.Reading;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>Finds pawl.yaml and says where each of its values stands.</summary>
internal static class ProjectViews
{
    public static ProjectView Find(FileSource source, string folder, string? root)
    {
        var file = root is null ? ProjectReader.Find(folder, source) : Path.Combine(root, ProjectFile.FileName);
        if (file is null || !source.IsFile(file))
            return new ProjectView { Root = root ?? folder };

        var load = ProjectReader.Read(file, ProjectFile.FileName, source);
        var view = new ProjectView { Root = root ?? Path.GetDirectoryName(file)!, File = file, Read = load.Read, Diagnostics = load.Diagnostics };
        return load.Project is { } project ? Filled(source, view, project) : view;
    }

    private static ProjectView Filled(FileSource source, ProjectView view, ProjectFile project)
    {
        // Patterns that lead out are not so much as tried: a search of the whole disk takes for ever, and its answer tells what is there.
        Diagnostic[] outside =
        [
            .. OutsidePatterns(source, view.Root, project.Specs), .. OutsidePatterns(source, view.Root, project.Exclude),
            .. OutsidePatterns(source, view.Root, project.Catalogues), .. OutsidePatterns(source, view.Root, project.Adapters),
        ];
        return outside.Length > 0 ? view with { Diagnostics = [.. view.Diagnostics, .. outside] } : Inside(source, view, project);
    }

    private static IEnumerable<Diagnostic> OutsidePatterns(FileSource source, string root, ImmutableArray<Stated<string>> patterns)
    {
        foreach (var pattern in patterns)
        {
            var parts = pattern.Value.Split('/', '\\');
            if (Path.IsPathRooted(pattern.Value) || parts.Contains("..") || !ProjectGuard.IsInside(root, FilePatterns.FixedPart(pattern.Value), source))
            {
                yield return new(
                    CliCodes.OutsideProject, Severity.Error, pattern.Span, $"The pattern `{pattern.Value}` leads out of the project.",
                    "Paths count from the project file and stay below it.");
            }
        }
    }

    private static ProjectView Inside(FileSource source, ProjectView view, ProjectFile project) => view with
    {
        Specs = List(project.Specs),
        Exclude = List(project.Exclude),
        Catalogues = List(project.Catalogues),
        Adapters = List(project.Adapters),
        Rules = List(project.Rules),
        Baseline = One(project.Baseline),
        Templates = One(project.Templates),
        ReportFolder = One(project.Reports?.Folder),
        ReportFormats = project.Reports is { } reports ? List(reports.Formats) : null,
        FailOn = One(project.FailOn),
        RequireComplete = One(project.RequireComplete),
        AllowIncomplete = One(project.AllowIncomplete),
        RequiredSections = project.RequiredSections,
        Diagnostics = [.. view.Diagnostics, .. Idle(source, view.Root, project.Catalogues, "catalogue"), .. Idle(source, view.Root, project.Adapters, "adapter"), .. UnknownFormats(project), .. OutsideReports(view.Root, project)],
    };

    // Not refused: what is missing in a catalogue is an error of the spec that wants it.
    private static IEnumerable<Diagnostic> Idle(FileSource source, string root, ImmutableArray<Stated<string>> patterns, string what)
    {
        foreach (var pattern in patterns)
        {
            if (FilePatterns.Readable(source, root, pattern.Value, out var problem).Length == 0)
            {
                yield return problem is null
                    ? new(CliCodes.NoCatalogue, Severity.Warning, pattern.Span, $"`{pattern.Value}` matches no {what}.", "Paths count from the project file. Mend the pattern or take it out.")
                    : new(CliCodes.CannotRead, Severity.Error, pattern.Span, problem);
            }
        }
    }

    // A project that somebody sends may not write where it likes; whoever runs pawl may.
    private static IEnumerable<Diagnostic> OutsideReports(string root, ProjectFile project)
    {
        if (project.Reports?.Folder is { } folder && !ProjectGuard.IsInside(root, folder.Value))
            yield return new(CliCodes.OutsideProject, Severity.Error, folder.Span, $"The reports folder `{folder.Value}` lies outside the project.", "Name a folder inside it, or give --output.");
    }

    private static IEnumerable<Diagnostic> UnknownFormats(ProjectFile project) =>
        from format in project.Reports?.Formats ?? []
        where Formats.Find(format.Value) is null
        select new Diagnostic(
            CliCodes.Usage, Severity.Error, format.Span, $"This build writes no `{format.Value}`.", $"It writes {string.Join(", ", Formats.Names)}.");

    private static Setting<T>? One<T>(Stated<T>? stated) => stated is null ? null : new(stated.Value, stated.Span.ToString());

    private static Setting<ImmutableArray<string>>? List(ImmutableArray<Stated<string>> stated) =>
        stated.IsEmpty ? null : new([.. stated.Select(s => s.Value)], stated[0].Span.ToString());
}
