using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Materials;
using Pawl.Mechanics.Splines;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using static Pawl.Analysis.BodyInputs;

namespace Pawl.Analysis.Splines;

/// <summary>An involute spline: geometry, fit, stresses.</summary>
public sealed class Splines : Section<SplineSpec>
{
    private const string Dudley = "Dudley, When Splines Need Stress Control, Product Engineering 1957";
    private const string Standard = "ISO 4156-1, ANSI B92.1";
    private const string Statics = "von Mises: shear yields at σ_S/√3; shear and torsion by statics";
    private const string Softer = "allowable stress of the softer side";

    public static readonly RowDefinition<SplineSpec, string> System = Text("system", "Standard").Stated(static s => s.System);

    public static readonly RowDefinition<SplineSpec, string> Root = Text("root", "Form of the root").Stated(static s => s.Root);

    public static readonly RowDefinition<SplineSpec, string> Lubrication = Text("lubrication", "Lubrication").Stated(static s => s.Lubrication);

    public static readonly TruthDefinition<SplineSpec> Floating = Truth("floating", "Parts rock or slide in the spline")
        .Stated(static s => s.Floating).Assumed(false, "clamped, for nothing else is stated");

    public static readonly TruthDefinition<SplineSpec> Crowned = Truth("crowned", "Flanks are crowned")
        .Stated(static s => s.Crowned).Assumed(false, "straight flanks, for nothing else is stated");

    public static readonly NumberDefinition<SplineSpec> Teeth = Number("teeth", "z", "Number of teeth").NeverNegative().Stated(static s => s.Shaft.Teeth);

    public static readonly NumberDefinition<SplineSpec> DiametralPitch =
        Number("diametral_pitch", "P", "Diametral pitch, teeth per inch").Stated(static s => s.DiametralPitch).Optional();

    public static readonly NumberDefinition<SplineSpec> Module = Number("module", "m", "Module", Units.Millimetre).NeverNegative()
        .By("as stated, or 25.4 mm/P", "definition")
        .Stated(static s => s.Module, "module or diametral_pitch").From(DiametralPitch, InvoluteSpline.ModuleOf);

    public static readonly NumberDefinition<SplineSpec> PressureAngle =
        Number("pressure_angle", "α", "Pressure angle", Units.Degree).Stated(static s => s.PressureAngle);

    public static readonly NumberDefinition<SplineSpec> Length = Number("length", "L", "Length in engagement", Units.Millimetre).Stated(static s => s.Length);

    public static readonly NumberDefinition<SplineSpec> Chamfers = Number("chamfers", "c", "Height that chamfers take of the flanks", Units.Millimetre)
        .Stated(static s => s.Chamfers).Assumed(0, "none, for none are stated");

    public static readonly RowDefinition<SplineSpec, InvoluteSpline> Basic = Row<InvoluteSpline>("basic_spline", "Basic spline, side fit")
        .By("teeth × module × pressure angle, root", Standard)
        .From(System, Root, Teeth, Module, PressureAngle, BasicOf, static spline => string.Create(
            CultureInfo.InvariantCulture,
            $"{spline.Teeth} × {spline.Module:0.####} mm × {spline.PressureAngle * 180 / Math.PI:0.#}°, {(spline.Root == SplineRoot.Flat ? "flat" : "fillet")} root"));

    public static readonly NumberDefinition<SplineSpec> PitchDiameter = Size("pitch_diameter", "D", "Pitch diameter", "m·z", Certainty.ClosedForm)
        .From(Basic, static spline => spline.PitchDiameter);

    public static readonly NumberDefinition<SplineSpec> BaseDiameter = Size("base_diameter", "D_b", "Base diameter", "m·z·cos α", Certainty.ClosedForm)
        .From(Basic, static spline => spline.BaseDiameter);

    public static readonly NumberDefinition<SplineSpec> Thickness =
        Size("tooth_thickness", "S", "Basic tooth thickness, equal to the space width", "π·m/2", Certainty.ClosedForm)
        .From(Basic, static spline => spline.BasicSpaceWidth);

    public static readonly NumberDefinition<SplineSpec> ExternalMajor =
        Size("external_major_diameter", "D_EE", "Major diameter of the shaft", "by the standard; 30°: m·(z + 1)", Certainty.Memory)
        .From(Basic, static spline => spline.ExternalMajor);

    public static readonly NumberDefinition<SplineSpec> InternalMinor =
        Size("internal_minor_diameter", "D_II", "Minor diameter of the hub", "by the standard: form diameter of the shaft and its clearance", Certainty.Memory)
        .From(Basic, static spline => spline.InternalMinor);

    public static readonly NumberDefinition<SplineSpec> InternalMajor = Size(
            "internal_major_diameter", "D_EI", "Major diameter of the hub",
            "by the standard; 30°: m·(z + 1.5) flat, m·(z + 1.8) fillet; inch flat m·(z + 1.35)", Certainty.Memory)
        .From(Basic, static spline => spline.InternalMajor);

    public static readonly NumberDefinition<SplineSpec> Minor =
        Size("external_minor_diameter", "D_IE", "Minor diameter of the shaft", "as stated, else by the standard", Certainty.Memory)
        .Stated(static s => s.Shaft.Minor).From(Basic, static spline => spline.ExternalMinor);

    public static readonly NumberDefinition<SplineSpec> ContactHeight = Number("contact_height", "h", "Height of the flanks in contact", Units.Millimetre)
        .By("(D_EE − D_II)/2 − c", "geometry")
        .From(ExternalMajor, InternalMinor, Chamfers, SplineStress.ContactHeight);

    public static readonly NumberDefinition<SplineSpec> ShaftClass = Number("shaft_class", "", "Tolerance class of the shaft")
        .When(static s => s.Shaft.Thickness is null).Stated(static s => s.Shaft.Class);

    public static readonly RowDefinition<SplineSpec, string> ShaftFit = Text("shaft_fit", "Fundamental deviation of the shaft")
        .When(static s => s.Shaft.Thickness is null).Stated(static s => s.Shaft.Fit);

    public static readonly NumberDefinition<SplineSpec> HubClass = Number("hub_class", "", "Tolerance class of the hub")
        .When(static s => s.Hub.Space is null).Stated(static s => s.Hub.Class);

    public static readonly NumberDefinition<SplineSpec> EffectiveThickness = Effective("effective_tooth_thickness", "S_v", "Effective tooth thickness of the shaft")
        .Custom(static subject => Drawn(EffectiveThickness!, subject, ((SplineSpec)subject.Model).Shaft.Thickness, "shaft.thickness"))
        .Range(Basic, ShaftFit, ShaftClass, Length, static (spline, fit, @class, length) =>
            LimitsOf(SplineTolerance.Teeth(spline, fit, (int)@class, length)));

    public static readonly NumberDefinition<SplineSpec> EffectiveSpace = Effective("effective_space_width", "E_v", "Effective space width of the hub")
        .Custom(static subject => Drawn(EffectiveSpace!, subject, ((SplineSpec)subject.Model).Hub.Space, "hub.space"))
        .Range(Basic, HubClass, Length, static (spline, @class, length) => LimitsOf(SplineTolerance.Spaces(spline, (int)@class, length)));

    public static readonly NumberDefinition<SplineSpec> Clearance = Number("flank_clearance", "c_v", "Effective clearance of the flanks", Units.Micrometre)
        .By("c_v = E_v − S_v", "ISO 4156-1").Scaled(1e-2)
        .From(EffectiveSpace, EffectiveThickness, static (space, tooth) => space - tooth);

    public static readonly NumberDefinition<SplineSpec> Play = Number("angular_play", "φ_c", "Angular play of the new spline", Units.Arcminute)
        .By("φ_c = 2·c_v/D, not below 0", "geometry").Scaled(Math.PI / 10_800)
        .From(Clearance, PitchDiameter, static (clearance, diameter) => 2 * Math.Max(0, clearance) / diameter);

    public static readonly NumberDefinition<SplineSpec> Torque = Number("torque", "T", "Torque at the rated torque of the input", Units.NewtonMetre)
        .By("|T| of the body", "torque balance of the train").Scaled(1000)
        .From(BodyTorque, static torque => Math.Abs(torque))
        .Otherwise(static s => NoTorque(s.Body.Value));

    public static readonly NumberDefinition<SplineSpec> PeakTorque = Number("peak_torque", "T_p", "Torque at the peak torque of the input", Units.NewtonMetre)
        .By("T_p = T·T_peak/T_in", "proportion").Scaled(1000)
        .From(Torque, InputPeak, InputTorque, static (torque, peak, input) => torque * peak / input);

    public static readonly NumberDefinition<SplineSpec> Misalignment = Number("misalignment", "φ_m", "Misalignment of the axes")
        .Stated(static s => s.Misalignment).Assumed(0, "none, for none is stated");

    public static readonly NumberDefinition<SplineSpec> Distribution = Number("distribution_factor", "K_m", "Load distribution factor")
        .By("by misalignment φ_m and length L", Dudley, Certainty.Memory).Tables(SplineFactors.MisalignmentTableId)
        .From(Misalignment, Length, SplineFactors.Misalignment);

    public static readonly NumberDefinition<SplineSpec> Starts = Number("starts", "N_s", "Starts and stops of the torque").Stated(static s => s.Starts);

    public static readonly NumberDefinition<SplineSpec> Life = Number("life_factor", "L_f", "Fatigue life factor")
        .By("by the starts N_s; lower where T_rev > 0", Dudley, Certainty.Memory).Tables(SplineFactors.LifeTableId)
        .From(Starts, ReverseTorque, static (starts, reverse) => SplineFactors.Life(starts, reverse > 0));

    public static readonly NumberDefinition<SplineSpec> Turns = Number("turns", "N_t", "Turns in the service life")
        .By("N_t = |ω/ω_in|·n·L_h; n is n_in, or Σ q·n_in,i over the load cases", "closed form")
        .From(SpeedRatio, InputSpeed, CaseShares, CaseSpeeds, ServiceLife, static (ratio, rated, shares, speeds, life) =>
            Math.Abs(ratio) * (shares.Length == 0 ? rated : shares.Zip(speeds, static (share, speed) => share * speed).Sum()) * life / Math.Tau);

    public static readonly NumberDefinition<SplineSpec> Wear = Number("wear_factor", "L_w", "Wear life factor of a floating spline")
        .By("by the turns N_t", Dudley, Certainty.Memory).Tables(SplineFactors.WearTableId)
        .When(Floating, static floating => floating)
        .From(Turns, SplineFactors.Wear);

    public static readonly NumberDefinition<SplineSpec> ShaftHardness = Number("shaft_hardness", "H_s", "Hardness of the flanks of the shaft", Units.Vickers)
        .Custom(static subject => MaterialBuilder.Hardness(
            subject.Context, ShaftHardness!, ((SplineSpec)subject.Model).Shaft.Hardness, $"{subject.Path}.shaft.hardness"));

    public static readonly NumberDefinition<SplineSpec> HubHardness = Number("hub_hardness", "H_h", "Hardness of the flanks of the hub", Units.Vickers)
        .Custom(static subject => MaterialBuilder.Hardness(
            subject.Context, HubHardness!, ((SplineSpec)subject.Model).Hub.Hardness, $"{subject.Path}.hub.hardness"));

    public static readonly NumberDefinition<SplineSpec> ShaftYield =
        Number("shaft_yield", "σ_S", "Yield strength of the core of the shaft", Units.Megapascal).Stated(static s => s.Shaft.Yield);

    public static readonly NumberDefinition<SplineSpec> HubYield =
        Number("hub_yield", "σ_S,h", "Yield strength of the hub", Units.Megapascal).Stated(static s => s.Hub.Yield);

    public static readonly NumberDefinition<SplineSpec> HubOutside =
        Number("hub_outside", "D_o", "Outside diameter of the hub", Units.Millimetre).Stated(static s => s.Hub.Outside);

    public static readonly NumberDefinition<SplineSpec> ShaftBore = Number("shaft_bore", "d_h", "Bore under the spline", Units.Millimetre)
        .Stated(static s => s.Shaft.Bore).Assumed(0, "0: a solid shaft");

    public static readonly NumberDefinition<SplineSpec> Density = Number("hub_density", "ρ", "Density of the hub", Units.KilogramPerCubicMetre)
        .Custom(static subject => MaterialOf(subject)?.Density is { } stated ? subject.Context.Amount(Density!, stated, "") : null)
        .Assumed(7.85e-9, "7850 kg/m³, steel");

    public static readonly NumberDefinition<SplineSpec> Poisson = Number("hub_poisson_ratio", "ν", "Poisson's ratio of the hub")
        .Custom(static subject => MaterialOf(subject)?.PoissonRatio is { } stated ? subject.Context.Number(Poisson!, stated, "") : null)
        .Assumed(0.3, "0.3, steel");

    public static readonly NumberDefinition<SplineSpec> Speed = Number("speed", "n", "Maximum speed", Units.RevolutionPerMinute)
        .By("n = max n_in·|ω/ω_in|, over duty and load cases", "speeds of the train").Scaled(Math.PI / 30)
        .From(FastestSpeed, SpeedRatio, static (fastest, ratio) => fastest * Math.Abs(ratio));

    public static readonly NumberDefinition<SplineSpec> Pressure = Stress("flank_pressure", "p", "Flank pressure", "p = 2·T/(D·z·L·h)·K_A·K_m")
        .From(Length, Torque, PitchDiameter, Teeth, ContactHeight, ApplicationFactor, Distribution, static (length, torque, diameter, teeth, height, application, distribution) =>
            new SplineStress(torque, diameter, (int)teeth, length).FlankPressure(height) * application * distribution);

    public static readonly NumberDefinition<SplineSpec> Shear = Stress("tooth_shear", "τ", "Shear stress of the teeth", "τ = 4·T/(D·z·L·S)·K_A·K_m: half the teeth carry")
        .From(Length, Torque, PitchDiameter, Teeth, Thickness, ApplicationFactor, Distribution, static (length, torque, diameter, teeth, thickness, application, distribution) =>
            new SplineStress(torque, diameter, (int)teeth, length).ToothShear(thickness) * application * distribution);

    public static readonly NumberDefinition<SplineSpec> Torsion = Stress(
            "root_torsion", "τ_r", "Torsional stress of the shaft below the teeth", "τ_r = 16·T·D_IE/(π·(D_IE⁴ − d_h⁴))·K_A")
        .From(ShaftBore, Torque, Minor, ApplicationFactor, static (bore, torque, minor, application) => Twisted(torque, minor, bore) * application);

    public static readonly NumberDefinition<SplineSpec> HubLoadTension = Stress(
            "hub_load_tension", "σ_T", "Tensile stress of the hub by the torque",
            "σ_T = σ_1 + σ_3; σ_1 hoop by the radial force of the flanks (Lamé), σ_3 = 4·T/(D²·L·1.5) bending of the teeth")
        .From(HubOutside, Torque, PitchDiameter, Length, InternalMajor, PressureAngle, static (outside, torque, diameter, length, major, angle) =>
        {
            var stress = new SplineStress(torque, diameter, 1, length);
            return stress.BurstingHoop(angle, major, outside) + stress.ToothBending();
        });

    public static readonly NumberDefinition<SplineSpec> HubSpeedTension = Number("hub_speed_tension", "σ_2", "Tensile stress of the hub by its speed", Units.Megapascal)
        .By("σ_2 = ρ·n²/16·((3 + ν)·D_o² + (1 − ν)·D_EI²)", "rotating ring")
        .From(Speed, Density, Poisson, InternalMajor, HubOutside, SplineStress.CentrifugalHoop);

    public static readonly NumberDefinition<SplineSpec> HubTension = Stress("hub_tension", "σ_h", "Tensile stress of the hub", "σ_h = σ_T·K_A·K_m + σ_2").Turns()
        .From(HubLoadTension, ApplicationFactor, Distribution, HubSpeedTension, static (load, application, distribution, speed) => load * application * distribution + speed);

    public static readonly NumberDefinition<SplineSpec> AllowablePressure = Allowable("allowable_flank_pressure", "p_allow", "Allowable flank pressure, life factor 1")
        .From(ShaftHardness, HubHardness, Crowned, static (shaft, hub, crowned) => crowned
            ? Math.Min(Allowed(shaft).CrownedPressure, Allowed(hub).CrownedPressure)
            : Math.Min(Allowed(shaft).StraightPressure, Allowed(hub).StraightPressure));

    public static readonly NumberDefinition<SplineSpec> AllowableShear = Allowable("allowable_shear", "τ_allow", "Allowable shear stress, life factor 1")
        .From(ShaftHardness, HubHardness, static (shaft, hub) => Math.Min(Allowed(shaft).Shear, Allowed(hub).Shear));

    public static readonly NumberDefinition<SplineSpec> AllowableTension = Allowable("allowable_tension", "σ_allow", "Allowable tensile stress, life factor 1")
        .From(ShaftHardness, HubHardness, static (shaft, hub) => Math.Min(Allowed(shaft).Tension, Allowed(hub).Tension));

    public static readonly NumberDefinition<SplineSpec> PressureUse = Use(
            "flank_pressure_utilisation", "Flank pressure over allowable pressure", "p/(p_allow·L_w) floating, p/(p_allow·9·L_f) clamped")
        .From(Pressure, AllowablePressure, Wear, static (pressure, allowed, wear) => pressure / (allowed * wear))
        .From(Pressure, AllowablePressure, Life, static (pressure, allowed, life) => pressure / (allowed * life * SplineFactors.FixedPressure));

    public static readonly NumberDefinition<SplineSpec> ShearUse = Use("tooth_shear_utilisation", "Shear stress of the teeth over allowable stress", "τ/(τ_allow·L_f)")
        .From(Shear, AllowableShear, Life, static (stress, allowed, life) => stress / (allowed * life));

    public static readonly NumberDefinition<SplineSpec> TorsionUse = Use(
            "root_torsion_utilisation", "Torsional stress below the teeth over allowable stress", "τ_r/(τ_allow·L_f)")
        .From(Torsion, AllowableShear, Life, static (stress, allowed, life) => stress / (allowed * life));

    public static readonly NumberDefinition<SplineSpec> HubUse = Use("hub_tension_utilisation", "Tensile stress of the hub over allowable stress", "σ_h/(σ_allow·L_f)").Turns()
        .From(HubTension, AllowableTension, Life, static (stress, allowed, life) => stress / (allowed * life));

    public static readonly NumberDefinition<SplineSpec> ToothYieldUse = Number("tooth_yield_utilisation", "U", "Peak shear stress of the teeth over shear yield strength")
        .By("4·T_p/(D·z·L·S)·K_m·√3/σ_S, of the weaker part", Statics)
        .From(
            Length, PeakTorque, PitchDiameter, Teeth, Thickness, Distribution, ShaftYield, HubYield,
            static (length, torque, diameter, teeth, thickness, distribution, shaft, hub) =>
                new SplineStress(torque, diameter, (int)teeth, length).ToothShear(thickness) * distribution * Math.Sqrt(3) / Math.Min(shaft, hub));

    public static readonly NumberDefinition<SplineSpec> RootYieldUse = Number("root_yield_utilisation", "U", "Peak torsional stress below the teeth over shear yield strength")
        .By("16·T_p·D_IE/(π·(D_IE⁴ − d_h⁴))·√3/σ_S", Statics)
        .From(ShaftBore, PeakTorque, Minor, ShaftYield, static (bore, torque, minor, yield) => Twisted(torque, minor, bore) * Math.Sqrt(3) / yield);

    public static readonly NumberDefinition<SplineSpec> HubYieldUse = Number("hub_yield_utilisation", "U", "Peak tensile stress of the hub over yield strength").Turns()
        .By("(σ_T·T_peak/T_in·K_m + σ_2)/σ_S,h", "Lamé, rotating ring; tooth bending " + Dudley)
        .From(HubLoadTension, InputPeak, InputTorque, Distribution, HubSpeedTension, HubYield, static (load, peak, input, distribution, speed, yield) =>
            (load * peak / input * distribution + speed) / yield);

    public static readonly NumberDefinition<SplineSpec> LengthShare = Number("length_share", "L/D", "Length over pitch diameter")
        .By("L/D", "closed form")
        .From(Length, PitchDiameter, static (length, diameter) => length / diameter);

    public static readonly NumberDefinition<SplineSpec> RequiredLength = Number("required_length", "L_req", "Length required by the flank pressure", Units.Millimetre)
        .By("L_req = L·U, U the utilisation of the flank pressure", "statics").Noted("at the distribution factor of the stated length")
        .From(Length, PressureUse, static (length, use) => length * use);

    /// <summary>All splines, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.Splines.Entries)
            context.Begin(SubjectKinds.Spline, $"splines.{spec.Name.Value}", spec.Name.Span, spec).On(context, spec.Body.Value);
    }

    /// <summary>The basic spline of a standard; shared with interfaces.</summary>
    internal static InvoluteSpline BasicOf(string system, string root, double teeth, double module, double pressureAngle) => new(
        system == "iso-4156" ? SplineSystem.Iso4156 : SplineSystem.AnsiB921, (int)teeth, module, pressureAngle, root == "flat" ? SplineRoot.Flat : SplineRoot.Fillet);

    /// <summary>Effective limits of a class; the nominal lies in their middle.</summary>
    internal static Extent LimitsOf(SplineWidths widths) =>
        new((widths.EffectiveMin + widths.EffectiveMax) / 2, widths.EffectiveMin, widths.EffectiveMax);

    private static NumberDefinition<SplineSpec> Size(string name, string symbol, string title, string formula, Certainty certainty) =>
        Number(name, symbol, title, Units.Millimetre).By(formula, Standard, certainty);

    private static NumberDefinition<SplineSpec> Effective(string name, string symbol, string title) => Number(name, symbol, title, Units.Millimetre)
        .By("limits of the drawing, else of class and fit; nominal in their middle", "ISO 4156-1", Certainty.Memory).Tables(SplineTolerance.TableId);

    private static NumberDefinition<SplineSpec> Stress(string name, string symbol, string title, string formula) =>
        Number(name, symbol, title, Units.Megapascal).By(formula, Dudley, Certainty.Memory);

    private static NumberDefinition<SplineSpec> Allowable(string name, string symbol, string title) => Number(name, symbol, title, Units.Megapascal)
        .By("by hardness; between two rows the softer", Dudley, Certainty.Memory).Noted(Softer).Tables(SplineFactors.AllowablesTableId);

    private static NumberDefinition<SplineSpec> Use(string name, string title, string formula) =>
        Number(name, "U", title).By(formula, Dudley, Certainty.Memory).Noted(Softer);

    private static MaterialSpec? MaterialOf(Subject subject) =>
        ((SplineSpec)subject.Model).Hub.Material is { } id ? subject.Context.Spec.Catalogue.Materials.Find(id.Value) : null;

    private static Quantity? Drawn(QuantityKind kind, Subject subject, Stated<Toleranced>? stated, string key)
    {
        if (stated is null)
            return null;
        if (stated.Value.Tolerance is not Tolerance.Deviations own)
            return Quantity.NotEvaluated(kind, [], $"{subject.Path}.{key} has no limits");
        var (least, greatest) = (stated.Value.Nominal.Coherent + own.Lower, stated.Value.Nominal.Coherent + own.Upper);
        return subject.Context.Between(kind, AnalysisContext.Declared(stated, "as written"), (least + greatest) / 2, least, greatest);
    }

    private static double Twisted(double torque, double minor, double bore) => new SplineStress(torque, minor, 1, 1).RootTorsion(minor, bore);

    /// <summary>Allowable stresses of a hardness; what lies between tempered and hard counts as tempered, what is harder as the hardest.</summary>
    private static SplineAllowables Allowed(double vickers)
    {
        const double HardFrom = 48, HardTo = 63, TemperedTo = 351;
        var rockwell = vickers < 300 ? 0 : HardnessConversion.RockwellOfVickers(Math.Min(vickers, HardnessConversion.VickersOfRockwell(HardTo)));
        return rockwell >= HardFrom
            ? SplineFactors.OfHard(Math.Min(HardTo, rockwell))
            : SplineFactors.OfTempered(Math.Min(TemperedTo, HardnessConversion.BrinellOfVickers(vickers)));
    }
}
