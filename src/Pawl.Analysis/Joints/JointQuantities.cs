using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Joints;

/// <summary>What is known of a bolted joint or of a central nut.</summary>
public static class JointQuantities
{
    private const string Vdi = "VDI 2230 Part 1";
    private const string Closed = "closed form";
    private const string TheSpec = "the spec";

    public static readonly QuantityKind Kind = Words("joint_kind", "Kind");
    public static readonly QuantityKind Thread = Words("thread", "Thread");
    public static readonly QuantityKind Strength = Words("strength", "Property class or grade");
    public static readonly QuantityKind FrictionClass = Words("friction_class", "Class of friction");
    public static readonly QuantityKind HeldBy = new()
    {
        Name = "held_by", Title = "Held by", ValueKind = ValueKind.Text, Formula = "tapped hole, nut, or nut on a shaft", Source = TheSpec, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Proof = new()
    {
        Name = "proof_stress", Symbol = "S_p", Title = "Stress under proof load", Unit = Units.Megapascal, Formula = "of the property class or grade, or as stated",
        Source = "ISO 898-1:2013, SAE J429", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind Yield = new()
    {
        Name = "yield", Symbol = "R_p", Title = "Yield of bolt or shaft", Unit = Units.Megapascal, Formula = "of the property class or grade, or as stated",
        Source = "ISO 898-1:2013, SAE J429", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind Tensile = new()
    {
        Name = "tensile_strength", Symbol = "R_m", Title = "Tensile strength of bolt or shaft, least", Unit = Units.Megapascal,
        Formula = "of the property class or grade, or as stated", Source = "ISO 898-1:2013, SAE J429", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind Section = new()
    {
        Name = "section_diameter", Symbol = "d_0", Title = "Diameter of the section that bears", Unit = Units.Millimetre,
        Formula = "d_0 = (d_2 + d_3)/2; a shaft: of the area that bore and cross hole leave", Source = "ISO 898-1; closed form",
    };

    public static readonly QuantityKind LeastFriction = new()
    {
        Name = "least_friction", Symbol = "µ_min", Title = "Least friction in thread and under the head", Formula = "as stated, else of its class",
        Source = "VDI 2230 Part 1, table A5", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind GreatestFriction = new()
    {
        Name = "greatest_friction", Symbol = "µ_max", Title = "Greatest friction in thread and under the head", Formula = "as stated, else of its class",
        Source = "VDI 2230 Part 1, table A5", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind Torque = new()
    {
        Name = "tightening_torque", Symbol = "M_A", Title = "Tightening torque", Unit = Units.NewtonMetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Method = Words("tightening_method", "How the preload is reached");

    public static readonly QuantityKind FaceOutside = new()
    {
        Name = "face", Symbol = "d_W", Title = "Outside diameter of the face under head or nut", Unit = Units.Millimetre,
        Formula = "as stated, else of the standard head", Source = "ISO 4014, ISO 4762", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind FaceHole = new()
    {
        Name = "hole", Symbol = "d_h", Title = "Hole under head or nut", Unit = Units.Millimetre, Formula = "as stated, else of the medium series",
        Source = "ISO 273", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind LeastPreload = new()
    {
        Name = "least_preload", Symbol = "F_M,min", Title = "Least preload after tightening", Unit = Units.Newton,
        Formula = "F_M = (M_A·(1 − e) − M_p)/(0.159·P + 0.577·d_2·µ_max + 0.5·D_Km·µ_max); other methods F_M,max/α_A", Source = Vdi,
    };

    public static readonly QuantityKind GreatestPreload = new()
    {
        Name = "greatest_preload", Symbol = "F_M,max", Title = "Greatest preload after tightening", Unit = Units.Newton,
        Formula = "F_M = (M_A·(1 + e) − M_p)/(0.159·P + 0.577·d_2·µ_min + 0.5·D_Km·µ_min)", Source = Vdi,
    };

    public static readonly QuantityKind Scatter = new()
    {
        Name = "preload_scatter", Symbol = "α_A", Title = "Greatest over least preload", Formula = "α_A = F_M,max/F_M,min", Source = Vdi,
    };

    public static readonly QuantityKind PermittedPreload = new()
    {
        Name = "permitted_preload", Symbol = "F_Mzul", Title = "Preload that uses 0.9 of the yield in tension and torsion", Unit = Units.Newton,
        Formula = "F_Mzul = A_0·0.9·R_p/√(1 + 3·(1.5·d_2/d_0·(P/(π·d_2) + 1.155·µ_min))²)", Source = Vdi, Certainty = Certainty.Published,
    };

    public static readonly QuantityKind PermittedTorque = new()
    {
        Name = "permitted_torque", Symbol = "M_A,zul", Title = "Torque that reaches this preload at the least friction", Unit = Units.NewtonMetre,
        Formula = "M_A,zul = F_Mzul·(0.159·P + 0.577·d_2·µ_min + 0.5·D_Km·µ_min) + M_p", Source = Vdi, Certainty = Certainty.Published,
    };

    public static readonly QuantityKind Utilisation = new()
    {
        Name = "preload_utilisation", Symbol = "F_M,max/F_Mzul", Title = "Greatest over permitted preload", Formula = "F_M,max/F_Mzul", Source = Vdi,
    };

    public static readonly QuantityKind YieldShare = new()
    {
        Name = "yield_share", Symbol = "σ_red/R_p", Title = "Share of the yield used when tightened", Formula = "√(σ² + 3·τ²)/R_p, torsion elastic", Source = "von Mises",
    };

    public static readonly QuantityKind ProofShare = new()
    {
        Name = "proof_share", Symbol = "F_M,max/F_p", Title = "Greatest preload over proof load", Formula = "F_M,max/(S_p·A_s)",
        Source = "ISO 898-1", Note = "at least friction: the wrench's number is right, the bolt's force at its greatest",
    };

    public static readonly QuantityKind ClampedLength = new()
    {
        Name = "clamped_length", Symbol = "l_K", Title = "Clamped length", Unit = Units.Millimetre, Formula = "Σ of the thicknesses", Source = TheSpec,
    };

    public static readonly QuantityKind ClampRatio = new()
    {
        Name = "clamp_ratio", Symbol = "l_K/d", Title = "Clamped length over diameter", Formula = "l_K/d", Source = Closed,
    };

    public static readonly QuantityKind BoltStiffness = new()
    {
        Name = "bolt_stiffness", Symbol = "1/δ_S", Title = "Stiffness of the bolt", Unit = Units.NewtonPerMillimetre,
        Formula = "δ_S = Σ l/(E·A) over head, shank, free and engaged thread, nut or tapped hole", Source = Vdi, Certainty = Certainty.Memory,
        Note = "bolts of steel, E 205 000 MPa, 11.5·10⁻⁶ 1/K; a shaft: its material",
    };

    public static readonly QuantityKind PartsStiffness = new()
    {
        Name = "parts_stiffness", Symbol = "1/δ_P", Title = "Stiffness of the clamped parts", Unit = Units.NewtonPerMillimetre,
        Formula = "δ_P = Σ l/(E·A) along the cone under the head, cut to a sleeve at D_A, layer by layer; a stack of rings: Σ l/(E·π/4·(D² − d²))",
        Source = Vdi, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind LoadFactor = new()
    {
        Name = "load_factor", Symbol = "Φ", Title = "Share of an axial force that the bolt feels", Formula = "Φ = n·(δ_P + δ_M)/(δ_S + δ_P), δ_M of a tapped hole", Source = Vdi, Certainty = Certainty.Memory, Note = "concentric; bending of an eccentric bolt is left out",
    };

    public static readonly QuantityKind Embedding = new()
    {
        Name = "embedding", Symbol = "f_Z", Title = "Embedding of thread and faces", Unit = Units.Micrometre, Formula = "by Rz, faces and interfaces", Source = Vdi,
        Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind EmbeddingLoss = new()
    {
        Name = "embedding_loss", Symbol = "F_Z", Title = "Preload lost by embedding", Unit = Units.Newton, Formula = "F_Z = f_Z/(δ_S + δ_P)", Source = Vdi,
    };

    public static readonly QuantityKind EmbeddingShare = new()
    {
        Name = "embedding_share", Symbol = "F_Z/F_M,min", Title = "Share of the least preload lost by embedding", Formula = "F_Z/F_M,min", Source = Closed,
    };

    public static readonly QuantityKind ThermalChange = new()
    {
        Name = "thermal_change", Symbol = "ΔF_th", Title = "Change of the preload by heat, coldest to hottest", Unit = Units.Newton, Scale = 1000,
        Formula = "ΔF_th = Σ l·(α_P − α_S)·ΔT/(δ_S + δ_P)", Source = Vdi,
        Note = "bolt and parts equally warm; above zero the preload rises",
    };

    public static readonly QuantityKind AxialForce = new()
    {
        Name = "axial_force", Symbol = "F_A", Title = "Axial force on one bolt, or on the stack of a central nut", Unit = Units.Newton, Scale = 1,
        Formula = "stated force over the bolts; of a clamped bearing its axial load at rated torque, scaled to the peak", Source = "the spec; statics",
    };

    public static readonly QuantityKind Clamp = new()
    {
        Name = "residual_clamp", Symbol = "F_KR", Title = "Least clamp force left", Unit = Units.Newton, Scale = 1000,
        Formula = "F_KR = F_M,min − F_Z + ΔF_th,least − (1 − Φ)·F_A", Source = Vdi,
        Note = "a central nut: Φ = 0, for the load may enter at any face",
    };

    public static readonly QuantityKind PartingSafety = new()
    {
        Name = "parting_safety", Symbol = "S_A", Title = "Axial force that parts the joint over the greatest one",
        Formula = "S_A = (F_M,min − F_Z + ΔF_th,least)/((1 − Φ)·F_A)", Source = "VDI 2230 Part 1, clamp set to zero",
    };

    public static readonly QuantityKind ServiceSafety = new()
    {
        Name = "service_safety", Symbol = "S_F", Title = "Yield over the stress in service", Formula = "S_F = R_p/√(σ_z² + 3·(0.5·τ)²), σ_z = (F_M,max + ΔF_th,greatest + Φ·F_A)/A_0", Source = Vdi,
    };

    public static readonly QuantityKind Bolts = new() { Name = "bolts", Symbol = "z", Title = "Number of bolts", Certainty = Certainty.Declared };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Kind, Thread, Strength, HeldBy, Bolts, Proof, Yield, Tensile, Section, FrictionClass, LeastFriction, GreatestFriction, Torque, Method, FaceOutside, FaceHole, LeastPreload,
        GreatestPreload, Scatter, PermittedPreload, PermittedTorque, Utilisation, YieldShare, ProofShare, ClampedLength, ClampRatio, BoltStiffness, PartsStiffness,
        LoadFactor, Embedding, EmbeddingLoss, EmbeddingShare, ThermalChange, AxialForce, Clamp, PartingSafety, ServiceSafety,
    ];

    internal static QuantityKind Words(string name, string title) => new()
    {
        Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    internal static QuantityKind Millimetres(string name, string symbol, string title) => new()
    {
        Name = name, Symbol = symbol, Title = title, Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };
}
