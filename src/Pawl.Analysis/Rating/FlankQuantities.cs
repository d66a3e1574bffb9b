using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using static Pawl.Analysis.Core.Inputs;
using D = Pawl.Analysis.Rating.DutyQuantities;
using G = Pawl.Analysis.Gears.GearQuantities;
using L = Pawl.Analysis.Rating.MeshLoadQuantities;
using M = Pawl.Analysis.Gears.MaterialQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>Pitting of a gear in one of its meshes, after ISO 6336-2.</summary>
public sealed class FlankQuantities : Section<MeshGear>
{
    private const string Contact = "ISO 6336-2";

    private static readonly IInput<Circles> Own = CirclesOf("gear", "");

    private static readonly IInput<Circles> Mate = CirclesOf("mate", ",mate");

    private static readonly IInput<LifeCurve> Endurance = Join(
        OfRow("gear", static () => M.Class), OfRow("train", static () => D.Pitting), OfRow("train", static () => D.LongLife),
        static (name, pitting, longLife) => LifeCurves.Flank(LoadFactors.ClassOf(name), pitting == "limited", longLife == "full"));

    /// <summary>The static strength has no factors of film: its corner moves against the others by them.</summary>
    internal static readonly IInput<LifeCurve> Curve = Join(
        Endurance, Of("mesh", static () => L.LubricantFactor), Of("mesh", static () => L.SpeedFactor), Of("mesh", static () => L.RoughnessFactor),
        static (curve, zl, zv, zr) => curve.WithStaticFactor(curve.StaticFactor * (1 / (zl * zv * zr))));

    public static readonly NumberDefinition<MeshGear> ContactsPerTurn = Number("contacts_per_turn", "c", "Contacts of a flank in one turn relative to the carrier")
        .By("1 on a planet; on a central gear the number of planets", "closed form")
        .For(static (s, subject) => subject.Context.Spec.Train!.Planets.Find(s.Gear.On.Value) is not null).From(static () => 1)
        .From(Of("mesh", static () => L.PlanetCount), static count => count);

    public static readonly NumberDefinition<MeshGear> SpeedRatio =
        Number("speed_ratio", "(n − n_carrier)/n_in", "Speed against the carrier, per input speed, magnitude")
        .By("that of the first gear, times the teeth of the first over its own", "Willis relation")
        .From(
            Of("mesh", static () => Q.RelativeSpeedRatio), Of("first", static () => G.Teeth, "z_first"), Of("gear", static () => G.Teeth, "z"),
            static (first, teeth, own) => first * teeth / own);

    public static readonly NumberDefinition<MeshGear> LoadCycles = Number("load_cycles", "N_L", "Load cycles of a flank in the service life")
        .By("N_L = c · n_in · (n − n_carrier)/n_in · L_h", "closed form")
        .Noted("turns relative to the carrier; a drive that turns both ways counts the whole life on each flank")
        .From(
            Of("train", static () => TrainQuantities.InputSpeed), Of("train", static () => D.ServiceLife), ContactsPerTurn, SpeedRatio,
            static (speed, life, contacts, perInput) => MeshForce.FlankCycles((int)contacts, speed * perInput, life));

    public static readonly NumberDefinition<MeshGear> SingleContactFactor = Number("single_contact_factor", "Z_B,D", "Single pair contact factor")
        .By("pinion Z_B = M_1, wheel Z_D = M_2, each at least 1; internal ring and ε_β ≥ 1: 1; between, linear in ε_β", Contact)
        .Noted("with f_ZCa = 1 of the 2019 edition: the flanks of a helical pair are modified")
        .From(
            Own, Mate, Of("mesh", static () => Q.WorkingPressureAngle), Of("mesh", static () => Q.TransverseContactRatio),
            Of("mesh", static () => Q.OverlapRatio), static (own, mate, angle, ratio, overlap) =>
                own.Teeth < 0 ? ContactFactors.SinglePairOfInternalGear
                : overlap >= 1 ? 1
                : ContactFactors.SinglePair(
                    ContactFactors.SinglePairRatio(angle, own.Tip, own.Ground, own.Teeth, mate.Tip, mate.Ground, mate.Teeth, ratio), overlap));

    public static readonly NumberDefinition<MeshGear> ContactStress =
        Number("contact_stress", "σ_H", "Contact stress at the rated torque", Units.Megapascal).Turns()
        .By("σ_H = Z_B,D·σ_H0·√(K_A·K_γ·K_v·K_Hβ·K_Hα)", Contact)
        .From(
            SingleContactFactor, Of("mesh", static () => L.NominalContactStress), Of("train", static () => D.ApplicationFactor),
            Of("mesh", static () => L.LoadSharing), Of("mesh", static () => L.DynamicFactor), Of("mesh", static () => L.FaceLoadFactor),
            Of("mesh", static () => L.TransverseLoadFactor), static (single, nominal, application, sharing, dynamic, face, transverse) =>
                Mechanics.Rating.ContactStress.OfGear(nominal, single, application * sharing * dynamic * face * transverse));

    public static readonly NumberDefinition<MeshGear> WorkHardeningFactor = Number("work_hardening_factor", "Z_W", "Work hardening factor")
        .By("through-hardened gear, surface-hardened mate: Z_W = (1.2 − (HB − 130)/1700)·(3/R_zH)^0.15, HB within 130 to 470, R_zH = Rz_mate·(10/ρ_red)^0.33·(Rz_mate/Rz)^0.66/(v·ν_40/1500)^0.33; else 1", "UR M56.2.11, after ISO 6336-2", Certainty.Published)
        .Noted("Vickers taken as Brinell")
        .For(static (_, subject) => IsSoft(subject, "gear") && IsHard(subject, "mate")).From(
            Of("gear", static () => M.SurfaceHardness, "H"), Of("mate", static () => M.FlankRz, "Rz_mate"), Of("gear", static () => M.FlankRz, "Rz"),
            Of("mesh", static () => L.ReducedRadius), Of("mesh", static () => Q.PitchLineSpeed), Of("train", static () => D.Viscosity40),
            static (hardness, hard, soft, radius, speed, viscosity) => Mechanics.Rating.ContactStrength.WorkHardening(
                hardness, Mechanics.Rating.ContactStrength.RoughnessOnSoftWheel(hard, soft, radius, speed, viscosity)))
        .From(static () => 1);

    public static readonly NumberDefinition<MeshGear> SizeFactor = Number("contact_size_factor", "Z_X", "Size factor of the contact")
        .By("Z_X = 1 up to m_n = 10 mm", Contact, Certainty.Memory)
        .From(Of("mesh", static () => Q.Module), Mechanics.Rating.ContactStrength.Size);

    public static readonly NumberDefinition<MeshGear> LifeFactor = Number("contact_life_factor", "Z_NT", "Life factor of the contact")
        .By("lines between the points of the class in lg N, lg Z; the static point over Z_L·Z_v·Z_R, which do not act on it", Contact, Certainty.Memory)
        .Tables(LifeCurves.FlankTable).From(LoadCycles, Curve, static (cycles, curve) => curve.FactorAt(cycles));

    public static readonly NumberDefinition<MeshGear> ContactStrength =
        Number("contact_strength", "σ_HG", "Contact strength at the reference life", Units.Megapascal)
        .By("σ_Hlim·Z_L·Z_v·Z_R·Z_W·Z_X", Contact)
        .From(
            Of("gear", static () => M.ContactLimit), Of("mesh", static () => L.LubricantFactor), Of("mesh", static () => L.SpeedFactor),
            Of("mesh", static () => L.RoughnessFactor), WorkHardeningFactor, SizeFactor, static (limit, zl, zv, zr, zw, zx) =>
                Mechanics.Rating.ContactStrength.Limit(limit, 1, zl * zv * zr * zw * zx));

    private static readonly IInput<DamageBin[]> Bins = Join(
        Join(ContactStress, SingleContactFactor, Of("mesh", static () => L.NominalContactStress), static (rated, single, nominal) => (rated, nominal: single * nominal)),
        LoadCycles, Each("shares", static () => MeshCaseQuantities.ContactLoadFactor), Each("shares", static () => MeshCaseQuantities.CycleShare),
        static (stress, cycles, loads, shares) => Spectrum.Bins(stress.rated, stress.nominal, cycles, loads, shares, Math.Sqrt));

    public static readonly NumberDefinition<MeshGear> ContactSafety = Number("contact_safety", "S_H", "Safety against pitting").NeverNegative()
        .By("S_H = σ_HG·Z_NT/σ_H; under a load spectrum the factor on all stresses at which the damage sum is 1", "ISO 6336-2, ISO 6336-6")
        .Noted("1 % probability of damage; on stress, so its square is on load; each share of a spectrum with load factors of its own")
        .For(Spectrum.IsAbsent).From(ContactStrength, LifeFactor, ContactStress, static (strength, life, stress) => strength * life / stress)
        .From(ContactStrength, Curve, Bins, Spectrum.Safety);

    public static readonly NumberDefinition<MeshGear> ContactDamage =
        Number("contact_damage", "D_H", "Damage sum of the flank with the safety required")
        .By("D_H = Σ n_i/N_i, N_i the life at S_Hmin·σ_Hi", "ISO 6336-6, linear damage")
        .Noted("load factors of each share from the same formulas at its load and speed")
        .When(Spectrum.IsPresent)
        .From(ContactStrength, Curve, Bins, Of("train", static () => D.RequiredContactSafety), Spectrum.DamageSum);

    public static readonly NumberDefinition<MeshGear> ContactLife =
        Number("contact_life", "L_H", "Life of the flank with the safety required", Units.Hour)
        .By("L_H = L_h/D_H, D_H = Σ n_i/N_i at S_Hmin·σ_Hi", "ISO 6336-6, linear damage")
        .Noted("counted up to 10⁶ h")
        .From(ContactStrength, Curve, Bins, Of("train", static () => D.RequiredContactSafety), Of("train", static () => D.ServiceLife), Spectrum.Life);

    public static readonly NumberDefinition<MeshGear> PeakContactSafety =
        Number("peak_contact_safety", "S_H,peak", "Safety of the flank at the peak torque").NeverNegative()
        .By("S_H,peak = σ_Hlim·Z_NT,static·Z_W/(Z_B,D·σ_H0·√K_H,peak)", Contact)
        .From(
            Of("gear", static () => M.ContactLimit), Endurance, WorkHardeningFactor, SingleContactFactor, Of("mesh", static () => L.NominalContactStress),
            Of("peak", static () => MeshCaseQuantities.ContactLoadFactor, "K_H,peak"), static (limit, curve, hardening, single, nominal, factor) =>
                limit * curve.StaticFactor * hardening / Mechanics.Rating.ContactStress.OfGear(nominal, single, factor));

    private static IInput<Circles> CirclesOf(string role, string index) => Join(
        OfRow(role, static () => G.Kind), Of(role, static () => G.Teeth, index.Length == 0 ? "z" : "z_mate"),
        Of(role, static () => G.ActiveTipDiameter, $"d_Na{index}"), Of(role, static () => G.BaseDiameter, $"d_b{index}"),
        static (kind, teeth, tip, ground) => new Circles(G.Signed(kind, teeth), G.Sign(kind) * tip, G.Sign(kind) * ground));

    private static bool IsSoft(Subject subject, string role) => ClassOf(subject, role) is { } material && LoadFactors.IsSoft(material);

    /// <summary>A soft gear gains from a hard and smooth mate.</summary>
    private static bool IsHard(Subject subject, string role) => ClassOf(subject, role) is { } material && !LoadFactors.IsSoft(material);

    private static MaterialClass? ClassOf(Subject subject, string role) => MaterialQuantities.Of(subject.Reach(role)!).Class;

    /// <summary>Teeth, tip and base diameter of a gear, with the sign of ISO 21771.</summary>
    private readonly record struct Circles(int Teeth, double Tip, double Ground);
}
