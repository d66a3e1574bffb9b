using System.Globalization;
using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Mechanics.Joints;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.BodyInputs;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Joints;

/// <summary>A bolted joint or a central nut: tightening, stiffness, the preload in service.</summary>
public sealed class Joints : Section<JointSpec>
{
    internal const string Vdi = "VDI 2230 Part 1";
    internal const string Closed = "closed form";
    internal const string TheSpec = "the spec";
    private const string MeanFace = "D_Km = (d_W + d_h)/2, d_2 = d − 0.6495·P";

    // Bolts of quenched and tempered steel; handbook values, from memory.
    internal const double SteelModulus = 205_000;
    private const double SteelExpansion = 11.5e-6;

    public static readonly RowDefinition<JointSpec, string> Kind = Text("joint_kind", "Kind").Stated(static s => s.Kind);

    public static readonly RowDefinition<JointSpec, ScrewThread> Thread = Row<ScrewThread>("thread", "Thread", ThreadTable.TryFind)
        .Tables(ThreadTable.MetricTableId, ThreadTable.UnifiedTableId).Stated(static s => s.Thread);

    public static readonly RowDefinition<JointSpec, string> Strength = Text("strength", "Property class or grade")
        .When(static s => s.Yield is null).Stated(static s => s.Strength);

    public static readonly RowDefinition<JointSpec, string> HeldBy = Text("held_by", "Held by")
        .By("tapped hole, nut, or nut on a shaft", TheSpec, Certainty.Declared)
        .Named(static s => IsCentral(s) ? "nut on a shaft" : s.Tapped is null ? "nut" : "tapped hole");

    public static readonly NumberDefinition<JointSpec> Bolts = Number("bolts", "z", "Number of bolts").When(static s => !IsCentral(s)).Stated(static s => s.Bolts);

    public static readonly RowDefinition<JointSpec, BoltStrength> OfClass = Row<BoltStrength>("strength_row", "Row of the strength table")
        .By("by strength and thread", "ISO 898-1:2013, SAE J429", Certainty.Published).Tables(BoltStrength.MetricTableId, BoltStrength.InchTableId)
        .From(
            Strength, Thread,
            static (name, thread) => BoltStrength.TryFind(name, thread, out var row, out var reason) ? row : throw new OutsideValidityException(reason),
            static row => row.Name);

    public static readonly NumberDefinition<JointSpec> Proof = Number("proof_stress", "S_p", "Stress under proof load", Units.Megapascal)
        .By("of the property class or grade, or as stated", "ISO 898-1:2013, SAE J429", Certainty.Published)
        .Stated(static s => s.ProofStress).From(OfClass, static row => row.Proof);

    public static readonly NumberDefinition<JointSpec> Yield = Number("yield", "R_p", "Yield strength of bolt or shaft", Units.Megapascal)
        .By("of the property class or grade, or as stated", "ISO 898-1:2013, SAE J429", Certainty.Memory)
        .Stated(static s => s.Yield).From(OfClass, static row => row.Yield);

    public static readonly NumberDefinition<JointSpec> Tensile = Number("tensile_strength", "R_m", "Minimum tensile strength of bolt or shaft", Units.Megapascal)
        .By("of the property class or grade, or as stated", "ISO 898-1:2013, SAE J429", Certainty.Published)
        .Stated(static s => s.Tensile).From(OfClass, static row => row.Tensile);

    public static readonly NumberDefinition<JointSpec> CrossHole =
        Number("cross_hole", "d_q", "Cross hole through the shaft", Units.Millimetre).Stated(static s => s.Shaft?.CrossHole).Optional();

    public static readonly NumberDefinition<JointSpec> ShaftBore =
        Number("shaft_bore", "d_i", "Bore of the shaft", Units.Millimetre).Stated(static s => s.Shaft?.Bore).Optional();

    public static readonly NumberDefinition<JointSpec> StressDiameter = Number("section_diameter", "d_0", "Diameter of the stressed section", Units.Millimetre)
        .By("d_0 = (d_2 + d_3)/2; a shaft: of the area that bore and cross hole leave", "ISO 898-1; closed form")
        .From(
            Kind, Thread, CrossHole.Or(0), ShaftBore.Or(0),
            static (kind, thread, cross, bore) => kind == CentralKind ? CentralNut.SectionDiameter(thread, cross, bore) : thread.StressDiameter);

    public static readonly RowDefinition<JointSpec, FrictionClass> FrictionClass =
        Row<FrictionClass>("friction_class", "Friction class", Mechanics.Joints.FrictionClass.TryFind)
        .Tables(Mechanics.Joints.FrictionClass.TableId).Stated(static s => s.Friction?.Class).Optional();

    public static readonly NumberDefinition<JointSpec> MinFriction = Number("min_friction", "µ_min", "Minimum friction in thread and under the head")
        .By("as stated, else of its class", "VDI 2230 Part 1, table A5", Certainty.Published)
        .From(FrictionClass, static row => row.Min)
        .Stated(static s => s.Friction?.Min, "friction");

    public static readonly NumberDefinition<JointSpec> MaxFriction = Number("max_friction", "µ_max", "Maximum friction in thread and under the head")
        .By("as stated, else of its class", "VDI 2230 Part 1, table A5", Certainty.Published)
        .From(FrictionClass, static row => row.Max
            ?? throw Guard.Because($"class {row.Name} of VDI 2230 has no maximum friction: lubricate, or state what was measured"))
        .Stated(static s => s.Friction?.Max, "friction");

    public static readonly RowDefinition<JointSpec, string> Method = Text("tightening_method", "Tightening method")
        .Tables(TighteningMethod.TableId)
        .Stated(static s => s.Tightening?.Method).Assumed("torque wrench with friction estimated", "torque wrench, for nothing else is stated");

    public static readonly NumberDefinition<JointSpec> Torque = Number("tightening_torque", "M_A", "Tightening torque", Units.NewtonMetre)
        .When(Method, IsByTorque).Stated(static s => s.Tightening?.Torque);

    public static readonly NumberDefinition<JointSpec> TorqueOverSize =
        Number("torque_over_size", "M_A/d³", "Tightening torque over the cube of the thread diameter", Units.Megapascal)
        .By("M_A/d³", "geometry")
        .From(Torque, Thread, static (torque, thread) => torque / Math.Pow(thread.Diameter, 3));

    public static readonly NumberDefinition<JointSpec> WrenchError = Number("wrench_error", "e", "Error of the torque wrench", Units.Percent)
        .When(Method, IsByWrench).Stated(static s => s.Tightening?.WrenchError).Assumed(0.04, "4 %, common practice, no source");

    public static readonly NumberDefinition<JointSpec> Prevailing =
        Number("prevailing_torque", "M_p", "Prevailing torque", Units.NewtonMetre).Stated(static s => s.Tightening?.Prevailing).Optional();

    public static readonly NumberDefinition<JointSpec> SetPreload = Number("set_preload", "F_M", "Preload that is set", Units.Newton)
        .When(Method, static method => !IsByTorque(method)).Stated(static s => s.Tightening?.Preload).Optional();

    public static readonly RowDefinition<JointSpec, string> Head = Text("head", "Head").When(static s => !IsCentral(s))
        .Stated(static s => s.Head).Assumed("hexagon", "hexagon, for nothing is stated");

    public static readonly NumberDefinition<JointSpec> FaceOutside = Number("face", "d_W", "Outside diameter of the bearing face under head or nut", Units.Millimetre)
        .By("as stated, else of the standard head", "ISO 4014, ISO 4762", Certainty.Published).Tables(HeadFace.TableId)
        .Stated(static s => s.Face).From(Thread, Head, static (thread, head) => Standard(thread, head).Outer);

    public static readonly NumberDefinition<JointSpec> FaceHole = Number("hole", "d_h", "Hole under head or nut", Units.Millimetre)
        .By("as stated, else of the medium series; under a central nut that of the first ring", "ISO 273", Certainty.Published)
        .Stated(static s => s.Hole)
        .From(Thread, Head, static (thread, head) => Standard(thread, head).Hole)
        .From(Each("layers", static () => JointLayers.Inside, "d_i"), static inside => inside[0]);

    public static readonly NumberDefinition<JointSpec> PermittedPreload = Number("permitted_preload", "F_Mzul", "Preload at 0.9 of yield in tension and torsion", Units.Newton)
        .By("F_Mzul = A_0·0.9·R_p/√(1 + 3·(1.5·d_2/d_0·(P/(π·d_2) + 1.155·µ_min))²)", Vdi, Certainty.Published)
        .From(Thread, MinFriction, Yield, StressDiameter, static (thread, friction, yield, d) => Tightening.PermittedPreload(thread, friction, yield, 0.9, d));

    public static readonly NumberDefinition<JointSpec> MaxPreload = Number("max_preload", "F_M,max", "Maximum preload after tightening", Units.Newton)
        .By("F_M = (M_A·(1 + e) − M_p)/(0.159·P + 0.577·d_2·µ_min + 0.5·D_Km·µ_min)", Vdi).Noted(MeanFace)
        .From(
            Thread, Torque, WrenchError, Prevailing.Or(0), FaceOutside, FaceHole, MinFriction, MaxFriction,
            static (thread, torque, error, prevailing, outer, hole, min, max) => ByWrench(thread, torque, error, prevailing, outer, hole, min, max).Max)
        .From(
            Thread, Torque, Prevailing.Or(0), FaceOutside, FaceHole, MinFriction,
            static (thread, torque, prevailing, outer, hole, friction) =>
                Tightening.Preload(thread, new(friction, friction), new(outer, hole), torque, prevailing))
        .From(SetPreload, static preload => preload)
        .From(PermittedPreload, static preload => preload);

    public static readonly NumberDefinition<JointSpec> MinPreload = Number("min_preload", "F_M,min", "Minimum preload after tightening", Units.Newton)
        .By("F_M = (M_A·(1 − e) − M_p)/(0.159·P + 0.577·d_2·µ_max + 0.5·D_Km·µ_max); other methods F_M,max/α_A", Vdi).Noted(MeanFace)
        .From(
            Thread, Torque, WrenchError, Prevailing.Or(0), FaceOutside, FaceHole, MinFriction, MaxFriction,
            static (thread, torque, error, prevailing, outer, hole, min, max) => ByWrench(thread, torque, error, prevailing, outer, hole, min, max).Min)
        .From(MaxPreload, Method, static (preload, method) => PreloadRange.ByTighteningFactor(preload, TighteningFactor(method)).Min);

    public static readonly NumberDefinition<JointSpec> Scatter = Number("preload_scatter", "α_A", "Tightening factor, maximum over minimum preload")
        .By("α_A = F_M,max/F_M,min", Vdi)
        .From(MaxPreload, MinPreload, static (max, min) => max / min);

    public static readonly NumberDefinition<JointSpec> LooseningTorque =
        Number("loosening_torque", "M_L", "Minimum torque that loosens the fastener right after tightening", Units.NewtonMetre)
        .By("M_L = F_M,min·(0.577·d_2·µ_min + 0.5·D_Km·µ_min − 0.159·P)", Vdi).Scaled(1000).Noted("of the thread and the face; what secures it comes on top")
        .From(Thread, FaceOutside, FaceHole, MinFriction, MinPreload, static (thread, outer, hole, friction, preload) =>
            Tightening.LooseningTorque(thread, new(friction, friction), new(outer, hole), preload));

    public static readonly NumberDefinition<JointSpec> PermittedTorque = Number("permitted_torque", "M_A,zul", "Torque that reaches the permitted preload at minimum friction", Units.NewtonMetre)
        .By("M_A,zul = F_Mzul·(0.159·P + 0.577·d_2·µ_min + 0.5·D_Km·µ_min) + M_p", Vdi, Certainty.Published)
        .When(Method, IsByTorque)
        .From(
            Thread, PermittedPreload, FaceOutside, FaceHole, MinFriction, Prevailing.Or(0),
            static (thread, preload, outer, hole, friction, prevailing) =>
                Tightening.Torque(thread, new(friction, friction), new(outer, hole), preload) + prevailing);

    public static readonly NumberDefinition<JointSpec> Utilisation = Number("preload_utilisation", "F_M,max/F_Mzul", "Maximum over permitted preload")
        .By("F_M,max/F_Mzul", Vdi)
        .From(MaxPreload, PermittedPreload, static (max, permitted) => max / permitted);

    public static readonly NumberDefinition<JointSpec> YieldShare = Number("yield_share", "σ_red/R_p", "Stress in tension and torsion over yield, at tightening")
        .By("√(σ² + 3·τ²)/R_p", Vdi)
        .From(
            Thread, MaxPreload, MinFriction, Yield, StressDiameter,
            static (thread, preload, friction, yield, d) => Tightening.Utilisation(thread, friction, yield, preload, d));

    public static readonly NumberDefinition<JointSpec> ProofLoad = Number("proof_load", "F_p", "Proof load of bolt or shaft", Units.Newton)
        .By("F_p = S_p·A_s; a shaft: S_p·π/4·d_0²", "ISO 898-1:2013, SAE J429", Certainty.Published)
        .For(static s => !IsCentral(s) && s.ProofStress is null).From(OfClass, Thread, static (row, thread) => row.ProofLoad(thread))
        .From(Proof, StressDiameter, static (proof, d) => proof * Area(d));

    public static readonly NumberDefinition<JointSpec> ProofShare = Number("proof_share", "F_M,max/F_p", "Maximum preload over proof load")
        .By("F_M,max/F_p", "ISO 898-1").Noted("at minimum friction and maximum torque the force in the bolt is at its maximum")
        .From(MaxPreload, ProofLoad, static (preload, load) => preload / load);

    public static readonly NumberDefinition<JointSpec> ClampedLength = Number("clamped_length", "l_K", "Clamped length", Units.Millimetre)
        .By("Σ of the thicknesses", TheSpec)
        .When(static s => !s.Clamped.IsEmpty)
        .From(Each("layers", static () => JointLayers.Thickness, "l"), static l => l.Sum());

    public static readonly NumberDefinition<JointSpec> ClampRatio = Number("clamp_ratio", "l_K/d", "Clamped length over diameter")
        .By("l_K/d", Closed)
        .From(ClampedLength, Thread, static (length, thread) => length / thread.Diameter);

    public static readonly NumberDefinition<JointSpec> Shank =
        Number("shank", "l_1", "Length of the plain shank", Units.Millimetre).Stated(static s => s.Shank).Optional();

    public static readonly NumberDefinition<JointSpec> Width =
        Number("width", "D_A", "Diameter of the parts around a bolt", Units.Millimetre).NeverNegative().When(static s => !IsCentral(s)).Stated(static s => s.Width);

    public static readonly NumberDefinition<JointSpec> TappedModulus = Number("tapped_modulus", "E_M", "Modulus of elasticity of the tapped part", Units.Megapascal)
        .When(static s => s.Tapped is not null)
        .Found(
            static (s, subject) => subject.Context.Spec.Catalogue.Materials.Find(s.Tapped!.Material.Value)?.ElasticModulus,
            static s => $"elastic_modulus of material {s.Tapped!.Material.Value} in the catalogue");

    public static readonly NumberDefinition<JointSpec> ShaftDiameter =
        Number("shaft_diameter", "d_s", "Diameter of the clamping shaft", Units.Millimetre).Stated(static s => s.Shaft?.Diameter).Optional();

    public static readonly NumberDefinition<JointSpec> ShaftModulus = Number("shaft_modulus", "E_S", "Modulus of elasticity of the clamping shaft", Units.Megapascal)
        .When(static s => s.Shaft is not null)
        .Found(
            static (s, subject) => subject.Context.Spec.Catalogue.Materials.Find(s.Shaft!.Material.Value)?.ElasticModulus,
            static s => $"elastic_modulus of material {s.Shaft!.Material.Value} in the catalogue");

    public static readonly NumberDefinition<JointSpec> BoltStiffness = Number("bolt_stiffness", "1/δ_S", "Stiffness of the bolt", Units.NewtonPerMillimetre)
        .By("δ_S = Σ l/(E·A) over head, shank, free and engaged thread, nut or tapped hole", Vdi, Certainty.Memory)
        .Noted("bolts of steel, E 205 000 MPa; a shaft: its material")
        .From(
            ClampedLength, ShaftDiameter, ShaftBore.Or(0), ShaftModulus,
            static (length, d, bore, modulus) => 1 / CentralNut.ShaftCompliance([new(length, d)], bore, modulus))
        .From(
            Thread, Head, Shank.Or(0), ClampedLength, TappedModulus.Or(double.NaN),
            static (thread, head, shank, length, tapped) => 1 / BoltCompliance.Whole(
                thread, HeadOf(head), [new(Math.Min(shank, length), thread.Diameter)], length - Math.Min(shank, length), SteelModulus,
                double.IsNaN(tapped) ? null : tapped));

    public static readonly NumberDefinition<JointSpec> PartsStiffness = Number("parts_stiffness", "1/δ_P", "Stiffness of the clamped parts", Units.NewtonPerMillimetre)
        .By("δ_P = Σ l/(E·A) along the cone under the head, cut to a sleeve at D_A, layer by layer; a stack of rings: Σ l/(E·π/4·(D² − d²))", Vdi, Certainty.Memory)
        .From(
            Each("layers", static () => JointLayers.Thickness, "l"), Each("layers", static () => JointLayers.Outside, "D"),
            Each("layers", static () => JointLayers.Inside, "d"), Each("layers", static () => JointLayers.Modulus, "E"),
            static (l, outside, inside, modulus) =>
                1 / CentralNut.StackCompliance([.. l.Select((length, i) => new StackedRing(length, outside[i], inside[i], modulus[i]))]))
        .From(
            Each("layers", static () => JointLayers.Thickness, "l"), Each("layers", static () => JointLayers.Modulus, "E"), FaceOutside, FaceHole, Width, HeldBy,
            static (l, modulus, outer, hole, width, held) => 1 / new ClampedParts(
                [.. l.Select((length, i) => new ClampedLayer(length, modulus[i]))], new(outer, hole), width, held == "tapped hole").Compliance);

    public static readonly NumberDefinition<JointSpec> LoadIntroduction = Number("load_introduction", "n", "Load introduction factor")
        .When(static s => !IsCentral(s))
        .Stated(static s => s.LoadIntroduction).Assumed(1, "1, under head and nut: the most that the bolt can feel");

    public static readonly NumberDefinition<JointSpec> LoadFactor = Number("load_factor", "Φ", "Load factor")
        .By("Φ = n·(δ_P + δ_M)/(δ_S + δ_P), δ_M of a tapped hole, no more than 1", Vdi, Certainty.Memory)
        .Noted("concentric; bending of an eccentric bolt is left out")
        .From(
            LoadIntroduction.Or(1), BoltStiffness, PartsStiffness, Thread, TappedModulus.Or(double.NaN),
            static (n, bolt, parts, thread, tapped) => Math.Min(
                1, ClampForce.LoadFactor(n, 1 / bolt, 1 / parts, double.IsNaN(tapped) ? 0 : BoltCompliance.TappedHole(thread, tapped))));

    public static readonly TruthDefinition<JointSpec> CarriesTorque = Truth("carries_torque", "Torque passes through the joint")
        .By("the joint carries a body or a torque of its own", "the spec", Certainty.Declared).Named(IsCarrying);

    public static readonly NumberDefinition<JointSpec> EmbeddingLoss = Number("embedding_loss", "F_Z", "Preload lost by embedding", Units.Newton)
        .By("F_Z = f_Z/(δ_S + δ_P)", Vdi)
        .From(JointEmbedding.Embedding, BoltStiffness, PartsStiffness, static (f, bolt, parts) => ClampForce.EmbeddingLoss(f, 1 / bolt, 1 / parts));

    public static readonly NumberDefinition<JointSpec> EmbeddingShare = Number("embedding_share", "F_Z/F_M,min", "Share of the minimum preload lost by embedding")
        .By("F_Z/F_M,min", Closed)
        .From(EmbeddingLoss, MinPreload, static (loss, preload) => loss / preload);

    public static readonly NumberDefinition<JointSpec> AssemblyTemperature = Number("assembly_temperature", "ϑ_0", "Temperature at assembly", Units.Celsius)
        .Stated(static s => s.AssemblyTemperature).Assumed(20, "20 °C, reference temperature of ISO 1");

    public static readonly NumberDefinition<JointSpec> Temperature = Number("temperature", "ϑ", "Temperature of the joint, from assembly to coldest and hottest oil", Units.Celsius)
        .By("running oil; between the extremes of assembly, coldest and hottest oil", TheSpec)
        .Custom(static subject => TemperatureOf(subject, subject[AssemblyTemperature]));

    public static readonly NumberDefinition<JointSpec> BoltExpansion = Number("bolt_expansion", "α_S", "Thermal expansion of bolt or shaft", Units.PerKelvin)
        .Custom(static subject => ((JointSpec)subject.Model).Shaft is { } shaft
            ? JointLayers.OfMaterial(subject, BoltExpansion!, shaft.Material, "thermal_expansion", static material => material.ThermalExpansion)
            : subject.Context.Assumed(BoltExpansion!, SteelExpansion, "11.5·10⁻⁶ 1/K, quenched and tempered steel, handbook value from memory"));

    public static readonly NumberDefinition<JointSpec> ThermalChange = Number("thermal_change", "ΔF_th", "Change of the preload by temperature", Units.Newton)
        .By("ΔF_th = Σ l·(α_P − α_S)·(ϑ − ϑ_0)/(δ_S + δ_P)", Vdi).Scaled(1000)
        .Noted("bolt and parts equally warm; above zero the preload rises")
        .From(
            BoltStiffness, PartsStiffness, Each("layers", static () => JointLayers.Thickness, "l"), Each("layers", static () => JointLayers.Modulus, "E"),
            Each("layers", static () => JointLayers.Expansion, "α_P"), BoltExpansion, Temperature, AssemblyTemperature,
            static (bolt, parts, l, modulus, expansion, of, temperature, assembly) => ClampForce.ThermalChange(
                [.. l.Select((length, i) => new ClampedLayer(length, modulus[i], expansion[i]))], temperature - assembly, of, temperature - assembly,
                1 / bolt, 1 / parts));

    public static readonly NumberDefinition<JointSpec> AxialForce = Number("axial_force", "F_A", "Axial force on the worst bolt, or on the stack of a central nut", Units.Newton)
        .By("F_A = F/z + F_M; of a clamped bearing f_p·F_a + F, F_a at rated torque", "statics").Scaled(1)
        .From(
            Of("bearing", static () => BearingQuantities.AxialLoad, "F_a"), PeakOverRated, JointLoads.Along.Or(0),
            static (load, peak, more) => load * peak + more)
        .Custom(static subject => ((JointSpec)subject.Model).Bearing is { } name
            ? Quantity.NotEvaluated(AxialForce!, [], $"the axial load of bearing {name.Value} is not known")
            : null)
        .From(JointLoads.Along.Or(0), Bolts, JointLoads.MomentForce, static (force, bolts, moment) => force / bolts + moment)
        .From(JointLoads.Along, Bolts.Or(1), static (force, bolts) => force / bolts)
        .Custom(static subject => IsCentral((JointSpec)subject.Model)
            ? AnalysisContext.Missing(AxialForce!, $"{subject.Path}.bearing")
            : subject.Context.Assumed(AxialForce!, 0, "none, for nothing is stated"));

    public static readonly NumberDefinition<JointSpec> ClampLoadFactor = Number("clamp_load_factor", "Φ_K", "Load factor that the clamp counts on")
        .By("Φ; of a central nut 0, for the load may enter at any face", Vdi)
        .From(Kind, LoadFactor, static (kind, phi) => kind == CentralKind ? 0 : phi);

    public static readonly NumberDefinition<JointSpec> Clamp = Number("residual_clamp", "F_KR", "Residual clamp load", Units.Newton)
        .By("F_KR = F_M,min − F_Z + ΔF_th − (1 − Φ_K)·F_A", Vdi).Scaled(1000)
        .Noted("below zero the joint separates")
        .From(MinPreload, EmbeddingLoss, ThermalChange, ClampLoadFactor, AxialForce, ClampForce.Residual);

    public static readonly NumberDefinition<JointSpec> PartingSafety = Number("parting_safety", "S_A", "Safety against separation")
        .By("S_A = (F_M,min − F_Z + ΔF_th)/((1 − Φ_K)·F_A)", "VDI 2230 Part 1, clamp set to zero")
        .When(AxialForce, static force => force > 0)
        .From(
            MinPreload, EmbeddingLoss, ThermalChange, ClampLoadFactor, AxialForce,
            static (preload, loss, thermal, phi, force) => ClampForce.SeparatingLoad(preload, loss, thermal, phi) / force);

    public static readonly NumberDefinition<JointSpec> BoltForce = Number("bolt_force", "F_S", "Maximum bolt force in service", Units.Newton)
        .By("F_S = F_M,max + ΔF_th + Φ·F_A", Vdi)
        .From(MaxPreload, ThermalChange, LoadFactor, AxialForce, ClampForce.BoltForce);

    public static readonly NumberDefinition<JointSpec> ServiceSafety = Number("service_safety", "S_F", "Safety against yield in service")
        .By("S_F = R_p/√(σ_z² + 3·(0.5·τ)²), σ_z = F_S/A_0", Vdi)
        .From(
            Thread, MaxPreload, Yield, StressDiameter, MinFriction, BoltForce,
            static (thread, preload, yield, d, friction, force) =>
                yield / Tightening.ServiceStress(thread, Tightening.ThreadTorque(thread, friction, preload), force, d));

    internal const string CentralKind = "central-nut";

    internal static bool IsCentral(JointSpec spec) => spec.Kind.Value == CentralKind;

    internal static bool IsCarrying(JointSpec spec) => spec.Carries is not null || spec.Torque is not null;

    internal static double Area(double diameter) => Math.PI / 4 * diameter * diameter;

    /// <summary>Under a head only the outermost layers feel its edge; in a stack every ring presses on the next.</summary>
    private static List<Subject> Pressed(JointSpec spec, List<Subject> layers) =>
        IsCentral(spec) || layers.Count < 2 ? layers : spec.Tapped is not null ? [layers[0]] : [layers[0], layers[^1]];

    /// <summary>All joints, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.Joints.Entries)
        {
            var path = $"joints.{spec.Name.Value}";
            var layers = new List<Subject>();
            var joint = context.Begin(SubjectKinds.Joint, path, spec.Name.Span, spec)
                .Relate("train", () => context.Find(SubjectKinds.Train, "train"))
                .RelateAll("layers", () => layers)
                .RelateAll("pressed", () => Pressed(spec, layers));
            if (spec.Bearing is { } bearing)
                joint.RelateOptional("bearing", () => context.Find(SubjectKinds.Bearing, $"bearings.{bearing.Value}"));
            if (spec.Carries is { } body)
                joint.RelateOptional("body", () => context.Find(SubjectKinds.Body, $"bodies.{body.Value}"));
            for (var i = 0; i < spec.Clamped.Length; i++)
            {
                layers.Add(context.Begin(SubjectKinds.JointLayer, string.Create(CultureInfo.InvariantCulture, $"{path}.clamped[{i}]"), spec.Clamped[i].Thickness.Span, spec.Clamped[i])
                    .Relate("joint", joint));
            }
        }
    }

    private static bool IsByTorque(string method) => method is not ("yield controlled" or "angle controlled" or "hydraulic");

    private static bool IsByWrench(string method) => method.StartsWith("torque wrench", StringComparison.Ordinal);

    private static BoltHead HeadOf(string head) => head == "socket" ? BoltHead.SocketCap : BoltHead.Hexagon;

    private static BearingFace Standard(ScrewThread thread, string head) =>
        HeadFace.TryFind(thread, HeadOf(head), fineHole: false, out var face, out var reason) ? face.Value : throw new OutsideValidityException(reason);

    private static PreloadRange ByWrench(
        ScrewThread thread, double torque, double error, double prevailing, double outer, double hole, double least, double greatest) =>
        PreloadRange.ByFriction(thread, new(outer, hole), torque, error, new(least, least), new(greatest, greatest), prevailing);

    private static double TighteningFactor(string method) =>
        TighteningMethod.TryFind(method, out var row, out _) && row.Max is { } factor
            ? factor
            : throw Guard.Because($"no tightening factor is published for tightening {method}: tighten by a wrench");

    private static Quantity TemperatureOf(Subject subject, Quantity assembly)
    {
        var oil = subject.Context.Spec.Duty?.Oil;
        if (oil is not { Coldest: { } coldest, Hottest: { } hottest })
            return AnalysisContext.Missing(Temperature, oil?.Coldest is null ? "duty.oil.coldest" : "duty.oil.hottest");
        var start = assembly.Value.Nominal;
        return subject.Context.Between(
            Temperature, AnalysisContext.Declared(hottest, "from the coldest of assembly and oil to the hottest"), oil.Running?.Value.Coherent ?? start,
            Math.Min(start, coldest.Value.Coherent), Math.Max(start, hottest.Value.Coherent));
    }
}
