using Pawl.Analysis.Core;
using Pawl.Mechanics.Bearings;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using B = Pawl.Analysis.Bearings.BearingQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>A bearing as the spring that a shaft rests on.</summary>
public sealed class BearingStiffnessQuantities : Section<BearingSpec>
{
    public static readonly NumberDefinition<BearingSpec> RadialStiffness =
        Number("radial_stiffness", "c_r", "Radial stiffness at the rated load", Units.NewtonPerMillimetre)
        .By(
            "as stated; else Q = 5·F_r/(Z·i·cos α), balls: c_r = 1.5·F_r·cos α/(4.36·10⁻⁴·(Q²/D_w)^(1/3)), rollers: c_r = F_r·L_we^0.8·cos α/(0.9·7.68·10⁻⁵·Q^0.9)",
            "Palmgren, after textbooks of rolling bearings", Certainty.Memory)
        .Noted("small play, stiff seats; softer under less load").Scaled(1000)
        .Stated(static s => s.RadialStiffness)
        .From(B.Arrangement, B.RadialLoad, B.ElementCount, B.ElementDiameter, B.ElementLength.Or(double.NaN), static (place, load, count, diameter, length) =>
        {
            var (all, angle) = (count * place.Count * (place.Single!.Rows), place.Single.ContactAngle);
            return place.Single.IsBall
                ? BearingStiffness.OfBalls(load, all, diameter, angle)
                : BearingStiffness.OfRollers(load, all, length, angle);
        });
}
