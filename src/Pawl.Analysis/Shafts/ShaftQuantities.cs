using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Shafts;

/// <summary>What is known of a shaft as a whole.</summary>
public static class ShaftQuantities
{
    private const string Beam = "Bernoulli's beam on two stiff bearings; causes added as for the bearings";

    public static readonly QuantityKind Body = new()
    {
        Name = "body", Title = "Body", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Tensile = new()
    {
        Name = "tensile_strength", Symbol = "σ_B", Title = "Tensile strength as stated", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Yield = new()
    {
        Name = "yield_strength", Symbol = "σ_S", Title = "Yield strength as stated", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Steel = new()
    {
        Name = "steel", Title = "How the steel was made strong", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind HeatTreatedDiameter = new()
    {
        Name = "heat_treated_diameter", Symbol = "d_eff", Title = "Diameter at the heat treatment", Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Technological = new()
    {
        Name = "technological_size_factor", Symbol = "K_1", Title = "Technological size factor",
        Formula = "tempered 1 − 0.26·lg(d_eff/16), case hardened 1 − 0.41·lg(d_eff/16); 1 where the strengths are those of the part", Symbols = ["d_eff"],
        Source = "DIN 743-2:2012", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind RequiredStatic = new()
    {
        Name = "required_static_safety", Symbol = "S_Fmin", Title = "Safety against yield required", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RequiredFatigue = new()
    {
        Name = "required_fatigue_safety", Symbol = "S_Dmin", Title = "Safety against fatigue required", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Torque = new()
    {
        Name = "torque", Symbol = "T", Title = "Torque of the body at the rated torque of the input", Unit = Units.NewtonMetre,
        Formula = "|T| of the body", Symbols = ["T"], Source = "torque balance of the train", Scale = 1000,
        Note = "the whole torque of the body in every section that carries torque",
    };

    public static readonly QuantityKind Modulus = new()
    {
        Name = "elastic_modulus", Symbol = "E", Title = "Modulus of elasticity", Unit = Units.Megapascal, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Poisson = new()
    {
        Name = "poisson_ratio", Symbol = "ν", Title = "Poisson's ratio", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Density = new()
    {
        Name = "density", Symbol = "ρ", Title = "Density", Unit = Units.KilogramPerCubicMetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind WindUp = new()
    {
        Name = "wind_up", Symbol = "φ", Title = "Twist over the sections that carry torque", Unit = Units.Arcminute,
        Formula = "T·Σ 32·l/(π·G·(d⁴ − d_i⁴)); G = E/(2·(1 + ν))", Symbols = ["T", "E", "ν"], Source = "torsion of round bars", Scale = Math.PI / 10_800,
        Note = "at the rated torque, nominal diameters, shoulders as ideal steps",
    };

    public static readonly QuantityKind RequiredWindUp = new()
    {
        Name = "max_wind_up", Title = "Maximum twist required", Unit = Units.Arcminute, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind BearingSlope = new()
    {
        Name = "bearing_slope", Symbol = "φ_b", Title = "Maximum slope at a bearing", Unit = Units.Arcminute, Formula = "u' at the bearings, greatest of all states of the duty",
        Source = Beam, Scale = Math.PI / 10_800, Note = "nominal dimensions; housing and bearings do not give",
    };

    public static readonly QuantityKind BearingSlopeShare = new()
    {
        Name = "bearing_slope_share", Symbol = "φ_b/φ_lim", Title = "Slope at a bearing over what its kind stands, greatest", Formula = "u'/φ_lim",
        Symbols = ["φ_b"], Source = "limits: Budynas and Nisbett, Shigley's Mechanical Engineering Design, table 7-2", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind GearSlope = new()
    {
        Name = "gear_slope", Symbol = "φ_g", Title = "Maximum slope at a gear", Unit = Units.Arcminute, Formula = "u' in the middle of the gears, greatest of all states of the duty",
        Source = Beam, Scale = Math.PI / 10_800, Note = "nominal dimensions; housing and bearings do not give",
    };

    public static readonly QuantityKind GearDeflection = new()
    {
        Name = "gear_deflection", Symbol = "u_g", Title = "Maximum deflection at a gear", Unit = Units.Micrometre, Formula = "u in the middle of the gears",
        Source = Beam, Scale = 1e-3, Note = "nominal dimensions; housing and bearings do not give",
    };

    public static readonly QuantityKind Speed = new()
    {
        Name = "speed", Symbol = "n", Title = "Maximum speed", Unit = Units.RevolutionPerMinute, Formula = "|n| of the body in the fastest share of the duty",
        Symbols = ["n"], Source = "speeds of the train", Scale = Math.PI / 30,
    };

    public static readonly QuantityKind CriticalSpeed = new()
    {
        Name = "critical_speed", Symbol = "n_cr", Title = "Lowest critical speed in bending", Unit = Units.RevolutionPerMinute,
        Formula = "Stodola's iteration over slices of the shaft; what the stated mass has beyond them sits at mass_at", Symbols = ["E", "ρ"],
        Source = "masses at points on a beam", Scale = Math.PI / 30,
        Note = "an estimate from above: stiff bearings and housing, no gyroscopic moment",
    };

    public static readonly QuantityKind CriticalShare = new()
    {
        Name = "critical_speed_share", Symbol = "n/n_cr", Title = "Speed over critical speed", Formula = "n/n_cr", Symbols = ["n", "n_cr"], Source = "closed form",
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Body, Tensile, Yield, Steel, HeatTreatedDiameter, Technological, RequiredStatic, RequiredFatigue, Torque, Modulus, Poisson, Density, WindUp, RequiredWindUp,
        BearingSlope, BearingSlopeShare, GearSlope, GearDeflection, Speed, CriticalSpeed, CriticalShare,
    ];
}
