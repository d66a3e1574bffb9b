using Pawl.Analysis.Agreement;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Shafts;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>Fits and play of a rolling bearing, and what a planet asks of it.</summary>
public sealed class BearingFitQuantities : Section<BearingSpec>
{
    private static readonly IInput<double> PeakTorque = Of("train", static () => D.PeakTorque);

    private static readonly IInput<double> Oil = Of("train", static () => TrainQuantities.OilTemperature);

    private const string Lie = "rotating where ring and direction of the load turn at different speeds in any state: with the carrier where F_o > F_s, else in space, each from C_s/100 up; negligible where P/C < 1 %";

    public static readonly NumberDefinition<BearingSpec> TurningLoad =
        Number("turning_load", "F_o", "Greatest part of the radial load that goes round with the carrier", Units.Newton).NeverNegative()
        .By("reaction to tooth forces, orbit and unequal sharing, greatest of all states", "statics of rigid shafts").Scaled(1)
        .When(static (_, subject) => RingLoads.Of(subject).Turning is not null)
        .Solved([B.RadialLoad], static (_, subject) => RingLoads.Of(subject).Turning!.Value.Greatest);

    public static readonly NumberDefinition<BearingSpec> LeastTurningLoad =
        Number("least_turning_load", "F_o,min", "Least part of the radial load that goes round with the carrier", Units.Newton).NeverNegative()
        .By("as F_o, least of all states", "statics of rigid shafts").Scaled(1)
        .When(static (_, subject) => RingLoads.Of(subject).Turning is not null)
        .Solved([B.RadialLoad], static (_, subject) => RingLoads.Of(subject).Turning!.Value.Least);

    public static readonly NumberDefinition<BearingSpec> StandingLoad =
        Number("standing_load", "F_s", "Part of the radial load that stands still in space", Units.Newton).NeverNegative()
        .By("reaction to forces of the coupled machine and weight", "statics of rigid shafts").Scaled(1)
        .When(static (_, subject) => RingLoads.Of(subject).Turning is not null)
        .Solved([B.RadialLoad], static (_, subject) => RingLoads.Of(subject).Standing);

    public static readonly RowDefinition<BearingSpec, string> InnerLoad = Text("inner_load", "How the load lies to the inner ring").OneOf("rotating", "stationary", "negligible")
        .By(Lie, "kinematics; the hundredth is common practice, no source")
        .Solved([], Turning, static (_, subject) => RingLoads.Of(subject).OnInner());

    public static readonly RowDefinition<BearingSpec, string> OuterLoad = Text("outer_load", "How the load lies to the outer ring").OneOf("rotating", "stationary", "negligible")
        .By(Lie, "kinematics; the hundredth is common practice, no source")
        .Solved([], Turning, static (_, subject) => RingLoads.Of(subject).OnOuter());

    public static readonly NumberDefinition<BearingSpec> ShaftSeat = Number("shaft_seat", "d_s", "Seat on the shaft", Units.Millimetre)
        .By("as stated, else of the section of the shaft, or of the planet pin, that it sits on", "the spec", Certainty.Declared)
        .Stated(static s => s.ShaftSeat)
        .TakenFrom("seat", static () => ShaftSectionQuantities.Outside)
        .TakenFrom("pin", static () => Pins.PlanetPins.Diameter);

    public static readonly NumberDefinition<BearingSpec> Place = Number("axial_position", "z", "Middle of the bearing along the axis", Units.Millimetre)
        .Scaled(1).Stated(static s => s.AxialPosition).Optional();

    public static readonly NumberDefinition<BearingSpec> BeyondShaft =
        Number("beyond_shaft", "", "How far the bearing stands out beyond its shaft", Units.Millimetre)
        .By("the greater of z_0 − (z − B/2) and z + B/2 − z_1, not below zero, with the ends z_0 and z_1 of the shaft", "geometry").Scaled(1)
        .When(static (s, subject) => subject.Context.Spec.Train?.Planets.Find(s.Housing.Value) is null && HasEnds(s, subject))
        .Solved([Place, B.Width], static (s, subject) => Beyond(
            subject[Place].Value.Nominal, subject[B.Width].Value.Nominal / 2, ShaftPlaces.On(subject.Context.Spec, s.Shaft.Value).Ends));

    public static readonly NumberDefinition<BearingSpec> BeyondPlanet =
        Number("beyond_planet", "", "How far the bearing stands out beyond the gears of its planet", Units.Millimetre)
        .By("the greater of z_0 − (z − B/2) and z + B/2 − z_1, not below zero, with the outer faces z_0 and z_1 of the gears on the planet", "geometry").Scaled(1)
        .When(static (s, subject) => GearsOf(s, subject) is { IsEmpty: false } gears && gears.All(static gear => gear is { FaceWidth: not null, AxialPosition: not null }))
        .Solved([Place, B.Width], static (s, subject) => Beyond(
            subject[Place].Value.Nominal, subject[B.Width].Value.Nominal / 2,
            (GearsOf(s, subject).Min(static gear => Middle(gear) - HalfFace(gear)), GearsOf(s, subject).Max(static gear => Middle(gear) + HalfFace(gear)))));

    public static readonly NumberDefinition<BearingSpec> HousingSeat = Number("housing_seat", "D_h", "Seat in the housing", Units.Millimetre)
        .Stated(static s => s.HousingSeat);

    public static readonly NumberDefinition<BearingSpec> InnerFit =
        Number("inner_fit", "I_i", "Overlap of shaft seat and inner ring, cold to hot", Units.Micrometre)
        .By("d_s − d, at 20 °C, coldest and hottest; below 0: play", "ISO 286-1, ISO 492; thermal expansion", Certainty.Memory).Scaled(0.005)
        .Tables(RingTolerance.TableId).When(static (_, subject) => !IsNeedleCage(subject))
        .SolvedLimits([ShaftSeat, B.Bore, Oil], static (_, subject) => BearingPlay.Of(subject).InnerFit());

    public static readonly NumberDefinition<BearingSpec> OuterFit =
        Number("outer_fit", "I_o", "Overlap of outer ring and housing seat, cold to hot", Units.Micrometre)
        .By("D − D_h, at 20 °C, coldest and hottest; below 0: play", "ISO 286-1, ISO 492; thermal expansion", Certainty.Memory).Scaled(0.005)
        .Tables(RingTolerance.TableId).When(static (_, subject) => !IsNeedleCage(subject))
        .SolvedLimits([HousingSeat, B.Outside, Oil], static (_, subject) => BearingPlay.Of(subject).OuterFit());

    public static readonly RowDefinition<BearingSpec, string> ClearanceClass = Text("clearance_class", "Class of internal clearance")
        .When(static (_, subject) => IsRadial(subject)).Stated(static s => s.Clearance);

    public static readonly NumberDefinition<BearingSpec> NewClearance =
        Number("new_clearance", "G_r", "Radial internal clearance of the new bearing", Units.Micrometre)
        .By("by class and bore; needle cages: D_h − d_s − 2·D_w", "ISO 5753-1:2009").Scaled(0.01)
        .Tables(InternalClearance.DeepGrooveTableId, InternalClearance.RollerTableId)
        .For(static (_, subject) => IsNeedleCage(subject)).Range(
            HousingSeat.Limits(), ShaftSeat.Limits(), B.ElementDiameter, static (bore, pin, needle) => bore.Less(pin).Less(Extent.Exactly(2 * needle)))
        .For(static (_, subject) => IsRadial(subject)).SolvedLimits([ClearanceClass, B.Bore], static (_, subject) => BearingPlay.Of(subject).NewClearance());

    public static readonly NumberDefinition<BearingSpec> OperatingClearance =
        Number("operating_clearance", "G_op", "Clearance mounted, cold to hot", Units.Micrometre)
        .By("G_r − growth of the inner raceway − contraction of the outer − loss by warmth; at 20 °C, coldest and hottest", "Lamé, thermal expansion")
        .Noted("below 0: preload; raceways estimated where they are not stated").Scaled(0.005)
        .For(static (_, subject) => IsNeedleCage(subject)).SolvedLimits(
            [NewClearance, ShaftSeat, HousingSeat, B.ElementDiameter], static (_, subject) => BearingPlay.Of(subject).NeedleClearance())
        .For(static (_, subject) => IsRadial(subject)).SolvedLimits(
            [NewClearance, InnerFit, OuterFit], static (_, subject) => BearingPlay.Of(subject).OperatingClearance());

    public static readonly NumberDefinition<BearingSpec> MaxClearance =
        Number("max_clearance", "", "Maximum operating clearance that is borne", Units.Micrometre)
        .Stated(static s => s.MaxClearance).Optional();

    public static readonly TruthDefinition<BearingSpec> Preloaded = Truth("preloaded", "A negative operating clearance is meant")
        .Stated(static s => s.Preloaded).Assumed(false, "none is meant, for none is stated");

    public static readonly NumberDefinition<BearingSpec> AxialFloat =
        Number("axial_float", "", "Axial way left when hottest or coldest", Units.Millimetre)
        .By("float − |α_shaft·Δθ_shaft − α_housing·Δθ_housing|·distance from the locating bearing", "thermal expansion").Scaled(0.1)
        .When(static (_, subject) => !BearingPlay.Of(subject).Holders.IsEmpty)
        .Solved([B.Seat], static subject => BearingPlay.Of(subject).FloatReasons, static (_, subject) => BearingPlay.Of(subject).AxialFloat());

    public static readonly NumberDefinition<BearingSpec> Fillet =
        Number("fillet", "r_f", "Fillet of the shaft", Units.Millimetre)
        .When(static (_, subject) => !IsNeedleCage(subject)).Stated(static s => s.Fillet);

    public static readonly NumberDefinition<BearingSpec> Corner =
        Number("corner", "r_s min", "Minimum chamfer of the ring", Units.Millimetre)
        .When(static (_, subject) => !IsNeedleCage(subject))
        .Found(static (_, subject) => B.EntryOf(subject).Corner, static s => B.OfEntry(s, "corner"));

    public static readonly NumberDefinition<BearingSpec> FilletReserve =
        Number("fillet_reserve", "", "Chamfer of the ring less the fillet of the shaft", Units.Millimetre)
        .By("r_s min − fillet", "ISO 582; chamfer by the maker").Scaled(0.1)
        .From(Corner, Fillet, static (corner, fillet) => corner - fillet);

    public static readonly NumberDefinition<BearingSpec> Acceleration =
        Number("acceleration", "a_c", "Acceleration of the planet bearing", Units.MetrePerSecondSquared)
        .By("a·ω_carrier²", "closed form").Scaled(9810)
        .Solved(
            [B.InputSpeed], static subject => BearingWork.Of(subject).Planet is null ? [] : BearingWork.Of(subject).DutyReasons,
            static (_, subject) => BearingWork.Of(subject).Acceleration());

    public static readonly NumberDefinition<BearingSpec> MaxAcceleration =
        Number("max_acceleration", "", "Acceleration that the maker permits", Units.MetrePerSecondSquared)
        .Found(static (_, subject) => B.EntryOf(subject).MaxAcceleration);

    public static readonly NumberDefinition<BearingSpec> AccelerationShare =
        Number("acceleration_share", "", "Acceleration over what the maker permits")
        .By("a_c over the maker's limit", "the maker")
        .From(Acceleration, MaxAcceleration, static (acceleration, limit) => acceleration / limit);

    public static readonly NumberDefinition<BearingSpec> RacewayHardness =
        Number("raceway_hardness", "", "Minimum hardness of shaft and bore as raceways", Units.Vickers).NeverNegative()
        .Noted("converted to HV after ISO 18265, table A.1, where written in HRC or HBW")
        .When(static (_, subject) => IsNeedleCage(subject))
        .Custom(static subject => MaterialBuilder.Hardness(
            subject.Context, RacewayHardness!, ((BearingSpec)subject.Model).RacewayHardness, $"{subject.Keys}.raceway_hardness"));

    public static readonly NumberDefinition<BearingSpec> RacewayPressure =
        Number("raceway_pressure", "p_H", "Maximum pressure of the heaviest roller on the shaft, rated or in a share", Units.Megapascal).NeverNegative()
        .By("p_H = √(Q·E*/(π·R·L_we)), Q = 5·F_r/Z of one row, at the greatest F_r of all shares", "Hertz; Stribeck", Certainty.Memory)
        .When(static (_, subject) => IsNeedleCage(subject))
        .Solved([B.RadialLoad, B.Bore], B.LoadReasons, static (_, subject) => BearingPlay.Of(subject).RacewayPressure(BearingWork.Of(subject).MaxRadial()));

    public static readonly NumberDefinition<BearingSpec> PeakRacewayPressure =
        Number("peak_raceway_pressure", "p_Hp", "The same at the peak torque", Units.Megapascal).NeverNegative()
        .By("p_H at the radial load of the peak torque", "Hertz; Stribeck", Certainty.Memory)
        .When(static (_, subject) => IsNeedleCage(subject))
        .Solved([PeakTorque, B.Bore], B.LoadReasons, static (_, subject) => BearingPlay.Of(subject).RacewayPressure(BearingWork.Of(subject).PeakRadial()));

    private static bool HasEnds(BearingSpec spec, Subject bearing) =>
        ShaftPlaces.On(bearing.Context.Spec, spec.Shaft.Value) is { IsEmpty: false, Ends: { From: var from, To: var to } } && double.IsFinite(from) && double.IsFinite(to);

    private static ImmutableArray<GearSpec> GearsOf(BearingSpec spec, Subject bearing) =>
        bearing.Context.Spec.Train is { } train && train.Planets.Find(spec.Housing.Value) is not null
            ? [.. train.Gears.Entries.Where(gear => gear.On.Value == spec.Housing.Value)]
            : [];

    private static double Middle(GearSpec gear) => gear.AxialPosition!.Value.Nominal.Coherent;

    private static double HalfFace(GearSpec gear) => gear.FaceWidth!.Value.Nominal.Coherent / 2;

    private static double Beyond(double place, double half, (double From, double To) ends) => Math.Max(0, Math.Max(ends.From - (place - half), place + half - ends.To));

    private static bool IsNeedleCage(Subject bearing) => B.EntryOf(bearing).Kind.Value == "needle-cage";

    /// <summary>Rings of its own and no contact angle: play is radial, by its class.</summary>
    private static bool IsRadial(Subject bearing) => !IsNeedleCage(bearing) && B.PlaceOf(bearing).Type is { ContactAngle: <= 0 };

    private static ImmutableArray<string> Turning(Subject bearing) =>
        RingLoads.Of(bearing).SpeedsKnown ? [] : ["the speeds of its bodies are not determined"];
}
