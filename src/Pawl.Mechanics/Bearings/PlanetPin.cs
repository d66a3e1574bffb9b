namespace Pawl.Mechanics.Bearings;

/// <summary>A round pin that carries a planet.</summary>
/// <param name="Diameter">Outside diameter d, mm.</param>
/// <param name="Hole">Diameter d_i of the hole along it, mm; zero for a solid pin.</param>
public sealed partial record PlanetPin(double Diameter, double Hole = 0)
{
    /// <summary>Greatest bending moment of a pin held in two cheeks, N·mm.</summary>
    /// <param name="force">Force F of the planet, N, even over the width.</param>
    /// <param name="span">Distance L of the middles of the cheeks, mm.</param>
    /// <param name="width">Width b of the load, midway, mm.</param>
    /// <remarks>
    /// <code>M = F/2·(L/2 − b/4)</code>
    /// Source: beam on two supports.<br/>
    /// Valid for: cheeks that hold the pin without clamping it, the cautious view; b ≤ L.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double StraddledMoment(double force, double span, double width)
    {
        Straddle(span, width);
        return DynamicLoad.NotNegative(force, "the force") / 2 * (span / 2 - width / 4);
    }

    /// <summary>Greatest bending moment of a pin held at one end, N·mm.</summary>
    /// <param name="force">Force F of the planet, N, even over the width.</param>
    /// <param name="gap">Gap g from the cheek to the load, mm.</param>
    /// <param name="width">Width b of the load, mm.</param>
    /// <remarks>
    /// <code>M = F·(g + b/2)</code>
    /// Source: cantilever.<br/>
    /// Valid for: the face of the cheek as the end of the pin; it gives way a little, and the moment goes on rising within.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OverhungMoment(double force, double gap, double width) =>
        DynamicLoad.NotNegative(force, "the force")
        * (DynamicLoad.NotNegative(gap, "the gap") + Guard.Positive(width, "the width of the load") / 2);

    /// <summary>Bending stress, MPa.</summary>
    /// <remarks>
    /// <code>σ = 32·d·M / (π·(d⁴ − d_i⁴))</code>
    /// Symbols: M bending moment, N·mm; d, d_i outside and inside diameter, mm.<br/>
    /// Source: bending of a round tube.<br/>
    /// Valid for: no notch: an oil hole is one.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double BendingStress(double moment) => DynamicLoad.NotNegative(moment, "the moment") * Diameter / (2 * Inertia);

    /// <summary>Greatest shear stress, MPa.</summary>
    /// <param name="shear">Shear force V in the section, N: F/2 between two cheeks, F of a pin held at one end.</param>
    /// <remarks>
    /// <code>τ = (4/3)·V/A·(d² + d·d_i + d_i²)/(d² + d_i²)</code>
    /// Symbols: A = π/4·(d² − d_i²), mm².<br/>
    /// Source: shear of a round tube (Jourawski), at the neutral axis.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double ShearStress(double shear)
    {
        Round();
        var (d, h) = (Diameter, Hole);
        return 4.0 / 3 * DynamicLoad.NotNegative(shear, "the shear force") / (Math.PI / 4 * (d * d - h * h))
            * (d * d + d * h + h * h) / (d * d + h * h);
    }

    /// <summary>Slope of a pin held in two cheeks, at the edge of its load, rad.</summary>
    /// <param name="force">Force F, N.</param>
    /// <param name="span">Distance L of the middles of the cheeks, mm.</param>
    /// <param name="width">Width b of the load, midway, mm.</param>
    /// <param name="modulus">Modulus of elasticity E, MPa.</param>
    /// <remarks>
    /// <code>φ = F·(L²/16 − b²/48 − a²/4) / (E·I);  a = (L − b)/2</code>
    /// Symbols: I second moment of area, mm⁴.<br/>
    /// Source: beam on two supports, the moment integrated from the middle.<br/>
    /// Valid for: slender pins; shear is left out.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double StraddledSlope(double force, double span, double width, double modulus)
    {
        Straddle(span, width);
        var arm = (span - width) / 2;
        return DynamicLoad.NotNegative(force, "the force") * (span * span / 16 - width * width / 48 - arm * arm / 4)
            / (Guard.Positive(modulus, "the modulus of elasticity") * Inertia);
    }

    /// <summary>Slope of a pin held at one end, at the far edge of its load, rad.</summary>
    /// <remarks>
    /// <code>φ = F·(g²/2 + g·b/2 + b²/6) / (E·I)</code>
    /// Symbols: g gap, b width of the load, mm; F, E, I as <see cref="StraddledSlope"/>.<br/>
    /// Source: cantilever.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double OverhungSlope(double force, double gap, double width, double modulus) =>
        DynamicLoad.NotNegative(force, "the force")
        * (DynamicLoad.NotNegative(gap, "the gap") * gap / 2 + gap * Guard.Positive(width, "the width of the load") / 2 + width * width / 6)
        / (Guard.Positive(modulus, "the modulus of elasticity") * Inertia);

    /// <summary>Mean pressure of the pin in a cheek, MPa.</summary>
    /// <remarks>
    /// <code>p = F_s/(d·t)</code>
    /// Symbols: F_s force on this cheek, N, half of the planet's between two; d diameter of the pin, t thickness of the cheek,
    /// mm.<br/>
    /// Source: definition.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double CheekPressure(double force, double thickness)
    {
        Round();
        return DynamicLoad.NotNegative(force, "the force") / (Diameter * Guard.Positive(thickness, "the thickness of the cheek"));
    }

    private double Inertia
    {
        get
        {
            Round();
            return Math.PI / 64 * (Math.Pow(Diameter, 4) - Math.Pow(Hole, 4));
        }
    }

    private void Round()
    {
        Guard.Positive(Diameter, "the diameter of the pin");
        if (!(Hole >= 0 && Hole < Diameter))
            throw Guard.Because($"the hole of a pin must be below its diameter; they are {Hole:0.###} mm and {Diameter:0.###} mm");
    }

    private static void Straddle(double span, double width)
    {
        if (!(Guard.Positive(width, "the width of the load") <= Guard.Positive(span, "the span")))
            throw Guard.Because($"the load must lie between the cheeks; it is {width:0.###} mm wide, the span {span:0.###} mm");
    }
}
