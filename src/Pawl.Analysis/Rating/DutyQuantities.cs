using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Rating;

/// <summary>What the duty asks of the gears; quantities of the train.</summary>
public static class DutyQuantities
{
    public static readonly QuantityKind ApplicationFactor = new()
    {
        Name = "application_factor", Symbol = "K_A", Title = "Application factor", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ServiceLife = new()
    {
        Name = "service_life", Symbol = "L_h", Title = "Service life under load", Unit = Units.Hour, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PeakTorque = new()
    {
        Name = "peak_torque", Symbol = "T_peak", Title = "Peak torque at the input", Unit = Units.NewtonMetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ReverseTorque = new()
    {
        Name = "reverse_torque", Symbol = "T_rev", Title = "Torque at the input in the other direction", Unit = Units.NewtonMetre,
        Certainty = Certainty.Declared, Note = "0 for a drive that turns one way",
    };

    public static readonly QuantityKind RequiredContactSafety = new()
    {
        Name = "required_contact_safety", Symbol = "S_Hmin", Title = "Safety against pitting required", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RequiredBendingSafety = new()
    {
        Name = "required_bending_safety", Symbol = "S_Fmin", Title = "Safety against root breakage required", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RequiredPeakContactSafety = new()
    {
        Name = "required_peak_contact_safety", Symbol = "S_Hmin,peak", Title = "Safety of the flank at the peak torque required", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RequiredPeakBendingSafety = new()
    {
        Name = "required_peak_bending_safety", Symbol = "S_Fmin,peak", Title = "Safety of the root at the peak torque required", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind LubricantKind = new()
    {
        Name = "lubricant_kind", Title = "Oil or grease", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Viscosity40 = new()
    {
        Name = "viscosity_40", Symbol = "ν_40", Title = "Kinematic viscosity at 40 °C", Unit = Units.SquareMillimetrePerSecond,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Viscosity100 = new()
    {
        Name = "viscosity_100", Symbol = "ν_100", Title = "Kinematic viscosity at 100 °C", Unit = Units.SquareMillimetrePerSecond,
        Formula = "as stated, else that of VI and ν_40", Symbols = ["ν_40", "VI"], Source = "the spec, else ISO 2909 (ASTM D2270)",
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ViscosityIndex = new()
    {
        Name = "stated_viscosity_index", Symbol = "VI", Title = "Viscosity index as stated", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ViscosityIndexDifference = new()
    {
        Name = "viscosity_index_difference", Title = "Difference of the stated viscosity index from that of both viscosities",
        Formula = "|VI(ν_40, ν_100) − VI|", Symbols = ["ν_40", "ν_100", "VI"], Source = "ISO 2909, ASTM D2270", Certainty = Certainty.Published,
    };

    public static readonly QuantityKind Viscosity = new()
    {
        Name = "viscosity", Symbol = "ν", Title = "Kinematic viscosity from coldest to hottest", Unit = Units.SquareMillimetrePerSecond,
        Formula = "lg lg(ν + 0.7) = A − B·lg T, T in kelvin, through ν_40 and ν_100", Symbols = ["ν_40", "ν_100", "T"],
        Source = "ASTM D341", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind OilDensity = new()
    {
        Name = "oil_density", Symbol = "ρ_oil", Title = "Density of the oil at 15 °C", Unit = Units.KilogramPerCubicMetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PressureViscosity = new()
    {
        Name = "pressure_viscosity", Symbol = "α_p", Title = "Pressure-viscosity coefficient of the oil", Unit = Units.PerGigapascal,
        Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind ScuffingTemperature = new()
    {
        Name = "scuffing_temperature", Symbol = "θ_S", Title = "Scuffing temperature of the oil", Unit = Units.Celsius, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Pitting = new()
    {
        Name = "pitting_permitted", Title = "Pitting permitted in the service life", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind LongLife = new()
    {
        Name = "long_life", Title = "Strength at 10¹⁰ cycles", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind SpectrumPeaks = new()
    {
        Name = "spectrum_peaks", Title = "Dynamic peaks in the torques of the spectrum", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        ApplicationFactor, ServiceLife, PeakTorque, ReverseTorque, RequiredContactSafety, RequiredBendingSafety, RequiredPeakContactSafety,
        RequiredPeakBendingSafety, LubricantKind, Viscosity40, ViscosityIndex, Viscosity100, ViscosityIndexDifference, Viscosity, OilDensity, PressureViscosity, ScuffingTemperature, Pitting, LongLife, SpectrumPeaks,
    ];
}

/// <summary>One share of the service life.</summary>
public static class LoadCaseQuantities
{
    public static readonly QuantityKind Share = new()
    {
        Name = "share", Symbol = "q", Title = "Share of the service life", Unit = Units.Percent, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Torque = new()
    {
        Name = "torque", Symbol = "T", Title = "Torque at the input", Unit = Units.NewtonMetre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Speed = new()
    {
        Name = "speed", Symbol = "n", Title = "Speed of the input", Unit = Units.RevolutionPerMinute, Certainty = Certainty.Declared,
    };

    public static readonly ImmutableArray<QuantityKind> All = [Share, Torque, Speed];
}
