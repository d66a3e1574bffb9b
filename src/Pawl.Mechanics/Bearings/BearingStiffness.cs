namespace Pawl.Mechanics.Bearings;

/// <summary>How much a rolling bearing gives way under a radial load.</summary>
public static class BearingStiffness
{
    /// <summary>Approach of the rings of a ball bearing, mm.</summary>
    /// <param name="radial">Radial load F, N.</param>
    /// <param name="balls">All balls Z.</param>
    /// <param name="diameter">Diameter of a ball D, mm.</param>
    /// <param name="contactAngle">Contact angle α, rad.</param>
    /// <remarks>
    /// <code>Q = 5·F/(Z·cos α),  δ = 4.36·10⁻⁴·(Q²/D)^(1/3)/cos α</code>
    /// Source: Palmgren's formula for steel, as textbooks of rolling bearings give it; from memory.<br/>
    /// Valid for: steel balls and rings, small play (5 in place of 4.37 without any), seats that do not give way.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BallApproach(double radial, double balls, double diameter, double contactAngle = 0)
    {
        var load = Heaviest(radial, balls, contactAngle);
        return 4.36e-4 * Math.Cbrt(load * load / Guard.Positive(diameter, "the diameter of a ball")) / Math.Cos(contactAngle);
    }

    /// <summary>Approach of the rings of a roller bearing, mm.</summary>
    /// <param name="radial">Radial load F, N.</param>
    /// <param name="rollers">All rollers Z.</param>
    /// <param name="length">Effective length of a roller l, mm.</param>
    /// <param name="contactAngle">Contact angle α, rad.</param>
    /// <remarks>
    /// <code>Q = 5·F/(Z·cos α),  δ = 7.68·10⁻⁵·Q^0.9/(l^0.8·cos α)</code>
    /// Source: Palmgren's formula for steel, as textbooks of rolling bearings give it; from memory.<br/>
    /// Valid for: steel rollers and rings, small play (5 in place of 4.08 without any), seats that do not give way.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RollerApproach(double radial, double rollers, double length, double contactAngle = 0) =>
        7.68e-5 * Math.Pow(Heaviest(radial, rollers, contactAngle), 0.9)
        / (Math.Pow(Guard.Positive(length, "the length of a roller"), 0.8) * Math.Cos(contactAngle));

    /// <summary>Radial stiffness of a ball bearing under its load, N/mm.</summary>
    /// <remarks>
    /// <code>c = dF/dδ = 1.5·F/δ</code>
    /// Source: derivative of <see cref="BallApproach"/>, where F ~ δ^1.5.
    /// </remarks>
    /// <inheritdoc cref="BallApproach" path="/param"/>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OfBalls(double radial, double balls, double diameter, double contactAngle = 0) =>
        1.5 * radial / BallApproach(radial, balls, diameter, contactAngle);

    /// <summary>Radial stiffness of a roller bearing under its load, N/mm.</summary>
    /// <remarks>
    /// <code>c = dF/dδ = F/(0.9·δ)</code>
    /// Source: derivative of <see cref="RollerApproach"/>, where δ ~ F^0.9.
    /// </remarks>
    /// <inheritdoc cref="RollerApproach" path="/param"/>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OfRollers(double radial, double rollers, double length, double contactAngle = 0) =>
        radial / (0.9 * RollerApproach(radial, rollers, length, contactAngle));

    private static double Heaviest(double radial, double elements, double contactAngle)
    {
        Guard.Between(contactAngle, 0, 1.2, "the contact angle", "rad");
        return 5 * Guard.Positive(radial, "the radial load") / (Guard.AtLeast(elements, 1, "the number of rolling elements") * Math.Cos(contactAngle));
    }
}
