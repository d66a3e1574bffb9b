namespace Pawl.Mechanics.Rating;

/// <summary>What a flank tolerance class allows.</summary>
public static class FlankTolerance
{
    private const double MillimetresPerMicrometre = 1e-3;

    /// <summary>Single pitch tolerance f_pT, mm.</summary>
    /// <remarks>
    /// <code>f_pT = (0.001·d + 0.4·m_n + 5) · (√2)^(A − 5) µm, here divided by 1000</code>
    /// Symbols: d reference diameter, m_n normal module, mm; A flank tolerance class. No choice of units makes the formula
    /// homogeneous: mm go in, µm come out of the standard's.<br/>
    /// Source: ISO 1328-1:2013, single pitch tolerance; from memory. The value is not rounded.<br/>
    /// Valid for: classes 1 to 11; m_n 0.5 to 70 mm; d 5 to 15 000 mm (scope of the standard, read in a public catalogue).
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SinglePitch(double referenceDiameter, double normalModule, int toleranceClass)
    {
        var step = Step("pitch", referenceDiameter, normalModule, toleranceClass);
        return (0.001 * Math.Abs(referenceDiameter) + 0.4 * normalModule + 5) * step * MillimetresPerMicrometre;
    }

    /// <summary>Profile form tolerance f_fαT, mm.</summary>
    /// <remarks>
    /// <code>f_fαT = (0.55·m_n + 5) · (√2)^(A − 5) µm, here divided by 1000</code>
    /// Symbols: m_n normal module, mm; A flank tolerance class; d reference diameter, mm, for the scope only. Not homogeneous.<br/>
    /// Source: ISO 1328-1:2013, profile form tolerance; from memory. The value is not rounded.<br/>
    /// Valid for: as the single pitch tolerance.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ProfileForm(double referenceDiameter, double normalModule, int toleranceClass)
    {
        var step = Step("profile", referenceDiameter, normalModule, toleranceClass);
        return (0.55 * normalModule + 5) * step * MillimetresPerMicrometre;
    }

    /// <summary>Helix slope tolerance f_HβT, mm.</summary>
    /// <remarks>
    /// <code>f_HβT = (0.05·√d + 0.35·√b + 4) · (√2)^(A − 5) µm, here divided by 1000</code>
    /// Symbols: d reference diameter, b face width, mm; A flank tolerance class; m_n normal module, mm, for the scope only. Not
    /// homogeneous.<br/>
    /// Source: ISO 1328-1:2013, helix slope tolerance; from memory. The value is not rounded.<br/>
    /// Valid for: as the single pitch tolerance; b 4 to 1200 mm.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double HelixSlope(double referenceDiameter, double normalModule, double faceWidth, int toleranceClass)
    {
        var step = Step("helix", referenceDiameter, normalModule, toleranceClass);
        if (!(faceWidth is >= 4 and <= 1200))
            throw Guard.Because($"no helix tolerance: ISO 1328-1 covers face widths of 4 to 1200 mm; this one is {faceWidth:0.####} mm");
        return ((0.05 * Math.Sqrt(Math.Abs(referenceDiameter))) + (0.35 * Math.Sqrt(faceWidth)) + 4) * step * MillimetresPerMicrometre;
    }

    /// <summary>Misalignment of a mesh by manufacture f_ma, mm.</summary>
    /// <remarks>
    /// <code>f_ma = √(f_Hβ1² + f_Hβ2²)</code>
    /// Symbols: f_Hβ helix slope deviations of both gears, mm.<br/>
    /// Source: ISO 6336-1, mesh misalignment by manufacture, for pairs that are not adjusted to each other; from memory.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MeshMisalignment(double first, double second) =>
        double.Hypot(Guard.NotNegative(first, "the helix slope deviation"), Guard.NotNegative(second, "the helix slope deviation"));

    /// <summary>Base pitch deviation f_pb, mm.</summary>
    /// <remarks>
    /// <code>f_pb = f_pT · cos α_t</code>
    /// Symbols: f_pT single pitch tolerance, mm; α_t transverse pressure angle, rad.<br/>
    /// Source: ISO 6336-1, transverse load factors: base pitch deviation from the pitch deviation.<br/>
    /// Valid for: α_t &lt; π/2. Of a pair the greater of both counts.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double BasePitch(double singlePitch, double transversePressureAngle) =>
        Guard.Positive(singlePitch, "the single pitch tolerance")
        * Math.Cos(Guard.Acute(transversePressureAngle, "the transverse pressure angle"));

    /// <summary>What a class allows over what class 5 does, within the scope of the standard.</summary>
    private static double Step(string tolerance, double referenceDiameter, double normalModule, int toleranceClass)
    {
        if (toleranceClass is < 1 or > 11)
        {
            throw Guard.Because(
                $"no {tolerance} tolerance: ISO 1328-1 has the flank tolerance classes 1 to 11; this one is {toleranceClass}");
        }

        if (!(normalModule is >= 0.5 and <= 70))
        {
            throw Guard.Because(
                $"no {tolerance} tolerance: ISO 1328-1 covers normal modules of 0.5 to 70 mm; this one is {normalModule:0.####} mm");
        }

        var diameter = Math.Abs(referenceDiameter);
        if (!(diameter is >= 5 and <= 15_000))
        {
            throw Guard.Because(
                $"no {tolerance} tolerance: ISO 1328-1 covers reference diameters of 5 to 15000 mm; this one is {diameter:0.####} mm");
        }

        return Math.Pow(2, (toleranceClass - 5) / 2.0);
    }
}
