namespace Pawl.Mechanics.Rating;

/// <summary>The torsional resonance of a pair of gears: their masses on the spring of their teeth, after ISO 6336-1, method B.</summary>
/// <remarks>Masses stand for a unit of face width and act on the line of action at the base circles, t/mm.</remarks>
public static class MeshResonance
{
    /// <summary>Where the main resonance range begins under no load, as a resonance ratio.</summary>
    public const double LeastLowerLimit = 0.5;

    /// <summary>Where the main resonance range ends, as a resonance ratio.</summary>
    public const double UpperLimit = 1.15;

    /// <summary>Where the supercritical range begins, as a resonance ratio.</summary>
    public const double Supercritical = 1.5;

    private const double FullLineLoad = 100;

    /// <summary>Moment of inertia of a gear, as a disc or a rim between two cylinders, t·mm².</summary>
    /// <remarks>
    /// <code>J = π/32 · ρ · b · (D⁴ − d⁴)</code>
    /// Symbols: D outer, d inner diameter, mm: of an external gear the mean of tip and root circle and the bore of the rim (0 when
    /// solid), of a ring its outside and the mean of tip and root circle; b face width, mm; ρ density, t/mm³.<br/>
    /// Source: closed form; the mean circle after ISO 6336-1, resonance speed.<br/>
    /// Valid for: webs, hubs and shafts light against the rim.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Inertia(double outerDiameter, double innerDiameter, double faceWidth, double density)
    {
        var outer = Guard.Positive(outerDiameter, "the outer diameter of the rim", "mm");
        var inner = Guard.NotNegative(innerDiameter, "the inner diameter of the rim", "mm");
        if (inner >= outer)
            throw Guard.Because($"no moment of inertia: the inner diameter of the rim, {inner:0.###} mm, leaves nothing of {outer:0.###} mm");
        return Guard.Finite(
            Math.PI / 32 * Guard.Positive(density, "the density") * Guard.Positive(faceWidth, "the face width", "mm")
                * (Math.Pow(outer, 4) - Math.Pow(inner, 4)),
            "the moment of inertia");
    }

    /// <summary>Mass of what turns with a gear, at its base circle and for a unit of its face width, t/mm.</summary>
    /// <remarks>
    /// <code>m* = J / (b · r_b²)</code>
    /// Symbols: J moment of inertia, t·mm²; b face width, r_b = d_b/2 base radius, mm.<br/>
    /// Source: ISO 6336-1, resonance speed, relative individual gear mass.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MassAtBase(double momentOfInertia, double faceWidth, double baseDiameter)
    {
        var radius = Guard.Positive(baseDiameter, "the base diameter", "mm") / 2;
        return Guard.Finite(
            Guard.Positive(momentOfInertia, "the moment of inertia") / (Guard.Positive(faceWidth, "the face width", "mm") * radius * radius),
            "the mass at the base circle");
    }

    /// <summary>Reduced mass m_red of two gears that both turn against the carrier, t/mm.</summary>
    /// <remarks>
    /// <code>1/m_red = N₁/m*₁ + N₂/m*₂</code>
    /// Symbols: m* mass of each gear at its base circle, t/mm; N meshes that share the gear: the planets about a sun or a ring, else 1.<br/>
    /// Source: ISO 6336-1, resonance speed: of a pair, m*₁·m*₂/(m*₁ + m*₂); of a sun with N planets,
    /// J*_pla·J*_sun/(N·J*_pla·r_b,sun² + J*_sun·r_b,pla²). Both are the mode in which all meshes of the sun swing together.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ReducedMass(double pinionMass, int pinionMeshes, double wheelMass, int wheelMeshes) => Guard.Finite(
        1 / (Guard.Count(pinionMeshes, 1, "the meshes of the pinion") / Guard.Positive(pinionMass, "the mass of the pinion")
            + Guard.Count(wheelMeshes, 1, "the meshes of the wheel") / Guard.Positive(wheelMass, "the mass of the wheel")),
        "the reduced mass");

    /// <summary>Reduced mass m_red of a gear against one that is held fast, t/mm.</summary>
    /// <remarks>
    /// <code>m_red = m* / N</code>
    /// Symbols: m* mass of the gear that turns, t/mm; N meshes that share it.<br/>
    /// Source: ISO 6336-1, resonance speed: the planet against a ring that is one with the housing, whose mass counts as infinite.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MassAgainstFixed(double mass, int meshes) =>
        Guard.Positive(mass, "the mass of the gear") / Guard.Count(meshes, 1, "the meshes of the gear");

    /// <summary>Resonance speed n_E1 of the pinion against the carrier, rad/s.</summary>
    /// <remarks>
    /// <code>n_E1 = √(c_γα/m_red) / z₁</code>
    /// Symbols: c_γα mesh stiffness, N/mm²; m_red reduced mass, t/mm; z₁ teeth of the pinion. In 1/min, N/(mm·µm) and kg/mm the
    /// source has 30 000/(π·z₁)·√(c_γα/m_red).<br/>
    /// Source: ISO 6336-1, resonance speed; it follows from a mesh frequency that is the natural one.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Speed(double meshStiffness, double reducedMass, int pinionTeeth) => Guard.Finite(
        Math.Sqrt(Guard.Positive(meshStiffness, "the mesh stiffness") / Guard.Positive(reducedMass, "the reduced mass"))
            / Guard.Count(pinionTeeth, 1, "the teeth of the pinion"),
        "the resonance speed");

    /// <summary>Resonance ratio N.</summary>
    /// <remarks>
    /// <code>N = |n₁| / n_E1</code>
    /// Symbols: n₁ speed of the pinion against the carrier, n_E1 its resonance speed, rad/s.<br/>
    /// Source: ISO 6336-1, resonance ratio.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Ratio(double speed, double resonanceSpeed) => Guard.Finite(
        Math.Abs(Guard.Number(speed, "the speed of the pinion")) / Guard.Positive(resonanceSpeed, "the resonance speed"), "the resonance ratio");

    /// <summary>Resonance ratio N_S at which the main resonance range begins.</summary>
    /// <remarks>
    /// <code>N_S = 0.85;  w &lt; 100 N/mm: N_S = 0.5 + 0.35 · √(w/100)</code>
    /// Symbols: w = F_t·K_A·K_γ/b line load, N/mm.<br/>
    /// Source: ISO 6336-1, dynamic factor, method B.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double LowerLimit(double lineLoad) =>
        LeastLowerLimit + 0.35 * Math.Sqrt(Math.Min(Guard.Positive(lineLoad, "the line load") / FullLineLoad, 1));

    /// <summary>How far a resonance ratio keeps out of the main resonance range; below zero inside of it.</summary>
    /// <remarks>
    /// <code>max(N_S − N, N − 1.15)</code>
    /// Symbols: N resonance ratio; N_S where the main resonance range begins.<br/>
    /// Source: ISO 6336-1, dynamic factor, method B.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Distance(double resonanceRatio, double lowerLimit)
    {
        var ratio = Guard.NotNegative(resonanceRatio, "the resonance ratio");
        return Math.Max(Guard.Positive(lowerLimit, "the lower limit of the main resonance range") - ratio, ratio - UpperLimit);
    }
}
