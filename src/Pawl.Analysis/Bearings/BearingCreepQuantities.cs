using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using F = Pawl.Analysis.Bearings.BearingFitQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>Whether a ring creeps on its seat, how fast, and what holds it.</summary>
public sealed class BearingCreepQuantities : Section<BearingSpec>
{
    private const string Rolling = "geometry of rolling";
    private const string Coulomb = "statics and Coulomb's friction";

    public static readonly RowDefinition<BearingSpec, string> InnerLocking = Text("inner_locking", "What keeps a loose inner ring from turning")
        .Stated(static s => s.InnerLocking).Assumed("none", "none, for none is stated");

    public static readonly RowDefinition<BearingSpec, string> OuterLocking = Text("outer_locking", "What keeps a loose outer ring from turning")
        .Stated(static s => s.OuterLocking).Assumed("none", "none, for none is stated");

    public static readonly NumberDefinition<BearingSpec> MaxRadialLoad =
        Number("max_radial_load", "F_r,max", "Greatest radial load of the service life", Units.Newton).NeverNegative()
        .By("as F_r, greatest of the rated duty and all shares, in both directions", "statics of rigid shafts").Scaled(1)
        .Solved([B.RadialLoad], B.LoadReasons, static (_, subject) => BearingWork.Of(subject).MaxRadial());

    public static readonly NumberDefinition<BearingSpec> MeanInnerFit =
        Number("mean_inner_fit", "I_i,mean", "Overlap of shaft seat and inner ring in the middle of their tolerances, where it is loosest", Units.Micrometre)
        .By("d_s − d in the middle of both tolerances, least of 20 °C, coldest and hottest; below 0: play", "ISO 286-1, ISO 492; thermal expansion", Certainty.Memory).Scaled(0.005)
        .Tables(RingTolerance.TableId)
        .SolvedLimits([F.InnerFit], static (_, subject) => Extent.Exactly(BearingPlay.Of(subject).MeanInnerFit()));

    public static readonly NumberDefinition<BearingSpec> LossUnderLoad =
        Number("inner_fit_loss", "ΔI_F", "Overlap that a rotating load takes from the inner ring", Units.Micrometre).NeverNegative()
        .By("max(0.08·√(d·F_r,max/B), 0.02·F_r,max/B) µm", "handbooks of rolling bearings", Certainty.Memory).Scaled(0.005)
        .When(F.InnerLoad, static load => load == "rotating")
        .From(F.InnerFit, B.Bore, B.Width, MaxRadialLoad, static (_, bore, width, radial) => RingCreep.LossUnderLoad(bore, width, radial));

    public static readonly NumberDefinition<BearingSpec> InnerCreep =
        Number("inner_creep", "n_ci", "Speed at which a loose inner ring creeps on its seat", Units.RevolutionPerMinute).NeverNegative()
        .By("n_in·|ω_load − ω_i|/ω_in·max(0, −I_i)/d", Rolling).Scaled(1)
        .When(F.InnerLoad, static load => load == "rotating")
        .Range(Speed(static loads => loads.SpeedOnInner()), F.InnerFit.Limits(), B.Bore, Creep);

    public static readonly NumberDefinition<BearingSpec> OuterCreep =
        Number("outer_creep", "n_co", "Speed at which a loose outer ring creeps in its seat", Units.RevolutionPerMinute).NeverNegative()
        .By("n_in·|ω_load − ω_o|/ω_in·max(0, −I_o)/D", Rolling).Scaled(1)
        .When(F.OuterLoad, static load => load == "rotating")
        .Range(Speed(static loads => loads.SpeedOnOuter()), F.OuterFit.Limits(), B.Outside, Creep);

    public static readonly NumberDefinition<BearingSpec> SeatFriction =
        Number("seat_friction", "μ_s", "Greatest friction of rings and seats").NeverNegative()
        .When(static s => IsByFriction(s.InnerLocking?.Value) || IsByFriction(s.OuterLocking?.Value))
        .Stated(static s => s.SeatFriction).Assumed(0.2, "0.2, dry steel and aluminium, common practice, no source");

    public static readonly NumberDefinition<BearingSpec> InnerLockingTorque =
        Number("inner_locking_torque", "M_hi", "Torque that the locking of the inner ring holds", Units.NewtonMetre).NeverNegative()
        .When(static s => IsByFriction(s.InnerLocking?.Value)).When(F.InnerLoad, static load => load == "rotating").Stated(static s => s.InnerLockingTorque);

    public static readonly NumberDefinition<BearingSpec> OuterLockingTorque =
        Number("outer_locking_torque", "M_ho", "Torque that the locking of the outer ring holds", Units.NewtonMetre).NeverNegative()
        .When(static s => IsByFriction(s.OuterLocking?.Value)).When(F.OuterLoad, static load => load == "rotating").Stated(static s => s.OuterLockingTorque);

    public static readonly NumberDefinition<BearingSpec> InnerCreepTorque =
        Number("inner_creep_torque", "M_ci", "Torque that holds a loose inner ring", Units.NewtonMetre).NeverNegative()
        .By("M_ci = μ_s·F_r,max·d/2", Coulomb).Scaled(1000)
        .When(F.InnerLoad, static load => load == "rotating")
        .From(MaxRadialLoad, B.Bore, SeatFriction, RingCreep.HoldingTorque);

    public static readonly NumberDefinition<BearingSpec> OuterCreepTorque =
        Number("outer_creep_torque", "M_co", "Torque that holds a loose outer ring", Units.NewtonMetre).NeverNegative()
        .By("M_co = μ_s·F_r,max·D/2", Coulomb).Scaled(1000)
        .When(F.OuterLoad, static load => load == "rotating")
        .From(MaxRadialLoad, B.Outside, SeatFriction, RingCreep.HoldingTorque);

    public static readonly NumberDefinition<BearingSpec> InnerLockingSafety =
        Number("inner_locking_safety", "M_hi/M_ci", "Torque that the locking of a loose inner ring holds over the torque that turns it").NeverNegative()
        .By("M_hi/M_ci", Coulomb)
        .When(static (_, subject) => subject.Find(F.InnerFit) is not { IsEvaluated: true } fit || fit.Value.Min < 0)
        .From(InnerLockingTorque, InnerCreepTorque, Over);

    public static readonly NumberDefinition<BearingSpec> OuterLockingSafety =
        Number("outer_locking_safety", "M_ho/M_co", "Torque that the locking of a loose outer ring holds over the torque that turns it").NeverNegative()
        .By("M_ho/M_co", Coulomb)
        .When(static (_, subject) => subject.Find(F.OuterFit) is not { IsEvaluated: true } fit || fit.Value.Min < 0)
        .From(OuterLockingTorque, OuterCreepTorque, Over);

    public static readonly NumberDefinition<BearingSpec> AdhesiveLimit =
        Number("adhesive_limit", "θ_a", "Temperature up to which the adhesive holds", Units.Celsius)
        .When(static s => s.InnerLocking is { Value: "adhesive" } || s.OuterLocking is { Value: "adhesive" }).Stated(static s => s.AdhesiveLimit);

    public static readonly NumberDefinition<BearingSpec> AdhesiveReserve =
        Number("adhesive_reserve", "θ_a − θ_max", "Limit of the adhesive less the greatest temperature of the bearing", Units.Kelvin)
        .By("θ_a − θ_max, of bearing and oil the hotter", "the maker").Scaled(10)
        .From(
            AdhesiveLimit, OfLimits("train", static () => TrainQuantities.OilTemperature), BearingLifeQuantities.Temperature,
            static (limit, oil, bearing) => limit - Math.Max(oil.Max, bearing));

    private static bool IsByFriction(string? locking) => locking is "o-ring" or "adhesive" or "clamped";

    private static double Over(double holds, double turns) =>
        turns > 0 ? holds / turns : throw new OutsideValidityException("the bearing has no radial load that would turn a ring");

    private static IInput<double> Speed(Func<RingLoads, double> which) => Join(
        BodyInputs.FastestSpeed, Layout(subject => new SpeedOnRing(which(RingLoads.Of(subject)))), static (speed, ring) => speed * ring.OverInput);

    private static Extent Creep(double speed, Extent fit, double diameter)
    {
        var (tight, loose) = (RingCreep.Speed(speed, -fit.Max, diameter), RingCreep.Speed(speed, -fit.Min, diameter));
        return new(Math.Clamp(RingCreep.Speed(speed, -fit.Nominal, diameter), tight, loose), tight, loose);
    }

    private sealed record SpeedOnRing(double OverInput);
}
