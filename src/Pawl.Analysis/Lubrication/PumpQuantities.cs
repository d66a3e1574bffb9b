using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Trains;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Lubrication;

/// <summary>The pump that feeds the jets, in both directions and while the output drives.</summary>
public sealed class PumpQuantities : Section<LubricationSpec>
{
    private const string Spec = "the spec";

    private static readonly IInput<double> Coast = OfOr("train", static () => DutyQuantities.CoastSpeed, double.PositiveInfinity, "n_c");

    public static readonly RowDefinition<LubricationSpec, string> Driver = Text("pump_driver", "What drives the pump").OneOf("input", "output", "machine", "own")
        .When(static s => s.Supply is { Value: "jet" }).Stated(static s => s.Pump?.DrivenBy, "pump.driven_by").Optional();

    public static readonly RowDefinition<LubricationSpec, string> Turning = Text("drive_turns", "Ways in which the drive turns").OneOf("one", "both")
        .When(static (_, subject) => subject.Context.Spec.Duty?.Input?.Direction is not null)
        .Custom(static subject => AnalysisContext.Text(Turning!, subject.Context.Spec.Duty!.Input!.Direction, "duty.input.direction"));

    public static readonly TruthDefinition<LubricationSpec> Reversible = Truth("pump_reversible", "The pump delivers in both directions")
        .When(static (s, subject) => DrivenByShaft(s) && subject.Context.Spec.Duty?.Input?.Direction is { Value: "both" })
        .Stated(static s => s.Pump?.Reversible, "pump.reversible");

    public static readonly NumberDefinition<LubricationSpec> MinSpeed =
        Number("pump_min_speed", "n_min", "Speed above which the pump delivers enough", Units.RevolutionPerMinute)
        .When(DrivenByShaft).Stated(static s => s.Pump?.MinSpeed, "pump.min_speed").Optional();

    public static readonly NumberDefinition<LubricationSpec> Slowest =
        Number("pump_speed", "n_P", "Slowest that the shaft turns which drives the pump", Units.RevolutionPerMinute)
        .By("slowest of n_in, shares that turn and n_c; times |ω_out/ω_in| at the output; n_c not where the machine stands that drives the pump", "closed form")
        .When(DrivenByShaft)
        .For(static s => s.Pump?.DrivenBy is { Value: "output" }).From(
            BodyInputs.InputSpeed, BodyInputs.CaseSpeeds, Coast, Of("train", static () => TrainQuantities.Ratio, "i"),
            static (rated, cases, coast, ratio) => SlowestOf(rated, cases, coast) / Math.Abs(ratio))
        .For(static (s, subject) => MachineStands(s, subject)).From(
            BodyInputs.InputSpeed, BodyInputs.CaseSpeeds, static (rated, cases) => SlowestOf(rated, cases, double.PositiveInfinity))
        .From(BodyInputs.InputSpeed, BodyInputs.CaseSpeeds, Coast, SlowestOf);

    public static readonly RowDefinition<LubricationSpec, string> CoastSupply =
        Text("coast_supply", "Oil supply while the output drives").OneOf("supplied", "the pump stands with the machine")
        .By("a bath and grease supply wherever the train turns; a pump where what drives it turns", Spec, Certainty.Declared)
        .When(static (s, subject) => s.Supply is not null && subject.Context.Spec.Duty?.Coast is not null)
        .For(static s => s is { Supply.Value: "jet" } && s.Pump?.DrivenBy is null).Custom(static _ => AnalysisContext.Missing(CoastSupply!, "lubrication.pump.driven_by"))
        .For(static (s, subject) => s is { Supply.Value: "jet", Pump.DrivenBy.Value: "machine" } && subject.Context.Spec.Duty!.Coast!.Machine is null)
        .Custom(static _ => AnalysisContext.Missing(CoastSupply!, "duty.coast.machine"))
        .Custom(static subject => Quantity.ComputedText(
            CoastSupply!, MachineStands((LubricationSpec)subject.Model, subject) ? "the pump stands with the machine" : "supplied"));

    private static bool DrivenByShaft(LubricationSpec spec) => spec is { Supply.Value: "jet", Pump.DrivenBy.Value: "input" or "output" or "machine" };

    private static bool MachineStands(LubricationSpec spec, Subject subject) =>
        spec is { Supply.Value: "jet", Pump.DrivenBy.Value: "machine" } && subject.Context.Spec.Duty?.Coast?.Machine is { Value: "stands" };

    private static double SlowestOf(double rated, double[] cases, double coast) =>
        cases.Where(static speed => speed != 0).Select(Math.Abs).Append(Math.Abs(rated)).Append(coast).Min();
}
