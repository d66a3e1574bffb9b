using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using B = Pawl.Analysis.Rating.MeshDynamicsQuantities;
using C = Pawl.Analysis.Rating.LoadCaseQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using G = Pawl.Analysis.Gears.GearQuantities;
using L = Pawl.Analysis.Rating.MeshLoadQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>What the spec says of a mesh and of a share of the service life or of coasting; with neither, the peak torque.</summary>
public sealed record MeshCase(MeshSpec Mesh, SpectrumBinSpec? Share, CoastSpec? Coast = null);

/// <summary>A mesh in a load case: in a share of the service life, while the output drives, or at the peak torque. Its load factors are those of its own load and speed.</summary>
public sealed class MeshCaseQuantities : Section<MeshCase>
{
    private const string Loads = "ISO 6336-1";

    public static readonly NumberDefinition<MeshCase> TorqueRatio =
        Number("torque_ratio", "r_T", "Torque with its application factor over the rated torque with its own")
        .By("r_T = T/T_in where K_A applies to the torques of the spectrum, and of coasting; else T/(T_in·K_A), as at the peak", "closed form")
        .For(static s => s.Coast is not null).From(
            Of("train", static () => D.CoastTorque), Of("train", static () => TrainQuantities.InputTorque), static (coast, torque) => coast / torque)
        .For(static s => s.Share is null).From(
            Of("train", static () => D.PeakTorque), Of("train", static () => TrainQuantities.InputTorque), Of("train", static () => D.ApplicationFactor),
            static (peak, torque, application) => peak / (torque * application))
        .From(
            Of("case", static () => C.Torque), Of("train", static () => TrainQuantities.InputTorque), Of("train", static () => D.ApplicationFactor),
            OfRow("train", static () => D.SpectrumPeaks), static (share, torque, application, peaks) =>
                share / torque / (peaks == "included" ? application : 1));

    public static readonly NumberDefinition<MeshCase> SpeedRatio = Number("speed_ratio", "r_n", "Speed over the rated speed")
        .By("r_n = n/n_in; 1 at the peak", "closed form")
        .For(static s => s.Coast is not null).From(
            Of("train", static () => D.CoastSpeed), Of("train", static () => TrainQuantities.InputSpeed), static (coast, speed) => coast / speed)
        .For(static s => s.Share is null).From(static () => 1)
        .From(Of("case", static () => C.Speed), Of("train", static () => TrainQuantities.InputSpeed), static (share, speed) => share / speed);

    public static readonly NumberDefinition<MeshCase> CycleShare = Number("cycle_share", "q_N", "Cycles over those of the whole life at the rated speed")
        .By("q_N = q·r_n", "closed form")
        .When(static s => s.Share is not null || s.Coast is not null)
        .For(static s => s.Coast is not null).From(Of("train", static () => D.CoastShare), SpeedRatio, static (share, speed) => share * speed)
        .From(Of("case", static () => C.Share), SpeedRatio, static (share, speed) => share * speed);

    public static readonly NumberDefinition<MeshCase> LineLoad = Loaded("line_load", "w_t", "Line load", Units.NewtonPerMillimetre)
        .By("w_t·r_T", Loads)
        .From(Of("mesh", static () => L.LineLoad), TorqueRatio, static (load, ratio) => load * ratio);

    public static readonly NumberDefinition<MeshCase> PitchLineSpeed = Loaded("pitch_line_speed", "v", "Pitch line speed", Units.MetrePerSecond)
        .By("v·r_n", "closed form")
        .From(Of("mesh", static () => Q.PitchLineSpeed), SpeedRatio, static (speed, ratio) => speed * ratio);

    public static readonly NumberDefinition<MeshCase> MeshStiffness =
        Loaded("mesh_stiffness", "c_γα", "Mesh stiffness per unit of face width", Units.Megapascal)
        .By("as at the rated load", Loads, Certainty.Memory)
        .From(Of("mesh", static () => Q.TransverseContactRatio), LineLoad, LoadFactors.Stiffness);

    public static readonly NumberDefinition<MeshCase> ResonanceRatio =
        Loaded("resonance_ratio", "N", "Speed of the pinion against the carrier over its resonance speed")
        .By("N = v/(π·d_1)/n_E1, n_E1 as at the rated load", Loads, Certainty.Memory)
        .From(
            PitchLineSpeed, Of("pinion", static () => G.ReferenceDiameter, "d_1"), MeshStiffness, Of("mesh", static () => B.ReducedMass),
            Of("pinion", static () => G.Teeth, "z_1"), static (speed, d, stiffness, mass, teeth) =>
                MeshResonance.Ratio(2 * speed / d, MeshResonance.Speed(stiffness, mass, (int)teeth)));

    public static readonly NumberDefinition<MeshCase> ResonanceLimit = Loaded("resonance_limit", "N_S", "Where the main resonance range begins")
        .By("as at the rated load", Loads, Certainty.Memory)
        .From(LineLoad, MeshResonance.LowerLimit);

    public static readonly NumberDefinition<MeshCase> ResonanceDistance =
        Loaded("resonance_distance", "", "Distance of the resonance ratio from the main resonance range")
        .By("max(N_S − N, N − 1.15)", Loads).Turns()
        .From(ResonanceRatio, ResonanceLimit, MeshResonance.Distance);

    public static readonly NumberDefinition<MeshCase> RunInPitchDeviation =
        Loaded("run_in_pitch_deviation", "f_pb − y_α", "Base pitch deviation after running-in", Units.Micrometre)
        .By("as at the rated load", Loads, Certainty.Memory)
        .From(Of("mesh", static () => L.BasePitchDeviation), LoadFactors.Pinion, LoadFactors.Wheel, PitchLineSpeed, LoadFactors.PitchRunIn);

    public static readonly NumberDefinition<MeshCase> RunInProfileDeviation =
        Loaded("run_in_profile_deviation", "f_fα − y_f", "Profile form deviation after running-in", Units.Micrometre)
        .By("as at the rated load", Loads, Certainty.Memory)
        .When(static s => s.Mesh.DynamicFactor is null)
        .From(Of("mesh", static () => B.ProfileDeviation), LoadFactors.Pinion, LoadFactors.Wheel, PitchLineSpeed, LoadFactors.PitchRunIn);

    public static readonly NumberDefinition<MeshCase> DynamicFactorOfB = Loaded("dynamic_factor_b", "K_vB", "Dynamic factor by method B")
        .By("as at the rated load", B.MethodB, Certainty.Memory).Turns()
        .When(static s => s.Mesh.DynamicFactor is null)
        .From(
            ResonanceRatio, ResonanceLimit, RunInPitchDeviation, RunInProfileDeviation,
            Join(LoadFactors.Reliefs, Of("mesh", static () => B.RunInRelief), static (drawn, runIn) => (drawn, runIn)), LineLoad,
            Of("mesh", static () => L.AccuracyGrade), Of("mesh", static () => Q.TotalContactRatio),
            static (ratio, limit, pitch, profile, relief, load, grade, total) =>
            {
                var stiffness = Mechanics.Rating.MeshStiffness.SinglePair(load);
                return DynamicFactorB.Factor(
                    ratio, limit, DynamicFactorB.Deviation(stiffness, pitch, load), DynamicFactorB.Deviation(stiffness, profile, load),
                    LoadFactors.Relief(stiffness, relief.drawn, relief.runIn, load, grade), total);
            });

    public static readonly NumberDefinition<MeshCase> DynamicFactorOfC = Loaded("dynamic_factor_c", "K_vC", "Dynamic factor by method C")
        .By("as at the rated load", B.MethodC, Certainty.Published)
        .When(static s => s.Mesh.DynamicFactor is null)
        .From(
            PitchLineSpeed, LoadFactors.Teeth, LineLoad, Of("mesh", static () => L.AccuracyGrade), Of("mesh", static () => Q.OverlapRatio),
            static (speed, teeth, load, grade, overlap) => LoadFactors.Dynamic(LoadFactors.Parameter(speed, teeth), load, grade, overlap));

    public static readonly NumberDefinition<MeshCase> DynamicFactor = Loaded("dynamic_factor", "K_v", "Dynamic factor").AsOne()
        .By("as at the rated load: the larger of K_vB and K_vC, or the one that can be evaluated, or as declared", Loads, Certainty.Memory).Turns()
        .For(static s => s.Mesh.DynamicFactor is not null).From(Of("mesh", static () => L.DynamicFactor), static factor => factor)
        .For(static (_, subject) => B.Has(subject, DynamicFactorOfC) && !B.Has(subject, DynamicFactorOfB)).From(DynamicFactorOfC, static factor => factor)
        .For(static (_, subject) => B.Has(subject, DynamicFactorOfB) && !B.Has(subject, DynamicFactorOfC)).From(DynamicFactorOfB, static factor => factor)
        .From(DynamicFactorOfB, DynamicFactorOfC, Math.Max);

    public static readonly NumberDefinition<MeshCase> RunInMisalignment =
        Loaded("run_in_misalignment", "F_βy", "Misalignment after running-in", Units.Micrometre)
        .By("as at the rated load", Loads, Certainty.Memory)
        .When(static s => s.Mesh.FaceLoadFactor is null)
        .From(
            Of("mesh", static () => L.Misalignment), LoadFactors.Pinion, LoadFactors.Wheel, PitchLineSpeed, LoadFactors.MisalignmentRunIn);

    public static readonly NumberDefinition<MeshCase> FaceLoadFactor = Loaded("face_load_factor", "K_Hβ", "Face load factor of the contact")
        .By("as at the rated load, or as declared", Loads)
        .For(static s => s.Mesh.FaceLoadFactor is not null).From(Of("mesh", static () => L.FaceLoadFactor), static factor => factor)
        .From(RunInMisalignment, MeshStiffness, LineLoad, DynamicFactor, LoadFactors.Face);

    public static readonly NumberDefinition<MeshCase> FaceLoadFactorBending = Loaded("face_load_factor_bending", "K_Fβ", "Face load factor of the root")
        .By("as at the rated load", Loads)
        .From(FaceLoadFactor, Of("mesh", static () => L.RatedFaceWidth), LoadFactors.Depth, Mechanics.Rating.FaceLoadFactor.Root);

    public static readonly NumberDefinition<MeshCase> TransverseLoadFactor =
        Loaded("transverse_load_factor", "K_Hα", "Transverse load factor of the contact")
        .By("as at the rated load", Loads, Certainty.Memory)
        .From(
            Of("mesh", static () => Q.TotalContactRatio), Of("mesh", static () => Q.TransverseContactRatio), Of("mesh", static () => L.ContactRatioFactor),
            MeshStiffness, RunInPitchDeviation, LineLoad, DynamicFactor, FaceLoadFactor, LoadFactors.Transverse);

    public static readonly NumberDefinition<MeshCase> TransverseLoadFactorBending =
        Loaded("transverse_load_factor_bending", "K_Fα", "Transverse load factor of the root")
        .By("as at the rated load", Loads, Certainty.Memory)
        .From(
            Of("mesh", static () => Q.TotalContactRatio), Of("mesh", static () => Q.TransverseContactRatio), MeshStiffness, RunInPitchDeviation, LineLoad,
            DynamicFactor, FaceLoadFactor, LoadFactors.TransverseOfRoot);

    public static readonly NumberDefinition<MeshCase> ContactLoadFactor = Number("contact_load_factor", "K_H", "Load of the contact over the nominal load at the rated torque").AsOne()
        .By("K_H = r_T·K_A·K_γ·K_v·K_Hβ·K_Hα; 0 without load", Loads)
        .From(
            TorqueRatio, Of("train", static () => D.ApplicationFactor), Of("mesh", static () => L.LoadSharing), DynamicFactor, FaceLoadFactor,
            TransverseLoadFactor, Product)
        .From(TorqueRatio, static _ => 0);

    public static readonly NumberDefinition<MeshCase> RootLoadFactor = Number("root_load_factor", "K_F", "Load of the root over the nominal load at the rated torque").AsOne()
        .By("K_F = r_T·K_A·K_γ·K_v·K_Fβ·K_Fα; 0 without load", Loads)
        .From(
            TorqueRatio, Of("train", static () => D.ApplicationFactor), Of("mesh", static () => L.LoadSharing), DynamicFactor, FaceLoadFactorBending,
            TransverseLoadFactorBending, Product)
        .From(TorqueRatio, static _ => 0);

    /// <summary>Adds the load cases of every mesh: the peak, coasting, then the shares of the service life.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var mesh in context.Train?.Meshes ?? [])
            AddAll(context, mesh.Subject);
    }

    private static void AddAll(AnalysisContext context, Subject mesh)
    {
        var spec = (MeshSpec)mesh.Model;
        Add("peak", null, spec.Span);
        if (context.Spec.Duty?.Coast is { } coast)
            Begin("coast", new(spec, null, coast), coast.Torque.Span);
        var shares = ImmutableArray.CreateBuilder<Subject>();
        foreach (var share in context.Spec.Duty?.Spectrum ?? [])
        {
            var name = $"spectrum[{shares.Count}]";
            shares.Add(Add(name, share, share.Span).RelateOptional("case", () => context.Find(SubjectKinds.LoadCase, $"duty.{name}")));
        }

        mesh.RelateAll("shares", () => shares);

        Subject Add(string name, SpectrumBinSpec? share, Specs.Text.SourceSpan span) => Begin(name, new(spec, share), span);

        Subject Begin(string name, MeshCase model, Specs.Text.SourceSpan span) => context
            .Begin(SubjectKinds.MeshCase, $"{mesh.Path}.{name}", span, model)
            .Relate("mesh", mesh).Relate("train", () => mesh.Reach("train"))
            .RelateOptional("pinion", () => mesh.Reach("pinion")).RelateOptional("wheel", () => mesh.Reach("wheel"));
    }

    private static NumberDefinition<MeshCase> Loaded(string name, string symbol, string title, Unit? unit = null) =>
        Number(name, symbol, title, unit).When(TorqueRatio, static ratio => ratio > 0);

    private static double Product(double torque, double application, double sharing, double dynamic, double face, double transverse) =>
        torque * (application * sharing * dynamic * face * transverse);
}
