using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Seals;

/// <summary>A radial lip seal on its shaft.</summary>
public static class LipSealQuantities
{
    private const string Closed = "closed form";
    private const string Practice = "common practice, no source";

    public static readonly QuantityKind Elastomer = Text("elastomer", "Elastomer, code of ISO 1629");
    public static readonly QuantityKind Towards = Text("towards", "Side that the spring of the lip faces");
    public static readonly QuantityKind OilBase = Text("oil_base", "Base of the oil");

    public static readonly QuantityKind Suitability = new()
    {
        Name = "suitability", Title = "What the elastomer makes of the oil", ValueKind = ValueKind.Text,
        Formula = "table elastomers, by elastomer and base: suitable, limited, unsuitable", Source = Practice, Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Diameter = Length("diameter", "d", "Diameter of the shaft under the lip");
    public static readonly QuantityKind Bore = Length("bore", "D", "Bore of the housing");

    public static readonly QuantityKind ShaftExcess = new()
    {
        Name = "shaft_excess", Title = "How far the limits of the shaft lie outside h11", Unit = Units.Millimetre, Scale = 0.1,
        Formula = "the greater of upper deviation − 0 and −IT11 − lower deviation; not above 0 inside", Symbols = ["d"],
        Source = "ISO 286-1; class after ISO 6194-1, DIN 3760",
    };

    public static readonly QuantityKind BoreExcess = new()
    {
        Name = "bore_excess", Title = "How far the limits of the bore lie outside H8", Unit = Units.Millimetre, Scale = 0.01,
        Formula = "the greater of upper deviation − IT8 and 0 − lower deviation; not above 0 inside", Symbols = ["D"],
        Source = "ISO 286-1; class after ISO 6194-1, DIN 3760",
    };

    public static readonly QuantityKind RelativeSpeed = new()
    {
        Name = "relative_speed", Symbol = "n", Title = "Fastest speed of the shaft against the housing", Unit = Units.RevolutionPerMinute,
        Formula = "n = max n_in · |ω_shaft/ω_in − ω_housing/ω_in|, over duty and spectrum", Source = Closed, Scale = Math.PI / 30,
    };

    public static readonly QuantityKind SurfaceSpeed = new()
    {
        Name = "surface_speed", Symbol = "v", Title = "Speed of the shaft under the lip", Unit = Units.MetrePerSecond,
        Formula = "v = π·d·n", Symbols = ["d", "n"], Source = Closed, Scale = 1000,
    };

    public static readonly QuantityKind PermittedSpeed = new()
    {
        Name = "permitted_speed", Symbol = "v_lim", Title = "Speed that the lip stands", Unit = Units.MetrePerSecond,
        Formula = "as its maker states, else table elastomers, by elastomer", Source = "the spec, else common practice, no source",
        Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind SpeedShare = new()
    {
        Name = "speed_share", Title = "Speed as a share of what the lip stands", Unit = Units.Percent,
        Formula = "v/v_lim", Symbols = ["v", "v_lim"], Source = Closed,
    };

    public static readonly QuantityKind Hardness = new()
    {
        Name = "hardness", Title = "Hardness of the shaft under the lip", Unit = Units.Vickers, Certainty = Certainty.Declared,
        Note = "converted to HV after ISO 18265, table A.1, where written in HRC or HBW",
    };

    public static readonly QuantityKind HardnessWanted = new()
    {
        Name = "hardness_wanted", Title = "Hardness that the lip asks for", Unit = Units.Vickers,
        Formula = "45 HRC; 55 HRC above 4 m/s; in HV after ISO 18265, table A.1", Symbols = ["v"], Source = Practice, Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Surface = new()
    {
        Name = "surface", Symbol = "Ra", Title = "Roughness of the shaft under the lip", Unit = Units.Micrometre, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind LeadFree = new()
    {
        Name = "lead_free", Title = "The shaft is free of lead", ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind RunOut = Length("runout", "", "Runout of the shaft under the lip, full reading");
    public static readonly QuantityKind Offset = Length("offset", "", "Offset of the shaft from the bore at rest, full reading");

    public static readonly QuantityKind PermittedRunOut = new()
    {
        Name = "permitted_runout", Title = "Runout that the lip follows", Unit = Units.Millimetre,
        Formula = "0.1 mm to 3000 1/min, 0.05 mm from 6000 1/min, in proportion between", Symbols = ["n"], Source = Practice,
        Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind Pressure = new()
    {
        Name = "pressure", Symbol = "p", Title = "Greatest gauge pressure at the lip", Unit = Units.Megapascal, Scale = 0.01,
        Formula = "as stated, else that of the housing", Source = "the spec", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind PermittedPressure = new()
    {
        Name = "permitted_pressure", Symbol = "p_lim", Title = "Pressure that the lip stands", Unit = Units.Megapascal, Scale = 0.01,
        Formula = "as its maker states, else table lip-seal-pressure, by speed", Symbols = ["v"], Source = "the spec, else DIN 3760",
        Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind LipRise = new()
    {
        Name = "lip_rise", Symbol = "ΔT", Title = "How much warmer than the oil the lip runs", Unit = Units.Kelvin,
        Formula = "20 K to 40 K at the speed that it stands, in proportion to the share", Source = Practice, Certainty = Certainty.CommonPractice,
        Note = "a simplification: pressure, oil and width of the lip count too",
    };

    public static readonly QuantityKind LipTemperature = new()
    {
        Name = "lip_temperature", Title = "Temperature of the lip in the hottest oil", Unit = Units.Celsius,
        Formula = "T_oil + ΔT", Symbols = ["T_oil", "ΔT"], Source = Closed,
    };

    public static readonly QuantityKind ColdestOil = new()
    {
        Name = "coldest_oil", Title = "Coldest start", Unit = Units.Celsius, Formula = "that of the oil", Source = Closed,
    };

    public static readonly QuantityKind HottestElastomer = new()
    {
        Name = "hottest_elastomer", Title = "Hottest that the elastomer stands for good", Unit = Units.Celsius,
        Formula = "table elastomers, by elastomer", Source = Practice, Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind ColdestLip = new()
    {
        Name = "coldest_lip", Title = "Coldest that a moving lip of the elastomer follows its shaft", Unit = Units.Celsius,
        Formula = "table elastomers, by elastomer, and 15 K for the motion", Source = Practice, Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind LeadInAngle = new()
    {
        Name = "lead_in_angle", Title = "Angle of the chamfer of the shaft end from the axis", Unit = Units.Degree, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Loss = new()
    {
        Name = "loss", Title = "Friction of the lip", Unit = Units.Watt, Certainty = Certainty.Declared, Scale = 1000,
    };

    private static QuantityKind Text(string name, string title) =>
        new() { Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared };

    private static QuantityKind Length(string name, string symbol, string title) =>
        new() { Name = name, Symbol = symbol, Title = title, Unit = Units.Millimetre, Certainty = Certainty.Declared };

    public static readonly ImmutableArray<QuantityKind> All =
    [
        Elastomer, OilBase, Suitability, Towards, Diameter, Bore, ShaftExcess, BoreExcess, RelativeSpeed, SurfaceSpeed, PermittedSpeed, SpeedShare,
        Hardness, HardnessWanted, Surface, LeadFree, RunOut, Offset, PermittedRunOut, Pressure, PermittedPressure, LipRise, LipTemperature,
        HottestElastomer, ColdestOil, ColdestLip, LeadInAngle, Loss,
    ];
}
