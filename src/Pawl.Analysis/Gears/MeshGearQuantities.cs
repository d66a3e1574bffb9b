using Pawl.Analysis.Core;
using Pawl.Mechanics.Gears;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;

namespace Pawl.Analysis.Gears;

/// <summary>What the spec says of a gear and of one of its meshes.</summary>
public sealed record MeshGear(MeshSpec Mesh, GearSpec Gear);

/// <summary>A gear in one of its meshes.</summary>
public sealed class MeshGearQuantities : Section<MeshGear>
{
    private const string Iso = "ISO 21771";

    public static readonly NumberDefinition<MeshGear> WorkingPitchDiameter =
        Number("working_pitch_diameter", "d_w", "Working pitch diameter", Units.Millimetre)
        .By("d_w = d_b / cos α_wt", Iso)
        .From(Of("gear", static () => G.BaseDiameter), Of("mesh", static () => MeshQuantities.WorkingPressureAngle), MeshGeometry.WorkingPitchDiameter);

    public static readonly NumberDefinition<MeshGear> TipClearance =
        Number("tip_clearance", "c", "Tip clearance against the mate's root", Units.Millimetre)
        .By("c = a_w − d_a1/2 − d_f2/2 (signed; internal pair: r_f2 − a_w − r_a1)", Iso).Scaled(0.1)
        .From(
            OfRow("gear", static () => G.Kind), OfRow("mate", static () => G.Kind), Of("mesh", static () => MeshQuantities.CentreDistance),
            Of("gear", static () => G.TipDiameter, "d_a1"), Of("mate", static () => G.RootDiameter, "d_f2"),
            static (kind, mate, aw, tip, root) => MeshGeometry.TipClearance(Turn(kind, mate) * aw, G.Sign(kind) * tip, G.Sign(mate) * root));

    public static readonly NumberDefinition<MeshGear> TipClearanceFactor = Number("tip_clearance_factor", "c/m_n", "Tip clearance per module")
        .By("c / m_n", Iso).Scaled(0.1)
        .From(TipClearance, Of("mesh", static () => MeshQuantities.Module), static (clearance, m) => clearance / m);

    public static readonly NumberDefinition<MeshGear> CurvatureAtStart =
        Number("curvature_at_start", "ρ_A", "Radius of curvature where contact with the mate's tip would start", Units.Millimetre)
        .By("ρ_A = a_w·sin α_wt − ½√(d_Na2² − d_b2²)", Iso)
        .Noted("external pairs; zero lies on the base circle, where the involute ends")
        .When(OfRow("mesh", static () => MeshQuantities.Kind), static kind => kind == G.External)
        .From(
            Of("mesh", static () => MeshQuantities.CentreDistance), Of("mesh", static () => MeshQuantities.WorkingPressureAngle),
            Of("mate", static () => G.ActiveTipDiameter, "d_Na2"), Of("mate", static () => G.BaseDiameter, "d_b2"),
            static (aw, angle, tip, ground) => PathOfContact.CurvatureOpposite(aw, angle, PathOfContact.CurvatureAt(tip, ground)));

    public static readonly NumberDefinition<MeshGear> StartOfActiveProfile =
        Number("start_of_active_profile", "d_Nf", "Start of active profile", Units.Millimetre)
        .By("d_Nf = √(4·(a_w·sin α_wt − ½√(d_Na2² − d_b2²))² + d_b1²)", Iso).Turns()
        .From(
            OfRow("gear", static () => G.Kind), OfRow("mate", static () => G.Kind), Of("gear", static () => G.BaseDiameter, "d_b1"),
            Of("mesh", static () => MeshQuantities.CentreDistance), Of("mesh", static () => MeshQuantities.WorkingPressureAngle),
            Of("mate", static () => G.ActiveTipDiameter, "d_Na2"), Of("mate", static () => G.BaseDiameter, "d_b2"),
            static (kind, mate, own, aw, angle, tip, ground) => G.Sign(kind) * PathOfContact.ActiveProfileStart(
                G.Sign(kind) * own, Turn(kind, mate) * aw, angle, PathOfContact.CurvatureAt(G.Sign(mate) * tip, G.Sign(mate) * ground)));

    public static readonly NumberDefinition<MeshGear> FormMargin =
        Number("form_margin", "d_Nf − d_Ff", "Start of active profile above the root form circle", Units.Millimetre)
        .By("d_Nf − d_Ff (internal: d_Ff − d_Nf)", Iso).Scaled(0.1)
        .From(
            OfRow("gear", static () => G.Kind), StartOfActiveProfile, Of("gear", static () => G.RootFormDiameter),
            static (kind, start, form) => G.Sign(kind) * (start - form));

    public static readonly NumberDefinition<MeshGear> SpecificSliding = Number("specific_sliding", "ζ", "Maximum specific sliding")
        .By("ζ_1 = 1 − (ρ_2/ρ_1)·(z_1/z_2) at the start of active profile, magnitude", Iso).Turns()
        .From(
            OfRow("gear", static () => G.Kind), OfRow("mate", static () => G.Kind), Of("gear", static () => G.Teeth, "z_1"),
            Of("mate", static () => G.Teeth, "z_2"), Of("mesh", static () => MeshQuantities.CentreDistance),
            Of("mesh", static () => MeshQuantities.WorkingPressureAngle), Of("mate", static () => G.ActiveTipDiameter, "d_Na2"),
            Of("mate", static () => G.BaseDiameter, "d_b2"),
            static (kind, mate, z1, z2, aw, angle, tip, ground) =>
            {
                var opposite = PathOfContact.CurvatureAt(G.Sign(mate) * tip, G.Sign(mate) * ground);
                var own = PathOfContact.CurvatureOpposite(Turn(kind, mate) * aw, angle, opposite);
                return Math.Abs(Sliding.Specific(own, opposite, G.Signed(kind, z1), G.Signed(mate, z2)));
            });

    public static readonly NumberDefinition<MeshGear> FaceWidthRatio = Number("face_width_ratio", "b/d", "Face width per reference diameter")
        .By("b / d", "closed form")
        .When(static s => !G.IsInternal(s.Gear))
        .From(Of("mesh", static () => MeshQuantities.CommonFaceWidth), Of("gear", static () => G.ReferenceDiameter), MeshGeometry.FaceWidthRatio);

    private static int Turn(string kind, string mate) => G.Sign(kind) * G.Sign(mate);
}
