using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Splines;

/// <summary>What is known of a spline.</summary>
public static class SplineQuantities
{
    private const string Dudley = "Dudley, When Splines Need Stress Control, Product Engineering 1957";
    private const string Geometry = "ISO 4156-1, ANSI B92.1";
    private const string VonMises = "von Mises: shear yields at σ_S/√3";

    public static readonly QuantityKind System = Words("system", "Standard");
    public static readonly QuantityKind Root = Words("root", "Form of the root");
    public static readonly QuantityKind Lubrication = Words("lubrication", "Lubrication");
    public static readonly QuantityKind Floating = new() { Name = "floating", Title = "Rocks or slides", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared };
    public static readonly QuantityKind Crowned = new() { Name = "crowned", Title = "Flanks are crowned", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared };
    public static readonly QuantityKind Teeth = new() { Name = "teeth", Symbol = "z", Title = "Teeth", Certainty = Certainty.Declared };
    public static readonly QuantityKind Module = new()
    {
        Name = "module", Symbol = "m", Title = "Module", Unit = Units.Millimetre, Formula = "as stated, or 25.4 mm/P", Source = "definition",
    };

    public static readonly QuantityKind PressureAngle = new() { Name = "pressure_angle", Symbol = "α", Title = "Pressure angle", Unit = Units.Degree, Certainty = Certainty.Declared };
    public static readonly QuantityKind Length = Stated("length", "L", "Length in engagement");
    public static readonly QuantityKind Chamfers = Stated("chamfers", "c", "What chamfers take of the flanks");

    public static readonly QuantityKind PitchDiameter = Size("pitch_diameter", "D", "Pitch diameter", "m·z", Certainty.ClosedForm);
    public static readonly QuantityKind BaseDiameter = Size("base_diameter", "D_b", "Base diameter", "m·z·cos α", Certainty.ClosedForm);
    public static readonly QuantityKind Thickness = Size("tooth_thickness", "S", "Basic tooth thickness, equal to the space width", "π·m/2", Certainty.ClosedForm);
    public static readonly QuantityKind ExternalMajor = Size("external_major_diameter", "D_EE", "Major diameter of the shaft", "by the standard; 30°: m·(z + 1)", Certainty.Memory);
    public static readonly QuantityKind InternalMinor = Size("internal_minor_diameter", "D_II", "Minor diameter of the hub", "by the standard: form diameter of the shaft and its clearance", Certainty.Memory);
    public static readonly QuantityKind InternalMajor = Size("internal_major_diameter", "D_EI", "Major diameter of the hub", "by the standard; 30°: m·(z + 1.5) flat, m·(z + 1.8) fillet; inch flat m·(z + 1.35)", Certainty.Memory);
    public static readonly QuantityKind Minor = Size("external_minor_diameter", "D_IE", "Minor diameter of the shaft", "as stated, else by the standard", Certainty.Memory);

    public static readonly QuantityKind ContactHeight = new()
    {
        Name = "contact_height", Symbol = "h", Title = "Height of the flanks in contact", Unit = Units.Millimetre, Formula = "(D_EE − D_II)/2 − c", Symbols = ["D_EE", "D_II", "c"], Source = "geometry",
    };

    public static readonly QuantityKind Clearance = new()
    {
        Name = "flank_clearance", Symbol = "c_v", Title = "Effective clearance of the flanks", Unit = Units.Micrometre, Scale = 1e-2,
        Formula = "E_v − S_v, least to greatest; of the classes, or of the limits that the drawing states", Source = "ISO 4156-1", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind Play = new()
    {
        Name = "angular_play", Symbol = "φ_c", Title = "Angular play of the new spline", Unit = Units.Arcminute, Formula = "2·c_v/D", Symbols = ["c_v", "D"], Source = "geometry", Scale = Math.PI / 10_800,
    };

    public static readonly QuantityKind Torque = new()
    {
        Name = "torque", Symbol = "T", Title = "Torque at the rated torque of the input", Unit = Units.NewtonMetre, Formula = "|T| of the body", Symbols = ["T"], Source = "torque balance of the train", Scale = 1000,
    };

    public static readonly QuantityKind PeakTorque = new()
    {
        Name = "peak_torque", Symbol = "T_p", Title = "Torque at the peak torque of the input", Unit = Units.NewtonMetre, Formula = "T·T_peak/T_in", Symbols = ["T", "T_peak", "T_in"], Source = "proportion", Scale = 1000,
    };

    public static readonly QuantityKind Misalignment = new() { Name = "misalignment", Symbol = "φ_m", Title = "Misalignment of the axes", Certainty = Certainty.Declared };

    public static readonly QuantityKind Distribution = new()
    {
        Name = "distribution_factor", Symbol = "K_m", Title = "Distribution factor", Formula = "of misalignment and length", Symbols = ["φ_m", "L"], Source = Dudley, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind Starts = new() { Name = "starts", Symbol = "N_s", Title = "Starts and stops of the torque", Certainty = Certainty.Declared };

    public static readonly QuantityKind Life = new()
    {
        Name = "life_factor", Symbol = "L_f", Title = "Life factor of fatigue", Formula = "of the starts; lower where the drive turns both ways", Symbols = ["N_s"], Source = Dudley, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind Turns = new()
    {
        Name = "turns", Symbol = "N_t", Title = "Turns in the service life", Formula = "n·L_h, mean over the shares of the duty", Symbols = ["n", "L_h"], Source = "closed form",
    };

    public static readonly QuantityKind Wear = new()
    {
        Name = "wear_factor", Symbol = "L_w", Title = "Life factor of wear of flanks that rock", Formula = "of the turns", Symbols = ["N_t"], Source = Dudley, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind ShaftHardness = new() { Name = "shaft_hardness", Symbol = "H_s", Title = "Hardness of the shaft's flanks", Unit = Units.Vickers, Certainty = Certainty.Declared };
    public static readonly QuantityKind HubHardness = new() { Name = "hub_hardness", Symbol = "H_h", Title = "Hardness of the hub's flanks", Unit = Units.Vickers, Certainty = Certainty.Declared };
    public static readonly QuantityKind ShaftYield = Strength("shaft_yield", "σ_S", "Yield strength of the shaft's core");
    public static readonly QuantityKind HubYield = Strength("hub_yield", "σ_S,h", "Yield strength of the hub");
    public static readonly QuantityKind HubOutside = Stated("hub_outside", "D_o", "Outside diameter of the hub");
    public static readonly QuantityKind ShaftBore = Stated("shaft_bore", "d_h", "Bore under the spline");
    public static readonly QuantityKind Density = new() { Name = "hub_density", Symbol = "ρ", Title = "Density of the hub", Unit = Units.KilogramPerCubicMetre, Certainty = Certainty.Declared };
    public static readonly QuantityKind Poisson = new() { Name = "hub_poisson_ratio", Symbol = "ν", Title = "Poisson's ratio of the hub", Certainty = Certainty.Declared };

    public static readonly QuantityKind Speed = new()
    {
        Name = "speed", Symbol = "n", Title = "Greatest speed", Unit = Units.RevolutionPerMinute, Formula = "|n| of the body in the fastest share of the duty", Symbols = ["n"], Source = "speeds of the train", Scale = Math.PI / 30,
    };

    public static readonly QuantityKind Pressure = Stress("flank_pressure", "p", "Pressure on the flanks, with K_A and K_m", "2·T/(D·z·L·h)·K_A·K_m", ["L", "T", "D", "h", "K_A", "K_m"]);
    public static readonly QuantityKind Shear = Stress("tooth_shear", "τ", "Shear of the teeth, with K_A and K_m", "4·T/(D·z·L·S)·K_A·K_m: half the teeth carry", ["L", "T", "D", "S", "K_A", "K_m"]);
    public static readonly QuantityKind Torsion = Stress("root_torsion", "τ_r", "Torsion under the roots of the shaft, with K_A", "16·T·D_IE/(π·(D_IE⁴ − d_h⁴))·K_A", ["d_h", "T", "D", "D_IE", "K_A"]);

    public static readonly QuantityKind HubTension = Stress(
        "hub_tension", "σ_h", "Tension of the hub, with K_A and K_m",
        "(σ_1 + σ_3)·K_A·K_m + σ_2; σ_1 hoop by the radial force of the flanks (Lamé), σ_2 by the speed, σ_3 bending of the teeth", ["D_o", "T", "D", "L", "D_EI", "K_m", "n", "ρ", "ν", "K_A"]);

    public static readonly QuantityKind PressureUse = Use("flank_pressure_use", "Pressure on the flanks over what is allowed", "p/(p_allow·L_w) where it rocks, p/(p_allow·9·L_f) where it is clamped", ["p", "L", "H_s", "H_h"]);
    public static readonly QuantityKind ShearUse = Use("tooth_shear_use", "Shear of the teeth over what is allowed", "τ/(τ_allow·L_f)", ["τ", "L_f", "H_s", "H_h"]);
    public static readonly QuantityKind TorsionUse = Use("root_torsion_use", "Torsion under the roots over what is allowed", "τ_r/(τ_allow·L_f)", ["τ_r", "L_f", "H_s", "H_h"]);
    public static readonly QuantityKind HubUse = Use("hub_tension_use", "Tension of the hub over what is allowed", "σ_h/(σ_allow·L_f)", ["σ_h", "L_f", "H_s", "H_h"]);

    public static readonly QuantityKind ToothYieldUse = Yields(
        "tooth_yield_use", "Shear of the teeth at the peak torque over the yield strength in shear", "4·T_p/(D·z·L·S)·K_m·√3/σ_S, of the softer part", ["L", "T_p", "D", "S", "K_m", "σ_S", "σ_S,h"]);

    public static readonly QuantityKind RootYieldUse = Yields(
        "root_yield_use", "Torsion under the roots at the peak torque over the yield strength in shear", "16·T_p·D_IE/(π·(D_IE⁴ − d_h⁴))·√3/σ_S", ["d_h", "T_p", "D", "D_IE", "σ_S"]);

    public static readonly QuantityKind HubYieldUse = new()
    {
        Name = "hub_yield_use", Symbol = "U", Title = "Tension of the hub at the peak torque over its yield strength", Formula = "((σ_1 + σ_3)·K_m + σ_2)/σ_S,h at T_p",
        Symbols = ["D_o", "T_p", "D", "L", "D_EI", "K_m", "n", "ρ", "ν", "σ_S,h"], Source = "Lamé, rotating ring; tooth bending " + Dudley,
    };

    public static readonly QuantityKind LengthShare = new()
    {
        Name = "length_share", Symbol = "L/D", Title = "Length over pitch diameter", Formula = "L/D", Symbols = ["L", "D"], Source = "closed form",
    };

    public static readonly QuantityKind NeededLength = new()
    {
        Name = "needed_length", Symbol = "L_req", Title = "Length that the pressure asks for", Unit = Units.Millimetre, Formula = "L·p/p_allow", Symbols = ["L", "U"], Source = "statics",
        Note = "at the distribution factor of the stated length",
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        System, Root, Floating, Crowned, Lubrication, Teeth, Module, PressureAngle, Length, Chamfers, PitchDiameter, BaseDiameter, Thickness, ExternalMajor, InternalMinor,
        InternalMajor, Minor, ContactHeight, Clearance, Play, Torque, PeakTorque, Misalignment, Distribution, Starts, Life, Turns, Wear, ShaftHardness, HubHardness, ShaftYield,
        HubYield, HubOutside, ShaftBore, Density, Poisson, Speed, Pressure, Shear, Torsion, HubTension, PressureUse, ShearUse, TorsionUse, HubUse, ToothYieldUse, RootYieldUse,
        HubYieldUse, LengthShare, NeededLength,
    ];

    private static QuantityKind Words(string name, string title) => new() { Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared };

    private static QuantityKind Stated(string name, string symbol, string title) =>
        new() { Name = name, Symbol = symbol, Title = title, Unit = Units.Millimetre, Certainty = Certainty.Declared };

    private static QuantityKind Strength(string name, string symbol, string title) =>
        new() { Name = name, Symbol = symbol, Title = title, Unit = Units.Megapascal, Certainty = Certainty.Declared };

    private static QuantityKind Size(string name, string symbol, string title, string formula, Certainty certainty) =>
        new() { Name = name, Symbol = symbol, Title = title, Unit = Units.Millimetre, Formula = formula, Source = Geometry, Certainty = certainty };

    private static QuantityKind Stress(string name, string symbol, string title, string formula, ImmutableArray<string> symbols) =>
        new() { Name = name, Symbol = symbol, Title = title, Unit = Units.Megapascal, Formula = formula, Symbols = symbols, Source = Dudley, Certainty = Certainty.Memory };

    private static QuantityKind Use(string name, string title, string formula, ImmutableArray<string> symbols) =>
        new() { Name = name, Symbol = "U", Title = title, Formula = formula, Symbols = symbols, Source = Dudley, Certainty = Certainty.Memory, Note = "allowed by the softer side" };

    private static QuantityKind Yields(string name, string title, string formula, ImmutableArray<string> symbols) =>
        new() { Name = name, Symbol = "U", Title = title, Formula = formula, Symbols = symbols, Source = VonMises + "; shear and torsion by statics" };
}
