using System.Text;
using System.Text.Json;
using Pawl.Cli.Checking;
using Pawl.Reports.Comparing;
using Pawl.Reports.Records;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Comparing;

/// <summary>Finds out what an argument means: what is on the disk, else a revision, else a path in a revision.</summary>
internal sealed class Sides(CommandContext context, CompareRequest request)
{
    private const int MostBytes = 256 * 1024 * 1024;
    private readonly List<Diagnostic> _problems = [];

    /// <summary>What kept a side from being opened, and what is wrong with its project and rules.</summary>
    public IReadOnlyList<Diagnostic> Problems => _problems;

    /// <summary>Whether a complaint about usage is the reason.</summary>
    public string? UsageError { get; private set; }

    /// <summary>Opens a side; null with problems.</summary>
    /// <param name="argument">As the user wrote it.</param>
    /// <param name="other">The other argument: a revision beside a path means that path in the revision.</param>
    public Side? Open(string argument, string? other)
    {
        if (argument.Length == 0)
            return Problem("pawl", "An empty argument names nothing to compare.", "Is a variable of the shell unset? A single point is the working folder.");
        if (IsOnDisk(argument))
            return OnDisk(argument);

        var colon = argument.IndexOf(':', StringComparison.Ordinal);
        var (name, path) = colon < 0 ? (argument, null) : (argument[..colon], argument[(colon + 1)..]);
        if (Revisions.Find(context.Folder, name, out var problem, out var hint) is not { } revision)
            return Problem(argument, problem, hint);

        var place = path is not null ? Path.GetFullPath(path, revision.Top)
            : other is not null && IsOnDisk(other) && !IsProject(context, other) && RecordsOf(other).IsEmpty ? context.Absolute(other)
            : null;
        var at = context with { Files = revision.Files, Engine = context.Engine.Reading(revision.Files) };
        if (path is { Length: > 0 } && !at.Files.IsFile(place!) && !at.Files.IsFolder(place!))
        {
            revision.Files.Dispose();
            return Problem(argument, $"`{name}` holds no `{path}`.", "Paths of a revision count from the top of the repository.");
        }

        var side = Project(new() { Name = argument, Commit = revision.Commit }, at, place, revision.Top, name + ":", revision.Files);
        if (side is null)
            revision.Files.Dispose();
        return side;
    }

    private bool IsOnDisk(string path) => context.Files.IsFile(context.Absolute(path)) || context.Files.IsFolder(context.Absolute(path));

    private static bool IsProject(CommandContext at, string folder) => at.Files.IsFile(Path.Combine(at.Absolute(folder), ProjectFile.FileName));

    private Side? OnDisk(string argument)
    {
        var records = RecordsOf(argument);
        return records.IsEmpty ? Project(new() { Name = argument }, context, context.Absolute(argument), context.Folder, "", null) : Records(argument, records);
    }

    /// <summary>The record files that are meant; none where specs are.</summary>
    private ImmutableArray<string> RecordsOf(string argument)
    {
        var full = context.Absolute(argument);
        if (Path.GetExtension(full) == ".json")
            return [full];
        var files = new List<string>();
        return context.Files.IsFolder(full) && !IsProject(context, argument) && IsOfRecords(full, files) ? [.. files] : [];
    }

    /// <summary>The records below a folder; false when it holds YAML, so that it is one of specs.</summary>
    private bool IsOfRecords(string folder, List<string> records)
    {
        foreach (var entry in context.Files.Entries(folder).OrderBy(static e => e.Name, StringComparer.Ordinal))
        {
            var path = Path.Combine(folder, entry.Name);
            if (entry.Name.StartsWith('.') || entry.IsLink)
                continue;
            if (entry.IsFolder ? !IsOfRecords(path, records) : Path.GetExtension(path) is ".yaml" or ".yml")
                return false;
            if (!entry.IsFolder && Path.GetExtension(path) == ".json")
                records.Add(path);
        }

        return true;
    }

    private RecordSide? Records(string argument, ImmutableArray<string> files)
    {
        List<ConformanceRecord> records = [];
        foreach (var file in files)
        {
            try
            {
                var bytes = context.Files.Read(file, MostBytes, out _);
                if (bytes is null)
                {
                    Problem(Shown(file), "The record has more than 256 MB.", "Compare the specs instead.");
                    return null;
                }

                records.AddRange(Read(Encoding.UTF8.GetString(bytes)));
            }
            catch (Exception bad) when (bad is FormatException or JsonException)
            {
                Problem(Shown(file), $"It is no record that this build reads: {bad.Message}", "Records are what `pawl check --format json` writes.");
                return null;
            }
            catch (Exception denied) when (denied is IOException or UnauthorizedAccessException)
            {
                Problem(Shown(file), denied.Message, "Check that it exists and that you may read it.");
                return null;
            }
        }

        var versions = string.Join(", ", records.Select(static r => r.Tool.Version).Distinct().Order(StringComparer.Ordinal));
        return new(new() { Name = argument, ToolVersion = versions }, records);
    }

    private static List<ConformanceRecord> Read(string text)
    {
        if (!text.AsSpan().TrimStart().StartsWith("["))
            return [ConformanceRecord.Read(text)];
        using var list = JsonDocument.Parse(text);
        return [.. list.RootElement.EnumerateArray().Select(static one => ConformanceRecord.Read(one.GetRawText()))];
    }

    private ProjectSide? Project(SideRecord record, CommandContext at, string? place, string top, string prefix, IDisposable? owned)
    {
        var named = place is not null && !(at.Files.IsFolder(place) && IsProject(at, place));
        if (place is not null && !named)
            at = at with { Folder = place };
        var check = new CheckRequest { Paths = named ? [place!] : [], AsOf = request.AsOf, NoReports = true };
        if (SettingsResolver.Resolve(check, at, out var project, out var usage) is not { } settings)
            return Usage(usage);
        if (settings.ProjectFile is null && !named)
        {
            // Without a project file every YAML file is a spec.
            check = check with { Paths = [top] };
            (named, place) = (true, top);
            if (SettingsResolver.Resolve(check, at, out project, out usage) is not { } whole)
                return Usage(usage);
            settings = whole;
        }

        // The file or folder may be new on the other side, or gone: then there is nothing, and that is an answer.
        var missing = named && !at.Files.IsFile(place!) && !at.Files.IsFolder(place!);
        var selection = missing ? new([], []) : SpecSelection.Of(settings, check, at);
        var rules = at.Engine.LoadRules(settings.Root.Value, settings.Rules.Value);
        Diagnostic[] wrong = [.. project.Diagnostics, .. rules.Diagnostics, .. selection.Problems];
        _problems.AddRange(project.Diagnostics.Concat(wrong.Where(static d => d.Severity == Severity.Error)).Distinct().Select(d => Prefixed(d, prefix)));
        if (rules.Rules is not { } inForce || wrong.Any(static d => d.Severity == Severity.Error))
            return null;

        var within = named ? SettingsResolver.RelativeTo(settings.Root.Value, place!) : "";
        return new(record, at, settings, inForce, selection.Specs.Select(static s => s.Display), within == "." ? "" : within, owned) { Prefix = prefix };
    }

    /// <summary>A complaint about what is not on the disk names its revision.</summary>
    internal static Diagnostic Prefixed(Diagnostic diagnostic, string prefix) =>
        prefix.Length == 0 ? diagnostic : diagnostic with { Span = diagnostic.Span with { File = prefix + diagnostic.Span.File } };

    private string Shown(string file) => SettingsResolver.RelativeTo(context.Folder, file);

    private ProjectSide? Usage(string? error)
    {
        UsageError = error;
        return null;
    }

    private Side? Problem(string place, string message, string hint)
    {
        _problems.Add(new(CliCodes.NotComparable, Severity.Error, new(place, default, default), message, hint));
        return null;
    }
}
