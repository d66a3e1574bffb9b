using System.CommandLine;
using System.Text.Json;
using Pawl.Cli.Checking;
using Pawl.Cli.Commands;
using Pawl.Cli.Output;
using Pawl.Reports;
using Pawl.Reports.Records;
using Pawl.Reports.Verifying;
using Pawl.Specs.Files;
using Pawl.Specs.Text;

namespace Pawl.Cli.Verifying;

/// <summary>One run of <c>pawl verify</c>: whether records still describe their files, and whether computing again gives the same.</summary>
internal sealed class VerifyRun
{
    /// <summary>Longest record that is read.</summary>
    internal const int MostBytes = 256 * 1024 * 1024;

    private readonly CommandContext _context;
    private readonly Command _command;
    private readonly VerifyRequest _request;
    private readonly List<Verification> _done = [];
    private int _code;

    private VerifyRun(CommandContext context, Command command, VerifyRequest request) => (_context, _command, _request) = (context, command, request);

    public static int Start(CommandContext context, Command command, VerifyRequest request)
    {
        if (request is { Signature: not null, Key: null })
            return Usage.Report(context, command, "--signature needs --key: the public key of whoever signed.");
        if (request is { Key: not null, Records.Length: > 1, Signature: not null })
            return Usage.Report(context, command, "--signature is of one record. Name one, or put each signature beside its record as RECORD.sig.");
        if (request.Root is { } root && !Directory.Exists(context.Absolute(root)))
            return Usage.Report(context, command, $"--root is no folder: {root}");
        return new VerifyRun(context, command, request).Go();
    }

    private int Go()
    {
        foreach (var path in _request.Records)
        {
            _context.Cancelled.ThrowIfCancellationRequested();
            if (Bytes(path, MostBytes) is not { } bytes)
                continue;
            if (_request.Key is { } key && !IsSigned(path, bytes, key))
                continue;
            foreach (var record in Records(path, bytes))
            {
                var found = Verify(path, record);
                _done.Add(found);
                _code = Math.Max(_code, found.Code);
            }
        }

        if (_request.Json)
            VerifyJson.Write(_context.Out, _done);
        else
            VerifyText.Write(_context.Out, _done, _request.Verbose);
        return _code;
    }

    private bool IsSigned(string path, byte[] content, string keyPath)
    {
        var signaturePath = _request.Signature ?? path + Signatures.Ending;
        if (Bytes(keyPath, MostBytes) is not { } key || Bytes(signaturePath, MostBytes) is not { } signature)
            return false;
        switch (Signatures.Verify(content, signature, key, out var problem))
        {
            case null:
                Complain(CliCodes.BadKey, keyPath, $"This is no key to verify with: {problem}.", "Give the public key as PEM, on the curve P-256.");
                return false;
            case false:
                _context.Error.WriteLine($"{Plain.Line(path)}: error {CliCodes.BadSignature}: The signature {Plain.Line(signaturePath)} is not of this record by this key.");
                _code = Math.Max(_code, ExitCode.Findings);
                return false;
            default:
                if (!_request.Json)
                    _context.Out.WriteLine($"{Plain.Line(path)}: the signature is valid");
                return true;
        }
    }

    private List<ConformanceRecord> Records(string path, byte[] bytes)
    {
        List<ConformanceRecord> records = [];
        try
        {
            using var document = JsonDocument.Parse(bytes);
            JsonElement[] items = document.RootElement.ValueKind == JsonValueKind.Array ? [.. document.RootElement.EnumerateArray()] : [document.RootElement];
            if (items.Length == 0)
                Complain(CliCodes.NoRecord, path, "The list holds no record.", null);
            foreach (var item in items)
            {
                try
                {
                    records.Add(ConformanceRecord.Read(item.GetRawText()));
                }
                catch (FormatException wrong)
                {
                    Complain(CliCodes.NoRecord, path, wrong.Message, ByAnother(item));
                }
            }
        }
        catch (JsonException wrong)
        {
            Complain(CliCodes.NoRecord, path, $"The text is no JSON: {wrong.Message}", "Name a record that `pawl check --format json` wrote.");
        }

        return records;
    }

    // What another version wrote may have other keys: then the version says more than the key.
    private static string ByAnother(JsonElement item) =>
        item.ValueKind == JsonValueKind.Object && item.TryGetProperty("tool", out var tool) && tool.ValueKind == JsonValueKind.Object
            && tool.TryGetProperty("version", out var version) && version.ValueKind == JsonValueKind.String && version.GetString() != RecordBuilder.Tool.Version
            ? $"It was made by version {version.GetString()} of the tool; this is {RecordBuilder.Tool.Version}. Verify it with that version."
            : "Name a record that `pawl check --format json` wrote.";

    private Verification Verify(string path, ConformanceRecord record)
    {
        var settings = Settings(path, record, out var reason);
        var root = settings?.Root.Value ?? _context.Folder;
        var files = RecordedFiles.Of(record, root);
        var found = new Verification { Name = path, Record = record, Files = files };
        if (settings is null)
            return found with { NotComputed = reason };
        return Again(record, settings, out reason) is not { } now ? found with { NotComputed = reason } : found with
        {
            Files = files.AddRange(RecordedFiles.Added(record, now)),
            Comparison = RecordComparison.Of(record, now, ofSameFiles: found.FilesAreAsRecorded),
        };
    }

    private Settings? Settings(string path, ConformanceRecord record, out string? reason)
    {
        var root = _request.Root;
        if (root is null && _context.Engine.FindProject(_context.Folder, null).File is null
            && _context.Engine.FindProject(Path.GetDirectoryName(_context.Absolute(path))!, null) is { File: not null } beside)
        {
            root = beside.Root;
        }

        var request = new CheckRequest { Root = root, AsOf = record.AsOf.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), NoReports = true };
        var settings = SettingsResolver.Resolve(request, _context, out var project, out reason);
        if (settings is null)
            return null;
        if (project.Diagnostics.FirstOrDefault(static d => d.Severity == Severity.Error) is { } wrong)
        {
            reason = wrong.ToString();
            return null;
        }

        return settings with
        {
            Rules = new([.. settings.Rules.Value, .. HouseFolders(record)], "the record"),
            Baseline = new(record.Baseline?.Path, "the record"),
        };
    }

    // Packs that were named by --rules stand in no file; the loader reads a pack that two folders name once.
    private static IEnumerable<string> HouseFolders(ConformanceRecord record) =>
        record.Packs.Where(static pack => !pack.Path.StartsWith("shipped:", StringComparison.Ordinal))
            .Select(static pack => Path.GetDirectoryName(pack.Path) is { Length: > 0 } folder ? folder.Replace('\\', '/') : ".").Distinct();

    private ConformanceRecord? Again(ConformanceRecord record, Settings settings, out string? reason)
    {
        reason = null;
        var engine = _context.Engine;
        if (record.Identity.File == "-")
        {
            reason = "the spec was read from standard input";
            return null;
        }

        var load = engine.LoadRules(settings.Root.Value, settings.Rules.Value);
        if (load.Rules is not { } rules || load.Diagnostics.Any(static d => d.Severity == Severity.Error))
        {
            reason = First(load.Diagnostics);
            return null;
        }

        var bench = new Workbench(engine, settings);
        if (bench.Diagnostics.Any(static d => d.Severity == Severity.Error))
        {
            reason = First(bench.Diagnostics);
            return null;
        }

        var computed = bench.Compute(new(record.Identity.File, null, Named: true));
        if (computed.Analysis is not { } analysis)
        {
            reason = computed.Loaded.IsBase ? "the file names no variant any more" : First(computed.Loaded.Diagnostics);
            return null;
        }

        return RecordBuilder.Build(bench.Judge(analysis, rules, record.AsOf));
    }

    private static string First(ImmutableArray<Diagnostic> diagnostics) =>
        diagnostics.FirstOrDefault(static d => d.Severity == Severity.Error) is { } error ? $"{error.Span}: {error.Message}" : "the spec cannot be read";

    private byte[]? Bytes(string path, int most)
    {
        var reason = "there is no such file";
        try
        {
            var full = _context.Absolute(path);
            if (File.Exists(full))
            {
                if (WholeFile.Read(full, most, out _) is { Length: > 0 } content)
                    return content;
                reason = "it is empty, or longer than any record";
            }
            else if (Directory.Exists(full))
            {
                reason = "it is a folder";
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            reason = problem.Message.TrimEnd('.');
        }

        Complain(CliCodes.CannotRead, path, $"It cannot be read: {reason}.", null);
        return null;
    }

    private void Complain(string code, string path, string message, string? hint)
    {
        DiagnosticWriter.Write(_context.Error, new(code, Severity.Error, SourceSpan.Whole(path), message, hint));
        _code = ExitCode.NotJudged;
    }
}
