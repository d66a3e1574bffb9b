using System.Globalization;
using Pawl.Cli.Output;
using Pawl.Quantities;
using Pawl.Reports.Records;
using Pawl.Rules;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Cli.Checking;

/// <summary>Keeps account over a run of what the baseline lists and nothing fails for any more.</summary>
internal sealed class BaselineShrink(Baseline baseline, string root)
{
    // What two readings of the same percentage may differ by.
    private const double Rounding = 1e-9;

    private readonly Dictionary<string, (ImmutableArray<UnneededRecord> Unneeded, ImmutableDictionary<FindingName, double?> Margins)> _judged = new(StringComparer.Ordinal);

    /// <summary>Notes a spec that was judged.</summary>
    public void Note(SpecResult result) => _judged[result.Input.Display] = (result.Record?.Baseline?.Unneeded ?? [], result.Margins);

    /// <summary>A warning for each entry that is to be removed, or of which nobody knows, in the order of the file.</summary>
    public IEnumerable<Diagnostic> Warnings
    {
        get
        {
            foreach (var entry in baseline.File.Findings)
            {
                if (Unneeded(entry) is not var (reason, isGone))
                    continue;
                var what = $"{entry.Rule.Value} on {entry.Subject.Value} of {entry.Spec.Value}";
                yield return isGone
                    ? new(CliCodes.BaselineGone, Severity.Warning, entry.Span, $"The known finding {what} is gone: {reason}.", "Remove the entry, or run again with --prune.")
                    : new(CliCodes.BaselineOpen, Severity.Warning, entry.Span, $"Whether the known finding {what} is gone cannot be told: {reason}.", "State the inputs that it waits for.");
            }
        }
    }

    /// <summary>Writes the file without what is gone, and with the margins that were reached; false when there is nothing to change.</summary>
    /// <param name="said">What was done.</param>
    public bool Write(out string said)
    {
        List<KnownFinding> left = [];
        var (removed, tightened) = (0, 0);
        foreach (var entry in baseline.File.Findings)
        {
            if (Unneeded(entry) is (_, true))
            {
                removed++;
                continue;
            }

            var known = KnownFinding.Of(entry);
            if (Reached(entry) is { } margin && BaselineText.Percent(margin) is var better
                && Amount.TryParse(better, out var written, out _) && written.Coherent > entry.WorstMargin?.Value.Coherent + Rounding)
            {
                tightened++;
                known = known with { WorstMargin = better };
            }

            left.Add(known);
        }

        said = string.Create(
            CultureInfo.InvariantCulture,
            $"{Plain.Line(baseline.Path)}: {removed} {(removed == 1 ? "entry" : "entries")} removed, {tightened} tightened, {left.Count} left");
        if (removed + tightened == 0)
            return false;
        Files.Write(Path.Combine(root, baseline.Path), BaselineText.Of(BaselineSchema.From(root, baseline.Path), left));
        return true;
    }

    private double? Reached(KnownFindingSpec entry) =>
        _judged.TryGetValue(entry.Spec.Value, out var result) && result.Margins.TryGetValue(Baseline.NameOf(entry), out var margin) ? margin : null;

    /// <summary>Why nothing fails for an entry; null where something does, and where its spec was not judged in this run.</summary>
    private (string Reason, bool IsGone)? Unneeded(KnownFindingSpec entry)
    {
        if (!_judged.TryGetValue(entry.Spec.Value, out var result))
            return SettingsResolver.IsOutside(root, entry.Spec.Value) || !File.Exists(Path.Combine(root, entry.Spec.Value)) ? ("there is no such spec", true) : null;
        foreach (var unneeded in result.Unneeded)
        {
            if (unneeded.Rule == entry.Rule.Value && unneeded.Subject == entry.Subject.Value)
                return (unneeded.Reason, unneeded.IsGone);
        }

        return null;
    }
}

/// <summary>Where editors find the schema of a baseline.</summary>
internal static class BaselineSchema
{
    private const string Kept = "schema/baseline.schema.json";

    /// <summary>Its path from the file; null when the project keeps none.</summary>
    public static string? From(string root, string path) => !File.Exists(Path.Combine(root, Kept)) ? null
        : SettingsResolver.RelativeTo(Path.GetDirectoryName(Path.GetFullPath(path, root))!, Path.Combine(root, Kept));
}
