using Pawl.Analysis.Core;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;
using M = Pawl.Analysis.Gears.MaterialQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>The flank of one gear as running-in sees it.</summary>
internal readonly record struct FlankSteel(MaterialClass Class, double Limit);

/// <summary>Formulas of the load factors, which a mesh has at its rated load and again in every load case.</summary>
internal static class LoadFactors
{
    /// <summary>Class and σ_Hlim of the gear with fewer teeth.</summary>
    public static readonly IInput<FlankSteel> Pinion = Steel("pinion", "1");

    public static readonly IInput<FlankSteel> Wheel = Steel("wheel", "2");

    /// <summary>Numbers of teeth, the second with the sign of its gear.</summary>
    public static readonly IInput<(int Pinion, int Wheel)> Teeth = Join(
        OfRow("wheel", static () => G.Kind), Of("pinion", static () => G.Teeth, "z_1"), Of("wheel", static () => G.Teeth, "z_2"),
        static (kind, z1, z2) => ((int)z1, G.Signed(kind, z2)));

    /// <summary>The greater of both tooth depths.</summary>
    public static readonly IInput<double> Depth = Join(
        Of("pinion", static () => G.ToothDepth, "h_1"), Of("wheel", static () => G.ToothDepth, "h_2"), static (first, second) => Math.Max(first, second));

    /// <summary>Tip reliefs as drawn; 0 where none is.</summary>
    public static readonly IInput<(double Pinion, double Wheel)> Reliefs = Join(
        OfOr("pinion", static () => G.TipRelief, 0, "C_a1"), OfOr("wheel", static () => G.TipRelief, 0, "C_a2"),
        static (pinion, wheel) => (pinion, wheel));

    private static IInput<FlankSteel> Steel(string role, string index) => Join(
        OfRow(role, static () => M.Class), Of(role, static () => M.ContactLimit, $"σ_Hlim,{index}"),
        static (name, limit) => new FlankSteel(ClassOf(name), limit));

    public static MaterialClass ClassOf(string name) =>
        AllowableStress.Find(name) ?? throw Guard.Because($"{name} is no class of ISO 6336-5");

    /// <summary>Through-hardened or normalised: the flank wears in, hardens under a hard mate, and its notches count by the yield strength.</summary>
    public static bool IsSoft(MaterialClass material) =>
        material is MaterialClass.Normalised or MaterialClass.CarbonThroughHardened or MaterialClass.AlloyThroughHardened;

    public static double ToothRatio((int Pinion, int Wheel) teeth) => (double)teeth.Wheel / teeth.Pinion;

    public static double Parameter(double speed, (int Pinion, int Wheel) teeth) => DynamicFactor.Parameter(speed, teeth.Pinion, ToothRatio(teeth));

    public static double Dynamic(double parameter, double lineLoad, double grade, double overlap) =>
        DynamicFactor.MethodC(parameter, lineLoad, (int)grade, overlap);

    /// <summary>B_k of the tip whose relief leaves more; running-in makes one where none is drawn.</summary>
    public static double Relief(double stiffness, (double Pinion, double Wheel) drawn, double runIn, double lineLoad, double grade)
    {
        return Math.Max(Of(drawn.Pinion), Of(drawn.Wheel));

        double Of(double relief) => DynamicFactorB.Relief(stiffness, relief > 0 ? relief : runIn, lineLoad, (int)grade);
    }

    public static double Stiffness(double contactRatio, double lineLoad) =>
        MeshStiffness.Transverse(MeshStiffness.SinglePair(lineLoad), contactRatio);

    /// <summary>F_βy, mm.</summary>
    public static double MisalignmentRunIn(double misalignment, FlankSteel pinion, FlankSteel wheel, double speed) =>
        misalignment - RunningIn.OfPair(
            RunningIn.AlongFace(pinion.Class, pinion.Limit, speed, misalignment),
            RunningIn.AlongFace(wheel.Class, wheel.Limit, speed, misalignment));

    /// <summary>f_pb − y_α or f_fα − y_f, mm.</summary>
    public static double PitchRunIn(double deviation, FlankSteel pinion, FlankSteel wheel, double speed) =>
        deviation - RunningIn.OfPair(
            RunningIn.AlongProfile(pinion.Class, pinion.Limit, speed, deviation),
            RunningIn.AlongProfile(wheel.Class, wheel.Limit, speed, deviation));

    public static double Face(double misalignment, double stiffness, double lineLoad, double dynamic) =>
        FaceLoadFactor.Contact(misalignment, MeshStiffness.AlongFace(stiffness), lineLoad * dynamic);

    public static double Transverse(
        double total, double transverse, double contactRatioFactor, double stiffness, double deviation, double lineLoad, double dynamic, double face) =>
        TransverseLoadFactor.Contact(
            TransverseLoadFactor.Unlimited(stiffness, deviation, 0, lineLoad * dynamic * face, total), total, transverse, contactRatioFactor);

    public static double TransverseOfRoot(
        double total, double transverse, double stiffness, double deviation, double lineLoad, double dynamic, double face) =>
        TransverseLoadFactor.Root(TransverseLoadFactor.Unlimited(stiffness, deviation, 0, lineLoad * dynamic * face, total), total, transverse);
}
