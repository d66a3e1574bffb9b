namespace Pawl.Mechanics.Lubrication;

/// <summary>Oil that turns with a carrier.</summary>
public static class RotatingOil
{
    /// <summary>Standard acceleration of free fall, mm/s². Source: ISO 80000-3.</summary>
    public const double FreeFall = 9806.65;

    /// <summary>Centrifugal acceleration at a radius, in multiples of the acceleration of free fall.</summary>
    /// <remarks>
    /// <code>a/g = ω² · r / g</code>
    /// Symbols: ω speed, rad/s; r radius, mm; g = 9806.65 mm/s².<br/>
    /// Source: circular motion, as in textbooks of mechanics.<br/>
    /// Valid for: steady turning.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double AccelerationOverFreeFall(double speed, double radius) =>
        Guard.Finite(Square(Guard.Number(speed, "the speed of the carrier", "rad/s")) * Guard.NotNegative(radius, "the radius", "mm") / FreeFall, "the acceleration");

    /// <summary>Pressure that a full passage in a turning part gains from one radius to another, MPa; negative towards the axis.</summary>
    /// <remarks>
    /// <code>Δp = ρ · ω² · (r₂² − r₁²) / 2</code>
    /// Symbols: ρ density, t/mm³; ω speed, rad/s; r₁ radius where the oil enters, r₂ where it leaves, mm.<br/>
    /// Source: liquid in rigid rotation, as in textbooks of fluid mechanics.<br/>
    /// Valid for: a passage full of oil that turns with the part; friction in the passage is left out.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double PressureGain(double density, double speed, double from, double to) => Guard.Finite(
        Guard.Positive(density, "the density of the oil", "t/mm³") * Square(Guard.Number(speed, "the speed of the carrier", "rad/s"))
            * (Square(Guard.NotNegative(to, "the radius of the outlet", "mm")) - Square(Guard.NotNegative(from, "the radius of the inlet", "mm"))) / 2,
        "the pressure gain");

    private static double Square(double value) => value * value;
}
