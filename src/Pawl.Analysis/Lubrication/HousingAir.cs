using Pawl.Analysis.Core;
using Pawl.Analysis.Seals;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Lubrication;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Lubrication;

/// <summary>The air in the housing as it warms and cools, and the vent that it breathes through.</summary>
public sealed class HousingAir : Section<LubricationSpec>
{
    private const string Practice = "common practice, no source";
    private const string Gas = "ideal gas law; expansion of the oil common practice, no source";
    private const string FlowFormula = "q = ΔT/t·(V_air/T + β·V_oil), V_air = V − V_oil, T of the coldest start, β = 7·10⁻⁴ 1/K";
    private const string DropFormula = "Δp = ρ/2·(q/(C_d·π/4·d²))², C_d = 0.6, ρ = p_1/(R·T) of the coldest air";

    // 1/K, of mineral oils; common practice, no source. PAG grows by about as much.
    private const double OilExpansion = 7e-4;

    private static readonly IInput<Extent> Oil = OfLimits("train", static () => TrainQuantities.OilTemperature, "T");

    private static readonly IInput<(double Free, double Fill)> Volumes = Join(
        Own(static () => OilSystem.FreeVolume, "V"), Own(static () => OilSystem.Fill, "V_oil"), static (free, fill) => (free, fill));

    public static readonly TruthDefinition<LubricationSpec> Vented = Truth("vented", "Housing is vented")
        .Stated(static s => s.Ports?.Vent).For(static s => s.Vent is not null).Named(static _ => true);

    public static readonly TruthDefinition<LubricationSpec> OneWay = Truth("vent_one_way", "The vent lets air out and none in")
        .When(static s => s.Vent is not null).Stated(static s => s.Vent?.OneWay, "vent.one_way").Assumed(false, "open both ways, for nothing is stated");

    public static readonly NumberDefinition<LubricationSpec> Bore =
        Number("vent_bore", "d", "Narrowest bore of the vent", Units.Millimetre).Stated(static s => s.Vent?.Bore, "vent.bore").Optional();

    public static readonly NumberDefinition<LubricationSpec> Opening =
        Number("vent_opening_pressure", "p_o", "Pressure at which the vent opens", Units.Megapascal).Scaled(0.01)
        .When(static s => s.Vent is not null).Stated(static s => s.Vent?.OpeningPressure, "vent.opening_pressure").Assumed(0, "0: always open");

    public static readonly NumberDefinition<LubricationSpec> Intake =
        Number("vent_intake_pressure", "p_i", "Suction at which the vent lets air in", Units.Megapascal).Scaled(0.01)
        .When(static s => s.Vent is not null).Stated(static s => s.Vent?.IntakePressure, "vent.intake_pressure").Assumed(0, "0: always open");

    public static readonly NumberDefinition<LubricationSpec> WarmUp =
        Number("warm_up", "t", "Time from the coldest start to the hottest oil", Units.Hour).Stated(static s => s.WarmUp).Optional();

    public static readonly NumberDefinition<LubricationSpec> CoolDown =
        Number("cool_down", "t", "Shortest time from the hottest oil to the coldest", Units.Hour).Stated(static s => s.CoolDown).Optional();

    public static readonly NumberDefinition<LubricationSpec> OutFlow =
        Number("vent_out_flow", "q", "Greatest flow of air out of the vent", Units.LitrePerMinute)
        .By(FlowFormula, Gas).Noted("temperature that rises evenly, the same for air and oil")
        .When(static s => s.Vent is not null)
        .From(Oil, WarmUp, Volumes, static (oil, time, volumes) => HousingVent.Flow(oil.Min, oil.Max, time, volumes.Free, volumes.Fill, OilExpansion));

    public static readonly NumberDefinition<LubricationSpec> OutDrop =
        Number("vent_out_drop", "Δp", "Pressure that the flow takes on its way out of the vent", Units.Megapascal)
        .By(DropFormula, "orifice equation, textbooks of fluid mechanics").Scaled(0.01).Noted("a filter and oil in the bore are left out: state a bore that stays free")
        .From(OutFlow, Bore, Oil, static (flow, bore, oil) => HousingVent.PressureDrop(flow, bore, HousingVent.AirDensity(oil.Min)));

    public static readonly NumberDefinition<LubricationSpec> InFlow =
        Number("vent_in_flow", "q", "Greatest flow of air into the vent", Units.LitrePerMinute)
        .By(FlowFormula, Gas).Noted("temperature that falls evenly, the same for air and oil")
        .When(static s => s.Vent is { OneWay: not { Value: true } })
        .From(Oil, CoolDown, Volumes, static (oil, time, volumes) => HousingVent.Flow(oil.Min, oil.Max, time, volumes.Free, volumes.Fill, OilExpansion));

    public static readonly NumberDefinition<LubricationSpec> InDrop =
        Number("vent_in_drop", "Δp", "Pressure that the flow takes on its way into the vent", Units.Megapascal)
        .By(DropFormula, "orifice equation, textbooks of fluid mechanics").Scaled(0.01).Noted("a filter and oil in the bore are left out: state a bore that stays free")
        .From(InFlow, Bore, Oil, static (flow, bore, oil) => HousingVent.PressureDrop(flow, bore, HousingVent.AirDensity(oil.Min)));

    public static readonly NumberDefinition<LubricationSpec> HousingPressure =
        Number("housing_pressure", "p", "Maximum gauge pressure in the housing", Units.Megapascal).NeverNegative()
        .By(
            "vented: p_o + Δp of the vent, but no more than closed, nor less where Δp > 0.01 MPa; closed: p = p_1·(T_2/T_1·V_air/(V_air − V_oil·β·(T_2 − T_1)) − 1), V_air = V − V_oil, p_1 = 0.101325 MPa, β = 7·10⁻⁴ 1/K",
            Gas).Scaled(0.01)
        .Noted("from the coldest start to the hottest oil, for a lip lets air in as a housing cools; water vapour is not included: optimistic where there is any")
        .For(static s => s is { Vent.Bore: not null, WarmUp: not null }).From(Opening, OutDrop, Volumes, Oil, static (opening, drop, volumes, oil) =>
            HousingVent.PressureLeft(opening, drop, Mechanics.Lubrication.HousingPressure.Rise(oil.Min, oil.Max, volumes.Free, volumes.Fill, OilExpansion)))
        .For(static s => s.Vent is not null).From(Opening, static opening => opening)
        .Custom(static subject => subject[Vented] is { IsEvaluated: true, Truth: true } vented
            ? Quantity.Compute(HousingPressure!, [vented], static _ => 0).With(["vented"])
            : null)
        .From(Vented, Volumes, Oil, static (_, volumes, oil) =>
            Mechanics.Lubrication.HousingPressure.Rise(oil.Min, oil.Max, volumes.Free, volumes.Fill, OilExpansion));

    public static readonly NumberDefinition<LubricationSpec> HousingSuction =
        Number("housing_suction", "p_v", "Maximum suction in the housing after it cools", Units.Megapascal).NeverNegative()
        .By(
            "vented: p_i + Δp of the vent, but no more than closed, nor less where Δp > 0.01 MPa; closed, or with a vent that lets none in: p_v = p_1·(1 − T_2/T_1·(V_air − V_oil·β·(T_1 − T_2))/V_air), V_air = V − V_oil",
            Gas).Scaled(0.01)
        .Noted("a housing that let its air out at the hottest oil and cools to the coldest; water vapour that condenses is not included: optimistic where there is any")
        .For(static s => s is { Vent: { Bore: not null, OneWay: not { Value: true } }, CoolDown: not null }).From(Intake, InDrop, Volumes, Oil, static (intake, drop, volumes, oil) =>
            HousingVent.PressureLeft(intake, drop, Mechanics.Lubrication.HousingPressure.Fall(oil.Max, oil.Min, volumes.Free, volumes.Fill, OilExpansion)))
        .For(static s => s.Vent is { OneWay: not { Value: true } }).From(Intake, static intake => intake)
        .For(static s => s.Vent is null).Custom(static subject => subject[Vented] is { IsEvaluated: true, Truth: true } vented
            ? Quantity.Compute(HousingSuction!, [vented], static _ => 0).With(["vented"])
            : null)
        .From(Vented, Volumes, Oil, static (_, volumes, oil) =>
            Mechanics.Lubrication.HousingPressure.Fall(oil.Max, oil.Min, volumes.Free, volumes.Fill, OilExpansion));

    public static readonly NumberDefinition<LubricationSpec> PermittedPressure =
        Number("permitted_pressure", "", "Permitted pressure of the weakest lip seal", Units.Megapascal)
        .By("minimum of the lip seals; without any 0.02 MPa", Practice, Certainty.CommonPractice).Scaled(0.01)
        .Custom(static subject => subject.ReachAll("lip_seals").Any()
            ? null
            : subject.Context.Assumed(PermittedPressure!, 0.02, $"0.02 MPa of an ordinary lip, {Practice}"))
        .From(Each("lip_seals", static () => LipSeals.PermittedPressure), static permitted => permitted.Min());
}
