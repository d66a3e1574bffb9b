namespace Pawl.Mechanics.Rating;

/// <summary>The section of a tooth at its root that bending is calculated with, in the normal section; lengths in mm.</summary>
/// <param name="Chord">Root chord s_Fn between the tangent points, mm.</param>
/// <param name="LeverArm">Bending arm h_Fe, from the chord to where the line of the force meets the middle of the tooth,
/// mm.</param>
/// <param name="FilletRadius">Radius of the fillet ρ_F at the tangent point, mm.</param>
/// <param name="FilletAngle">θ: angle between the normal of the fillet at the tangent point and the line of centres while the
/// tool cuts that point, rad.</param>
/// <param name="LoadAngle">Load direction angle α_Fen, against the square to the middle of the tooth, rad.</param>
/// <remarks>Source: ISO 6336-3, tooth root normal chord, bending moment arm, notch parameter.</remarks>
public readonly record struct RootSection(
    double Chord, double LeverArm, double FilletRadius, double FilletAngle, double LoadAngle)
{
    /// <summary>Notch parameter q_s = s_Fn/(2·ρ_F).</summary>
    public double NotchParameter =>
        Guard.Positive(Chord, "the root chord s_Fn", "mm") / (2 * Guard.Positive(FilletRadius, "the root fillet radius ρ_F", "mm"));

    /// <summary>L = s_Fn/h_Fe.</summary>
    public double ChordOverArm =>
        Guard.Positive(Chord, "the root chord s_Fn", "mm") / Guard.Positive(LeverArm, "the lever arm h_Fe", "mm");
}

/// <summary>A tooth whose root is rated. Signs after ISO 21771: an internal gear has negative teeth and tip diameter.</summary>
/// <param name="Teeth">Number of teeth z.</param>
/// <param name="NormalModule">Normal module m_n, mm.</param>
/// <param name="NormalPressureAngle">Normal pressure angle α_n, rad.</param>
/// <param name="HelixAngle">Helix angle β, rad.</param>
/// <param name="ProfileShift">Profile shift coefficient x; x_E for the root as cut.</param>
/// <param name="TipDiameter">Tip diameter d_a, mm; the effective one when the tip is chamfered.</param>
public readonly record struct RatedTooth(
    int Teeth, double NormalModule, double NormalPressureAngle, double HelixAngle, double ProfileShift, double TipDiameter);

/// <summary>What a rack tool leaves at the root, as the basic rack of the gear states it, in multiples of m_n.</summary>
/// <param name="DedendumFactor">h_fP*.</param>
/// <param name="RootRadiusFactor">ρ_fP*.</param>
/// <param name="ResidualUndercut">s_pr*: protuberance of the tool less the grinding stock; 0 without.</param>
public readonly record struct RackTool(double DedendumFactor, double RootRadiusFactor, double ResidualUndercut = 0);

/// <summary>A pinion-type cutter (shaper) of the helix of its work.</summary>
/// <param name="Teeth">Number of teeth z₀.</param>
/// <param name="TipDiameter">Tip diameter d_a0, mm.</param>
/// <param name="TipRadius">Radius ρ_a0 of the rounding of its tip in the normal section, mm.</param>
/// <param name="ProfileShift">Profile shift coefficient x₀; it falls as the cutter is sharpened.</param>
public readonly record struct PinionCutter(int Teeth, double TipDiameter, double TipRadius, double ProfileShift)
{
}
