using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Pins;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using D = Pawl.Analysis.Rating.DutyQuantities;
using L = Pawl.Analysis.Rating.MeshLoadQuantities;
using Q = Pawl.Analysis.Gears.MeshQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>What Pawl knows of the misalignment of a mesh with a planet, against what the spec states of it.</summary>
public sealed class MeshTiltQuantities : Section<MeshSpec>
{
    public static readonly NumberDefinition<MeshSpec> PlanetTilt =
        Number("planet_tilt", "φ_p", "Tilt of the planet across the flanks, by the play of its bearings and its bent pin", Units.Arcminute)
        .By("(u_2 − u_1)·n/(z_2 − z_1), u_k = G_op,k/2·F_k/|F_k| + v_k of the two bearings, v_k of the pin, n across the flanks; one bearing: G_op/L_we if M > F·L_we/6, else 0, and the slope of the pin", "geometry; beam on two supports, or held at one end").Scaled(1e-4)
        .Noted("worst of the rated duty and all shares, both directions of drive, and of all limits of play and pin; positive as it goes at nominal; both planets of a pair against each other")
        .When(static (_, subject) => subject.Context.Held is not null && PlanetsOf(subject).Any())
        .SolvedLimits(
            [Of("train", static () => T.InputTorque), Of("train", static () => D.ApplicationFactor), EachLimits("planet_bearings", static () => BearingFitQuantities.OperatingClearance, "G_op,k")],
            static (s, subject) => Sum(PlanetsOf(subject).Select(planet => Bearings.PlanetTilt.Of(subject.Context, planet).AcrossFlanks(NameOf(subject)))));

    public static readonly NumberDefinition<MeshSpec> CarrierSlope =
        Number("carrier_slope", "φ_c", "Slope of the planet across the flanks by the twist of the carrier's cage", Units.Arcminute).NeverNegative()
        .By("greatest of Σ φ_t·|n·t| of both directions of drive, φ_t of the pins of each planet of the mesh, t around the axis, n across the flanks", "statics").Scaled(1e-4)
        .When(static (_, subject) => subject.Context.Held is not null && subject.ReachAll("twisted_pins").Any())
        .SolvedLimits([Each("twisted_pins", static () => PlanetPins.CarrierTwist, "φ_t")], static (_, subject) => Twist(subject));

    public static readonly NumberDefinition<MeshSpec> HelixCorrection =
        Number("helix_correction", "C_h", "Correction of the helix against the tilt", Units.Micrometre).NeverNegative()
        .Stated(static s => s.HelixCorrection).Assumed(0, "none, for none is stated");

    public static readonly NumberDefinition<MeshSpec> KnownMisalignment =
        Number("known_misalignment", "F_βd", "Misalignment that tilt, bending and twist make", Units.Micrometre).NeverNegative()
        .By("F_βd = max(|b·(φ_p + φ_c) − C_h|, |b·(φ_p − φ_c) − C_h|)", "geometry; ISO 6336-1").Turns()
        .Noted("bent central shafts, housing, cheeks and manufacture are not in it")
        .From(L.RatedFaceWidth, PlanetTilt, CarrierSlope.Or(0), HelixCorrection, static (width, tilt, twist, correction) =>
            Math.Max(Math.Abs((width * (tilt + twist)) - correction), Math.Abs((width * (tilt - twist)) - correction)));

    public static readonly NumberDefinition<MeshSpec> ManufacturingMisalignment =
        Number("manufacturing_misalignment", "f_ma", "Misalignment that the tolerances of both helices make", Units.Micrometre).NeverNegative()
        .By("f_ma = √(f_Hβ1² + f_Hβ2²)", "ISO 6336-1", Certainty.Memory)
        .From(Of("first", static () => ToothQuantities.HelixDeviation, "f_Hβ1"), Of("second", static () => ToothQuantities.HelixDeviation, "f_Hβ2"), FlankTolerance.MeshMisalignment);

    public static readonly NumberDefinition<MeshSpec> KnownFaceLoadFactor =
        Number("known_face_load_factor", "K_Hβ,d", "Face load factor of the misalignment that tilt, bending and twist make").NeverNegative()
        .By("as K_Hβ, of F_βd − y_β", "ISO 6336-1, method C")
        .From(KnownRunIn(), L.MeshStiffness, L.LineLoad, L.DynamicFactor, LoadFactors.Face);

    public static readonly NumberDefinition<MeshSpec> WholeMisalignment =
        Number("whole_misalignment", "F_βc", "Misalignment of tilt, bending, twist and manufacture", Units.Micrometre).NeverNegative()
        .By("F_βc = F_βd + f_ma", "ISO 6336-1, method C, without a crowned or relieved helix")
        .From(KnownMisalignment, ManufacturingMisalignment, static (known, made) => known + made);

    public static readonly NumberDefinition<MeshSpec> WholeFaceLoadFactor =
        Number("whole_face_load_factor", "K_Hβ,c", "Face load factor of tilt, bending, twist and manufacture").NeverNegative()
        .By("as K_Hβ, of F_βc − y_β", "ISO 6336-1, method C")
        .From(
            Join(WholeMisalignment, LoadFactors.Pinion, LoadFactors.Wheel, Q.PitchLineSpeed, LoadFactors.MisalignmentRunIn),
            L.MeshStiffness, L.LineLoad, L.DynamicFactor, LoadFactors.Face);

    public static readonly NumberDefinition<MeshSpec> StatedFaceLoadFactor =
        Number("stated_face_load_factor", "K_Hβ", "Face load factor as stated").NeverNegative().Stated(static s => s.FaceLoadFactor).Optional();

    internal static IEnumerable<string> PlanetsOf(Subject mesh) => mesh.Context.Train is not { } train
        ? []
        : ((MeshSpec)mesh.Model).Gears.Select(gear => ((GearSpec)mesh.Context.Find(SubjectKinds.Gear, $"gears.{gear.Value}")!.Model).On.Value).Where(body => train.PlanetSet(body) is not null).Distinct();

    private static IInput<double> KnownRunIn() => Join(KnownMisalignment, LoadFactors.Pinion, LoadFactors.Wheel, Q.PitchLineSpeed, LoadFactors.MisalignmentRunIn);

    private static string NameOf(Subject mesh) => mesh.Path["meshes.".Length..];

    // How two planets tilt to each other nobody says: the lesser may add to the greater or take from it.
    private static Extent Sum(IEnumerable<Extent> parts) => parts.OrderByDescending(static part => part.Nominal).Aggregate(
        static (sum, part) => Math.Max(Math.Abs(part.Min), Math.Abs(part.Max)) is var most
            ? new(sum.Nominal + part.Nominal, sum.Min - most, sum.Max + most) : sum);

    private static Extent Twist(Subject mesh)
    {
        var forces = mesh.Context.Forces ?? throw new OutsideValidityException("the forces of the train are not known");
        var pins = mesh.ReachAll("twisted_pins").ToImmutableArray();
        return new(Greatest(static twist => twist.Nominal), Greatest(static twist => twist.Min), Greatest(static twist => twist.Max));

        double Greatest(Func<Extent, double> which) => Math.Max(Along(1, which), Along(-1, which));

        double Along(double torque, Func<Extent, double> which) => pins.Sum(pin =>
        {
            var planet = ((PlanetPinSpec)pin.Model).Planets.Value;
            var ((nx, ny), (tx, ty)) = (forces.FlankNormal(NameOf(mesh), planet, torque), forces.AroundAxis(planet));
            return Math.Abs((nx * tx) + (ny * ty)) * which(pin[PlanetPins.CarrierTwist].Value);
        });
    }
}
