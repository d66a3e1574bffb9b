using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Rating;

/// <summary>The Z factors of ISO 6336-2 that turn a tooth force into a contact stress.</summary>
public static class ContactFactors
{
    /// <summary>Zone factor Z_H: curvature of the flanks at the pitch point.</summary>
    /// <remarks>
    /// <code>Z_H = √( 2·cos β_b·cos α_wt / (cos² α_t·sin α_wt) )</code>
    /// Symbols: β_b base helix angle; α_t transverse, α_wt working transverse pressure angle, rad.<br/>
    /// Source: ISO 6336-2, zone factor.<br/>
    /// Valid for: external and internal pairs.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Zone(double transversePressureAngle, double workingPressureAngle, double baseHelixAngle)
    {
        Guard.AcuteAboveZero(workingPressureAngle, "the working pressure angle");
        var cosine = Math.Cos(Guard.AcuteAboveZero(transversePressureAngle, "the transverse pressure angle"));
        return Math.Sqrt(2 * Math.Cos(Guard.Helix(baseHelixAngle)) / Math.Tan(workingPressureAngle)) / cosine;
    }

    /// <summary>Elasticity factor Z_E, √MPa: how two flank materials share the contact pressure.</summary>
    /// <remarks>
    /// <code>Z_E = √( 1 / ( π · ( (1 − ν₁²)/E₁ + (1 − ν₂²)/E₂ ) ) )</code>
    /// Symbols: E modulus of elasticity, MPa; ν Poisson's ratio.<br/>
    /// Source: ISO 6336-2, elasticity factor.<br/>
    /// Valid for: isotropic, linear-elastic flanks.
    /// </remarks>
    public static double Elasticity(Elastic pinion, Elastic wheel) => Math.Sqrt(Elastic.Reduced(pinion, wheel) / Math.PI);

    /// <summary>Contact ratio factor Z_ε: length of the lines of contact.</summary>
    /// <remarks>
    /// <code>ε_β &lt; 1: Z_ε = √( (4 − ε_α)/3 · (1 − ε_β) + ε_β/ε_α );  ε_β ≥ 1: Z_ε = √( 1/ε_α )</code>
    /// Symbols: ε_α transverse contact ratio; ε_β overlap ratio, 0 for spur gears.<br/>
    /// Source: ISO 6336-2, contact ratio factor.<br/>
    /// Valid for: ε_α ≥ 1; below 4 for spur gears.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ContactRatio(double transverseContactRatio, double overlapRatio)
    {
        var transverse = Overlap.Transverse(transverseContactRatio);
        var overlap = Overlap.UpToOne(overlapRatio);
        return transverse < 4
            ? Math.Sqrt((4 - transverse) / 3 * (1 - overlap) + overlap / transverse)
            : throw Guard.Because(
                $"no contact ratio factor: the source ends at a transverse contact ratio of 4; it is {transverse:0.###}");
    }

    /// <summary>Helix angle factor Z_β.</summary>
    /// <remarks>
    /// <code>Z_β = 1 / √( cos β )</code>
    /// Symbols: β helix angle at the reference circle, rad.<br/>
    /// Source: ISO 6336-2:2019; so since the corrigendum of 2008. The edition of 1996 had √(cos β), which gives less stress.<br/>
    /// Valid for: β up to 30°.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double HelixAngle(double helixAngle) => 1 / Math.Sqrt(Math.Cos(Guard.Helix(helixAngle)));

    /// <summary>M₁: contact stress at the inner point of single contact of the pinion over that at the pitch point.</summary>
    /// <remarks>
    /// <code>M₁ = tan α_wt / √( [√(d_a1²/d_b1² − 1) − 2·π/z₁] · [√(d_a2²/d_b2² − 1) − (ε_α − 1)·2·π/z₂] )</code>
    /// Symbols: α_wt working transverse pressure angle, rad; d_a tip, d_b base diameters, mm; z teeth, internal negative; ε_α
    /// transverse contact ratio. Exchange the gears for M₂ of the wheel.<br/>
    /// Source: ISO 6336-2, single pair tooth contact factors.<br/>
    /// Valid for: 1 ≤ ε_α ≤ 2, where there is a point of single contact; contact above both base circles.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SinglePairRatio(
        double workingPressureAngle,
        double tipDiameter1,
        double baseDiameter1,
        int teeth1,
        double tipDiameter2,
        double baseDiameter2,
        int teeth2,
        double transverseContactRatio)
    {
        Guard.AcuteAboveZero(workingPressureAngle, "the working pressure angle");
        if (!(Overlap.Transverse(transverseContactRatio) <= 2))
        {
            throw Guard.Because(
                $"no single pair contact factor: above a transverse contact ratio of 2 no pair of teeth is ever alone; it is {transverseContactRatio:0.####}");
        }

        var first = TipSlope(tipDiameter1, baseDiameter1) - 2 * Math.PI / Guard.Teeth(teeth1);
        var second = TipSlope(tipDiameter2, baseDiameter2)
            - (transverseContactRatio - 1) * 2 * Math.PI / Guard.Teeth(teeth2);
        return first > 0 && second > 0
            ? Math.Tan(workingPressureAngle) / Math.Sqrt(first * second)
            : throw Guard.Because(
                $"no single pair contact factor: the point of single contact lies below a base circle (involute interference)");
    }

    /// <summary>Single pair tooth contact factor of the pinion, Z_B, from M₁.</summary>
    /// <remarks>
    /// <code>Z_B = max(1, M₁ − ε_β · (M₁ − 1));  ε_β ≥ 1: Z_B = 1</code>
    /// Symbols: M₁ stress ratio; ε_β overlap ratio, 0 for spur gears.<br/>
    /// Source: ISO 6336-2:2006, single pair tooth contact factors. The edition of 2019 raises the value of helical gears without
    /// proven flank modifications (f_ZCa); with f_ZCa = 1 both agree.<br/>
    /// Valid for: external and internal pairs. With M₂ it is Z_D of an external wheel. From ε_β = 1 on M₁ plays no part.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SinglePair(double ratio, double overlapRatio)
    {
        var overlap = Overlap.UpToOne(overlapRatio);
        return Math.Max(1, Guard.Positive(ratio, "the single pair stress ratio") * (1 - overlap) + overlap);
    }

    /// <summary>Single pair tooth contact factor of an internal gear, Z_D.</summary>
    /// <remarks>
    /// Always 1: its hollow flank fits the pinion best toward the root.<br/>
    /// Source: ISO 6336-2, single pair tooth contact factors; from memory.
    /// </remarks>
    public const double SinglePairOfInternalGear = 1;

    // tan of the pressure angle at the tip, positive for both kinds of gear.
    private static double TipSlope(double tipDiameter, double baseDiameter) =>
        Math.Tan(ToothGeometry.PressureAngleAt(tipDiameter, baseDiameter));
}
