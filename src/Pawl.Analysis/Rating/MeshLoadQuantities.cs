using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using static Pawl.Analysis.Core.Inputs;
using D = Pawl.Analysis.Rating.DutyQuantities;
using G = Pawl.Analysis.Gears.GearQuantities;
using M = Pawl.Analysis.Gears.MaterialQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>Forces and load factors of a mesh after ISO 6336-1, and what both flanks share of the contact.</summary>
/// <remarks>The pinion is the gear with fewer teeth; in an internal pair the external one.</remarks>
public sealed class MeshLoadQuantities : Section<MeshSpec>
{
    private const string Loads = "ISO 6336-1";
    private const string Contact = "ISO 6336-2";
    private const string Film = "UR M56.2.10, after ISO 6336-2";

    private static readonly IInput<Elastic> Elastic1 = ElasticOf("pinion", "1");

    private static readonly IInput<Elastic> Elastic2 = ElasticOf("wheel", "2");

    private static readonly IInput<double> Modulus = Join(Elastic1, Elastic2, static (pinion, wheel) => Elastic.Reduced(pinion, wheel));

    private static readonly IInput<double> Softer = Join(
        Of("pinion", static () => M.ContactLimit, "σ_Hlim,1"), Of("wheel", static () => M.ContactLimit, "σ_Hlim,2"),
        static (first, second) => Math.Min(first, second));

    private static readonly IInput<double> Base1 = Of("pinion", static () => G.BaseDiameter, "d_b1");

    private static readonly IInput<double> Base2 = SignedOfWheel(static () => G.BaseDiameter, "d_b2");

    public static readonly NumberDefinition<MeshSpec> RatedFaceWidth = Number("rated_face_width", "b", "Face width that carries", Units.Millimetre)
        .By("b = face width in common", Contact)
        .AsOne().From(Q.CommonFaceWidth, static b => b);

    public static readonly RowDefinition<MeshSpec, string> DrivingGear = Text("driving_gear", "Gear that drives the mesh, seen from the carrier")
        .By("the gear that gives power to the mesh in the carrier's frame", "power balance in the carrier frame")
        .Solved([], Q.TorqueReasons, static (_, subject) => Q.TorquesOf(subject)!.Driver ?? "none: the mesh carries no power");

    public static readonly NumberDefinition<MeshSpec> PlanetCount = Number("planet_count", "N", "Planets that share the load")
        .By("count of the planet set; 1 between central gears", "the spec", Certainty.Declared)
        .Custom(static subject => Q.PlanetSetOf(subject) is { } set ? subject.Context.Number(PlanetCount!, set.Count) : null)
        .From(static () => 1);

    public static readonly TruthDefinition<MeshSpec> CentralMemberFloats = Truth("central_member_floats", "The carrier or a central gear floats")
        .By("one of them has floating: true", "the spec", Certainty.Declared)
        .When(static (_, subject) => Q.PlanetSetOf(subject) is not null)
        .Custom(static subject => Quantity.OfTruth(CentralMemberFloats!, Origin.Computed.Instance, Floats(subject), []));

    public static readonly NumberDefinition<MeshSpec> LoadSharing =
        Number("load_sharing", "K_γ", "Mesh load factor: load of the heaviest planet over the mean")
        .By("by the number of planets and whether a central gear floats", "IEC 61400-4, mesh load factors", Certainty.Memory)
        .Custom(static subject => Q.PlanetSetOf(subject)?.LoadSharing is { } stated ? subject.Context.Number(LoadSharing!, stated, "") : null)
        .From(PlanetCount, CentralMemberFloats, static (count, floats) => PlanetLoadSharing.Factor((int)count, floats))
        .From(PlanetCount, static count => PlanetLoadSharing.Factor((int)count, false));

    public static readonly TruthDefinition<MeshSpec> LoadSharingProven =
        Truth("load_sharing_proven", "The mesh load factor comes from a named test or analysis")
        .By("load_sharing_proof is stated", "the spec", Certainty.Declared)
        .Custom(static subject => Q.PlanetSetOf(subject) switch
        {
            null => null,
            { LoadSharing: { } stated } set =>
                Quantity.OfTruth(LoadSharingProven!, AnalysisContext.Declared(stated), set.LoadSharingProof is not null, []),
            _ => Quantity.OfTruth(LoadSharingProven!, Origin.Computed.Instance, false, []),
        });

    public static readonly NumberDefinition<MeshSpec> TangentialForceHeaviest =
        Number("tangential_force_heaviest", "F_t·K_γ", "Tangential force at the heaviest planet", Units.Newton)
        .By("F_t·K_γ", Loads)
        .From(Q.TangentialForce, LoadSharing, static (force, sharing) => force * sharing);

    public static readonly NumberDefinition<MeshSpec> RadialForce = Number("radial_force", "F_r", "Radial force at the heaviest planet", Units.Newton)
        .By("F_r = F_t·K_γ·sin α_wt/cos α_t", "statics")
        .From(TangentialForceHeaviest, Of("first", static () => G.TransversePressureAngle), Q.WorkingPressureAngle, MeshForce.Radial);

    public static readonly NumberDefinition<MeshSpec> AxialForce = Number("axial_force", "F_a", "Axial force at the heaviest planet", Units.Newton)
        .By("F_a = F_t·K_γ·tan β", "statics").Scaled(1000)
        .From(TangentialForceHeaviest, Of("first", static () => G.HelixAngle), MeshForce.Axial);

    public static readonly NumberDefinition<MeshSpec> LineLoad =
        Number("line_load", "w_t", "Line load with application and sharing", Units.NewtonPerMillimetre)
        .By("w_t = F_t·K_γ·K_A/b", Loads)
        .From(
            TangentialForceHeaviest, Of("train", static () => D.ApplicationFactor), RatedFaceWidth,
            static (force, application, width) => force * application / width);

    public static readonly NumberDefinition<MeshSpec> DynamicParameter =
        Number("dynamic_parameter", "s", "Speed parameter of the dynamic factor", Units.MetrePerSecond)
        .By("s = (v·z_1/100)·√(u²/(1 + u²))", Loads)
        .Noted("method C holds up to 3 m/s, below resonance")
        .From(Q.PitchLineSpeed, LoadFactors.Teeth, LoadFactors.Parameter);

    public static readonly NumberDefinition<MeshSpec> AccuracyGrade = Number("accuracy_grade", "A", "Accuracy grade of the coarser gear").NeverNegative()
        .By("the greater of A_1 and A_2", "ISO 1328-1")
        .From(Of("pinion", static () => ToothQuantities.AccuracyGrade, "A_1"), Of("wheel", static () => ToothQuantities.AccuracyGrade, "A_2"), Math.Max);

    public static readonly NumberDefinition<MeshSpec> DynamicFactor = Number("dynamic_factor", "K_v", "Dynamic factor").AsOne()
        .By("K_v = max(K_vB, K_vC), or the one that can be evaluated, or as declared", "ISO 6336-1, methods B and C", Certainty.Memory)
        .Noted("B sees resonance and holds at any speed; C is the simpler and better known, up to s = 3 m/s; where both can be evaluated the larger counts").Turns()
        .Stated(static s => s.DynamicFactor)
        .For(static (_, subject) => IsAlone(subject, static () => MeshDynamicsQuantities.DynamicFactorOfC, static () => MeshDynamicsQuantities.DynamicFactorOfB))
        .From(Own(static () => MeshDynamicsQuantities.DynamicFactorOfC), static factor => factor)
        .For(static (_, subject) => IsAlone(subject, static () => MeshDynamicsQuantities.DynamicFactorOfB, static () => MeshDynamicsQuantities.DynamicFactorOfC))
        .From(Own(static () => MeshDynamicsQuantities.DynamicFactorOfB), static factor => factor)
        .From(Own(static () => MeshDynamicsQuantities.DynamicFactorOfB), Own(static () => MeshDynamicsQuantities.DynamicFactorOfC), Math.Max);

    public static readonly NumberDefinition<MeshSpec> MeshStiffness =
        Number("mesh_stiffness", "c_γα", "Mesh stiffness per unit of face width", Units.Megapascal)
        .By("c_γα = c′·(0.75·ε_α + 0.25), c′ = 14 N/(mm·µm)·(w_t/100)^0.25 below 100 N/mm", "ISO 6336-1, method C", Certainty.Memory)
        .Noted("solid steel gears; 1000 MPa are 1 N/(mm·µm)")
        .From(Q.TransverseContactRatio, LineLoad, LoadFactors.Stiffness);

    public static readonly NumberDefinition<MeshSpec> Misalignment =
        Number("misalignment", "F_βx", "Misalignment of the flanks before running-in", Units.Micrometre)
        .When(static s => s.FaceLoadFactor is null).Stated(static s => s.Misalignment, "misalignment or face_load_factor");

    public static readonly NumberDefinition<MeshSpec> RunInMisalignment =
        Number("run_in_misalignment", "F_βy", "Misalignment after running-in", Units.Micrometre)
        .By("F_βy = F_βx − y_β, y_β by material", Loads, Certainty.Memory)
        .When(static s => s.FaceLoadFactor is null)
        .From(Misalignment, LoadFactors.Pinion, LoadFactors.Wheel, Q.PitchLineSpeed, LoadFactors.MisalignmentRunIn);

    public static readonly NumberDefinition<MeshSpec> FaceLoadFactor = Number("face_load_factor", "K_Hβ", "Face load factor of the contact").NeverNegative()
        .By("q = F_βy·0.85·c_γα/(2·w_t·K_v): K_Hβ = 1 + q up to q = 1, else 2·√q; or as declared", "ISO 6336-1, method C")
        .Stated(static s => s.FaceLoadFactor).From(RunInMisalignment, MeshStiffness, LineLoad, DynamicFactor, LoadFactors.Face);

    public static readonly NumberDefinition<MeshSpec> FaceLoadFactorBending =
        Number("face_load_factor_bending", "K_Fβ", "Face load factor of the root")
        .By("K_Fβ = K_Hβ^(r²/(1 + r + r²)), r the smaller b/h of the pair, at least 3", "UR M56.1.6.4, after ISO 6336-1", Certainty.Published)
        .From(FaceLoadFactor, RatedFaceWidth, LoadFactors.Depth, Mechanics.Rating.FaceLoadFactor.Root);

    public static readonly NumberDefinition<MeshSpec> BasePitchDeviation =
        Number("base_pitch_deviation", "f_pb", "Base pitch deviation, the greater of the two", Units.Micrometre)
        .By("f_pb = f_pt·cos α_t", "ISO 1328-1")
        .From(
            Of("pinion", static () => ToothQuantities.PitchDeviation, "f_pt1"), Of("wheel", static () => ToothQuantities.PitchDeviation, "f_pt2"),
            Of("pinion", static () => G.TransversePressureAngle),
            static (pinion, wheel, angle) => FlankTolerance.BasePitch(Math.Max(pinion, wheel), angle));

    public static readonly NumberDefinition<MeshSpec> RunInPitchDeviation =
        Number("run_in_pitch_deviation", "f_pb − y_α", "Base pitch deviation after running-in", Units.Micrometre)
        .By("f_pb − y_α, y_α by material", Loads, Certainty.Memory)
        .From(BasePitchDeviation, LoadFactors.Pinion, LoadFactors.Wheel, Q.PitchLineSpeed, LoadFactors.PitchRunIn);

    public static readonly NumberDefinition<MeshSpec> ContactRatioFactor =
        Number("contact_ratio_factor", "Z_ε", "Contact ratio factor of the contact")
        .By("Z_ε = √((4 − ε_α)/3·(1 − ε_β) + ε_β/ε_α), ε_β at most 1", Contact)
        .From(Q.TransverseContactRatio, Q.OverlapRatio, ContactFactors.ContactRatio);

    public static readonly NumberDefinition<MeshSpec> TransverseLoadFactor =
        Number("transverse_load_factor", "K_Hα", "Transverse load factor of the contact").NeverNegative()
        .By("K_Hα = ε_γ/2·(0.9 + 0.4·q) up to ε_γ = 2, else 0.9 + 0.4·q·√(2·(ε_γ − 1)/ε_γ), q = c_γα·(f_pb − y_α)/(w_t·K_v·K_Hβ); from 1 to ε_γ/(ε_α·Z_ε²)", "ISO 6336-1, method B", Certainty.Memory)
        .From(
            Q.TotalContactRatio, Q.TransverseContactRatio, ContactRatioFactor, MeshStiffness, RunInPitchDeviation, LineLoad, DynamicFactor,
            FaceLoadFactor, LoadFactors.Transverse);

    public static readonly NumberDefinition<MeshSpec> TransverseLoadFactorBending =
        Number("transverse_load_factor_bending", "K_Fα", "Transverse load factor of the root")
        .By("as K_Hα, from 1 to ε_γ/(0.25·ε_α + 0.75)", "ISO 6336-1, method B", Certainty.Memory)
        .From(
            Q.TotalContactRatio, Q.TransverseContactRatio, MeshStiffness, RunInPitchDeviation, LineLoad, DynamicFactor, FaceLoadFactor,
            LoadFactors.TransverseOfRoot);

    public static readonly NumberDefinition<MeshSpec> ZoneFactor = Number("zone_factor", "Z_H", "Zone factor")
        .By("Z_H = √(2·cos β_b·cos α_wt/(cos² α_t·sin α_wt))", Contact)
        .From(
            Of("pinion", static () => G.TransversePressureAngle), Q.WorkingPressureAngle, Of("pinion", static () => G.BaseHelixAngle),
            ContactFactors.Zone);

    public static readonly NumberDefinition<MeshSpec> ElasticityFactor = Number("elasticity_factor", "Z_E", "Elasticity factor", RootMegapascal)
        .By("Z_E = √(1/(π·((1 − ν_1²)/E_1 + (1 − ν_2²)/E_2)))", Contact)
        .Noted("in √MPa")
        .From(Elastic1, Elastic2, ContactFactors.Elasticity);

    public static readonly NumberDefinition<MeshSpec> HelixFactor = Number("helix_factor", "Z_β", "Helix angle factor of the contact")
        .By("Z_β = 1/√cos β", "UR M56.2.7, after ISO 6336-2:2019", Certainty.Published)
        .From(Of("pinion", static () => G.HelixAngle), ContactFactors.HelixAngle);

    public static readonly NumberDefinition<MeshSpec> NominalContactStress =
        Number("nominal_contact_stress", "σ_H0", "Nominal contact stress at the pitch point", Units.Megapascal)
        .By("σ_H0 = Z_H·Z_E·Z_ε·Z_β·√(F_t/(d_1·b)·(u + 1)/u), signed u and d_1 of the pinion", Contact)
        .From(
            Q.TangentialForce, Of("pinion", static () => G.ReferenceDiameter, "d_1"), RatedFaceWidth, LoadFactors.Teeth, ZoneFactor, ElasticityFactor,
            ContactRatioFactor, HelixFactor, static (force, d, width, teeth, zh, ze, zEpsilon, zBeta) =>
                ContactStress.Nominal(zh * ze * zEpsilon * zBeta, force, d, width, LoadFactors.ToothRatio(teeth)));

    public static readonly NumberDefinition<MeshSpec> ReducedRadius =
        Number("reduced_radius", "ρ_red", "Reduced radius of curvature at the pitch point", Units.Millimetre)
        .By("ρ_red = ρ_1·ρ_2/(ρ_1 + ρ_2), ρ = ½·d_b·tan α_wt, signed", Contact)
        .From(Base1, Base2, Q.WorkingPressureAngle, LineContact.ReducedCurvatureAtPitchPoint);

    public static readonly NumberDefinition<MeshSpec> LubricantFactor = Number("lubricant_factor", "Z_L", "Lubricant factor")
        .By("Z_L = C + 4·(1 − C)/(1.2 + 134/ν_40)², C by σ_Hlim of the softer", Film, Certainty.Published)
        .From(Of("train", static () => D.Viscosity40), Softer, ContactStrength.Lubricant);

    public static readonly NumberDefinition<MeshSpec> SpeedFactor = Number("speed_factor", "Z_v", "Velocity factor")
        .By("Z_v = C + 2·(1 − C)/√(0.8 + 32/v), v in m/s", Film, Certainty.Published)
        .From(Q.PitchLineSpeed, Softer, ContactStrength.Velocity);

    public static readonly NumberDefinition<MeshSpec> RoughnessFactor = Number("roughness_factor", "Z_R", "Roughness factor")
        .By("Z_R = (3/Rz10)^C, Rz10 = ½·(Rz_1 + Rz_2)·(10/ρ_red)^(1/3)", Film, Certainty.Published)
        .From(
            Of("pinion", static () => M.FlankRz, "Rz_1"), Of("wheel", static () => M.FlankRz, "Rz_2"), ReducedRadius, Softer, ContactStrength.Roughness);

    public static readonly NumberDefinition<MeshSpec> FilmThickness =
        Number("film_thickness", "h_min", "Minimum film at the pitch point, oil from coldest to hottest", Units.Micrometre)
        .By("h_min = 2.65·α_p^0.54·(η·u)^0.7·ρ^0.43/(E′^0.03·w^0.13)", "line contact after Dowson and Higginson", Certainty.Memory)
        .Noted("flanks at the temperature of the oil; mean load over the face")
        .From(
            Of("train", static () => D.PressureViscosity), Of("train", static () => D.Viscosity), Of("train", static () => D.OilDensity), Q.PitchLineSpeed,
            Q.WorkingPressureAngle, Of("pinion", static () => G.TransversePressureAngle), ReducedRadius, Modulus, LineLoad,
            Of("pinion", static () => G.BaseHelixAngle),
            static (pressure, viscosity, density, v, working, transverse, radius, modulus, load, helix) => Mechanics.Rating.FilmThickness.Min(
                pressure, Mechanics.Lubrication.Viscosity.Dynamic(viscosity, density), v * Math.Cos(transverse) * Math.Tan(working),
                load / Math.Cos(transverse), radius / Math.Cos(helix), modulus));

    public static readonly NumberDefinition<MeshSpec> FilmRatio = Number("film_ratio", "λ", "Film thickness over the roughness of both flanks")
        .By("λ = h_min/√(Ra_1² + Ra_2²)", "common practice, no source", Certainty.CommonPractice)
        .From(FilmThickness, Of("pinion", static () => M.FlankRa, "Ra_1"), Of("wheel", static () => M.FlankRa, "Ra_2"), Mechanics.Rating.FilmThickness.Ratio);

    private static readonly IInput<FlashGeometry> FlashGeometry = Join(
        OfRow("wheel", static () => G.Kind),
        Join(OfLimits("pinion", static () => G.ActiveTipDiameter, "d_Na1"), OfLimits("wheel", static () => G.ActiveTipDiameter, "d_Na2"), static (tip1, tip2) => (tip1, tip2)),
        Join(Of("pinion", static () => G.BaseDiameter, "d_b1"), Of("wheel", static () => G.BaseDiameter, "d_b2"), Q.WorkingPressureAngle.Limits(), static (base1, base2, angle) => (base1, base2, angle)),
        Join(Q.BasePitch, Of("pinion", static () => G.BaseHelixAngle), Q.OverlapRatio.Limits(), static (pitch, helix, overlap) => (pitch, helix, overlap)),
        static (kind, tips, circles, teeth) => new FlashGeometry(
            tips.tip1, Signed(kind, tips.tip2), circles.base1, G.Sign(kind) * circles.base2, circles.angle, teeth.pitch, teeth.helix, teeth.overlap));

    private static readonly IInput<Extent> FlashLoad = Join(
        Join(LineLoad.Limits(), DynamicFactor.Limits(), FaceLoadFactor.Limits(), TransverseLoadFactor.Limits(),
            static (load, dynamic, face, transverse) => Times(Times(load, dynamic), Times(face, transverse))),
        Of("pinion", static () => G.TransversePressureAngle), static (load, angle) => Times(load, Extent.Exactly(1 / Math.Cos(angle))));

    public static readonly NumberDefinition<MeshSpec> FlashTemperature =
        Number("flash_temperature", "Δθ", "Maximum rise of the flank temperature along the path of contact", Units.Kelvin)
        .By("Δθ = 1.11·μ_m·w·|√v_1 − √v_2|/(B_M·√(2·b_H)), greatest from A to E, w = w_t·K_v·K_Hβ·K_Hα/cos α_t shared in double contact", "Blok 1937")
        .Noted("thermal contact coefficient of steel, 13.5 N/(mm·√s·K), from memory; limits with path, load and speed each at its own worst")
        .Range(
            FlashGeometry, FlashLoad, Q.PitchLineSpeed.Limits(), Of("pinion", static () => G.ReferenceDiameter, "d_1"), Q.Friction.Limits(), Modulus,
            static (geometry, load, speed, d, friction, modulus) => geometry.Rise(load, Times(speed, Extent.Exactly(2 / d)), friction, modulus));

    public static readonly NumberDefinition<MeshSpec> ContactTemperature =
        Number("contact_temperature", "θ_B", "Contact temperature, from coldest to hottest oil", Units.Celsius)
        .By("θ_B = T + Δθ", "Blok 1937")
        .Noted("bulk temperature taken as that of the oil")
        .From(Of("train", static () => TrainQuantities.OilTemperature, "T"), FlashTemperature, static (oil, rise) => oil + rise);

    /// <summary>Whether one quantity has a value and another has none.</summary>
    private static bool IsAlone(Subject subject, Func<QuantityKind> one, Func<QuantityKind> other) =>
        MeshDynamicsQuantities.Has(subject, one()) && !MeshDynamicsQuantities.Has(subject, other());

    private static IInput<Elastic> ElasticOf(string role, string index) => Join(
        Of(role, static () => M.ElasticModulus, $"E_{index}"), Of(role, static () => M.PoissonRatio, $"ν_{index}"),
        static (modulus, poisson) => new Elastic(modulus, poisson));

    private static Extent Times(Extent a, Extent b) => new(a.Nominal * b.Nominal, a.Min * b.Min, a.Max * b.Max);

    private static Extent Signed(string kind, Extent value) => new(G.Sign(kind) * value.Nominal, G.Sign(kind) * value.Min, G.Sign(kind) * value.Max);

    private static IInput<double> SignedOfWheel(Func<QuantityKind> kind, string symbol) =>
        Join(OfRow("wheel", static () => G.Kind), Of("wheel", kind, symbol), static (gear, value) => G.Sign(gear) * value);

    /// <summary>Whether the carrier, or a central gear that meshes with its planets, settles between them.</summary>
    private static bool Floats(Subject mesh)
    {
        var carrier = Q.PlanetSetOf(mesh)!.Carrier.Value;
        var body = mesh.Context.Find(SubjectKinds.Body, $"bodies.{carrier}")!;
        return mesh.Context.Once(body, each => new Settling(Floats(each.Context.Spec.Train!, carrier))).Floats;
    }

    /// <summary>One answer for all meshes of a carrier.</summary>
    private sealed record Settling(bool Floats);

    private static bool Floats(TrainSpec train, string carrier)
    {
        return IsFloating(carrier) || train.Meshes.Any(each => CarrierOf(each) == carrier && each.Gears.Any(IsFloatingCentre));

        string? CarrierOf(MeshSpec each) => each.Gears.Select(SetOf).FirstOrDefault(static set => set is not null)?.Carrier.Value;

        PlanetSetSpec? SetOf(Stated<string> gear) => train.Planets.Find(BodyOf(gear));

        bool IsFloatingCentre(Stated<string> gear) => SetOf(gear) is null && IsFloating(BodyOf(gear));

        string BodyOf(Stated<string> gear) => train.Gears.Find(gear.Value)!.On.Value;

        bool IsFloating(string body) => train.Bodies.Find(body)?.Floating is { Value: true };
    }

    // The square root of a stress has no unit of the trade; the number is in √MPa and the note says so.
    private static Unit RootMegapascal => Units.One;
}
