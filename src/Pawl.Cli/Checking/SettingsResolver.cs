using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>Settles what is in force: the command line before pawl.yaml before the defaults.</summary>
internal static class SettingsResolver
{
    /// <summary>The settings, or null with the complaint about the usage; complaints about pawl.yaml are in the view.</summary>
    public static Settings? Resolve(CheckRequest request, CommandContext context, out ProjectView project, out string? error)
    {
        var start = StartFolder(request, context);
        project = context.Engine.FindProject(start, request.Root is { } root ? context.Absolute(root) : null);

        // Without a project file the working folder is the project, unless the specs lie elsewhere.
        if (project.File is null && request.Root is null)
            project = project with { Root = IsWithin(start, context.Folder) ? context.Folder : start };
        if (request.Root is not null && !context.Files.IsFolder(project.Root))
        {
            error = $"--root is no folder: {request.Root}";
            return null;
        }

        if (request.StdinPath is not null && !request.Paths.Contains("-"))
        {
            error = "--stdin-path says what standard input stands for, but no - asks for standard input.";
            return null;
        }

        var asOf = AsOf.Of(request.AsOf, context, out error);
        if (error is not null)
            return null;

        var fromProject = request.Paths.IsEmpty;
        var place = ReportPlace(request, project, context, fromProject, out var isFile);
        if (StandardOutput(request, isFile, out error) is not { } standardOutput)
            return null;

        var formats = ReportFormats(request, project, place.Value, isFile, out error);
        if (error is not null)
            return null;

        return new Settings
        {
            Root = new(project.Root, request.Root is not null ? Origins.CommandLine : project.File is not null ? "folder of the project file" : "no project file: working folder or that of the specs"),
            ProjectFile = project.File,
            ProjectRead = project.Read,
            Specs = fromProject ? project.Specs ?? new([], Origins.Default) : new(request.Paths, Origins.CommandLine),
            FromProject = fromProject,
            Exclude = project.Exclude ?? new([], Origins.Default),
            Catalogue = Files(context, project, project.Catalogues),
            Adapters = Files(context, project, project.Adapters),
            Rules = HouseRules(request, project, context),
            Baseline = request.Baseline is { } baseline ? new(RelativeTo(project.Root, context.Absolute(baseline)), Origins.CommandLine)
                : project.Baseline is { } known ? new(known.Value, known.Origin)
                : new(null, Origins.Default),
            FailOn = FailOn(request, project),
            RequireComplete = request.RequireComplete ? new(true, Origins.CommandLine) : project.RequireComplete ?? new(false, Origins.Default),
            AllowIncomplete = request.AllowIncomplete ? new(true, Origins.CommandLine) : project.AllowIncomplete ?? new(false, Origins.Default),
            RequiredSections = project.RequiredSections,
            AsOf = asOf,
            Out = standardOutput,
            ReportPlace = place,
            ReportIsFile = isFile,
            ReportFormats = formats,
            Color = Color(request.Color, context),
            Width = context.OutIsTerminal ? context.Width : null,
            Sheets = request.Sheets,
            Quiet = request.Quiet,
            Verbose = request.Verbose,
            StrictSchema = request.StrictSchema,
        };
    }

    // The project of what is judged, not of where the user stands: both are the same nearly always.
    private static string StartFolder(CheckRequest request, CommandContext context)
    {
        var first = request.Paths is [var path, ..] ? path : ".";
        if (first == "-")
            first = request.StdinPath is { } standIn ? Path.GetDirectoryName(standIn) is { Length: > 0 } folder ? folder : "." : ".";

        var absolute = context.Absolute(FilePatterns.FixedPart(first));
        while (!context.Files.IsFolder(absolute) && Path.GetDirectoryName(absolute) is { } parent)
            absolute = parent;
        return absolute;
    }

    private static bool IsWithin(string path, string folder) =>
        path == folder || path.StartsWith(Path.EndsInDirectorySeparator(folder) ? folder : folder + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    private static Setting<Format>? StandardOutput(CheckRequest request, bool toFile, out string? error)
    {
        error = null;
        if (request.Output is not null && !toFile && request.Formats.Contains(Formats.NameOf(Format.Annotations)))
            return new(Format.Annotations, Origins.CommandLine);
        if (request.Output is not null || request.Formats.IsEmpty)
            return new(Format.Text, Origins.Default);
        if (request.Formats.Length > 1)
        {
            error = "Standard output carries one format. Give --output DIR to write several.";
            return null;
        }

        return new(Formats.Find(request.Formats[0])!.Value, Origins.CommandLine);
    }

    private static Setting<string?> ReportPlace(CheckRequest request, ProjectView project, CommandContext context, bool fromProject, out bool isFile)
    {
        isFile = false;
        if (request.NoReports)
            return new(null, Origins.CommandLine);
        if (request.Output is { } output)
        {
            var place = context.Absolute(output);
            isFile = !Path.EndsInDirectorySeparator(output) && !Directory.Exists(place) && Formats.FromName(place) is not null;
            return new(place, Origins.CommandLine);
        }

        return fromProject && project.ReportFolder is { } folder
            ? new(Path.GetFullPath(folder.Value, project.Root), folder.Origin)
            : new(null, Origins.Default);
    }

    private static Setting<ImmutableArray<Format>> ReportFormats(
        CheckRequest request, ProjectView project, string? place, bool isFile, out string? error)
    {
        error = null;
        if (place is null)
            return new([], Origins.Default);

        if (isFile)
        {
            var implied = Formats.FromName(place)!.Value;
            if (request.Formats.Length > 1)
                error = "One file takes one format. Give --output DIR to write several.";
            return request.Formats.IsEmpty
                ? new([implied], "extension of --output")
                : new([Formats.Find(request.Formats[0])!.Value], Origins.CommandLine);
        }

        // Annotations are of use in a log alone, so they go to standard output whatever goes to the folder.
        ImmutableArray<Format> asked = [.. request.Formats.Select(f => Formats.Find(f)!.Value).Where(f => f != Format.Annotations).Distinct().Order()];
        if (request.Output is not null && !asked.IsEmpty)
            return new(asked, Origins.CommandLine);

        return project.ReportFormats is { } formats
            ? new([.. formats.Value.Select(f => Formats.Find(f)).OfType<Format>().Distinct().Order()], formats.Origin)
            : new([Format.Markdown, Format.Html, Format.Json], Origins.Default);
    }

    private static Setting<ImmutableArray<string>> HouseRules(CheckRequest request, ProjectView project, CommandContext context)
    {
        var fromProject = project.Rules ?? new([], Origins.Default);
        if (request.Rules.IsEmpty)
            return fromProject;

        var added = request.Rules.Select(r => RelativeTo(project.Root, context.Absolute(r)));
        return new(
            [.. fromProject.Value, .. added],
            fromProject.Value.IsEmpty ? Origins.CommandLine : $"{fromProject.Origin}, {Origins.CommandLine}");
    }

    private static Setting<Severity?> FailOn(CheckRequest request, ProjectView project)
    {
        var word = request.FailOn is { } option ? new(option, Origins.CommandLine) : project.FailOn ?? new("error", Origins.Default);
        return new(
            word.Value switch
            {
                "error" => Severity.Error,
                "warning" => Severity.Warning,
                "note" => Severity.Note,
                _ => null,
            },
            word.Origin);
    }

    private static Setting<ImmutableArray<string>> Files(CommandContext context, ProjectView project, Setting<ImmutableArray<string>>? stated)
    {
        if (stated is not { } patterns)
            return new([], Origins.Default);

        var files = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var pattern in patterns.Value)
        {
            foreach (var file in FilePatterns.Readable(context.Files, project.Root, pattern, out _))
                files.Add(RelativeTo(project.Root, file));
        }

        return new([.. files], patterns.Origin);
    }

    /// <summary>Whether to colour text.</summary>
    internal static Setting<bool> Color(string? option, CommandContext context) => option switch
    {
        "always" => new(true, Origins.CommandLine),
        "never" => new(false, Origins.CommandLine),
        _ when context.Variable("NO_COLOR") is { Length: > 0 } => new(false, "NO_COLOR"),
        _ when context.Variable("TERM") == "dumb" => new(false, "TERM"),
        _ => new(context.OutIsTerminal, context.OutIsTerminal ? "standard output is a terminal" : "standard output is no terminal"),
    };

    /// <summary>Whether a path that counts from the root leads out of it.</summary>
    internal static bool IsOutside(string root, string path) => !IsWithin(Path.GetFullPath(path, root), Path.TrimEndingDirectorySeparator(root));

    /// <summary>A path from the root with forward slashes.</summary>
    internal static string RelativeTo(string root, string absolute) =>
        Path.GetRelativePath(root, absolute).Replace('\\', '/');
}
