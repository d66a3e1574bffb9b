using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Joints;

/// <summary>What the steel of a bolt of a property class or a grade stands at least.</summary>
/// <param name="Name"><c>10.9</c> of ISO 898-1, or <c>grade 8</c> of SAE J429.</param>
/// <param name="Proof">Stress under proof load S_p, MPa.</param>
/// <param name="Yield">Yield or 0.2 % proof R_p, MPa.</param>
/// <param name="Tensile">Tensile strength R_m, MPa.</param>
/// <param name="MaxHardness">Greatest Vickers hardness of the core; none for SAE J429.</param>
/// <remarks>
/// Source: tables <c>iso898-1-bolts</c>, <c>sae-j429-bolts</c>.<br/>
/// Valid for: room temperature; ISO 898-1 lets them be used up to about 150 °C with some loss.
/// </remarks>
public sealed record BoltStrength(string Name, double Proof, double Yield, double Tensile, double? MaxHardness)
{
    /// <summary>The id of the table of property classes.</summary>
    public const string MetricTableId = "iso898-1-bolts";

    /// <summary>The id of the table of grades.</summary>
    public const string InchTableId = "sae-j429-bolts";

    private const double Inch = 25.4;

    // 1 lbf/in² = 0.45359237 kg · 9.80665 m/s² / (25.4 mm)², exactly.
    private const double Ksi = 1000 * 0.45359237 * 9.80665 / (Inch * Inch);

    private static ImmutableArray<Row> _rows;

    /// <summary>Proof load F_p of a thread, N.</summary>
    /// <remarks><code>F_p = S_p·A_s</code> Source: ISO 898-1.</remarks>
    public double ProofLoad(ScrewThread thread) => Guard.Positive(Proof, "the proof stress", "MPa") * thread.StressArea;

    /// <summary>The strength of a property class or grade at the size of a thread, or the reason why there is none.</summary>
    /// <remarks><c>8.8</c> of a metric thread; <c>grade 8</c>, <c>SAE 8</c> or <c>8</c> of an inch thread. Strengths go with its size.</remarks>
    public static bool TryFind(
        string name, ScrewThread thread, [NotNullWhen(true)] out BoltStrength? strength, [NotNullWhen(false)] out string? reason)
    {
        var metric = thread.Form == ThreadForm.IsoMetric;
        var expected = Plain(name);
        var known = Rows().Where(row => row.Metric == metric).ToArray();
        var named = known.Where(row => row.Name == expected).ToArray();

        // Where two ranges meet, the first holds.
        strength = named.FirstOrDefault(row => row.Holds(thread.Diameter))?.Strength;
        if (strength is not null)
        {
            reason = null;
            return true;
        }

        var (standard, what) = metric ? ("ISO 898-1", "property class") : ("SAE J429", "grade");
        reason = named.Length == 0
            ? $"{standard} has no {what} `{name}` for {thread.Designation}; there are "
                + $"{string.Join(", ", known.Select(row => row.Name).Distinct())}: state proof stress, yield and tensile strength instead"
            : FormattableString.Invariant($"{standard} has {what} {expected} from {named[0].Over:0.###} mm to ")
                + FormattableString.Invariant($"{named[^1].UpTo:0.###} mm; {thread.Designation} lies outside");
        return false;
    }

    private static string Plain(string name)
    {
        var plain = name.Trim();
        foreach (var word in (string[])["SAE", "J429", "grade", "class"])
        {
            if (plain.StartsWith(word, StringComparison.OrdinalIgnoreCase))
                plain = plain[word.Length..].TrimStart();
        }

        return plain;
    }

    // Two threads may both read it at first; they read the same.
    private static ImmutableArray<Row> Rows()
    {
        if (!_rows.IsDefault)
            return _rows;

        var read = ImmutableArray.CreateBuilder<Row>();
        var rows = StandardTable.Read(MetricTableId).Rows();
        while (rows.NextRow())
        {
            var name = rows.NextField().ToString();
            _ = rows.NextField();
            var (over, upTo) = (rows.NextNumber(), rows.NextNumber());
            var (proof, yield, tensile) = (rows.NextNumber(), rows.NextNumber(), rows.NextNumber());
            read.Add(new Row(name, true, over, upTo, new BoltStrength(name, proof, yield, tensile, rows.NextNumber())));
        }

        rows = StandardTable.Read(InchTableId).Rows();
        while (rows.NextRow())
        {
            var name = rows.NextField().ToString();
            var (over, upTo) = (rows.NextNumber() * Inch, rows.NextNumber() * Inch);
            var (proof, yield, tensile) = (rows.NextNumber() * Ksi, rows.NextNumber() * Ksi, rows.NextNumber() * Ksi);
            read.Add(new Row(name, false, over, upTo, new BoltStrength("grade " + name, proof, yield, tensile, null)));
        }

        return _rows = read.ToImmutable();
    }

    private sealed record Row(string Name, bool Metric, double Over, double UpTo, BoltStrength Strength)
    {
        public bool Holds(double diameter) => diameter >= Over - 1e-9 && diameter <= UpTo + 1e-9;
    }
}
