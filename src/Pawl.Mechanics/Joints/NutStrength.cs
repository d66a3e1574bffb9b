using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Joints;

/// <summary>How high a nut is.</summary>
public enum NutStyle
{
    /// <summary>About half a diameter; the thread strips before the bolt breaks.</summary>
    Thin,

    /// <summary>About 0.9 diameters.</summary>
    Regular,

    /// <summary>About one diameter.</summary>
    High,
}

/// <summary>What a nut of a property class stands.</summary>
/// <param name="Class"><c>8</c>, <c>10</c>, <c>05</c>.</param>
/// <param name="Style">How high it is.</param>
/// <param name="Proof">Stress under proof load, in the stress area of the bolt, MPa.</param>
/// <remarks>Source: ISO 898-2; table <c>iso898-2-nuts</c>. Valid for: coarse threads up to M39.</remarks>
public sealed record NutStrength(string Class, NutStyle Style, double Proof)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "iso898-2-nuts";

    private static ImmutableArray<(NutStrength Nut, double Over, double UpTo)> _rows;

    /// <summary>Proof load of a nut of a thread, N.</summary>
    /// <remarks><code>F = S_p·A_s</code> Source: ISO 898-2.</remarks>
    public double ProofLoad(ScrewThread thread) => Guard.Positive(Proof, "the proof stress", "MPa") * thread.StressArea;

    /// <summary>Whether a bolt of a property class may be loaded up to its yield in this nut.</summary>
    /// <remarks>
    /// <code>class of nut ≥ first number of the class of bolt; never a thin nut</code>
    /// Source: ISO 898-2, design of bolt and nut assemblies; a public reprint of DIN EN 20898-2.
    /// </remarks>
    /// <param name="boltClass">Property class of ISO 898-1, such as <c>10.9</c>.</param>
    public bool Carries(string boltClass) =>
        Style != NutStyle.Thin
        && double.TryParse(boltClass, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var bolt)
        && double.Parse(Class, CultureInfo.InvariantCulture) >= Math.Floor(bolt);

    /// <summary>The nut of a property class, a style and a thread, or the reason why there is none.</summary>
    public static bool TryFind(
        string propertyClass, NutStyle style, ScrewThread thread, [NotNullWhen(true)] out NutStrength? nut, [NotNullWhen(false)] out string? reason)
    {
        nut = null;
        if (thread.Designation.Contains('x') || thread.Form != ThreadForm.IsoMetric)
        {
            reason = $"the proof stresses of nuts are for metric coarse threads; {thread.Designation} is none: state the proof load of the nut";
            return false;
        }

        foreach (var (candidate, over, upTo) in _rows.IsDefault ? _rows = Read() : _rows)
        {
            var fits = thread.Diameter > over && thread.Diameter <= upTo;
            if (fits && candidate.Style == style && candidate.Class == propertyClass.Trim())
                nut = candidate;
        }

        reason = nut is null
            ? $"ISO 898-2 has no {style.ToString().ToLowerInvariant()} nut of class `{propertyClass}` for {thread.Designation}; "
                + "there are 5, 6, 8, 10 and 12, and the thin nuts 04 and 05"
            : null;
        return nut is not null;
    }

    private static ImmutableArray<(NutStrength Nut, double Over, double UpTo)> Read()
    {
        var read = ImmutableArray.CreateBuilder<(NutStrength Nut, double Over, double UpTo)>();
        var rows = StandardTable.Read(TableId).Rows();
        while (rows.NextRow())
        {
            var (name, style) = (rows.NextField().ToString(), (NutStyle)(int)rows.NextNumber());
            var (over, upTo) = (rows.NextNumber(), rows.NextNumber());
            read.Add((new NutStrength(name, style, rows.NextNumber()), over, upTo));
        }

        return read.ToImmutable();
    }
}
