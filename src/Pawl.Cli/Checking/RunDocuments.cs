using Pawl.Cli.Output;
using Pawl.Reports;
using Pawl.Reports.Machine;
using Pawl.Reports.Records;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>The documents about the whole run that are asked for, and where each goes.</summary>
internal sealed class RunDocuments
{
    private readonly List<(RunDocument Document, string? Path)> _all = [];
    private readonly CommandContext _context;

    public RunDocuments(CommandContext context, Settings settings)
    {
        _context = context;
        if (Formats.IsOfRun(settings.Out.Value))
            Add(settings.Out.Value, null, settings);
        if (settings.ReportPlace.Value is not { } place)
            return;
        foreach (var format in settings.ReportFormats.Value.Where(Formats.IsOfRun))
            Add(format, settings.ReportIsFile ? place : Path.Combine(place, Formats.FileOfRun(format)), settings);
    }

    public bool IsEmpty => _all.Count == 0;

    public void Complain(Diagnostic diagnostic)
    {
        foreach (var (document, _) in _all)
            document.Complain(diagnostic);
    }

    public void Add(SpecResult result, string name)
    {
        if (IsEmpty)
            return;
        var spec = new SpecOutcome
        {
            File = result.Input.Display,
            Name = name,
            Record = result.Record,
            Diagnostics = result.Diagnostics,
            Defect = result.Defect is { } defect ? DefectText.Of(defect, result.Input.Display, verbose: false) : null,
            Fails = result.Fails,
        };
        foreach (var (document, _) in _all)
            document.Add(spec);
    }

    /// <summary>Writes them all.</summary>
    public void Finish(int exitCode, bool successful)
    {
        foreach (var (document, path) in _all)
        {
            var text = document.Finish(new(exitCode, successful));
            if (path is null)
                _context.Out.Write(text);
            else
                Files.Write(path, text);
        }
    }

    private void Add(Format format, string? path, Settings settings)
    {
        var project = FolderInRepository(settings.Root.Value);
        _all.Add((
            format switch
            {
                Format.Sarif => new SarifDocument(RecordBuilder.Tool, project, settings.Level, Explain),
                Format.Junit => new JUnitDocument(settings.FailOn.Value is { } severity ? Word(severity) : null),
                _ => new AnnotationDocument(project),
            },
            path));
    }

    private (string Meaning, string Mend)? Explain(string code)
    {
        foreach (var entry in (ImmutableArray<(string Code, string Meaning, string Mend)>)[.. CliCodes.All, .. _context.Engine.Diagnostics()])
        {
            if (entry.Code == code)
                return (entry.Meaning, entry.Mend);
        }

        return null;
    }

    private static SeverityWord Word(Severity severity) => severity switch
    {
        Severity.Error => SeverityWord.Error,
        Severity.Warning => SeverityWord.Warning,
        _ => SeverityWord.Note,
    };

    /// <summary>The project root from the root of its repository, the nearest folder upwards with <c>.git</c>; empty when there is none.</summary>
    private static string FolderInRepository(string root)
    {
        for (var at = root; at is not null; at = Path.GetDirectoryName(at))
        {
            if (Path.Exists(Path.Combine(at, ".git")))
                return at == root ? "" : Path.GetRelativePath(at, root).Replace('\\', '/');
        }

        return "";
    }
}
