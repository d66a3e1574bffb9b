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
using T = Pawl.Analysis.Rating.ToothQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>Breakage at the root of a gear in one of its meshes, after ISO 6336-3.</summary>
public sealed class RootQuantities : Section<MeshGear>
{
    private const string Bending = "ISO 6336-3";

    private static readonly IInput<RootCut> Rack = Join(
        Shape(1), Of("gear", static () => G.Dedendum), Of("gear", static () => G.RootFillet),
        static (tooth, dedendum, fillet) => RootSections.CutByRack(tooth, new(dedendum, fillet)));

    private static readonly IInput<RootCut> Shaper = Join(
        Shape(-1), Of("gear", static () => T.CutterTeeth), Of("gear", static () => T.CutterTipDiameter),
        Join(Of("gear", static () => T.CutterTipRadius), Of("gear", static () => T.CutterProfileShift), static (radius, shift) => (radius, shift)),
        static (tooth, teeth, tip, tool) => RootSections.CutByPinionCutter(tooth, new((int)teeth, tip, tool.radius, tool.shift)));

    private static readonly IInput<double> Tip = Join(
        OfRow("gear", static () => G.Kind), Of("gear", static () => G.ActiveTipDiameter), static (kind, tip) => G.Sign(kind) * tip);

    private static readonly IInput<bool> Peened = OfRowOr("gear", static () => M.Peened, false);

    private static readonly IInput<MaterialClass> Class = Join(OfRow("gear", static () => M.RootClass), LoadFactors.ClassOf);

    /// <summary>0 where it is not known.</summary>
    private static readonly IInput<double> Yield = OfOr("gear", static () => M.YieldStrength, 0);

    private static readonly IInput<LifeCurve> Endurance = Join(
        Class, OfRow("train", static () => D.LongLife), static (material, longLife) => LifeCurves.Root(material, longLife == "full"));

    public static readonly NumberDefinition<MeshGear> FaceWidth =
        Number("root_face_width", "b_F", "Face width that the root counts", Units.Millimetre)
        .By("b_F = own face width, at most the one in common and a module at each end", Bending)
        .From(
            Of("gear", static () => G.FaceWidth, "b_own"), Of("mesh", static () => L.RatedFaceWidth), Of("mesh", static () => Q.Module),
            static (own, common, module) => own < common ? own : Mechanics.Rating.RootStress.FaceWidth(own, common, module));

    public static readonly NumberDefinition<MeshGear> FilletAngle =
        Number("fillet_angle", "θ", "Angle of the tool as it cuts the critical section", Units.Degree)
        .By("θ = (2·G/z_n)·tan θ − H for a rack; for a pinion-type cutter by the law of gearing", Bending)
        .For(IsExternal).From(Rack, static cut => cut.FilletAngle())
        .For(IsShaped).From(Shaper, static cut => cut.FilletAngle())
        .Otherwise(NoCutter);

    public static readonly NumberDefinition<MeshGear> RootChord =
        Number("root_chord", "s_Fn", "Tooth thickness at the critical section", Units.Millimetre)
        .By("rack: s_Fn = m_n·(z_n·sin(π/3 − θ) + √3·(G/cos θ − ρ_fP*)), between the 30° tangents of the fillets (internal: 60°)", Bending)
        .For(IsExternal).From(Rack, FilletAngle, static (cut, angle) => cut.Chord(angle))
        .For(IsShaped).From(Shaper, FilletAngle, static (cut, angle) => cut.Chord(angle))
        .Otherwise(NoCutter);

    public static readonly NumberDefinition<MeshGear> RootRadius =
        Number("root_radius", "ρ_F", "Radius of the fillet at the critical section", Units.Millimetre)
        .By("rack: ρ_F = m_n·(ρ_fP* + 2·G²/(cos θ·(z_n·cos² θ − 2·G))), at the 30° tangent (internal: 60°)", Bending)
        .For(IsExternal).From(Rack, FilletAngle, static (cut, angle) => cut.FilletRadius(angle))
        .For(IsShaped).From(Shaper, FilletAngle, static (cut, angle) => cut.FilletRadius(angle))
        .Otherwise(NoCutter);

    public static readonly NumberDefinition<MeshGear> LoadAngle =
        Number("load_angle", "α_Fen", "Angle of the load at the outer point of single contact", Units.Degree)
        .By("α_Fen = α_en − γ_e (internal: + γ_e)", Bending)
        .For(IsExternal).From(Rack, Tip, Of("mesh", static () => Q.TransverseContactRatio), static (cut, tip, ratio) => cut.LoadAngle(tip, ratio))
        .For(IsShaped).From(Shaper, Tip, Of("mesh", static () => Q.TransverseContactRatio), static (cut, tip, ratio) => cut.LoadAngle(tip, ratio))
        .Otherwise(NoCutter);

    public static readonly NumberDefinition<MeshGear> BendingArm =
        Number("bending_arm", "h_Fe", "Bending arm of load at the outer point of single contact", Units.Millimetre)
        .By("h_Fe = d_bn/(2·cos α_Fen) less the height of the chord at θ, from the critical section to the load line on the middle of the tooth", Bending)
        .For(IsExternal).From(Rack, FilletAngle, LoadAngle, static (cut, angle, load) => cut.LeverArm(angle, load))
        .For(IsShaped).From(Shaper, FilletAngle, LoadAngle, static (cut, angle, load) => cut.LeverArm(angle, load))
        .Otherwise(NoCutter);

    public static readonly NumberDefinition<MeshGear> FormFactor = Number("form_factor", "Y_F", "Form factor")
        .By("Y_F = 6·(h_Fe/m_n)·cos α_Fen/((s_Fn/m_n)²·cos α_n)·f_ε", "ISO 6336-3:2019, method B", Certainty.Memory)
        .From(
            BendingArm, Of("mesh", static () => Q.Module), LoadAngle, RootChord, Of("gear", static () => G.PressureAngle),
            Of("mesh", static () => Q.TransverseContactRatio), Of("mesh", static () => Q.OverlapRatio), Of("gear", static () => G.BaseHelixAngle),
            static (arm, module, load, chord, angle, transverse, overlap, helix) => RootFactors.Form(new(chord, arm, 1, 0, load), module, angle)
                * RootFactors.LoadDistribution(overlap, transverse / (Math.Cos(helix) * Math.Cos(helix))));

    public static readonly NumberDefinition<MeshGear> NotchParameter = Number("notch_parameter", "q_s", "Notch parameter")
        .By("q_s = s_Fn/(2·ρ_F)", Bending)
        .From(RootChord, RootRadius, static (chord, radius) => chord / (2 * radius));

    public static readonly NumberDefinition<MeshGear> StressCorrection = Number("stress_correction", "Y_S", "Stress correction factor")
        .By("Y_S = (1.2 + 0.13·L)·q_s^(1/(1.21 + 2.3/L)), L = s_Fn/h_Fe, 1 ≤ q_s < 8", "UR M56.3.4, after ISO 6336-3", Certainty.Published)
        .Noted("without grinding notches")
        .From(RootChord, BendingArm, RootRadius, static (chord, arm, radius) => RootFactors.StressCorrection(new(chord, arm, radius, 0, 0)));

    public static readonly NumberDefinition<MeshGear> HelixFactor = Number("root_helix_factor", "Y_β", "Helix angle factor of the root")
        .By("Y_β = (1 − ε_β·β/120°)/cos³ β, ε_β at most 1, β at most 30°", "ISO 6336-3:2019", Certainty.Memory)
        .From(
            Of("mesh", static () => Q.OverlapRatio), Of("gear", static () => G.HelixAngle),
            static (overlap, beta) => RootFactors.HelixAngle(overlap, beta, RootEdition.Iso2019));

    public static readonly NumberDefinition<MeshGear> RimFactor = Number("rim_factor", "Y_B", "Rim thickness factor")
        .By("external: 1 from s_R/h = 1.2, 1.6·ln(2.242·h/s_R) down to 0.5; internal: 1 from s_R/m_n = 3.5, 1.15·ln(8.324·m_n/s_R) down to 1.75", "UR M56.3.6, after ISO 6336-3", Certainty.Published)
        .For(IsExternal).From(Of("gear", static () => G.RimThickness), Of("gear", static () => G.ToothDepth, "h"), RootFactors.RimOfExternal)
        .From(Of("gear", static () => G.RimThickness), Of("gear", static () => G.Module), RootFactors.RimOfInternal)
        .Otherwise(static s => $"train.gears.{s.Gear.Name.Value}.rim_thickness is not stated");

    public static readonly NumberDefinition<MeshGear> NominalRootStress =
        Number("nominal_root_stress", "σ_F0", "Nominal root stress", Units.Megapascal)
        .By("σ_F0 = F_t/(b_F·m_n)·Y_F·Y_S·Y_β·Y_B", Bending)
        .Noted("Y_DT = 1, on the safe side above ε_αn = 2.05")
        .From(
            Of("mesh", static () => Q.TangentialForce), FaceWidth, Of("mesh", static () => Q.Module), FormFactor, StressCorrection, HelixFactor, RimFactor,
            static (force, width, module, form, correction, helix, rim) =>
                Mechanics.Rating.RootStress.Nominal(force, width, module, form, correction, helix, rim));

    public static readonly NumberDefinition<MeshGear> RootStress = Number("root_stress", "σ_F", "Root stress at the rated torque", Units.Megapascal).Turns()
        .By("σ_F = σ_F0·K_A·K_γ·K_v·K_Fβ·K_Fα", Bending)
        .From(
            NominalRootStress, Of("train", static () => D.ApplicationFactor), Of("mesh", static () => L.LoadSharing), Of("mesh", static () => L.DynamicFactor),
            Of("mesh", static () => L.FaceLoadFactorBending), Of("mesh", static () => L.TransverseLoadFactorBending),
            Mechanics.Rating.RootStress.WithLoadFactors);

    public static readonly NumberDefinition<MeshGear> OtherFlankShare =
        Number("other_flank_share", "q_F", "Load of the less loaded flank over that of the other, in the first direction")
        .By("from the torques of all meshes of the gear by their sign", "statics of the train")
        .Solved([], static subject => Q.TorqueReasons(subject.Reach("mesh")!), static (s, subject) => subject.Context.Train!.OtherFlankShare(s.Gear));

    public static readonly NumberDefinition<MeshGear> LoadReversal = Number("load_reversal", "R", "Stress ratio of the root")
        .By("R = 0 for load on one flank; −1.2 · lesser/greater load of the two flanks", Bending, Certainty.Memory)
        .Noted("planets and idlers are loaded on both flanks, and so is every gear of a drive that turns both ways or coasts").Scaled(1)
        .From(
            OtherFlankShare, Of("train", static () => TrainQuantities.InputTorque), Of("train", static () => D.ReverseTorque), Reversal);

    public static readonly RowDefinition<MeshGear, string> LoadedFlanks = Text("loaded_flanks", "Flanks of a tooth that carry load")
        .By("both where R < 0, else one", "statics of the train")
        .From(LoadReversal, static ratio => ratio < 0 ? "both" : "one");

    public static readonly NumberDefinition<MeshGear> MeanStressFactor = Number("mean_stress_factor", "Y_M", "Mean stress factor of reversed bending")
        .By("Y_M = 1/(1 − R·(1 − M)/(1 + M)), M by class", "ISO 6336-3, annex B", Certainty.Memory)
        .From(Class, Peened, LoadReversal, StressCorrection, static (material, peened, ratio, correction) => MeanStress(material, peened, ratio, correction, isStatic: false));

    public static readonly NumberDefinition<MeshGear> NotchSensitivity =
        Number("notch_sensitivity_factor", "Y_δrelT", "Relative notch sensitivity factor")
        .By("Y_δrelT = (1 + √(ρ′·χ))/(1 + √(1.2·ρ′)), χ = 0.2·(1 + 2·q_s), ρ′ by class and yield strength; yield unknown: 1, below q_s = 1.5: 0.95", "UR M56.3.11, after ISO 6336-3", Certainty.Published)
        .Noted("ρ′ of normalised steels and the values for unknown yield from memory")
        .Tables(RootStrength.SlipLayerTable).From(Class, NotchParameter, Yield, static (material, notch, yield) =>
            !LoadFactors.IsSoft(material) ? RootStrength.NotchSensitivity(notch, RootStrength.SlipLayer(material, null))
            : yield > 0 ? RootStrength.NotchSensitivity(notch, RootStrength.SlipLayer(material, yield))
            : RootStrength.NotchSensitivitySimplified(notch));

    public static readonly NumberDefinition<MeshGear> SurfaceFactor = Number("root_surface_factor", "Y_RrelT", "Relative surface factor of the root")
        .By("by class from Rz of the root", "UR M56.3.12, after ISO 6336-3", Certainty.Published)
        .From(Class, Of("gear", static () => M.RootRz, "Rz"), static (material, roughness) => RootStrength.Surface(material, roughness * 1000));

    public static readonly NumberDefinition<MeshGear> SizeFactor = Number("root_size_factor", "Y_X", "Size factor of the root")
        .By("Y_X = 1 up to m_n = 5 mm, then by class", "UR M56.3.13, after ISO 6336-3", Certainty.Published)
        .From(Class, Of("mesh", static () => Q.Module), RootStrength.Size);

    // The static corner has factors of its own; it moves against the endurance by what they differ.
    internal static readonly IInput<LifeCurve> Curve = Join(
        Endurance,
        Join(Class, Peened, Yield, static (material, peened, yield) => (material, peened, yield)),
        Join(NotchSensitivity, SurfaceFactor, SizeFactor, MeanStressFactor, static (notch, surface, size, mean) => notch * surface * size * mean),
        Join(StressCorrection, LoadReversal, static (correction, ratio) => (correction, ratio)),
        static (curve, steel, endurance, root) =>
        {
            var statics = StaticNotch(steel.material, root.correction, steel.yield)
                * MeanStress(steel.material, steel.peened, root.ratio, root.correction, isStatic: true);
            return curve.WithStaticFactor(curve.StaticFactor * (statics / endurance));
        });

    private static readonly IInput<DamageBin[]> Bins = Join(
        Join(RootStress, NominalRootStress, static (rated, nominal) => (rated, nominal)), FlankQuantities.LoadCycles,
        Each("shares", static () => MeshCaseQuantities.RootLoadFactor), Each("shares", static () => MeshCaseQuantities.CycleShare),
        static (stress, cycles, loads, shares) => Spectrum.Bins(stress.rated, stress.nominal, cycles, loads, shares, static load => load));

    public static readonly NumberDefinition<MeshGear> LifeFactor = Number("root_life_factor", "Y_NT", "Life factor of the root")
        .By("lines between the points of the class in lg N, lg Y; the static point times Y_δrelT,static·Y_M,static over Y_δrelT·Y_RrelT·Y_X·Y_M", Bending, Certainty.Memory)
        .Tables(LifeCurves.RootTable).From(FlankQuantities.LoadCycles, Curve, static (cycles, curve) => curve.FactorAt(cycles));

    public static readonly NumberDefinition<MeshGear> BendingStrength =
        Number("bending_strength", "σ_FG", "Bending strength at the reference life", Units.Megapascal)
        .By("σ_Flim·Y_ST·Y_δrelT·Y_RrelT·Y_X·Y_M, Y_ST = 2", Bending)
        .From(
            Of("gear", static () => M.BendingLimit), NotchSensitivity, SurfaceFactor, SizeFactor, MeanStressFactor,
            static (limit, notch, surface, size, mean) => Mechanics.Rating.RootStress.Permissible(limit, 1, notch, surface, size, mean));

    public static readonly NumberDefinition<MeshGear> BendingSafety = Number("bending_safety", "S_F", "Safety against breakage at the root").NeverNegative()
        .By("S_F = σ_FG·Y_NT/σ_F; under a load spectrum the factor on all stresses at which the damage sum is 1", "ISO 6336-3, ISO 6336-6")
        .Noted("1 % probability of damage; each share of a spectrum with load factors of its own")
        .For(Spectrum.IsAbsent).From(BendingStrength, LifeFactor, RootStress, static (strength, life, stress) => strength * life / stress)
        .From(BendingStrength, Curve, Bins, Spectrum.Safety);

    public static readonly NumberDefinition<MeshGear> BendingDamage =
        Number("bending_damage", "D_F", "Damage sum of the root with the safety required")
        .By("D_F = Σ n_i/N_i, N_i the life at S_Fmin·σ_Fi", "ISO 6336-6, linear damage")
        .Noted("load factors of each share from the same formulas at its load and speed")
        .When(Spectrum.IsPresent)
        .From(BendingStrength, Curve, Bins, Of("train", static () => D.RequiredBendingSafety), Spectrum.DamageSum);

    public static readonly NumberDefinition<MeshGear> BendingLife =
        Number("bending_life", "L_F", "Life of the root with the safety required", Units.Hour)
        .By("L_F = L_h/D_F, D_F = Σ n_i/N_i at S_Fmin·σ_Fi", "ISO 6336-6, linear damage")
        .Noted("counted up to 10⁶ h")
        .From(BendingStrength, Curve, Bins, Of("train", static () => D.RequiredBendingSafety), Of("train", static () => D.ServiceLife), Spectrum.Life);

    public static readonly NumberDefinition<MeshGear> PeakBendingSafety =
        Number("peak_bending_safety", "S_F,peak", "Safety of the root at the peak torque").NeverNegative()
        .By("S_F,peak = σ_Flim·Y_ST·Y_NT,static·Y_δrelT,static·Y_M/(σ_F0·K_F,peak), Y_M with the static M of the class; yield strength unknown: Y_δrelT,static = Y_S/2, at most 1, on the safe side", Bending, Certainty.Memory)
        .From(
            Of("gear", static () => M.BendingLimit), Class, Peened, Yield, StressCorrection, LoadReversal, NominalRootStress,
            Of("peak", static () => MeshCaseQuantities.RootLoadFactor, "K_F,peak"), Endurance,
            static (limit, material, peened, yield, correction, ratio, stress, peak, curve) => Mechanics.Rating.RootStress.Permissible(
                limit, curve.StaticFactor, StaticNotch(material, correction, yield), 1, 1, MeanStress(material, peened, ratio, correction, isStatic: true))
                / (stress * peak));

    private static IInput<RatedTooth> Shape(int sign) => Join(
        Of("gear", static () => G.Teeth), Of("gear", static () => G.Module), Of("gear", static () => G.PressureAngle),
        Join(Of("gear", static () => G.HelixAngle), Of("gear", static () => G.ProfileShift), static (helix, shift) => (helix, shift)),
        (teeth, module, angle, form) => new RatedTooth(sign * (int)teeth, module, angle, form.helix, form.shift, 0));

    private static bool IsExternal(MeshGear s) => !G.IsInternal(s.Gear);

    private static bool IsShaped(MeshGear s) => s.Gear.Cutter is not null;

    private static string NoCutter(MeshGear s) =>
        $"train.gears.{s.Gear.Name.Value}.cutter is not stated, and the root of an internal gear depends on its cutter";

    /// <summary>R. What presses forward on one flank presses on the other in reverse.</summary>
    private static double Reversal(double other, double torque, double reverse)
    {
        var back = reverse / torque;
        var (one, two) = (Math.Max(1, back * other), Math.Max(other, back));
        return RootStrength.StressRatio(Math.Min(one, two) / Math.Max(one, two));
    }

    /// <summary>Y_M of endurance; none beyond a Y_S at which M would be below zero.</summary>
    private static double MeanStress(MaterialClass material, bool peened, double ratio, double correction, bool isStatic) =>
        ratio == 0 ? 1 : RootStrength.MeanStress(ratio, RootStrength.MeanStressRatio(material, correction, peened, isStatic));

    private static double StaticNotch(MaterialClass material, double correction, double yield) => (LoadFactors.IsSoft(material), yield > 0) switch
    {
        (true, false) => Math.Min(1, correction / 2),
        (_, true) => RootStrength.NotchSensitivityStatic(material, correction, yield),
        _ => RootStrength.NotchSensitivityStatic(material, correction, null),
    };
}
