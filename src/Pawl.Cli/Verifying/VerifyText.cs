using System.Globalization;
using Pawl.Cli.Output;
using Pawl.Reports;
using Pawl.Reports.Verifying;

namespace Pawl.Cli.Verifying;

/// <summary>What verification found, for people: what differs line by line, then one line for each record.</summary>
internal static class VerifyText
{
    private const int Shown = 20;

    public static void Write(TextWriter to, List<Verification> found, bool verbose)
    {
        foreach (var each in found)
            Write(to, each, verbose);
    }

    private static void Write(TextWriter to, Verification found, bool verbose)
    {
        var name = Plain.Line(found.Name);
        foreach (var file in found.Files)
        {
            if (verbose || file.State != FileState.AsRecorded)
                to.WriteLine($"{name}: {Word(file.State)} {Plain.Line(file.Path)}{Plain.Line(Details(file))}");
        }

        var differences = found.Comparison?.Differences ?? [];
        foreach (var difference in differences.Take(verbose ? differences.Length : Shown))
            to.WriteLine(Plain.Line($"{found.Name}: differs {difference.Path}: {difference.Is ?? "absent"}, recorded {difference.Was ?? "absent"}"));
        if (!verbose && differences.Length > Shown)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {differences.Length - Shown} more differ; --verbose lists them"));
        if (found.NotComputed is { } reason)
            to.WriteLine($"{name}: not computed again: {Plain.Line(reason)}");
        if (found.Files.Any(file => file.Path == found.Record.Identity.File && file.State == FileState.Missing))
            to.WriteLine($"{name}: the spec is missing; if this is another folder than that of the project, give it with --root");
        if (Other(found) is { } other)
            to.WriteLine($"{name}: {Plain.Line(other)}");
        to.WriteLine(Plain.Line($"{found.Name}: {Summary(found)}"));
    }

    /// <summary>Said when another build made the record, since that explains much; null otherwise.</summary>
    internal static string? Other(Verification found) =>
        found.Record.Tool == RecordBuilder.Tool ? null
            : $"made by {found.Record.Tool}; this is {RecordBuilder.Tool}, so what differs may come of the tool and not of the spec";

    internal static string Word(FileState state) => state switch
    {
        FileState.AsRecorded => "as recorded",
        FileState.Changed => "changed",
        FileState.Missing => "missing",
        FileState.Added => "added",
        _ => "not read",
    };

    private static string Details(RecordedFile file) => file.State switch
    {
        FileState.Changed => $": SHA-256 {file.Now}, recorded {file.Recorded}",
        FileState.Added => ": it is read now and was not then",
        FileState.AsRecorded => "",
        _ => $": {file.Reason}",
    };

    private static string Summary(Verification found)
    {
        var record = found.Record;
        var revision = record.Identity.Revision.Length == 0 ? "" : $" revision {record.Identity.Revision}";
        var parts = new List<string>();
        foreach (var state in (FileState[])[FileState.AsRecorded, FileState.Changed, FileState.Missing, FileState.NotRead, FileState.Added])
        {
            var count = found.Files.Count(file => file.State == state);
            if (count > 0)
                parts.Add(string.Create(CultureInfo.InvariantCulture, $"{count} {Word(state)}"));
        }

        var files = string.Create(CultureInfo.InvariantCulture, $"{found.Files.Length} files: {string.Join(", ", parts)}");
        var again = found.Comparison switch
        {
            null => "not computed again",
            { Differences.IsEmpty: true } same => string.Create(CultureInfo.InvariantCulture, $"computed again: all {same.Outcomes} outcomes and {same.Numbers} numbers are the same"),
            { } other => string.Create(CultureInfo.InvariantCulture, $"computed again: {other.Differences.Count(static d => d.Kind == DifferenceKind.Outcome)} outcomes, {other.Differences.Count(static d => d.Kind == DifferenceKind.Number)} numbers and {other.Differences.Count(static d => d.Kind == DifferenceKind.Other)} other entries differ"),
        };
        var day = record.AsOf.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return $"{record.Identity.Variant}{revision} as of {day}: {(found.IsAsRecorded ? "verified" : "not verified")}. {files}; {again}.";
    }
}
