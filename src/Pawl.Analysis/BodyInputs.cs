using Pawl.Analysis.Core;
using Pawl.Analysis.Lubrication;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Trains;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis;

/// <summary>What a part that sits on a body asks of it and of the duty.</summary>
internal static class BodyInputs
{
    public static readonly IInput<double> BodyTorque = Of("body", static () => BodyQuantities.Torque, "T");

    public static readonly IInput<double> SpeedRatio = Of("body", static () => BodyQuantities.SpeedRatio, "ω/ω_in");

    public static readonly IInput<double> ApplicationFactor = Of("train", static () => DutyQuantities.ApplicationFactor, "K_A");

    public static readonly IInput<double> InputPeak = Of("train", static () => DutyQuantities.PeakTorque, "T_peak");

    public static readonly IInput<double> PeakOverRated = Of("train", static () => DutyQuantities.PeakOverRated, "f_p");

    public static readonly IInput<double> InputTorque = Of("train", static () => TrainQuantities.InputTorque, "T_in");

    public static readonly IInput<double> InputSpeed = Of("train", static () => TrainQuantities.InputSpeed, "n_in");

    public static readonly IInput<double> ReverseTorque = Of("train", static () => DutyQuantities.ReverseTorque, "T_rev");

    public static readonly IInput<double> ServiceLife = Of("train", static () => DutyQuantities.ServiceLife, "L_h");

    public static readonly IInput<double[]> CaseShares = Each("load_cases", static () => LoadCaseQuantities.Share, "q");

    public static readonly IInput<double[]> CaseSpeeds = Each("load_cases", static () => LoadCaseQuantities.Speed, "n_in,i");

    /// <summary>The fastest that the input turns in duty and spectrum, without sign, rad/s.</summary>
    public static readonly IInput<double> FastestSpeed = Join(InputSpeed, CaseSpeeds, static (rated, cases) => FastestInput.Of([rated, .. cases]));

    /// <summary>The fastest that the input turns over its rated speed.</summary>
    public static readonly IInput<double> FastestOverRated = Join(
        InputSpeed, CaseSpeeds, static (rated, cases) => FastestInput.Of([rated, .. cases]) / Math.Abs(rated));

    /// <summary>Train, body and load cases, by which the inputs above are reached.</summary>
    public static Subject On(this Subject part, AnalysisContext context, string body) => part
        .InDuty(context).Relate("body", () => context.Find(SubjectKinds.Body, $"bodies.{body}"));

    /// <summary>Train and load cases.</summary>
    public static Subject InDuty(this Subject part, AnalysisContext context) => part
        .Relate("train", () => context.Find(SubjectKinds.Train, "train"))
        .RelateAll("load_cases", () => context.Of(SubjectKinds.LoadCase));

    /// <summary>Why a body has no torque.</summary>
    public static string NoTorque(string body) => $"the torque inside {body} is not computed: neither input, output nor held";
}
