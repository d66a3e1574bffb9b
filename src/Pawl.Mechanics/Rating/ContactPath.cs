namespace Pawl.Mechanics.Rating;

/// <summary>The path of contact of a pair, A to E, measured on the pinion as its radius of curvature ρ₁.</summary>
/// <param name="BaseDiameter1">Base diameter of the pinion d_b1, mm.</param>
/// <param name="BaseDiameter2">Base diameter of its mate d_b2, mm, internal negative.</param>
/// <param name="WorkingPressureAngle">Working transverse pressure angle α_wt, rad.</param>
/// <param name="TipCurvature1">Radius of curvature at the pinion's tip, mm.</param>
/// <param name="TipCurvature2">Radius of curvature at the mate's tip, mm, internal negative.</param>
/// <param name="BasePitch">Transverse base pitch p_bt, mm.</param>
/// <param name="BaseHelixAngle">Base helix angle β_b, rad.</param>
/// <param name="OverlapRatio">Overlap ratio ε_β, 0 for spur gears.</param>
/// <remarks>Radii of curvature along the line of action, transverse: ρ₁ + ρ₂ = ½·(d_b1 + d_b2)·tan α_wt (ISO 21771).</remarks>
public sealed record ContactPath(
    double BaseDiameter1,
    double BaseDiameter2,
    double WorkingPressureAngle,
    double TipCurvature1,
    double TipCurvature2,
    double BasePitch,
    double BaseHelixAngle = 0,
    double OverlapRatio = 0)
{
    /// <summary>ρ₁ + ρ₂ = a_w·sin α_wt, mm, negative for an internal pair.</summary>
    public double CurvatureSum =>
        Guard.Finite(
            (BaseDiameter1 + BaseDiameter2) / 2 * Math.Tan(Guard.AcuteAboveZero(WorkingPressureAngle, "the working pressure angle")),
            "the sum of the radii of curvature");

    /// <summary>ρ₁ at A, the mate's tip, mm.</summary>
    public double Start => Guard.Finite(CurvatureSum - TipCurvature2, "the radius of curvature");

    /// <summary>ρ₁ at E, the pinion's tip, mm.</summary>
    public double End => Guard.Number(TipCurvature1, "the radius of curvature", "mm");

    /// <summary>Transverse contact ratio ε_α.</summary>
    public double ContactRatio => (End - Start) / Guard.Positive(BasePitch, "the base pitch");

    /// <summary>Reduced radius of curvature in the normal section where the pinion has ρ₁, mm.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double ReducedCurvature(double curvature1) =>
        LineContact.ReducedCurvature(curvature1, CurvatureSum - curvature1) / Math.Cos(Guard.Helix(BaseHelixAngle));

    /// <summary>The path itself, if it can be walked from end to end on involutes.</summary>
    internal ContactPath Checked()
    {
        Guard.Positive(BaseDiameter1, "the pinion's base diameter");
        Guard.NotZero(BaseDiameter2, "the mate's base diameter");
        Guard.AcuteAboveZero(WorkingPressureAngle, "the working pressure angle");
        Overlap.UpToOne(OverlapRatio);
        Overlap.Transverse(ContactRatio);
        return Start > 0 && (CurvatureSum - End) * BaseDiameter2 > 0
            ? this
            : throw Guard.Because(
                $"no path of contact: a tip asks for contact below the mate's base circle (involute interference)");
    }
}
