using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Lubrication;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Lubrication;

/// <summary>Where the heat of the losses goes.</summary>
public sealed class HeatQuantities : Section<LubricationSpec>
{
    private const string Closed = "closed form";
    private const string Practice = "common practice, no source";

    private static readonly IInput<double> OwnLoss = Own(static () => OilSystem.Loss, "P");

    public static readonly NumberDefinition<LubricationSpec> CoolerCapacity =
        Number("cooler_capacity", "P_c0", "Capacity of the cooler, by its maker", Units.Watt).Scaled(1000).Stated(static s => s.Cooler?.Capacity).Optional();

    public static readonly NumberDefinition<LubricationSpec> CoolerDifference =
        Number("cooler_difference", "", "Difference of oil and coolant for which the capacity is stated", Units.Kelvin).Stated(static s => s.Cooler?.At).Optional();

    public static readonly NumberDefinition<LubricationSpec> Ambient =
        Number("ambient", "θ_a", "Maximum ambient temperature", Units.Celsius).Stated(static s => s.Ambient);

    public static readonly NumberDefinition<LubricationSpec> Area =
        Number("cooling_area", "A", "Surface of the housing in free air", Units.SquareMetre).Stated(static s => s.CoolingArea);

    public static readonly NumberDefinition<LubricationSpec> Transfer =
        Number("heat_transfer", "k", "Heat transfer coefficient to the air", Units.WattPerSquareMetreKelvin)
        .Stated(static s => s.HeatTransfer)
        .Assumed(15e-3, $"15 W/(m²·K), calm air, {Practice}");

    public static readonly NumberDefinition<LubricationSpec> Cooler =
        Number("cooler_transfer", "G_c", "Heat that the cooler takes for each kelvin between oil and coolant", Units.WattPerKelvin)
        .By("as stated, else capacity over the difference for which it is stated", Closed)
        .When(static s => s.Cooler is not null)
        .Stated(static s => s.Cooler?.Transfer)
        .For(static s => s.Cooler?.Capacity is not null).From(
            CoolerCapacity, CoolerDifference, static (capacity, difference) => capacity / difference)
        .Asking("cooler.transfer or cooler.capacity");

    public static readonly NumberDefinition<LubricationSpec> Coolant =
        Number("coolant_temperature", "θ_c", "Maximum temperature of the coolant as it enters", Units.Celsius)
        .When(static s => s.Cooler is not null).Stated(static s => s.Cooler?.Coolant);

    public static readonly NumberDefinition<LubricationSpec> Balanced =
        Number("balanced_temperature", "θ_S", "Sump temperature at heat balance", Units.Celsius)
        .By("θ_S = θ_a + P/(k·A); with a cooler (P + k·A·θ_a + G_c·θ_c)/(k·A + G_c)", "heat balance, as in textbooks of machine design")
        .Noted("one temperature of the whole housing, steady running; the losses do not follow the temperature")
        .For(static s => s.Cooler is not null).From(
            Ambient, OwnLoss, Transfer, Area, Cooler, Coolant,
            static (ambient, loss, transfer, area, cooler, coolant) => HeatBalance.SumpTemperature(loss, transfer, area, ambient, cooler, coolant))
        .From(Ambient, OwnLoss, Transfer, Area, static (ambient, loss, transfer, area) => HeatBalance.SumpTemperature(loss, transfer, area, ambient));

    public static readonly NumberDefinition<LubricationSpec> CoolerHeat =
        Number("cooler_heat", "P_c", "Heat that the cooler takes", Units.Watt)
        .By("P_c = G_c·(θ_S − θ_c)", "heat balance").Scaled(1000)
        .When(static s => s.Cooler is not null)
        .From(Cooler, Balanced, Coolant, static (cooler, sump, coolant) => cooler * (sump - coolant));

    public static readonly NumberDefinition<LubricationSpec> Running =
        Number("running_temperature", "", "Running temperature of the duty", Units.Celsius)
        .By("that of the oil", Closed)
        .From(OfLimits("train", static () => TrainQuantities.OilTemperature, "T"), static oil => oil.Nominal);

    public static readonly NumberDefinition<LubricationSpec> Hottest =
        Number("hottest_temperature", "", "Maximum oil temperature of the duty", Units.Celsius)
        .By("that of the oil", Closed)
        .From(OfLimits("train", static () => TrainQuantities.OilTemperature, "T"), static oil => oil.Max);

    public static readonly NumberDefinition<LubricationSpec> SumpLimit =
        Number("sump_limit", "", "Maximum continuous sump temperature of the oil", Units.Celsius)
        .By("100 °C of mineral oil and ATF, 115 °C of PAO, PAG and ester", Practice, Certainty.CommonPractice)
        .From(OwnRow(static () => OilSystem.Base), OilBase.MaxSumpTemperature);
}
