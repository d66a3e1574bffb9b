using System.Diagnostics.CodeAnalysis;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Pins;

/// <summary>A retaining ring and its groove.</summary>
/// <param name="Diameter">Diameter d₁ of shaft or bore, mm.</param>
/// <param name="Groove">Diameter d₂ of the groove, mm: below d₁ on a shaft, above it in a bore.</param>
/// <param name="GrooveWidth">Width m of the groove, mm.</param>
/// <param name="Thickness">Thickness s of the ring, mm.</param>
/// <param name="Load">Load F_R of the ring against a sharp edge, N; none when the supplier has to state it.</param>
/// <param name="Corner">Corner g that the load with a corner allows for, mm.</param>
/// <param name="CornerLoad">Load F_Rg against a part with that corner, N.</param>
/// <param name="DetachingSpeed">Speed at which a shaft ring lifts off its groove, rad/s.</param>
/// <remarks>Source: DIN 471, DIN 472; tables <c>din471-rings</c>, <c>din472-rings</c>. Loads are without safety.</remarks>
public sealed record RetainingRing(
    double Diameter, double Groove, double GrooveWidth, double Thickness,
    double? Load = null, double? Corner = null, double? CornerLoad = null, double? DetachingSpeed = null)
{
    /// <summary>The id of the table of rings for shafts.</summary>
    public const string ShaftTableId = "din471-rings";

    /// <summary>The id of the table of rings for bores.</summary>
    public const string BoreTableId = "din472-rings";

    /// <summary>Land over depth of the groove, n/t, that the loads of DIN 471 and DIN 472 presuppose.</summary>
    public const double MinEdgeRatio = 3;

    private const double Kilo = 1000;

    // The shoulder of a groove with the least land is that much weaker than its area.
    private const double ShoulderFactor = 1.2;

    private static ImmutableArray<RetainingRing> _shaft;
    private static ImmutableArray<RetainingRing> _bore;

    /// <summary>Rings for shafts, normal type.</summary>
    public static ImmutableArray<RetainingRing> OnShafts => _shaft.IsDefault ? _shaft = Read(ShaftTableId) : _shaft;

    /// <summary>Rings for bores, normal type.</summary>
    public static ImmutableArray<RetainingRing> InBores => _bore.IsDefault ? _bore = Read(BoreTableId) : _bore;

    /// <summary>Depth t of the groove, mm.</summary>
    public double GrooveDepth =>
        Math.Abs(Guard.Positive(Diameter, "the diameter of the ring", "mm") - Guard.Positive(Groove, "the diameter of the groove", "mm")) / 2;

    /// <summary>Play of the ring along the axis, mm, at nominal sizes.</summary>
    public double Play => Guard.Positive(GrooveWidth, "the width of the groove", "mm") - Guard.Positive(Thickness, "the thickness of the ring", "mm");

    /// <summary>The ring of a shaft, or the reason why there is none.</summary>
    public static bool TryFindShaft(double diameter, [NotNullWhen(true)] out RetainingRing? ring, [NotNullWhen(false)] out string? reason) =>
        TryFind(OnShafts, "DIN 471", "shaft", diameter, out ring, out reason);

    /// <summary>The ring of a bore, or the reason why there is none.</summary>
    public static bool TryFindBore(double diameter, [NotNullWhen(true)] out RetainingRing? ring, [NotNullWhen(false)] out string? reason) =>
        TryFind(InBores, "DIN 472", "bore", diameter, out ring, out reason);

    /// <summary>Land over depth of the groove, n/t, 1.</summary>
    /// <param name="land">Land n from the groove to the end of the shaft or the next groove, mm.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double EdgeRatio(double land) =>
        DynamicLoad.NotNegative(land, "the land beside the groove") / Guard.Positive(GrooveDepth, "the depth of the groove");

    /// <summary>Load F_N at which the shoulder of the groove yields, N.</summary>
    /// <param name="yield">Yield of shaft or housing, MPa.</param>
    /// <param name="land">Land n beside the groove, mm.</param>
    /// <remarks>
    /// <code>F_N = π/4·|d₁² − d₂²|·R_e/1.2</code>
    /// Source: DIN 471, DIN 472; the loads of their tables, for R_e = 200 MPa and n/t = 3, follow from it.<br/>
    /// Valid for: n/t ≥ 3. A wider land holds some more, which is not counted.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double GrooveLoad(double yield, double land) =>
        EdgeRatio(land) >= MinEdgeRatio - 1e-9
            ? Math.PI / 4 * Math.Abs(Diameter * Diameter - Groove * Groove) * Guard.Positive(yield, "the yield") / ShoulderFactor
            : throw Guard.Because(
                $"DIN 471 and DIN 472 have no load for a land below {MinEdgeRatio} depths of the groove; it has {EdgeRatio(land):0.##}");

    /// <summary>Load of the ring itself against a part with a corner, N.</summary>
    /// <param name="corner">Chamfer or radius of the part that leans on the ring, mm; zero for a sharp edge.</param>
    /// <remarks>
    /// <code>F_R for a sharp edge;  F_Rg·g/corner for more, and no more than F_R</code>
    /// Source: DIN 471, DIN 472, from memory: the ring dishes, and its load goes down with the lever.<br/>
    /// Valid for: loads that the table or the supplier states; corners up to 1.5·g, a choice of this tool.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double RingLoad(double corner)
    {
        if (Load is not { } sharp)
            throw Guard.Because($"the load of the ring of {Diameter:0.###} mm is not in the table: state what the supplier gives");
        Guard.Positive(sharp, "the load of the ring", "N");
        if (DynamicLoad.NotNegative(corner, "the corner") == 0)
            return sharp;
        if (Corner is not { } stated || CornerLoad is not { } load)
            throw Guard.Because($"the load of the ring of {Diameter:0.###} mm against a corner is not known: state what the supplier gives");
        Guard.Positive(load, "the load of the ring against a corner", "N");
        return corner <= 1.5 * Guard.Positive(stated, "the corner", "mm")
            ? Math.Min(sharp, load * stated / corner)
            : throw Guard.Because(
                $"the load of the ring is for corners up to {stated:0.###} mm, and half as much again; the part has {corner:0.###} mm: put a support washer between");
    }

    private static bool TryFind(
        ImmutableArray<RetainingRing> all, string standard, string what, double diameter, out RetainingRing? ring, out string? reason)
    {
        ring = all.FirstOrDefault(candidate => Math.Abs(candidate.Diameter - diameter) < 1e-6);
        reason = ring is null
            ? FormattableString.Invariant($"the table of {standard} has no ring for a {what} of {diameter:0.###} mm; it goes from {all[0].Diameter} mm to {all[^1].Diameter} mm: state ring and groove")
            : null;
        return ring is not null;
    }

    private static ImmutableArray<RetainingRing> Read(string id)
    {
        var read = ImmutableArray.CreateBuilder<RetainingRing>();
        foreach (var row in NumberTable.Read(id, 8))
        {
            var (load, corner, cornerLoad) = (Known(row[4], Kilo), Known(row[5], 1), Known(row[6], Kilo));
            read.Add(new RetainingRing(row[0], row[2], row[3], row[1], load, corner, cornerLoad, Known(row[7], Math.PI / 30)));
        }

        return read.ToImmutable();

        static double? Known(double number, double unit) => double.IsNaN(number) ? null : number * unit;
    }
}
