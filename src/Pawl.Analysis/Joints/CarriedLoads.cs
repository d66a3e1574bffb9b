using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Trains;

namespace Pawl.Analysis.Joints;

/// <summary>Torque and overload that parts beside the teeth carry.</summary>
internal static class CarriedLoads
{
    /// <summary>Peak over the rated torque with its application factor; no less than 1.</summary>
    public static double PeakOverRated(Subject train) =>
        train.Find(DutyQuantities.PeakTorque) is { IsEvaluated: true } peak && train.Find(TrainQuantities.InputTorque) is { IsEvaluated: true } torque
        && train.Find(DutyQuantities.ApplicationFactor) is { IsEvaluated: true } application
            ? Math.Max(1, peak.Value.Nominal / (torque.Value.Nominal * application.Value.Nominal))
            : 1;

    /// <summary>Torque of a body with its application factor, or at the peak.</summary>
    public static Quantity Torque(QuantityKind kind, string body, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        if (!bodies.TryGetValue(body, out var subject))
            return Quantity.NotEvaluated(kind, [], $"the torque of {body} is not known");
        var (torque, application) = (subject[BodyQuantities.Torque], train[DutyQuantities.ApplicationFactor]);
        return train.Find(DutyQuantities.PeakTorque) is { IsEvaluated: true } peak
            ? Quantity.Compute(
                kind, [torque, application, peak, train[TrainQuantities.InputTorque]], v => Math.Abs(v[0]) * Math.Max(v[1], v[2] / v[3]))
            : Quantity.Compute(kind, [torque, application], v => Math.Abs(v[0]) * v[1]);
    }
}
