using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;
using M = Pawl.Analysis.Gears.MaterialQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>What the contact asks of the case of one gear.</summary>
public sealed class CaseStrengthQuantities : Section<MeshGear>
{
    public static readonly NumberDefinition<MeshGear> DepthForContact =
        Number("case_depth_for_contact", "Eht_H", "Case depth that the shear below the contact needs", Units.Millimetre).Turns()
        .By("Eht_H = σ_H·d_w1·sin α_wt/(U_H·cos β_b) · u/(u + 1), d_w1 = 2·a_w/(u + 1)", "ISO 6336-5", Certainty.Memory)
        .Noted("U_H = 66 000 MPa, for quality ML 44 000 MPa: not sure")
        .When(static (_, subject) => MaterialQuantities.Of(subject.Reach("gear")!).Class == MaterialClass.CaseHardened)
        .From(
            FlankQuantities.ContactStress, Of("mesh", static () => Q.CentreDistance), Of("mesh", static () => Q.WorkingPressureAngle),
            Of("pinion", static () => G.BaseHelixAngle), LoadFactors.Teeth, OfRow("gear", static () => M.Quality),
            static (stress, centres, angle, helix, teeth, quality) =>
            {
                var ratio = LoadFactors.ToothRatio(teeth);
                return CaseDepth.ForContact(
                    stress, 2 * centres / Math.Abs(ratio + 1), angle, helix, ratio, CaseDepth.ShearStrength(MaterialBuilder.QualityOf(quality)));
            });
}
