namespace Pawl.Mechanics.Bearings;

/// <content>The bent line of a pin under one force.</content>
public sealed partial record PlanetPin
{
    /// <summary>Deflection of a pin held in two cheeks, mm.</summary>
    /// <param name="force">Force F, N, with its sign.</param>
    /// <param name="from">Place a of the force from the middle of the one cheek, mm.</param>
    /// <param name="at">Place x where the deflection is wanted, mm.</param>
    /// <param name="span">Distance L of the middles of the cheeks, mm.</param>
    /// <param name="modulus">Modulus of elasticity E, MPa.</param>
    /// <remarks>
    /// <code>v = F·b·x·(L² − b² − x²)/(6·L·E·I), b = L − a, for x ≤ a;  beyond it from the other cheek</code>
    /// Source: beam on two supports with one force, table of every handbook.<br/>
    /// Valid for: cheeks that hold the pin without clamping it, the cautious view; shear is left out.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double StraddledDeflection(double force, double from, double at, double span, double modulus)
    {
        Within(from, span);
        Within(at, span);
        var (x, b) = at <= from ? (at, span - from) : (span - at, from);
        return Guard.Number(force, "the force") * b * x * (span * span - b * b - x * x)
            / (6 * span * Guard.Positive(modulus, "the modulus of elasticity") * Inertia);
    }

    /// <summary>Slope of a pin held in two cheeks at its force, rad.</summary>
    /// <remarks>
    /// <code>φ = F·a·b·(b − a)/(3·L·E·I), b = L − a</code>
    /// Symbols and source as <see cref="StraddledDeflection"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double StraddledSlopeAtForce(double force, double from, double span, double modulus)
    {
        Within(from, span);
        var b = span - from;
        return Guard.Number(force, "the force") * from * b * (b - from) / (3 * span * Guard.Positive(modulus, "the modulus of elasticity") * Inertia);
    }

    /// <summary>Deflection of a pin held at one end, mm.</summary>
    /// <param name="force">Force F, N, with its sign.</param>
    /// <param name="from">Place a of the force from the face of the cheek, mm.</param>
    /// <param name="at">Place x where the deflection is wanted, mm.</param>
    /// <param name="modulus">Modulus of elasticity E, MPa.</param>
    /// <remarks>
    /// <code>v = F·x²·(3·a − x)/(6·E·I) for x ≤ a, F·a²·(3·x − a)/(6·E·I) beyond</code>
    /// Source: cantilever with one force.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double OverhungDeflection(double force, double from, double at, double modulus)
    {
        var (near, far) = (Math.Min(Guard.NotNegative(from, "the place of the force"), Guard.NotNegative(at, "the place")), Math.Max(from, at));
        return Guard.Number(force, "the force") * near * near * (3 * far - near) / (6 * Guard.Positive(modulus, "the modulus of elasticity") * Inertia);
    }

    /// <summary>Slope of a pin held at one end at its force, rad.</summary>
    /// <remarks>
    /// <code>φ = F·a²/(2·E·I)</code>
    /// Symbols and source as <see cref="OverhungDeflection"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double OverhungSlopeAtForce(double force, double from, double modulus) =>
        Guard.Number(force, "the force") * Guard.NotNegative(from, "the place of the force") * from
        / (2 * Guard.Positive(modulus, "the modulus of elasticity") * Inertia);

    private static void Within(double place, double span)
    {
        if (!(place >= 0 && place <= Guard.Positive(span, "the span")))
            throw Guard.Because($"the place must lie between the cheeks; it is {place:0.###} mm of {span:0.###} mm");
    }
}
