using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Pawl.Cli.Checking;
using Pawl.Reports;
using Pawl.Reports.Comparing;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Model;
using Pawl.Specs.Yaml;

namespace Pawl.Cli.Comparing;

/// <summary>Specs of a project, on the disk or in a revision, with the catalogues, adapters and house rules of that project.</summary>
internal sealed class ProjectSide : Side
{
    private const string Shipped = "shipped:";
    private readonly CommandContext _context;
    private readonly Settings _settings;
    private readonly RuleSet _rules;
    private readonly Func<SpecInput, SpecLoad> _load;
    private readonly SortedDictionary<string, string> _files = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, string> _hashes = new(StringComparer.Ordinal);
    private readonly IDisposable? _owned;

    /// <param name="record">How the outputs name it.</param>
    /// <param name="context">Where files are read from, and from which folder paths count.</param>
    /// <param name="settings">Of the project.</param>
    /// <param name="rules">In force there.</param>
    /// <param name="specs">The files, from the root.</param>
    /// <param name="within">The file or folder that was named, from the root; empty: the project.</param>
    /// <param name="owned">Disposed of with this.</param>
    public ProjectSide(SideRecord record, CommandContext context, Settings settings, RuleSet rules, IEnumerable<string> specs, string within, IDisposable? owned)
        : base(record)
    {
        (_context, _settings, _rules, _owned) = (context, settings, rules, owned);
        _load = context.Engine.OpenSpecs(settings.Root.Value, settings.Catalogue.Value, settings.Adapters.Value, false);
        foreach (var file in specs)
            _files[file == within ? "" : within.Length > 0 && file.StartsWith(within + "/", StringComparison.Ordinal) ? file[(within.Length + 1)..] : file] = file;
        Keys = [.. _files.Keys];
    }

    public override ImmutableArray<string> Keys { get; }

    public override string Ground
    {
        get
        {
            var text = new StringBuilder(Tool.Version);
            foreach (var pack in _rules.Packs)
                text.Append('\n').Append(pack.Path).Append(' ').Append(pack.Sha256);
            foreach (var section in _settings.RequiredSections)
                text.Append('\n').Append(section.Value);
            foreach (var file in _settings.Catalogue.Value.Concat(_settings.Adapters.Value))
                text.Append('\n').Append(file);
            return text.ToString();
        }
    }

    public override Opened Open(string key)
    {
        var file = _files[key];
        var loaded = _load(new(file, null, Named: key.Length == 0));
        return new(
            file, loaded.Spec is { Gearbox: var box } ? (box.Family.Value, box.Variant.Value) : null, loaded.IsBase, loaded.FilesRead,
            loaded.Spec is { } spec ? () => Judge(spec) : null, loaded.Diagnostics);
    }

    public override bool HasSame(string key, ImmutableArray<FileRead> other, string otherFile)
    {
        foreach (var read in other)
        {
            if (read.Path.StartsWith(Shipped, StringComparison.Ordinal))
                continue;
            if (Here(read.Path, _files[key], otherFile) is not { } path || Hash(path) != read.Sha256)
                return false;
        }

        return other.Length > 0;
    }

    public override void Dispose()
    {
        _owned?.Dispose();
        base.Dispose();
    }

    /// <summary>Where this side reads what the other reads from a path; null where that cannot be told.</summary>
    private string? Here(string path, string file, string otherFile)
    {
        if (file == otherFile || _settings.Catalogue.Value.Contains(path) || _settings.Adapters.Value.Contains(path))
            return path;
        if (path == otherFile)
            return file;

        // Beside or below the spec there is beside or below the spec here.
        var (folder, other) = (FolderOf(file), FolderOf(otherFile));
        return other.Length > 0 && path.StartsWith(other, StringComparison.Ordinal) ? folder + path[other.Length..] : null;
    }

    private static string FolderOf(string file) => file[..(file.LastIndexOf('/') + 1)];

    private string Hash(string path) => _hashes.GetOrAdd(path, static (at, side) =>
    {
        try
        {
            var bytes = side._context.Files.Read(Path.GetFullPath(at, side._settings.Root.Value), YamlReader.MostBytes, out _);
            return bytes is null ? "" : Convert.ToHexStringLower(SHA256.HashData(bytes));
        }
        catch (Exception missing) when (missing is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }, this);

    private ConformanceRecord Judge(GearboxSpec spec)
    {
        var analysis = _context.Engine.Analyse(spec with { RequiredSections = spec.RequiredSections.AddRange(_settings.RequiredSections) });
        return RecordBuilder.Build(_context.Engine.Judge(analysis, _rules, _settings.AsOf.Value));
    }
}

/// <summary>Records that an earlier run wrote.</summary>
internal sealed class RecordSide : Side
{
    private readonly SortedDictionary<string, ConformanceRecord> _records = new(StringComparer.Ordinal);

    public RecordSide(SideRecord record, IEnumerable<ConformanceRecord> records)
        : base(record)
    {
        foreach (var one in records)
            _records[one.Identity.File] = one;
        Keys = [.. _records.Keys];
    }

    public override ImmutableArray<string> Keys { get; }

    // A record was judged on a day of its own, perhaps by another version: what it rests on is compared by its number.
    public override string Ground => "records";

    public override Opened Open(string key)
    {
        var record = _records[key];
        return new(
            record.Identity.File, (record.Identity.Family, record.Identity.Variant), IsBase: false,
            [new("record:", record.Id)], () => record, []);
    }

    public override bool HasSame(string key, ImmutableArray<FileRead> other, string otherFile) =>
        other is [{ Path: "record:" } only] && only.Sha256 == _records[key].Id;
}
