using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Materials;
using Pawl.Quantities;
using G = Pawl.Analysis.Gears.GearQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>What the contact asks of the case of one gear.</summary>
public static class CaseStrengthQuantities
{
    public static readonly QuantityKind DepthForContact = new()
    {
        Name = "case_depth_for_contact", Symbol = "Eht_H", Title = "Case depth that the shear below the contact needs", Unit = Units.Millimetre,
        Formula = "Eht_H = σ_H·d_w1·sin α_wt/(U_H·cos β_b) · u/(u + 1), d_w1 = 2·a_w/(u + 1)", Symbols = ["σ_H", "a_w", "α_wt", "β_b", "z_1", "z_2"],
        Source = "ISO 6336-5", Certainty = Certainty.Memory, Note = "U_H = 66 000 MPa, for quality ML 44 000 MPa: not sure",
    };

    public static readonly ImmutableArray<QuantityKind> All = [DepthForContact];
}

/// <summary>The case of one gear under the contact of one mesh.</summary>
internal static class CaseStrength
{
    public static void Add(MeshBuilder mesh, GearBuilder gear)
    {
        if (gear.Material.Class != MaterialClass.CaseHardened)
            return;

        var (pinion, wheel) = mesh.First.Spec.Teeth.Value <= mesh.Second.Spec.Teeth.Value ? (mesh.First, mesh.Second) : (mesh.Second, mesh.First);
        var ratio = (double)wheel.SignedTeeth / pinion.SignedTeeth;
        var shear = CaseDepth.ShearStrength(gear.Material.Quality);
        var s = mesh.Gear(gear);
        s.Add(Quantity.Compute(
            CaseStrengthQuantities.DepthForContact,
            [
                s[FlankQuantities.ContactStress], mesh[Q.CentreDistance], mesh[Q.WorkingPressureAngle], pinion[G.BaseHelixAngle],
                pinion[G.Teeth], wheel[G.Teeth],
            ],
            v => CaseDepth.ForContact(v[0], 2 * v[1] / Math.Abs(ratio + 1), v[2], v[3], ratio, shear)));
    }
}
