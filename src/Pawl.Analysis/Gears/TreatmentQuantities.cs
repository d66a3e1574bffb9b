using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Gears;

/// <summary>What was done to the steel of a gear: its case, its heats, its plating and its finish. Only what applies is there.</summary>
public static class TreatmentQuantities
{
    private const string Practice = "common practice, no source";
    private const string Catalogue = "the catalogue, converted to HV after ISO 18265";
    private const string Bakes = "ASTM B850";

    public static readonly QuantityKind CaseDepth = Length("case_depth", "Eht", "Effective depth of the finished case");

    public static readonly QuantityKind GrindingStock = Length("grinding_stock", "q", "Grinding stock of a flank");

    public static readonly QuantityKind FurnaceSpread = Length("furnace_spread", "ΔEht_f", "Spread of the case depth in the furnace");

    public static readonly QuantityKind LeastCase = new()
    {
        Name = "least_case_depth", Symbol = "Eht_min", Title = "Least case depth by the module", Unit = Units.Millimetre,
        Formula = "max(0.1·m_n, 0.3 mm)", Symbols = ["m_n"], Source = Practice, Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind GreatestCase = new()
    {
        Name = "greatest_case_depth", Symbol = "Eht_max", Title = "Greatest case depth by the module", Unit = Units.Millimetre,
        Formula = "min(0.4·m_n, 6 mm)", Symbols = ["m_n"], Source = "ISO 6336-5", Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind CaseWindow = new()
    {
        Name = "case_window", Title = "Room for the case depth by the module", Unit = Units.Millimetre, Scale = 0.1,
        Formula = "Eht_max − Eht_min", Symbols = ["Eht_max", "Eht_min"], Source = Practice, Certainty = Certainty.CommonPractice,
    };

    public static readonly QuantityKind CaseTolerance = new()
    {
        Name = "case_tolerance", Title = "Tolerance of the case depth, end to end", Unit = Units.Millimetre, Scale = 0.1,
        Formula = "greatest less least of Eht", Symbols = ["Eht"], Source = "the spec", Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind CaseFactor = new()
    {
        Name = "case_depth_factor", Symbol = "Eht/m_n", Title = "Case depth per module", Formula = "Eht / m_n", Symbols = ["Eht", "m_n"],
        Source = "definition",
    };

    public static readonly QuantityKind OrderedCase = new()
    {
        Name = "ordered_case_depth", Title = "Case depth to order, before grinding", Unit = Units.Millimetre, Formula = "Eht + q",
        Symbols = ["Eht", "q"], Source = "definition",
    };

    public static readonly QuantityKind TipShare = new()
    {
        Name = "case_tip_share", Title = "Share of the tip that the case of both flanks takes", Formula = "2·Eht / s_an",
        Symbols = ["Eht", "s_an"], Source = "definition",
    };

    public static readonly QuantityKind Tempering = Temperature("tempering", "Last tempering or ageing");

    public static readonly QuantityKind LeastTempering = Temperature("least_usual_tempering", "Least usual tempering of the steel");

    public static readonly QuantityKind GreatestTempering = Temperature("greatest_usual_tempering", "Greatest usual tempering of the steel");

    public static readonly QuantityKind Nitriding = Temperature("nitriding", "Nitriding");

    public static readonly QuantityKind Process = Temperature("process_temperature", "Hottest process after tempering");

    public static readonly QuantityKind Service = Temperature("service_temperature", "Hottest oil in service");

    public static readonly QuantityKind LeastSurface = Window("least_usual_hardness", "Least usual hardness of the flanks");

    public static readonly QuantityKind GreatestSurface = Window("greatest_usual_hardness", "Greatest usual hardness of the flanks");

    public static readonly QuantityKind LeastCore = Window("least_usual_core", "Least usual hardness of the core");

    public static readonly QuantityKind GreatestCore = Window("greatest_usual_core", "Greatest usual hardness of the core");

    public static readonly QuantityKind Carbon = new()
    {
        Name = "carbon", Title = "Carbon of the steel", Unit = Units.Percent, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind TensileStrength = new()
    {
        Name = "tensile_strength", Symbol = "R_m", Title = "Tensile strength, core of a case", Unit = Units.Megapascal,
        Formula = "R_m of the hardness", Symbols = ["HV"], Source = "ISO 18265, table A.1", Certainty = Certainty.Published,
        Note = "an estimate: the conversion scatters by some percent",
    };

    public static readonly QuantityKind Plating = Word("plating", "Process that brings in hydrogen");

    public static readonly QuantityKind HydrogenProne = new()
    {
        Name = "hydrogen_prone", Title = "Hydrogen can crack the part", ValueKind = ValueKind.Truth,
        Formula = "R_m > 1000 MPa at its hardest place", Symbols = ["treatment", "R_m"], Source = Bakes, Certainty = Certainty.Published,
        Note = "the depth of a case is measured to 400 HV or more, which is 1290 MPa: every case is prone",
    };

    public static readonly QuantityKind Baked = Fact("baked", "A bake follows the plating");

    public static readonly QuantityKind BakeTemperature = Temperature("bake_temperature", "Bake");

    public static readonly QuantityKind LeastBakeTemperature = new()
    {
        Name = "least_bake_temperature", Title = "Least temperature of the bake", Unit = Units.Celsius,
        Formula = "190 °C; surface-hardened 130 °C", Symbols = ["treatment"], Source = Bakes, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind BakeDuration = new()
    {
        Name = "bake_duration", Title = "Duration of the bake", Unit = Units.Hour, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind LeastBakeDuration = new()
    {
        Name = "least_bake_duration", Title = "Least duration of the bake", Unit = Units.Hour,
        Formula = "8 h to 22 h by R_m; surface-hardened 8 h", Symbols = ["treatment or R_m"], Source = Bakes, Certainty = Certainty.Memory,
    };

    public static readonly QuantityKind BakeDelay = new()
    {
        Name = "bake_delay", Title = "Time from plating to the bake", Unit = Units.Hour, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind QualityProven = Fact("quality_proven", "Records prove the quality");

    public static readonly QuantityKind PeeningRecorded = Fact("peening_recorded", "Intensity and coverage of the peening are recorded");

    public static readonly QuantityKind RootGroundAfter = Fact("root_ground_after", "The root is ground after peening");

    public static readonly QuantityKind Superfinished = Fact("superfinished", "The flanks are superfinished");

    public static readonly ImmutableArray<QuantityKind> All =
    [
        CaseDepth, GrindingStock, FurnaceSpread, LeastCase, GreatestCase, CaseWindow, CaseTolerance, CaseFactor, OrderedCase, TipShare,
        Tempering, LeastTempering, GreatestTempering, Nitriding, Process, Service, LeastSurface, GreatestSurface, LeastCore, GreatestCore, Carbon,
        TensileStrength, Plating, HydrogenProne, Baked, BakeTemperature, LeastBakeTemperature, BakeDuration, LeastBakeDuration, BakeDelay,
        QualityProven, PeeningRecorded, RootGroundAfter, Superfinished,
    ];

    private static QuantityKind Length(string name, string symbol, string title) => new()
    {
        Name = name, Symbol = symbol, Title = title, Unit = Units.Millimetre, Certainty = Certainty.Declared,
    };

    private static QuantityKind Temperature(string name, string title) => new()
    {
        Name = name, Title = $"{title}, temperature", Unit = Units.Celsius, Certainty = Certainty.Declared,
    };

    private static QuantityKind Window(string name, string title) => new()
    {
        Name = name, Title = title, Unit = Units.Vickers, Certainty = Certainty.Declared, Note = Catalogue,
    };

    private static QuantityKind Word(string name, string title) => new()
    {
        Name = name, Title = title, ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    private static QuantityKind Fact(string name, string title) => new()
    {
        Name = name, Title = title, ValueKind = ValueKind.Truth, Certainty = Certainty.Declared,
    };
}
