using Pawl.Mechanics.Tables;
namespace Pawl.Mechanics.Keys;

/// <summary>Section of a parallel key and its keyways for a diameter of shaft.</summary>
/// <param name="Above">Diameters above this, mm.</param>
/// <param name="UpTo">Up to and with this, mm.</param>
/// <param name="Width">Width b, mm.</param>
/// <param name="Height">Height h, mm; class h11, of a square key h9.</param>
/// <param name="ShaftDepth">Depth t_1 of the keyway in the shaft, mm.</param>
/// <param name="HubDepth">Depth t_2 of the keyway in the hub, mm.</param>
/// <param name="DepthDeviation">Upper deviation of both depths, mm; the lower is zero.</param>
/// <param name="MaxChamfer">Maximum chamfer of the edges of the key, mm.</param>
/// <remarks>Source: DIN 6885-1; table <c>din6885-1-keys</c>.</remarks>
public sealed record ParallelKey(
    double Above, double UpTo, double Width, double Height, double ShaftDepth, double HubDepth, double DepthDeviation, double MaxChamfer)
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "din6885-1-keys";

    /// <summary>Length over diameter beyond which a key bears no more.</summary>
    public const double MaxLengthRatio = 1.3;

    private static ImmutableArray<ParallelKey> _all;

    /// <summary>All sections, by rising diameter.</summary>
    public static ImmutableArray<ParallelKey> All => _all.IsDefault ? _all = Read() : _all;

    /// <summary>The section for a shaft of this diameter, mm.</summary>
    /// <exception cref="OutsideValidityException">The table has none.</exception>
    public static ParallelKey For(double diameter)
    {
        Guard.Positive(diameter, "the diameter of the shaft", "mm");
        foreach (var key in All)
        {
            if (diameter > key.Above && diameter <= key.UpTo)
                return key;
        }

        throw Guard.Because(
            $"the table of DIN 6885-1 has no key for a shaft of {diameter:0.###} mm; it goes from {All[0].Above} mm to {All[^1].UpTo} mm: state width, height and shaft_depth");
    }

    /// <summary>Length that bears, mm: the flat part of the flank, and no more than 1.3 diameters.</summary>
    /// <param name="length">Length of the key, mm.</param>
    /// <param name="width">Width b, mm.</param>
    /// <param name="roundEnds">How many of its ends are round, 0 to 2.</param>
    /// <param name="diameter">Diameter d of the shaft, mm.</param>
    /// <remarks>
    /// <code>l_tr = min(l − n_r·b/2, 1.3·d)</code>
    /// Source: DIN 6885-1 (forms A, B, C); DIN 6892, from memory: beyond 1.3·d the far end hardly bears.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity, or nothing is left of the flank.</exception>
    public static double BearingLength(double length, double width, int roundEnds, double diameter)
    {
        var flat = Guard.Positive(length, "the length of the key", "mm")
            - Guard.Between(roundEnds, 0, 2, "the number of round ends") * Guard.Positive(width, "the width of the key", "mm") / 2;
        return Math.Min(Guard.Positive(flat, "the flat length of the key", "mm"), MaxLengthRatio * Guard.Positive(diameter, "the diameter of the shaft", "mm"));
    }

    /// <summary>Keys that may be counted on: one, or three quarters of two.</summary>
    /// <remarks>Source: DIN 6892, method C, from memory: φ = 0.75 for two keys, for they never bear alike.</remarks>
    /// <exception cref="OutsideValidityException">There are neither one nor two.</exception>
    public static double Effective(int count) => Guard.Between(count, 1, 2, "the number of keys") == 1 ? 1 : 1.5;

    /// <summary>Force on all keys, N: F = 2·T/d.</summary>
    /// <param name="torque">Torque T, N·mm.</param>
    /// <param name="diameter">Diameter d of the shaft, mm.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Force(double torque, double diameter) =>
        2 * Guard.NotNegative(torque, "the torque", "N·mm") / Guard.Positive(diameter, "the diameter of the shaft", "mm");

    /// <summary>Mean stress on an area that the keys share, MPa: flank (length × height in contact) or shear plane (length × width).</summary>
    /// <param name="force">Force on all keys, N.</param>
    /// <param name="length">Length that bears, mm.</param>
    /// <param name="across">Height in contact or width, mm.</param>
    /// <param name="effective">Keys that may be counted on.</param>
    /// <remarks>
    /// <code>p = F/(l_tr·h_tr·n_e),  τ = F/(l_tr·b·n_e)</code>
    /// Source: statics; DIN 6892, method C.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Stress(double force, double length, double across, double effective) =>
        Guard.NotNegative(force, "the force on the keys", "N")
        / (Guard.Positive(length, "the length that bears", "mm") * Guard.Positive(across, "the height that bears", "mm")
            * Guard.Positive(effective, "the number of keys that count"));

    /// <summary>Wall of the hub over its keyway, mm; zero or less: the keyway breaks through.</summary>
    /// <param name="outside">Outside diameter D of the hub, mm.</param>
    /// <param name="diameter">Diameter d of the shaft, mm.</param>
    /// <param name="depth">Depth t_2 of the keyway in the hub, mm.</param>
    /// <remarks><code>s = (D − d)/2 − t_2</code> Source: geometry; the corners of the keyway lie a little nearer to the axis.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double HubWall(double outside, double diameter, double depth) =>
        (Guard.Positive(outside, "the outside diameter of the hub", "mm") - Guard.Positive(diameter, "the diameter of the shaft", "mm")) / 2
        - Guard.Positive(depth, "the depth of the keyway in the hub", "mm");

    /// <summary>Torsional shear stress of the hub, MPa, the ring beyond the bottom of its keyway taken alone.</summary>
    /// <param name="torque">Torque T, N·mm.</param>
    /// <param name="outside">Outside diameter D of the hub, mm.</param>
    /// <param name="diameter">Diameter d of the shaft, mm.</param>
    /// <param name="depth">Depth t_2 of the keyway in the hub, mm.</param>
    /// <remarks>
    /// <code>τ = 16·T·D/(π·(D⁴ − (d + 2·t_2)⁴))</code>
    /// Source: torsion of a tube, as if the keyway ran all round: cautious in the area, silent about the notch at its corners.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity, or nothing is left of the hub.</exception>
    public static double HubShear(double torque, double outside, double diameter, double depth)
    {
        Guard.Positive(HubWall(outside, diameter, depth), "the wall of the hub over its keyway", "mm");
        return 16 * Guard.NotNegative(torque, "the torque", "N·mm") * outside
            / (Math.PI * (Math.Pow(outside, 4) - Math.Pow(diameter + 2 * depth, 4)));
    }

    private static ImmutableArray<ParallelKey> Read() =>
        [.. NumberTable.Read(TableId, 8).Select(static row => new ParallelKey(row[0], row[1], row[2], row[3], row[4], row[5], row[6], row[7]))];
}
