using Pawl.Reports.Building;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs;
using Pawl.Specs.Files;

namespace Pawl.Reports.Verifying;

/// <summary>What became of a file since it was recorded.</summary>
public enum FileState
{
    AsRecorded,
    Changed,
    Missing,

    /// <summary>It cannot be read, or may not be: it lies outside the project, or came from standard input.</summary>
    NotRead,

    /// <summary>It is read now and was not then.</summary>
    Added,
}

/// <summary>A file of a record, and what it is now.</summary>
/// <param name="Path">From the project root; <c>shipped:</c> in front for those inside the tool.</param>
/// <param name="State">What became of it.</param>
/// <param name="Recorded">The hash in the record; null for one that was added.</param>
/// <param name="Now">The hash now; null when there is none.</param>
/// <param name="Reason">Why there is none.</param>
public sealed record RecordedFile(string Path, FileState State, string? Recorded, string? Now, string? Reason);

/// <summary>Holds the files of a record against those of today.</summary>
public static class RecordedFiles
{
    private const string Inside = "shipped:";

    /// <summary>Every file, pack, table and template of a record.</summary>
    /// <param name="record">The record.</param>
    /// <param name="root">The project root: nothing outside of it is read, whatever the record names.</param>
    public static ImmutableArray<RecordedFile> Of(ConformanceRecord record, string root)
    {
        ArgumentNullException.ThrowIfNull(record);
        return [.. Listed(record).Select(file => Held(file.Path, file.Hash, root))];
    }

    /// <summary>What a record of today read that the kept one did not.</summary>
    public static ImmutableArray<RecordedFile> Added(ConformanceRecord was, ConformanceRecord now)
    {
        ArgumentNullException.ThrowIfNull(was);
        ArgumentNullException.ThrowIfNull(now);
        var known = Listed(was).Select(static file => file.Path).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. Listed(now).Where(file => !known.Contains(file.Path))
                .Select(static file => new RecordedFile(file.Path, FileState.Added, null, file.Hash, null)),
        ];
    }

    private static IEnumerable<(string Path, string Hash)> Listed(ConformanceRecord record) =>
        record.Files.Concat(record.ShippedFiles).Select(static file => (file.Path, file.Sha256))
            .Concat(record.Packs.Select(static pack => (pack.Path, pack.Sha256)));

    private static RecordedFile Held(string path, string recorded, string root)
    {
        var (isMissing, reason) = (false, (string?)null);
        string? now = null;
        if (path == "-")
            reason = "it was read from standard input";
        else if (path.StartsWith(Inside, StringComparison.Ordinal))
            (now, isMissing, reason) = OfTool(path) is { } hash ? (hash, false, null) : ((string?)null, true, "this build has no such file");
        else
            now = FileHash.Of(root, path, out isMissing, out reason);

        var state = now is not null ? now == recorded ? FileState.AsRecorded : FileState.Changed
            : isMissing ? FileState.Missing
            : FileState.NotRead;
        return new(path, state, recorded, now, reason);
    }

    private static string? OfTool(string path)
    {
        if (SpecLoader.ShippedFile is var catalogue && catalogue.Path == path)
            return catalogue.Sha256;
        foreach (var pack in RulePacks.Shipped.Rules?.Packs ?? [])
        {
            if (pack.Path == path)
                return pack.Sha256;
        }

        return ShippedFiles.HashOf(path);
    }
}
