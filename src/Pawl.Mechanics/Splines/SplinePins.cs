using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Splines;

/// <summary>Dimension over pins (external) and between pins (internal) of a spline.</summary>
public static class SplinePins
{
    /// <summary>Dimension over two pins of an external spline M_RE, mm.</summary>
    /// <param name="spline">The spline.</param>
    /// <param name="thickness">Tooth thickness S at the pitch circle, mm, actual.</param>
    /// <param name="pin">Diameter of the pins D_RE, mm.</param>
    /// <remarks>
    /// <code>inv α_e = S/D + inv α + D_RE/D_b − π/z;  M = D_b/cos α_e + D_RE, odd z: D_b·cos(90°/z)/cos α_e + D_RE</code>
    /// Symbols: D pitch, D_b base diameter, mm; z teeth.<br/>
    /// Source: ISO 4156-3, ANSI B92.1; geometry of the involute.<br/>
    /// Valid for: pins that touch both flanks.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Over(InvoluteSpline spline, double thickness, double pin) =>
        spline.BaseDiameter / Math.Cos(ExternalAngle(spline, thickness, pin)) * Across(spline.Teeth) + pin;

    /// <summary>Dimension between two pins of an internal spline M_RI, mm.</summary>
    /// <param name="spline">The spline.</param>
    /// <param name="space">Space width E at the pitch circle, mm, actual.</param>
    /// <param name="pin">Diameter of the pins D_RI, mm.</param>
    /// <remarks>
    /// <code>inv α_i = E/D + inv α − D_RI/D_b;  M = D_b/cos α_i − D_RI, odd z: D_b·cos(90°/z)/cos α_i − D_RI</code>
    /// Source, valid for: as <see cref="Over"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Between(InvoluteSpline spline, double space, double pin) =>
        spline.BaseDiameter / Math.Cos(InternalAngle(spline, space, pin)) * Across(spline.Teeth) - pin;

    private static double ExternalAngle(InvoluteSpline spline, double thickness, double pin) => Angle(
        Guard.Positive(thickness, "the tooth thickness") / spline.PitchDiameter + Involute.Of(spline.PressureAngle)
            + Guard.Positive(pin, "the diameter of the pins") / spline.BaseDiameter - Math.PI / spline.Teeth,
        $"no dimension over pins: pins of {pin:0.####} mm drop to the bottom of the space");

    private static double InternalAngle(InvoluteSpline spline, double space, double pin) => Angle(
        Guard.Positive(space, "the space width") / spline.PitchDiameter + Involute.Of(spline.PressureAngle)
            - Guard.Positive(pin, "the diameter of the pins") / spline.BaseDiameter,
        $"no dimension between pins: pins of {pin:0.####} mm are too large for the space");

    private static double Angle(double involute, FormattableString reason) =>
        Involute.TryInverse(involute, out var angle) ? angle : throw Guard.Because(reason);

    private static double Contact(InvoluteSpline spline, double tangent) => tangent >= 0
        ? spline.BaseDiameter * Math.Sqrt(1 + tangent * tangent)
        : throw Guard.Because($"no contact: the pins would touch below the base circle");

    private static double Across(int teeth) => teeth % 2 == 0 ? 1 : Math.Cos(Math.PI / (2.0 * teeth));
}
