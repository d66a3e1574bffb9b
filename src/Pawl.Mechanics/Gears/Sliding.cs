namespace Pawl.Mechanics.Gears;

/// <summary>How flanks slide on each other and what that costs.</summary>
public static class Sliding
{
    private const double Rounding = 1e-9;

    /// <summary>Specific sliding ζ of gear 1 at a point of contact; exchange the gears for ζ of gear 2.</summary>
    /// <remarks>
    /// <code>ζ₁ = 1 − (ρ₂ / ρ₁) · (z₁ / z₂)</code>
    /// Symbols: ρ transverse radii of curvature at the point, mm, and z teeth, internal negative. Extremes: A for gear 1
    /// (ρ₁ = ρ_A1, ρ₂ at the tip of gear 2), E for gear 2.<br/>
    /// Source: ISO 21771, specific sliding: sliding velocity over this flank's rolling velocity.<br/>
    /// Valid for: both radii with the signs of their gears; at the base circle sliding has no limit.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Specific(double curvature1, double curvature2, int teeth1, int teeth2)
    {
        Guard.Number(curvature1, "the radius of curvature", "mm");
        Guard.Number(curvature2, "the radius of curvature", "mm");
        if (!(curvature1 * Guard.Teeth(teeth1) > 0) || !(curvature2 * Guard.Teeth(teeth2) > 0))
        {
            throw Guard.Because(
                $"no specific sliding: contact is asked for at or below a base circle (radii of curvature {curvature1:0.####} mm and {curvature2:0.####} mm): involute interference");
        }

        return Guard.Finite(1 - curvature2 / curvature1 * teeth1 / teeth2, "the specific sliding");
    }

    /// <summary>Tip contact ratio ε₁ or ε₂: the part of ε_α on one gear's addendum.</summary>
    /// <remarks>
    /// <code>ε₁ = z₁ / (2·π) · (tan α_a1 − tan α_wt)</code>
    /// Symbols: z teeth, internal negative; α_a transverse pressure angle at the tip, α_wt working, rad.<br/>
    /// Source: ISO/TR 14179-2; Niemann and Winter, Maschinenelemente II.<br/>
    /// Valid for: both kinds of gear. Below zero: the tip does not reach the pitch point.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TipContactRatio(int teeth, double tipPressureAngle, double workingPressureAngle) =>
        Guard.Finite(
            Guard.Teeth(teeth) / (2 * Math.PI)
                * (Math.Tan(Guard.Acute(tipPressureAngle, "the pressure angle at the tip"))
                    - Math.Tan(Guard.Acute(workingPressureAngle, "the working pressure angle"))),
            "the tip contact ratio");

    /// <summary>Tooth loss factor H_v: mean sliding velocity weighted by load, over the velocity of the base circles.</summary>
    /// <remarks>
    /// <code>H_v = 2·π · (1/z₁ + 1/z₂) / cos β_b · ∫ |s|·w ds,  s from −ε₂ to ε₁</code>
    /// <code>1 − ε₂ ≥ 0 and ε₁ ≤ 1: H_v = π · (1/z₁ + 1/z₂) / cos β_b · (1 − ε_α + ε₁² + ε₂²),  ε_α = ε₁ + ε₂</code>
    /// Symbols: z teeth, internal negative, index 1 the pinion; β_b base helix angle, α_a tip, α_wt working transverse pressure
    /// angle, rad; ε₁, ε₂ tip contact ratios; s place on the path of contact from the pitch point, in base pitches; w share of the
    /// load: 1 from ε₁ − 1 to 1 − ε₂, where one pair is in contact, else ½.<br/>
    /// Source: the closed form ISO/TR 14179-2; Niemann and Winter, Maschinenelemente II; it is this integral with the pitch point in
    /// single contact. Elsewhere the integral itself, with the load shared in the same way.<br/>
    /// Valid for: 1 ≤ ε_α ≤ 2; no involute interference; both tips beyond the pitch point.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside of that.</exception>
    public static double LossFactor(
        int teeth1,
        int teeth2,
        double baseHelixAngle,
        double tipPressureAngle1,
        double tipPressureAngle2,
        double workingPressureAngle)
    {
        var tip1 = TipContactRatio(teeth1, tipPressureAngle1, workingPressureAngle);
        var tip2 = TipContactRatio(teeth2, tipPressureAngle2, workingPressureAngle);
        if (tip1 < 0 || tip2 < 0)
        {
            throw Guard.Because(
                $"no loss factor: a tip does not reach the pitch point (tip contact ratios {tip1:0.###} and {tip2:0.###})");
        }

        // Contact on the mate's addendum must stay above this gear's base circle; on a ring it always does.
        var reach = Math.Tan(workingPressureAngle) / (2 * Math.PI);
        if ((teeth1 > 0 && tip2 >= teeth1 * reach) || (teeth2 > 0 && tip1 >= teeth2 * reach))
        {
            throw Guard.Because(
                $"no loss factor: a tip asks for contact below the mate's base circle (involute interference)");
        }

        // A contact ratio of exactly 1 or 2 may come out a rounding beside it.
        var ratio = tip1 + tip2;
        if (ratio is not (>= 1 - Rounding and <= 2 + Rounding))
        {
            throw Guard.Because(
                $"no loss factor: its source covers transverse contact ratios from 1 to 2; it is {ratio:0.###}");
        }

        // The integral of |s| is s·|s|/2. Half the load over the whole path, the other half over single contact alone.
        static double Integral(double from, double to) => (to * Math.Abs(to) - from * Math.Abs(from)) / 2;
        return 2 * Math.PI * (1.0 / teeth1 + 1.0 / teeth2) / Math.Cos(Guard.Helix(baseHelixAngle))
            * (Integral(-tip2, tip1) + Integral(tip1 - 1, 1 - tip2)) / 2;
    }

    /// <summary>Efficiency η of one mesh.</summary>
    /// <remarks>
    /// <code>η = 1 − μ_m · H_v</code>
    /// Symbols: μ_m mean coefficient of friction in the mesh; H_v tooth loss factor.<br/>
    /// Source: ISO/TR 14179-2; Niemann and Winter, Maschinenelemente II.<br/>
    /// Valid for: load losses only; no churning, no bearings. A result above zero.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double MeshEfficiency(double friction, double lossFactor)
    {
        var efficiency = 1 - Guard.NotNegative(friction, "the friction") * Guard.NotNegative(lossFactor, "the loss factor");
        return efficiency is > 0 and <= 1
            ? efficiency
            : throw Guard.Because(
                $"no mesh efficiency: friction {friction:0.####} and loss factor {lossFactor:0.####} would give {efficiency:0.####}");
    }
}
