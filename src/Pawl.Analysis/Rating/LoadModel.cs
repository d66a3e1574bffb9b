using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;

namespace Pawl.Analysis.Rating;

/// <summary>Load factors of a mesh at one load and speed.</summary>
/// <param name="Dynamic">K_v.</param>
/// <param name="FaceContact">K_Hβ.</param>
/// <param name="FaceRoot">K_Fβ.</param>
/// <param name="TransverseContact">K_Hα.</param>
/// <param name="TransverseRoot">K_Fα.</param>
internal readonly record struct LoadFactors(
    double Dynamic, double FaceContact, double FaceRoot, double TransverseContact, double TransverseRoot)
{
    public double Contact => Dynamic * FaceContact * TransverseContact;

    public double Root => Dynamic * FaceRoot * TransverseRoot;
}

/// <summary>What the load factors of a mesh depend on, so that they can be had at any load and speed.</summary>
/// <remarks>At nominal: load and speed change from share to share, the geometry does not.</remarks>
internal sealed record LoadModel
{
    public required int PinionTeeth { get; init; }

    public required double ToothRatio { get; init; }

    public required int Grade { get; init; }

    public required double OverlapRatio { get; init; }

    public required double TransverseContactRatio { get; init; }

    public required double TotalContactRatio { get; init; }

    public required double ContactRatioFactor { get; init; }

    /// <summary>K_v as declared, or null: method C.</summary>
    public double? Dynamic { get; init; }

    /// <summary>K_Hβ as declared, or null: from the misalignment.</summary>
    public double? FaceContact { get; init; }

    public double Misalignment { get; init; }

    public required double BasePitchDeviation { get; init; }

    public required (MaterialClass Class, double Limit) Pinion { get; init; }

    public required (MaterialClass Class, double Limit) Wheel { get; init; }

    /// <summary>b/h of the pair.</summary>
    public required double Slenderness { get; init; }

    /// <param name="lineLoad">With K_A and K_γ, N/mm.</param>
    /// <param name="speed">Pitch line speed, mm/s.</param>
    public LoadFactors At(double lineLoad, double speed)
    {
        var dynamic = Dynamic ?? DynamicFactor.MethodC(
            DynamicFactor.Parameter(speed, PinionTeeth, ToothRatio), lineLoad, Grade, OverlapRatio);
        var stiffness = MeshStiffness.Transverse(MeshStiffness.SinglePair(lineLoad), TransverseContactRatio);
        var face = FaceContact ?? FaceLoadFactor.Contact(
            MisalignmentRunIn(Misalignment, speed, Pinion, Wheel), MeshStiffness.AlongFace(stiffness), lineLoad * dynamic);
        var transverse = TransverseLoadFactor.Unlimited(
            stiffness, BasePitchDeviation, PitchRunIn(BasePitchDeviation, speed, Pinion, Wheel), lineLoad * dynamic * face, TotalContactRatio);
        return new(
            dynamic,
            face,
            FaceLoadFactor.Root(face, Slenderness, 1),
            TransverseLoadFactor.Contact(transverse, TotalContactRatio, TransverseContactRatio, ContactRatioFactor),
            TransverseLoadFactor.Root(transverse, TotalContactRatio, TransverseContactRatio));
    }

    /// <summary>F_βy, mm.</summary>
    public static double MisalignmentRunIn(
        double misalignment, double speed, (MaterialClass Class, double Limit) pinion, (MaterialClass Class, double Limit) wheel) =>
        misalignment - RunningIn.OfPair(
            RunningIn.AlongFace(pinion.Class, pinion.Limit, speed, misalignment),
            RunningIn.AlongFace(wheel.Class, wheel.Limit, speed, misalignment));

    /// <summary>y_α of the pair, mm.</summary>
    public static double PitchRunIn(
        double deviation, double speed, (MaterialClass Class, double Limit) pinion, (MaterialClass Class, double Limit) wheel) =>
        RunningIn.OfPair(
            RunningIn.AlongProfile(pinion.Class, pinion.Limit, speed, deviation),
            RunningIn.AlongProfile(wheel.Class, wheel.Limit, speed, deviation));
}
