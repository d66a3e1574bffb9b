using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Joints;

/// <summary>The threads that ship inside the tool.</summary>
/// <remarks>Source: ISO 261 and ASME B1.1; tables <c>iso261-metric-threads</c>, <c>asme-b1-1-threads</c>.</remarks>
public static class ThreadTable
{
    /// <summary>The id of the table of metric threads.</summary>
    public const string MetricTableId = "iso261-metric-threads";

    /// <summary>The id of the table of inch threads.</summary>
    public const string UnifiedTableId = "asme-b1-1-threads";

    private const double Inch = 25.4;

    private static ImmutableArray<ScrewThread> _all;

    /// <summary>All threads: metric ones by diameter, coarse before fine; then inch ones.</summary>
    public static ImmutableArray<ScrewThread> All => _all.IsDefault ? _all = Read() : _all;

    /// <summary>The thread of a designation, or the reason why there is none.</summary>
    /// <remarks>
    /// Metric: <c>M8</c> is coarse, <c>M8x1</c> or <c>M8×1</c> states the pitch. Inch: <c>1/2-20 UNF</c>; the series may be left
    /// out; <c>#10-24</c> or <c>10-24</c>.
    /// </remarks>
    public static bool TryFind(string designation, [NotNullWhen(true)] out ScrewThread? thread, [NotNullWhen(false)] out string? reason)
    {
        var expected = Plain(designation);
        foreach (var candidate in All)
        {
            var known = Plain(candidate.Designation);
            if (expected == known || expected == Short(known) || "#" + expected == known || "#" + expected == Short(known)
                || expected == Plain(Long(candidate)))
            {
                (thread, reason) = (candidate, null);
                return true;
            }
        }

        thread = null;
        reason = $"the tables have no thread `{designation}`; {Near(expected)}";
        return false;
    }

    // Spaces, signs of multiplication and letter case make no difference.
    private static string Plain(string text) =>
        string.Concat(text.Where(letter => !char.IsWhiteSpace(letter))).Replace('×', 'x').Replace('–', '-').ToUpperInvariant();

    private static string Long(ScrewThread thread) =>
        thread.Form == ThreadForm.IsoMetric ? Metric(thread.Diameter, thread.Pitch) : thread.Designation;

    private static string Short(string plain) =>
        plain.IndexOf("UN", StringComparison.Ordinal) is > 0 and var series ? plain[..series] : plain;

    private static string Metric(double diameter, double? pitch) =>
        pitch is { } given ? FormattableString.Invariant($"M{diameter}x{given}") : FormattableString.Invariant($"M{diameter}");

    // The other threads of the same diameter help most.
    private static string Near(string expected)
    {
        var end = expected.StartsWith('M') ? expected.IndexOf('X') : expected.LastIndexOf('-');
        var size = end > 0 ? expected[..end] : expected;
        var mark = expected.StartsWith('M') ? 'X' : '-';
        var near = All.Select(thread => thread.Designation)
            .Where(name => Plain(name) == size || Plain(name).StartsWith(size + mark, StringComparison.Ordinal))
            .Where(name => expected.StartsWith('M') || Plain(name).LastIndexOf('-') == size.Length)
            .ToArray();
        return near.Length > 0 && size.Length > 0
            ? $"of this diameter they have {string.Join(", ", near)}"
            : "they have M3 to M60 and #6 to 1-1/2 in, written as `M8`, `M8x1` or `1/2-20 UNF`";
    }

    private static ImmutableArray<ScrewThread> Read()
    {
        var all = ImmutableArray.CreateBuilder<ScrewThread>(128);
        var rows = StandardTable.Read(MetricTableId).Rows();
        while (rows.NextRow())
        {
            var (diameter, pitch) = (rows.NextNumber(), rows.NextNumber());
            all.Add(new ScrewThread(Metric(diameter, rows.NextField() is "coarse" ? null : pitch), ThreadForm.IsoMetric, diameter, pitch));
        }

        rows = StandardTable.Read(UnifiedTableId).Rows();
        while (rows.NextRow())
        {
            // A row must not begin with #.
            var size = rows.NextField().ToString().Replace("No. ", "#", StringComparison.Ordinal);
            var (diameter, count) = (rows.NextNumber(), rows.NextNumber());
            var name = FormattableString.Invariant($"{size}-{count} ");
            all.Add(new ScrewThread(name + rows.NextField().ToString(), ThreadForm.Unified, diameter * Inch, Inch / count));
        }

        return all.ToImmutable();
    }
}
