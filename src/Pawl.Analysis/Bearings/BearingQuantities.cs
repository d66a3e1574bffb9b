using Pawl.Analysis.Agreement;
using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using D = Pawl.Analysis.Rating.DutyQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>A rolling bearing in its place: what it is, its ratings, its speed and its loads.</summary>
public sealed class BearingQuantities : Section<BearingSpec>
{
    private const string Iso281 = "ISO 281:2007";
    private const string Statics = "statics of rigid shafts; each cause by itself, sizes added where directions are not known";

    internal static readonly IInput<double> InputSpeed = Of("train", static () => TrainQuantities.InputSpeed);

    internal static readonly IInput<BearingPlace> Arrangement = Layout(PlaceOf);

    public static readonly RowDefinition<BearingSpec, string> Entry = Text("entry", "Entry in the catalogue")
        .Stated(static s => s.Bearing);

    public static readonly RowDefinition<BearingSpec, string> Kind = Text("bearing_kind", "Kind")
        .Custom(static subject => AnalysisContext.Text(Kind!, EntryOf(subject).Kind, ""));

    public static readonly RowDefinition<BearingSpec, string> Seat = Text("axial_duty", "Axial duty").OneOf("locating", "floating", "plus", "minus")
        .Stated(static s => s.Axial).Assumed("floating", "floating, for nothing else is stated");

    public static readonly TruthDefinition<BearingSpec> HasPartner = Truth("has_partner", "One row at a contact angle has its partner")
        .By("one bearing of the body takes thrust in the positive direction, another in the negative", "the spec")
        .When(static (_, subject) => PlaceOf(subject).Type is { ThrustsUnderRadialLoad: true })
        .Solved([Seat], static (_, subject) => PlaceOf(subject).Partner is not null);

    public static readonly TruthDefinition<BearingSpec> Greased = Truth("greased", "Runs on grease of its own")
        .By("lubricated_by: grease; where that is silent: contact seals, or a gearbox that is greased", "the spec")
        .Solved([], static (_, subject) => BearingWork.Of(subject).IsGreased);

    public static readonly RowDefinition<BearingSpec, string> Shaft = Text("on_shaft", "Inner ring sits on")
        .Stated(static s => s.Shaft);

    public static readonly RowDefinition<BearingSpec, string> Housing = Text("in_housing", "Outer ring sits in")
        .Stated(static s => s.Housing);

    public static readonly TruthDefinition<BearingSpec> InPlanet = Truth("in_planet", "Carries a planet")
        .By("one of its bodies is a planet set", "the spec")
        .Solved([], static (_, subject) => BearingWork.Of(subject).Planet is not null);

    public static readonly NumberDefinition<BearingSpec> Bore = Number("bore", "d", "Bore", Units.Millimetre).NeverNegative()
        .Found(static (_, subject) => EntryOf(subject).Bore);

    public static readonly NumberDefinition<BearingSpec> Outside = Number("outside", "D", "Outside diameter", Units.Millimetre).NeverNegative()
        .Found(static (_, subject) => EntryOf(subject).Outside);

    public static readonly NumberDefinition<BearingSpec> Width = Number("width", "B", "Width", Units.Millimetre).NeverNegative()
        .Found(static (_, subject) => EntryOf(subject).Width);

    public static readonly NumberDefinition<BearingSpec> PitchDiameter =
        Number("pitch_diameter", "D_pw", "Pitch diameter of the rolling elements", Units.Millimetre)
        .By("as stated, else (d + D)/2", "ISO 281 permits the mean diameter")
        .Found(static (_, subject) => EntryOf(subject).Elements?.PitchDiameter).From(Bore, Outside, BearingSpeed.MeanDiameter);

    public static readonly RowDefinition<BearingSpec, string> Misfit = Text("designation_misfit", "What contradicts its designation")
        .By("bore, outside diameter and width against the designation; none: they agree", "ISO 15", Certainty.Memory)
        .Tables(BoundaryDimensions.TableId)
        .When(static (_, subject) => EntryOf(subject).Designation is not null)
        .Solved([Bore, Outside, Width], static (_, subject) => BearingWork.Of(subject).Misfit());

    public static readonly NumberDefinition<BearingSpec> DynamicRating = Number("dynamic_rating", "C", "Basic dynamic load rating", Units.Newton)
        .Found(static (_, subject) => EntryOf(subject).DynamicRating, static s => OfEntry(s, "dynamic_rating"));

    public static readonly NumberDefinition<BearingSpec> StaticRating = Number("static_rating", "C_0", "Basic static load rating", Units.Newton)
        .Found(static (_, subject) => EntryOf(subject).StaticRating, static s => OfEntry(s, "static_rating"));

    public static readonly NumberDefinition<BearingSpec> StaticRatingOverSize =
        Number("static_rating_over_size", "C_0/(D_pw·B)", "Static rating over mean diameter and width", Units.Megapascal)
        .By("C_0/(D_pw·B)", "geometry")
        .From(StaticRating, PitchDiameter, Width, static (rating, pitch, width) => rating / (pitch * width));

    public static readonly NumberDefinition<BearingSpec> SetRating =
        Number("set_rating", "C_s", "Dynamic rating of all bearings of this place", Units.Newton)
        .By("C·k^0.7 of balls, C·k^(7/9) of rollers, k like bearings side by side", Iso281)
        .Unless(Refused)
        .From(Arrangement, DynamicRating, static (place, rating) => rating * Math.Pow(place.Count, place.Type!.IsBall ? 0.7 : 7.0 / 9));

    public static readonly NumberDefinition<BearingSpec> SetStaticRating =
        Number("set_static_rating", "C_0s", "Static rating of all bearings of this place", Units.Newton)
        .By("C_0·k", "ISO 76")
        .From(Arrangement, StaticRating, static (place, rating) => rating * place.Count);

    public static readonly NumberDefinition<BearingSpec> ElementCount = Number("element_count", "Z", "Rolling elements in a row")
        .When(static (_, subject) => HasElements(subject))
        .Custom(static subject => subject.Context.Number(ElementCount!, EntryOf(subject).Elements!.Count));

    public static readonly NumberDefinition<BearingSpec> ElementDiameter =
        Number("element_diameter", "D_w", "Diameter of a rolling element", Units.Millimetre)
        .When(static (_, subject) => HasElements(subject) || EntryOf(subject).Kind.Value == "needle-cage")
        .Found(static (_, subject) => EntryOf(subject).Elements?.Diameter, static s => OfEntry(s, "elements"));

    public static readonly NumberDefinition<BearingSpec> ElementLength =
        Number("element_length", "L_we", "Effective length of a roller", Units.Millimetre)
        .When(static (_, subject) => HasElements(subject) && PlaceOf(subject).Type is { IsBall: false })
        .Found(static (_, subject) => EntryOf(subject).Elements?.Length, static s => OfEntry(s, "elements.length"));

    public static readonly NumberDefinition<BearingSpec> ComputedRating =
        Number("computed_rating", "C_r", "Dynamic rating of the internal geometry", Units.Newton)
        .By("balls: 1.3·f_c·(i·cos α)^0.7·Z^(2/3)·D_w^1.8; rollers: 1.1·f_c·(i·L_we·cos α)^(7/9)·Z^(3/4)·D_we^(29/27)", Iso281, Certainty.Memory)
        .Tables(InternalRating.BallTableId, InternalRating.StaticBallTableId)
        .From(Arrangement, ElementCount, ElementDiameter, PitchDiameter, ElementLength.Or(double.NaN), static (place, count, diameter, pitch, length) =>
            place.Single is { IsBall: true } balls
                ? InternalRating.Dynamic(new BallSet(balls, (int)count, diameter, pitch))
                : InternalRating.Dynamic(new RollerSet(place.Single!, (int)count, diameter, length, pitch), RollerMake.Machined));

    public static readonly NumberDefinition<BearingSpec> RatingShare = Number("rating_share", "C/C_r", "Stated over computed dynamic rating")
        .By("C/C_r", "closed form")
        .From(DynamicRating, ComputedRating, InternalRating.Stated);

    public static readonly NumberDefinition<BearingSpec> StaticRatingShare =
        Number("static_rating_share", "C_0/C_0r", "Stated over computed static rating")
        .By("C_0/C_0r; balls: C_0r = f_0·i·Z·D_w²·cos α; rollers: 44·(1 − γ)·i·Z·L_we·D_we·cos α", "ISO 76:2006", Certainty.Memory)
        .From(
            StaticRating, Arrangement, ElementCount, ElementDiameter, PitchDiameter, ElementLength.Or(double.NaN), static (stated, place, count, diameter, pitch, length) =>
                InternalRating.Stated(stated, place.Single is { IsBall: true } balls
                    ? InternalRating.Static(new BallSet(balls, (int)count, diameter, pitch))
                    : InternalRating.Static(new RollerSet(place.Single!, (int)count, diameter, length, pitch))));

    public static readonly TruthDefinition<BearingSpec> Hybrid = Truth("hybrid", "Ceramic balls in steel rings")
        .Custom(static subject => EntryOf(subject).Balls is { } balls
            ? Quantity.OfTruth(Hybrid!, AnalysisContext.Declared(balls), BearingWork.Of(subject).IsHybrid, [])
            : null)
        .Assumed(false, "steel balls, for nothing else is stated");

    public static readonly TruthDefinition<BearingSpec> StaticOfHybrid =
        Truth("static_rating_of_hybrid", "The static rating is that of the hybrid bearing")
        .When(static (_, subject) => BearingWork.Of(subject).IsHybrid)
        .Custom(static subject => AnalysisContext.Truth(
            StaticOfHybrid!, EntryOf(subject).StaticRatingOfHybrid, false, "that of its all-steel twin, for nothing else is stated"));

    public static readonly NumberDefinition<BearingSpec> RelativeSpeed =
        Number("relative_speed", "n", "Maximum speed of one ring against the other", Units.RevolutionPerMinute)
        .By("|n_inner − n_outer|, at the input's greatest speed or the fastest share", "kinematics").Scaled(1)
        .From(
            Of("shaft", static () => BodyQuantities.SpeedRatio, "ω_i/ω_in"), Of("housing", static () => BodyQuantities.SpeedRatio, "ω_o/ω_in"),
            BodyInputs.FastestSpeed, static (inner, outer, fastest) => fastest * Math.Abs(inner - outer));

    internal static readonly ImmutableArray<IInput> LoadInputs = [Entry, Of("train", static () => TrainQuantities.InputTorque), InputSpeed, Of("train", static () => D.ApplicationFactor)];

    public static readonly NumberDefinition<BearingSpec> OrbitForce = Number("orbit_force", "F_c", "Centrifugal force of the planet", Units.Newton)
        .By("m·a·ω_carrier²", "closed form").Scaled(1)
        .Solved([InputSpeed], static (_, subject) => BearingWork.Of(subject).OrbitForce());

    public static readonly NumberDefinition<BearingSpec> OrbitLoad =
        Number("orbit_load", "F_cb", "Part of the centrifugal force on this bearing", Units.Newton).NeverNegative()
        .By("reaction of this bearing to F_c in the middle of the gears of the planet", Statics).Scaled(1)
        .When(static (_, subject) => BearingWork.Of(subject).OrbitForce() is not null)
        .Solved([OrbitForce], static subject => BearingWork.Of(subject).OrbitReasons, static (_, subject) => BearingWork.Of(subject).OrbitLoad());

    public static readonly NumberDefinition<BearingSpec> ToothLoad =
        Number("tooth_load", "F_zb", "Part of the tooth forces on this bearing at the rated torque", Units.Newton).NeverNegative()
        .By("|reaction of this bearing to the tooth forces of the most loaded planet|, without K_A", Statics).Scaled(1)
        .When(static (_, subject) => BearingWork.Of(subject).OrbitForce() is not null)
        .Solved([Of("train", static () => TrainQuantities.InputTorque)], static subject => BearingWork.Of(subject).OrbitReasons, static (_, subject) => BearingWork.Of(subject).ToothLoad());

    public static readonly NumberDefinition<BearingSpec> OrbitShare =
        Number("orbit_share", "F_cb/F_zb", "Centrifugal force over the tooth forces, of what this bearing bears").NeverNegative()
        .By("F_cb/F_zb", "closed form")
        .From(OrbitLoad, ToothLoad, static (orbit, teeth) => teeth > 0 ? orbit / teeth : throw new OutsideValidityException("the bearing bears no tooth force"));

    public static readonly NumberDefinition<BearingSpec> RadialLoad = Number("radial_load", "F_r", "Radial load at the rated torque", Units.Newton)
        .By("reaction to tooth forces and orbit, with the application factor; unequal sharing, forces of the coupled machine and weight added in size", Statics, Certainty.ClosedForm)
        .Noted("at nominal dimensions; planets: of the most loaded one")
        .Solved(LoadInputs, LoadReasons, static (_, subject) => BearingWork.Of(subject).Rated(static loads => loads.Radial));

    public static readonly NumberDefinition<BearingSpec> AxialLoad = Number("axial_load", "F_a", "Axial load at the rated torque", Units.Newton)
        .By("what the arrangement hands to this bearing of tooth forces, machine, weight and induced thrust, in the worse direction", Statics)
        .Noted("pairs: set without play and without preload").Scaled(1)
        .Tables(DynamicLoad.DeepGrooveTableId).Solved(LoadInputs, LoadReasons, static (_, subject) => BearingWork.Of(subject).Rated(static loads => loads.Axial));

    public static readonly NumberDefinition<BearingSpec> TiltCouple =
        Number("tilt_couple", "M", "Couple that a single planet bearing bears as edge load", Units.NewtonMetre)
        .By("couple of the tooth forces about the middle of the bearing", Statics).Scaled(1000)
        .Solved(LoadInputs, static (_, subject) => BearingWork.Of(subject).Tilt());

    public static readonly NumberDefinition<BearingSpec> AxialRatio = Number("axial_ratio", "f_0·F_a/C_0", "Relative axial load")
        .By("f_0·F_a/C_0", Iso281)
        .Noted("outside the table its nearest row is taken")
        .When(static (_, subject) => IsDeepGroove(subject)).When(AxialLoad, static force => force > 0)
        .Solved([AxialLoad, SetStaticRating], LoadReasons, static (_, subject) => BearingWork.Of(subject).AxialRatio());

    public static readonly NumberDefinition<BearingSpec> EquivalentLoad =
        Number("equivalent_load", "P", "Equivalent dynamic load at the rated torque", Units.Newton)
        .By("P = X·F_r + Y·F_a", Iso281)
        .Solved([RadialLoad, AxialLoad], LoadReasons, static (_, subject) => BearingWork.Of(subject).Equivalent());

    public static readonly NumberDefinition<BearingSpec> LoadShare = Number("load_share", "P/C", "Maximum equivalent load over the dynamic rating")
        .By("greatest P of all shares and the rated load over C_s", Iso281)
        .Solved([EquivalentLoad, SetRating], LoadReasons, static (_, subject) => BearingWork.Of(subject).MaxEquivalent() / BearingWork.Of(subject).Nominal(SetRating));

    public static readonly NumberDefinition<BearingSpec> LoadOverStatic =
        Number("load_over_static", "P/C_0", "Maximum equivalent load over the static rating")
        .By("greatest P over C_0s", Iso281)
        .When(static (_, subject) => PlaceOf(subject).Type is { IsBall: true })
        .Solved([EquivalentLoad, SetStaticRating], LoadReasons, static (_, subject) => BearingWork.Of(subject).MaxEquivalent() / BearingWork.Of(subject).Nominal(SetStaticRating));

    public static readonly NumberDefinition<BearingSpec> MinLoadShare =
        Number("min_load_share", "P_min/C", "Minimum equivalent load over the dynamic rating")
        .By("least P of all shares without the application factor, shared evenly, machine and weight against the teeth, over C_s", "common practice, no source")
        .Solved([EquivalentLoad, SetRating], LoadReasons, static (_, subject) => BearingWork.Of(subject).MinEquivalent() / BearingWork.Of(subject).Nominal(SetRating));

    public static readonly NumberDefinition<BearingSpec> AxialShare = Number("axial_share", "F_a/C_0", "Axial load over the static rating")
        .By("F_a/C_0s", "closed form").Scaled(1)
        .When(static (_, subject) => IsDeepGroove(subject)).When(AxialLoad, static force => force > 0)
        .From(AxialLoad, SetStaticRating, static (force, rating) => force / rating);

    internal static void AddAll(AnalysisContext context)
    {
        if (context.Train is not { } train)
            return;
        var all = ImmutableArray.CreateBuilder<Subject>();
        foreach (var spec in context.Spec.Bearings.Entries)
        {
            all.Add(context.Begin(SubjectKinds.Bearing, $"bearings.{spec.Name.Value}", spec.Name.Span, spec)
                .InDuty(context).Relate("shaft", () => context.Find(SubjectKinds.Body, $"bodies.{spec.Shaft.Value}"))
                .Relate("housing", () => context.Find(SubjectKinds.Body, $"bodies.{spec.Housing.Value}"))
                .RelateOptional("seat", () => ShaftPlaces.SubjectOf(context, ShaftPlaces.Under(context.Spec, spec)))
                .RelateOptional("pin", () => ShaftPlaces.PinsUnder(context.Spec, spec).FirstOrDefault() is { } pin
                    ? context.Find(SubjectKinds.PlanetPin, $"planet_pins.{pin.Name.Value}")
                    : null)
                .RelateOptional("lubrication", () => context.Find(SubjectKinds.Lubrication, "lubrication")));
        }

        train.Subject.RelateAll("bearings", () => all)
            .RelateAll("other_bearings", () => all.SelectMany(static each => Enumerable.Repeat(each, BearingWork.Of(each).Copies - 1)))
            .RelateAll("oiled_bearings", () => all.Where(static each => !BearingWork.Of(each).IsGreased));
    }

    internal static BearingPlace PlaceOf(Subject bearing) => bearing.Context.Held!.PlaceOf(((BearingSpec)bearing.Model).Name.Value);

    // The reader lets no bearing through that the catalogue does not have.
    internal static BearingTypeSpec EntryOf(Subject bearing) => PlaceOf(bearing).Entry!;

    internal static string OfEntry(BearingSpec spec, string key) => $"{key} of bearing {spec.Bearing.Value} in the catalogue";

    /// <summary>Why its kind is not one that can be rated; empty when it is.</summary>
    internal static ImmutableArray<string> Refused(Subject bearing) => PlaceOf(bearing).Refusal is { } refusal ? [refusal] : [];

    internal static ImmutableArray<string> LoadReasons(Subject bearing) => BearingWork.Of(bearing).Reasons;

    private static bool HasElements(Subject bearing) => EntryOf(bearing).Elements is not null && PlaceOf(bearing).Type is not null;

    private static bool IsDeepGroove(Subject bearing) => PlaceOf(bearing).Type is { Kind: BearingKind.DeepGrooveBall };
}
