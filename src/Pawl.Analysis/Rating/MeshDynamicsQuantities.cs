using Pawl.Analysis.Core;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;
using I = Pawl.Analysis.Rating.GearInertiaQuantities;
using L = Pawl.Analysis.Rating.MeshLoadQuantities;
using M = Pawl.Analysis.Gears.MaterialQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>The dynamic factor of a mesh after ISO 6336-1: its resonance and method B, and method C beside it.</summary>
public sealed class MeshDynamicsQuantities : Section<MeshSpec>
{
    internal const string MethodB = "ISO 6336-1, method B";
    internal const string MethodC = "UR M56.1.6.3, after ISO 6336-1, method C";
    private const string Resonance = "ISO 6336-1, resonance speed";

    /// <summary>Whether each gear is shared by all planets of the set.</summary>
    private static readonly IInput<Centres> Shared = Layout(static mesh => new Centres(IsCentral(mesh, "pinion"), IsCentral(mesh, "wheel")));

    public static readonly NumberDefinition<MeshSpec> ReducedMass =
        Number("reduced_mass", "m_red", "Reduced mass on the line of action, per unit of face width", I.KilogramPerMillimetre)
        .By("1/m_red = N_1/m*_1 + N_2/m*_2, N the planets about a central gear that turns, 1 on a planet; what is held fast is left out", Resonance, Certainty.Memory)
        .Noted("rims or solid discs alone; all meshes of a central gear swing together").AsOne()
        .For(static (_, subject) => IsHeld(subject, "wheel")).From(
            Of("pinion", static () => I.MassAtBase, "m*_1"), L.PlanetCount, Shared, static (mass, planets, shared) =>
                MeshResonance.MassAgainstFixed(mass, shared.OfPinion(planets)))
        .For(static (_, subject) => IsHeld(subject, "pinion")).From(
            Of("wheel", static () => I.MassAtBase, "m*_2"), L.PlanetCount, Shared, static (mass, planets, shared) =>
                MeshResonance.MassAgainstFixed(mass, shared.OfWheel(planets)))
        .From(
            Of("pinion", static () => I.MassAtBase, "m*_1"), Of("wheel", static () => I.MassAtBase, "m*_2"), L.PlanetCount, Shared,
            static (pinion, wheel, planets, shared) => MeshResonance.ReducedMass(pinion, shared.OfPinion(planets), wheel, shared.OfWheel(planets)));

    public static readonly NumberDefinition<MeshSpec> ResonanceSpeed =
        Number("resonance_speed", "n_E1", "Resonance speed of the pinion against the carrier", Units.RevolutionPerMinute)
        .By("n_E1 = 30000/(π·z_1)·√(c_γα/m_red), c_γα in N/(mm·µm), m_red in kg/mm", Resonance, Certainty.Memory)
        .From(L.MeshStiffness, ReducedMass, Of("pinion", static () => G.Teeth, "z_1"), static (stiffness, mass, teeth) =>
            MeshResonance.Speed(stiffness, mass, (int)teeth));

    public static readonly NumberDefinition<MeshSpec> ResonanceRatio =
        Number("resonance_ratio", "N", "Speed of the pinion against the carrier over its resonance speed")
        .By("N = n_1/n_E1, n_1 = v/(π·d_1)", Resonance)
        .From(Q.PitchLineSpeed, Of("pinion", static () => G.ReferenceDiameter, "d_1"), ResonanceSpeed, static (speed, d, resonance) =>
            MeshResonance.Ratio(2 * speed / d, resonance));

    public static readonly NumberDefinition<MeshSpec> ResonanceLimit = Number("resonance_limit", "N_S", "Where the main resonance range begins")
        .By("N_S = 0.85, below 100 N/mm 0.5 + 0.35·√(w_t/100 N/mm)", MethodB, Certainty.Memory)
        .From(L.LineLoad, MeshResonance.LowerLimit);

    public static readonly NumberDefinition<MeshSpec> ResonanceDistance =
        Number("resonance_distance", "", "Distance of the resonance ratio from the main resonance range")
        .By("max(N_S − N, N − 1.15)", MethodB).Turns()
        .From(ResonanceRatio, ResonanceLimit, MeshResonance.Distance);

    public static readonly NumberDefinition<MeshSpec> ToothStiffness =
        Number("tooth_stiffness", "c′", "Stiffness of one pair of teeth per unit of face width", Units.Megapascal)
        .By("c′ = 14 N/(mm·µm)·(w_t/100)^0.25 below 100 N/mm", "ISO 6336-1, method C", Certainty.Memory)
        .Noted("solid steel gears; 1000 MPa are 1 N/(mm·µm)")
        .From(L.LineLoad, MeshStiffness.SinglePair);

    public static readonly NumberDefinition<MeshSpec> ProfileDeviation =
        Number("profile_deviation", "f_fα", "Profile form deviation, the greater of the two", Units.Micrometre)
        .By("the greater of f_fα1 and f_fα2", "ISO 1328-1")
        .From(
            Of("pinion", static () => ToothQuantities.ProfileDeviation, "f_fα1"), Of("wheel", static () => ToothQuantities.ProfileDeviation, "f_fα2"),
            Math.Max);

    public static readonly NumberDefinition<MeshSpec> RunInProfileDeviation =
        Number("run_in_profile_deviation", "f_fα − y_f", "Profile form deviation after running-in", Units.Micrometre)
        .By("f_fα − y_f, y_f as y_α of the base pitch deviation", MethodB, Certainty.Memory)
        .From(ProfileDeviation, LoadFactors.Pinion, LoadFactors.Wheel, Q.PitchLineSpeed, LoadFactors.PitchRunIn);

    public static readonly NumberDefinition<MeshSpec> RunInRelief =
        Number("run_in_relief", "C_ay", "Tip relief that running-in leaves", Units.Micrometre)
        .By("C_ay = ½·(C_ay1 + C_ay2), C_ay,i = (1/18)·(σ_Hlim,i/97 MPa − 18.45)² + 1.5 µm", "ISO 6336-1", Certainty.Memory)
        .From(
            Of("pinion", static () => M.ContactLimit, "σ_Hlim,1"), Of("wheel", static () => M.ContactLimit, "σ_Hlim,2"),
            static (first, second) => (DynamicFactorB.RunningInRelief(first) + DynamicFactorB.RunningInRelief(second)) / 2);

    public static readonly NumberDefinition<MeshSpec> PitchForce = Undeclared("pitch_force", "B_p", "Force of the pitch deviation over that in the mesh")
        .By("B_p = c′·(f_pb − y_α)/w_t", MethodB, Certainty.Memory)
        .From(ToothStiffness, L.RunInPitchDeviation, L.LineLoad, DynamicFactorB.Deviation);

    public static readonly NumberDefinition<MeshSpec> ProfileForce = Undeclared("profile_force", "B_f", "Force of the profile deviation over that in the mesh")
        .By("B_f = c′·(f_fα − y_f)/w_t", MethodB, Certainty.Memory)
        .From(ToothStiffness, RunInProfileDeviation, L.LineLoad, DynamicFactorB.Deviation);

    public static readonly NumberDefinition<MeshSpec> StiffnessForce =
        Undeclared("stiffness_force", "B_k", "What the tip relief leaves of the change of stiffness")
        .By("B_k = |1 − c′·C_a/w_t|, the greater of the tips, C_ay where no relief is drawn; grade 7 and coarser: at least 1", MethodB, Certainty.Memory).Turns()
        .From(ToothStiffness, LoadFactors.Reliefs, RunInRelief, L.LineLoad, L.AccuracyGrade, LoadFactors.Relief);

    public static readonly NumberDefinition<MeshSpec> DynamicFactorOfB = Undeclared("dynamic_factor_b", "K_vB", "Dynamic factor by method B")
        .By("N ≤ N_S: 1 + N·(C_v1·B_p + C_v2·B_f + C_v3·B_k); up to 1.15: 1 + C_v1·B_p + C_v2·B_f + C_v4·B_k; from 1.5: C_v5·B_p + C_v6·B_f + C_v7; a line between; C_v1 to C_v7 by ε_γ; at least 1", MethodB, Certainty.Memory)
        .Noted("sees the pair alone: in the main resonance range a finer analysis is advised").Turns()
        .From(ResonanceRatio, ResonanceLimit, PitchForce, ProfileForce, StiffnessForce, Q.TotalContactRatio, DynamicFactorB.Factor);

    public static readonly NumberDefinition<MeshSpec> DynamicFactorOfC = Undeclared("dynamic_factor_c", "K_vC", "Dynamic factor by method C")
        .By("K_v = 1 + (K_1/max(w_t, 100 N/mm) + K_2)·s·K_3", MethodC, Certainty.Published)
        .Noted("up to s = 3 m/s; K_1 of grades 9 and 10 from memory")
        .From(L.DynamicParameter, L.LineLoad, L.AccuracyGrade, Q.OverlapRatio, LoadFactors.Dynamic);

    public static readonly RowDefinition<MeshSpec, string> Method = Text("dynamic_method", "Method of the dynamic factor")
        .By("declared; both where B and C can be evaluated, else the one that can", "ISO 6336-1", Certainty.Declared)
        .Custom(static subject => ((MeshSpec)subject.Model).DynamicFactor is { } stated
            ? Quantity.OfText(Method!, AnalysisContext.Declared(stated), "declared", [])
            : Quantity.ComputedText(Method!, (Has(subject, DynamicFactorOfB), Has(subject, DynamicFactorOfC)) switch
            {
                (true, true) => "both",
                (true, false) => "B",
                _ => "C",
            }));

    /// <summary>Whether a quantity has a value.</summary>
    internal static bool Has(Subject subject, QuantityKind kind) => subject.Find(kind) is { IsEvaluated: true };

    private static NumberDefinition<MeshSpec> Undeclared(string name, string symbol, string title) =>
        Number(name, symbol, title).When(static s => s.DynamicFactor is null);

    private static bool IsHeld(Subject mesh, string role) => mesh.Reach(role) is { } gear && !I.Turning((GearSpec)gear.Model, gear);

    private static bool IsCentral(Subject mesh, string role) =>
        mesh.Reach(role) is { } gear && mesh.Context.Spec.Train!.Planets.Find(((GearSpec)gear.Model).On.Value) is null;

    /// <summary>Which gears of a mesh are central: all planets of the set share them.</summary>
    private sealed record Centres(bool Pinion, bool Wheel)
    {
        public int OfPinion(double planets) => Pinion ? (int)planets : 1;

        public int OfWheel(double planets) => Wheel ? (int)planets : 1;
    }
}
