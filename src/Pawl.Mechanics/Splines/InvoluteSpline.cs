namespace Pawl.Mechanics.Splines;

/// <summary>Standard of a spline.</summary>
public enum SplineSystem
{
    /// <summary>ISO 4156, metric module, side fit.</summary>
    Iso4156,

    /// <summary>ANSI B92.1, diametral pitch, side fit.</summary>
    AnsiB921,
}

/// <summary>Form of a spline's root.</summary>
public enum SplineRoot
{
    Flat,

    Fillet,
}

/// <summary>Basic geometry of a straight involute spline, side fit.</summary>
/// <remarks>
/// Lengths in mm, in the inch system as well: module = 25.4/P. Diameters of an internal spline are positive here. Source: ISO 4156-1 and
/// ANSI B92.1, from memory, compared with textbooks.
/// </remarks>
public sealed record InvoluteSpline
{
    /// <param name="system">Standard.</param>
    /// <param name="teeth">Number of teeth z.</param>
    /// <param name="module">Module m, mm.</param>
    /// <param name="pressureAngle">Pressure angle α, rad: 30°, 37.5° or 45°.</param>
    /// <param name="root">Form of the root; flat roots are of 30° only.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public InvoluteSpline(SplineSystem system, int teeth, double module, double pressureAngle, SplineRoot root)
    {
        if (teeth < 6)
            throw Guard.Because($"splines of the standards have 6 teeth or more; this one has {teeth}");

        var degrees = pressureAngle * 180 / Math.PI;
        var angle = Math.Abs(degrees - 30) < 1e-6 ? Angle.Of30
            : Math.Abs(degrees - 37.5) < 1e-6 ? Angle.Of37
            : Math.Abs(degrees - 45) < 1e-6 ? Angle.Of45
            : throw Guard.Because($"splines of the standards have pressure angles of 30°, 37.5° and 45°; this one has {degrees:0.###}°");
        if (root == SplineRoot.Flat && angle != Angle.Of30)
            throw Guard.Because($"splines of {degrees:0.#}° have fillet roots only");

        (System, Teeth, PressureAngle, Root, _angle) = (system, teeth, pressureAngle, root, angle);
        Module = Guard.Positive(module, "the module");
    }

    private readonly Angle _angle;

    private enum Angle
    {
        Of30,
        Of37,
        Of45,
    }

    public SplineSystem System { get; }

    public int Teeth { get; }

    public double Module { get; }

    public double PressureAngle { get; }

    public SplineRoot Root { get; }

    /// <summary>Module of a diametral pitch P such as the 16 of 16/32, mm.</summary>
    /// <remarks>
    /// <code>m = 25.4/P</code>
    /// Source: definition; 25.4 mm to the inch.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ModuleOf(double diametralPitch) => 25.4 / Guard.Positive(diametralPitch, "the diametral pitch");

    /// <summary>Pitch diameter D, mm.</summary>
    /// <remarks>
    /// <code>D = m·z</code>
    /// </remarks>
    public double PitchDiameter => Module * Teeth;

    /// <summary>Base diameter D_b, mm.</summary>
    /// <remarks>
    /// <code>D_b = m·z·cos α</code>
    /// </remarks>
    public double BaseDiameter => PitchDiameter * Math.Cos(PressureAngle);

    /// <summary>Circular pitch p, mm.</summary>
    /// <remarks>
    /// <code>p = π·m</code>
    /// </remarks>
    public double CircularPitch => Math.PI * Module;

    /// <summary>Basic space width E, equal to the basic tooth thickness S, mm.</summary>
    /// <remarks>
    /// <code>E = S = π·m/2</code>
    /// </remarks>
    public double BasicSpaceWidth => CircularPitch / 2;

    /// <summary>Major diameter of the external spline D_EE, mm, of thickness allowance zero.</summary>
    /// <remarks>
    /// <code>m·(z + 1) at 30°;  ISO 4156: m·(z + 0.9) at 37.5°, m·(z + 0.8) at 45°</code>
    /// Source: ISO 4156-1; ANSI B92.1; from memory.<br/>
    /// Valid for: ANSI B92.1 at 30°.
    /// </remarks>
    public double ExternalMajor => Module * (Teeth + Of(1, 0.9, 0.8));

    /// <summary>Least major diameter of the internal spline D_EI, mm.</summary>
    /// <remarks>
    /// <code>
    /// ISO 4156: m·(z + 1.5) at 30° flat, + 1.8 fillet, + 1.4 at 37.5°, + 1.2 at 45°
    /// ANSI B92.1: (z + 1.35)/P at 30° flat, + 1.8 fillet
    /// </code>
    /// Source: as <see cref="ExternalMajor"/>.
    /// </remarks>
    public double InternalMajor => Module * (Teeth + Of(RootReach, 1.4, 1.2));

    /// <summary>Greatest minor diameter of the external spline D_IE, mm, of thickness allowance zero.</summary>
    /// <remarks>
    /// <code>
    /// ISO 4156: m·(z − 1.5) at 30° flat, − 1.8 fillet, − 1.4 at 37.5°, − 1.2 at 45°
    /// ANSI B92.1: (z − 1.35)/P at 30° flat;  fillet (z − 1.8)/P up to 12/24, (z − 2)/P finer
    /// </code>
    /// Source: as <see cref="ExternalMajor"/>.
    /// </remarks>
    public double ExternalMinor => Module * (Teeth
        - (System == SplineSystem.AnsiB921 && Root == SplineRoot.Fillet && 25.4 / Module > 12 + 1e-6 ? Of(2, 0, 0) : Of(RootReach, 1.4, 1.2)));

    /// <summary>Minor diameter of the internal spline D_II, mm, least.</summary>
    /// <remarks>
    /// <code>ISO 4156: D_FE + 2·c_F;  ANSI B92.1: (z − 1)/P at 30°</code>
    /// Source: as <see cref="ExternalMajor"/>. Of an external spline with allowance zero.
    /// </remarks>
    public double InternalMinor => System == SplineSystem.Iso4156 ? ExternalForm(0) + 2 * FormClearance : Module * (Teeth - Of(1, 0, 0));

    /// <summary>Form clearance c_F, mm.</summary>
    /// <remarks>
    /// <code>ISO 4156: 0.1·m;  ANSI B92.1: 0.001·D, from 0.002 in to 0.010 in</code>
    /// Source: as <see cref="ExternalMajor"/>.
    /// </remarks>
    public double FormClearance => System == SplineSystem.Iso4156
        ? 0.1 * Module
        : Math.Clamp(0.001 * PitchDiameter, 0.002 * 25.4, 0.010 * 25.4);

    /// <summary>Form diameter of the external spline D_FE, mm, greatest: the involute reaches this far in.</summary>
    /// <param name="allowance">Fundamental deviation es_v of the tooth thickness, mm, zero or below.</param>
    /// <remarks>
    /// <code>
    /// ISO 4156: D_FE = 2·√( (D_b/2)² + [ D·sin α/2 − (h_s − es_v/(2·tan α))/sin α ]² );  h_s = 0.6·m at 30°, 0.55 at 37.5°, 0.5 at 45°
    /// ANSI B92.1: (z − 1)/P − 2·c_F at 30°
    /// </code>
    /// Symbols: h_s depth of the generating rack below the pitch line, mm.<br/>
    /// Source: as <see cref="ExternalMajor"/>; the first is the point that a rack of that depth cuts last.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double ExternalForm(double allowance)
    {
        if (!(allowance <= 0) || double.IsInfinity(allowance))
            throw Guard.Because($"the thickness deviation of a spline's form diameter is zero or below; it is {allowance:0.####} mm");
        if (System == SplineSystem.AnsiB921)
            return Module * (Teeth - Of(1, 0, 0)) - 2 * FormClearance;

        var (sine, depth) = (Math.Sin(PressureAngle), Of(0.6, 0.55, 0.5) * Module - allowance / (2 * Math.Tan(PressureAngle)));
        var along = PitchDiameter * sine / 2 - depth / sine;
        return along > 0
            ? Math.Sqrt(BaseDiameter * BaseDiameter + 4 * along * along)
            : throw Guard.Because($"no form diameter: the rack would cut below the base circle of these {Teeth} teeth");
    }

    // Flat and fillet roots of 30°, by how much they reach beyond the pitch circle.
    private double RootReach => Root == SplineRoot.Fillet ? 1.8 : System == SplineSystem.Iso4156 ? 1.5 : 1.35;

    private double Of(double of30, double of37, double of45) => _angle switch
    {
        Angle.Of30 => of30,
        _ when System == SplineSystem.AnsiB921 => throw Guard.Because($"the source has diameters of ANSI B92.1 at 30° only; state them"),
        Angle.Of37 => of37,
        _ => of45,
    };
}
