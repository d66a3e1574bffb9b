using Pawl.Mechanics.Gears;

namespace Pawl.Mechanics.Rating;

/// <summary>Root sections by the tool that cuts them, with the force at the outer point of single pair contact.</summary>
public static class RootSections
{
    private const double ExternalLean = Math.PI / 6;
    private const double InternalLean = Math.PI / 3;

    // What of the straight flank's depth may reach past the limit of undercut.
    private const double PracticalUndercut = 1 - 14 / 17.1;

    /// <summary>Root section of an external gear cut by a rack or a hob: tangents at 30°.</summary>
    /// <remarks>
    /// <code>
    /// G = ρ_fP* − h_fP* + x,  E = π/4 − h_fP*·tan α_n + s_pr*/cos α_n − (1 − sin α_n)·ρ_fP*/cos α_n
    /// z_n = z/(cos² β_b · cos β),  H = (2/z_n)·(π/2 − E) − π/3,  θ = (2·G/z_n)·tan θ − H
    /// s_Fn/m_n = z_n·sin(π/3 − θ) + √3·(G/cos θ − ρ_fP*)
    /// ρ_F/m_n = ρ_fP* + 2·G² / ( cos θ·(z_n·cos² θ − 2·G) )
    /// ε_αn = ε_α/cos² β_b,  d_an = d_n + d_a − d,  d_en by <see cref="OuterSingleContactDiameter"/>
    /// γ_e = (π/2 + 2·x·tan α_n)/z_n + inv α_n − inv α_en,  α_Fen = α_en − γ_e
    /// h_Fe = d_bn/(2·cos α_Fen) − m_n·[ z_n·cos(π/3 − θ) + G/cos θ − ρ_fP* ]/2
    /// </code>
    /// Symbols: z teeth, m_n normal module, mm; α_n normal pressure angle, β, β_b helix angle at reference and base cylinder,
    /// rad; x profile shift; h_fP*, ρ_fP*, s_pr* of the rack; ε_α transverse contact ratio of the mesh rated (1 puts the force at
    /// the tip); d diameters, mm, index n of the virtual spur gear.<br/>
    /// Source: ISO 6336-3, method B, tooth form of external gears (h_Fe written shorter: the line of the force is tangent to
    /// d_bn).<br/>
    /// Valid for: external gears; a tangent point on the fillet; 1 ≤ q_s &lt; 8; no undercut beyond the practical limit of the
    /// textbooks, 14 teeth in place of 17.1 at 20° and x = 0 (from memory), carried over to other racks as a part of the depth of
    /// the tool's straight flank.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static RootSection ByRack(RatedTooth tooth, RackTool rack, double transverseContactRatio) =>
        Section(CutByRack(tooth, rack), tooth.TipDiameter, transverseContactRatio);

    /// <summary>The root of an external gear as a rack or a hob cuts it; where the force stands does not matter to it.</summary>
    /// <remarks>Source and validity as <see cref="ByRack"/>; the tip diameter of the tooth is not looked at.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static RootCut CutByRack(RatedTooth tooth, RackTool rack)
    {
        if (Guard.Teeth(tooth.Teeth) < 0)
        {
            throw Guard.Because($"no root section: a rack cannot cut an internal gear; state the pinion-type cutter");
        }

        var module = Guard.Positive(tooth.NormalModule, "the normal module");
        var normal = Guard.AcuteAboveZero(tooth.NormalPressureAngle, "the normal pressure angle");
        RefuseUndercut(tooth, rack);
        var baseHelix = ToothGeometry.BaseHelixAngle(normal, tooth.HelixAngle);
        var cosineSquare = Math.Cos(baseHelix) * Math.Cos(baseHelix);
        var teeth = tooth.Teeth / (cosineSquare * Math.Cos(tooth.HelixAngle));
        var (sine, cosine) = Math.SinCos(normal);
        var radius = NotNegative(rack.RootRadiusFactor, "the root radius factor");
        var offset = Math.PI / 4 - rack.DedendumFactor * sine / cosine + rack.ResidualUndercut / cosine
            - (1 - sine) * radius / cosine;
        if (!(offset >= -1e-12))
        {
            throw Guard.Because(
                $"no root section: the root radius {radius:0.###}·m is greater than the space of the basic rack allows");
        }

        var generation = new RootGeneration(
            teeth,
            teeth * module / 2,
            0,
            (rack.DedendumFactor - radius - tooth.ProfileShift) * module,
            radius * module,
            offset * module);
        var reference = ToothGeometry.ReferenceDiameter(
            tooth.Teeth, ToothGeometry.TransverseModule(module, tooth.HelixAngle));
        return new(generation, ExternalLean, Math.PI / 2 - normal, teeth, tooth, teeth * module - reference, 1 / cosineSquare);
    }

    /// <summary>Root section of a gear, internal or external, cut by a pinion-type cutter: tangents at 60° or 30°.</summary>
    /// <remarks>
    /// <code>
    /// z_n = z/(cos² β_b · cos β),  z_0n likewise,  d_a0n = z_0n·m_n + d_a0 − z₀·m_n/cos β
    /// inv α_w0 = inv α_n + 2·tan α_n·(x + x₀)/(z_n + z_0n),  r_w = m_n·z_n·cos α_n/(2·cos α_w0),  r_w0 likewise with z_0n
    /// e = d_a0n/2 − ρ_a0,  cos α_M = r_b0/e,  t₀ = r_w0·[ (π/2 + 2·x₀·tan α_n)/z_0n + inv α_n − ρ_a0/r_b0 − inv α_M ]
    /// </code>
    /// then the point of the fillet at 60° (internal) or 30° (external) as the envelope of the cutter's tip rounding;
    /// h_Fe = ±( |d_bn|/(2·cos α_Fen) − y ) with α_Fen = α_en − γ_e, signed, as for external gears.<br/>
    /// Symbols: z teeth, internal negative, z₀ of the cutter, index n of the virtual spur gear; m_n normal module, mm; α_n normal
    /// pressure angle, β, β_b helix angle at reference and base cylinder, rad; x, x₀ profile shifts; d_a0 tip
    /// diameter, ρ_a0 tip radius of the cutter in the normal section, mm; α_w0 working angle of generation; e, r radii, mm; t₀ half
    /// distance of the rounding centres of a cutter tooth as arc on r_w0, mm.<br/>
    /// Source: the tangent angles and the virtual spur gear of ISO 6336-3; the fillet by the law of gearing and Euler–Savary
    /// (RootGeneration), not by the rack that stood for the cutter in the edition of 1996.<br/>
    /// Valid for: an involute cutter of the helix of the work with a circular tip rounding that touches flank and tip circle; a
    /// tangent point on the fillet; 1 ≤ q_s &lt; 8.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static RootSection ByPinionCutter(RatedTooth tooth, PinionCutter cutter, double transverseContactRatio) =>
        Section(CutByPinionCutter(tooth, cutter), tooth.TipDiameter, transverseContactRatio);

    /// <summary>The root of a gear as a pinion-type cutter cuts it; where the force stands does not matter to it.</summary>
    /// <remarks>Source and validity as <see cref="ByPinionCutter"/>; the tip diameter of the tooth is not looked at.</remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static RootCut CutByPinionCutter(RatedTooth tooth, PinionCutter cutter)
    {
        var shaping = new RootShaping(tooth, cutter);
        shaping.RefuseUndercut();
        var baseCosine = Math.Cos(ToothGeometry.BaseHelixAngle(tooth.NormalPressureAngle, tooth.HelixAngle));
        var reference = ToothGeometry.ReferenceDiameter(tooth.Teeth, ToothGeometry.TransverseModule(tooth.NormalModule, tooth.HelixAngle));
        return new(
            shaping.Generation, tooth.Teeth > 0 ? ExternalLean : InternalLean, Math.PI / 2 - shaping.NormalWorkingAngle, shaping.VirtualTeeth, tooth,
            shaping.VirtualTeeth * tooth.NormalModule - reference, 1 / (baseCosine * baseCosine));
    }

    /// <summary>Diameter d_e of the outer point of single pair contact, with the sign of d_b.</summary>
    /// <remarks>
    /// <code>d_e = sign·2·√( ρ_e² + d_b²/4 ),  ρ_e = ρ_a − (ε_α − 1)·p_bt,  ρ_a = sign·√(d_a² − d_b²)/2</code>
    /// Symbols: d_a tip, d_b base diameter, mm, signed; ε_α contact ratio; p_bt base pitch, mm; of the virtual gear if
    /// helical.<br/>
    /// Source: ISO 6336-3, diameter of the outer point of single pair contact; with signs it serves internal gears, whose contact
    /// point moves outward.<br/>
    /// Valid for: ε_α ≥ 1. At 1 the force stands at the tip.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OuterSingleContactDiameter(
        double tipDiameter, double baseDiameter, double contactRatio, double basePitch)
    {
        if (!(contactRatio >= 1) || !double.IsFinite(contactRatio))
        {
            throw Guard.Because(
                $"no point of single pair contact: the contact ratio must be at least 1; it is {contactRatio:0.####}");
        }

        var curvature = PathOfContact.CurvatureAt(tipDiameter, baseDiameter)
            - (contactRatio - 1) * Guard.Positive(basePitch, "the base pitch");
        return PathOfContact.DiameterAt(curvature, baseDiameter);
    }

    private static RootSection Section(RootCut cut, double tipDiameter, double contactRatio)
    {
        var angle = cut.FilletAngle();
        var (chord, radius) = (cut.Chord(angle), cut.FilletRadius(angle));
        var load = cut.LoadAngle(tipDiameter, contactRatio);
        return new(chord, cut.LeverArm(angle, load), radius, angle, load);
    }

    private static void RefuseUndercut(RatedTooth tooth, RackTool rack)
    {
        var least = Root.MinProfileShift(
            tooth.Teeth,
            tooth.HelixAngle,
            tooth.NormalPressureAngle,
            ToothGeometry.TransversePressureAngle(tooth.NormalPressureAngle, tooth.HelixAngle),
            rack.DedendumFactor,
            rack.RootRadiusFactor);
        var straight = rack.DedendumFactor - rack.RootRadiusFactor * (1 - Math.Sin(tooth.NormalPressureAngle));
        var practical = least - straight * PracticalUndercut;
        if (!(tooth.ProfileShift >= practical))
        {
            throw Guard.Because(
                $"no root section: the root is undercut (profile shift {tooth.ProfileShift:0.####} is below the practical limit {practical:0.####})");
        }
    }

    private static double NotNegative(double value, string name) =>
        value >= 0 && double.IsFinite(value)
            ? value
            : throw Guard.Because($"{name} must not be below zero; it is {value:0.####}");
}
