using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Shafts;

/// <summary>A length of a shaft with one section.</summary>
/// <param name="Length">Length l, mm.</param>
/// <param name="Section">Its section.</param>
public sealed record ShaftSegment(double Length, ShaftSection Section);

/// <summary>Twist of a stepped shaft.</summary>
public static class ShaftTwist
{
    /// <summary>Modulus of rigidity of an isotropic material, MPa.</summary>
    /// <remarks>
    /// <code>G = E/(2·(1 + ν))</code>
    /// Source: elasticity.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Rigidity(double modulus, double poisson) =>
        Guard.Positive(modulus, "the modulus of elasticity")
        / (2 * (1 + Poisson(poisson)));

    private static double Poisson(double ratio) =>
        ratio > -1 && ratio <= 0.5
            ? ratio
            : throw Guard.Because($"Poisson's ratio must lie above −1 and up to 0.5; it is {ratio:0.###}");

    /// <summary>Wind-up of segments in a row, rad per N·mm.</summary>
    /// <remarks>
    /// <code>δ = Σ 32·l/(π·G·(d⁴ − d_i⁴))</code>
    /// Symbols: l length, d outside, d_i bore, mm; G modulus of rigidity, MPa.<br/>
    /// Source: torsion of round bars, segments in series.<br/>
    /// Valid for: shoulders as ideal steps, which makes the shaft a little too stiff.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Compliance(IReadOnlyList<ShaftSegment> segments, double rigidity)
    {
        Guard.Positive(rigidity, "the modulus of rigidity");
        var sum = 0.0;
        foreach (var segment in segments)
            sum += DynamicLoad.NotNegative(segment.Length, "the length of a segment") / (rigidity * 2 * segment.Section.SecondMoment);
        return Guard.Finite(sum, "the wind-up");
    }

    /// <summary>Angle of twist, rad.</summary>
    /// <remarks>
    /// <code>φ = T·δ</code>
    /// Symbols: T torque, N·mm.<br/>
    /// Source: as <see cref="Compliance"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Angle(IReadOnlyList<ShaftSegment> segments, double rigidity, double torque) =>
        Guard.Finite(torque, "the torque") * Compliance(segments, rigidity);

    /// <summary>Torsional stiffness, N·mm/rad.</summary>
    /// <remarks>
    /// <code>k = |T/φ|</code>
    /// Symbols: T torque, N·mm; φ twist under it, rad.<br/>
    /// Source: definition.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Stiffness(double torque, double twist) =>
        Guard.Positive(Math.Abs(Guard.NotZero(torque, "the torque") / Guard.NotZero(twist, "the twist")), "the torsional stiffness");
}
