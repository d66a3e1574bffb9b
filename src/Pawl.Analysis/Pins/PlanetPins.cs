using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.BodyInputs;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Pins;

/// <summary>The pins of a planet set.</summary>
public sealed class PlanetPins : Section<PlanetPinSpec>
{
    private const double SteelModulus = 206_000;

    // Common practice, no source: needle and cylindrical rollers bear about so much.
    private const double UsualSlope = 3 * Math.PI / 10_800;

    private const string Closed = "closed form";
    private const string Beam = "beam on two supports, or held at one end";

    public static readonly RowDefinition<PlanetPinSpec, string> Planets = Text("planets", "Planets").Stated(static s => s.Planets);

    public static readonly RowDefinition<PlanetPinSpec, string> Held = Text("held", "Held").OneOf("straddled", "overhung").Stated(static s => s.Held);

    public static readonly RowDefinition<PlanetPinSpec, string> Secured = Text("secured", "Secured by").OneOf("press", "press and pin", "flat", "ring", "none").Stated(static s => s.Secured);

    public static readonly NumberDefinition<PlanetPinSpec> Diameter = Number("diameter", "d", "Diameter of the pin", Units.Millimetre).NeverNegative().Stated(static s => s.Diameter);

    public static readonly NumberDefinition<PlanetPinSpec> Bore =
        Number("bore", "d_i", "Hole along the pin", Units.Millimetre).NeverNegative().Stated(static s => s.Bore).Optional();

    public static readonly NumberDefinition<PlanetPinSpec> LoadWidth =
        Number("load_width", "b", "Width of what presses on the pin", Units.Millimetre).Stated(static s => s.LoadWidth);

    public static readonly NumberDefinition<PlanetPinSpec> Span = Number("span", "L", "Distance of the middles of the two cheeks", Units.Millimetre)
        .When(IsStraddled).Stated(static s => s.Span);

    public static readonly NumberDefinition<PlanetPinSpec> Gap = Number("gap", "g", "Gap from the face of the cheek to the load", Units.Millimetre)
        .When(static s => !IsStraddled(s)).Stated(static s => s.Gap);

    public static readonly NumberDefinition<PlanetPinSpec> ToothForce =
        Number("tooth_force", "F_z", "Tooth forces on the most loaded planet at the rated torque, plane by plane", Units.Newton)
        .By("F_z = Σ_planes |Σ F_tooth|·K_γ", "statics").Scaled(1)
        .Noted("at nominal dimensions; as vectors in one plane of meshes, the planes added in size, which is cautious")
        .Custom(static subject => OfForces(subject, ToothForce!, static (forces, planet) => InSize(forces.Of(planet))));

    public static readonly NumberDefinition<PlanetPinSpec> OrbitForce = Number("orbit_force", "F_c", "Centrifugal force of a planet at the rated speed", Units.Newton)
        .By("F_c = m·a·n_c²", "dynamics").Scaled(1)
        .Noted("at nominal dimensions")
        .Custom(static subject => OfForces(subject, OrbitForce!, static (forces, planet) => forces.OrbitForces.GetValueOrDefault(planet)));

    public static readonly NumberDefinition<PlanetPinSpec> Force = Number("planet_force", "F", "Force of the most loaded planet at the rated torque", Units.Newton)
        .By("F = F_z·K_A + F_c", "statics").Scaled(1).Noted("teeth and orbit added in size, which is cautious")
        .From(ToothForce, ApplicationFactor, OrbitForce, static (teeth, application, orbit) => teeth * application + orbit);

    public static readonly NumberDefinition<PlanetPinSpec> PeakForce = Number("peak_force", "F_p", "Force of the most loaded planet at the peak torque", Units.Newton)
        .By("F_p = F_z·T_peak/T_in + F_c", "statics").Scaled(1)
        .From(ToothForce, InputPeak, InputTorque, OrbitForce, static (teeth, peak, torque, orbit) => teeth * peak / torque + orbit);

    public static readonly NumberDefinition<PlanetPinSpec> Bending = Number("bending_stress", "σ_b", "Bending stress at the rated torque", Units.Megapascal)
        .By("32·d·M/(π·(d⁴ − d_i⁴)); straddled M = F/2·(L/2 − b/4), overhung M = F·(g + b/2)", Beam).Scaled(1)
        .Noted("without notches: an oil hole is one")
        .From(Diameter, Bore.Or(0), Force, Span, LoadWidth, BendingOfStraddled)
        .From(Diameter, Bore.Or(0), Force, Gap, LoadWidth, BendingOfOverhung);

    public static readonly NumberDefinition<PlanetPinSpec> Shear = Number("shear_stress", "τ", "Maximum shear stress at the rated torque", Units.Megapascal)
        .By("4/3·V/A·(d² + d·d_i + d_i²)/(d² + d_i²); straddled V = F/2, overhung V = F", "shear of a round tube").Scaled(1)
        .From(Held, Diameter, Bore.Or(0), Force, static (held, d, bore, force) => new PlanetPin(d, bore).ShearStress(OnCheek(held, force)));

    public static readonly NumberDefinition<PlanetPinSpec> Yield = Number("yield", "R_e", "Yield of the pin", Units.Megapascal).Stated(static s => s.Yield);

    public static readonly NumberDefinition<PlanetPinSpec> RatedSafety = Number("rated_safety", "S", "Yield over the reduced stress at the rated torque")
        .By("R_e/√(σ_b² + 3·τ²)", "von Mises").Noted("bending is greatest in the middle, shear at the cheeks: added as if at one place")
        .From(Yield, Bending, Shear, OverReduced);

    public static readonly NumberDefinition<PlanetPinSpec> PeakSafety = Number("peak_safety", "S_p", "Yield over the reduced stress at the peak torque")
        .By("R_e/√(σ_b² + 3·τ²) at F_p", "von Mises").Noted("bending is greatest in the middle, shear at the cheeks: added as if at one place")
        .From(
            Yield, Diameter, Bore.Or(0), PeakForce, Span, LoadWidth, static (yield, d, bore, force, span, width) => OverReduced(
                yield, BendingOfStraddled(d, bore, force, span, width), new PlanetPin(d, bore).ShearStress(force / 2)))
        .From(
            Yield, Diameter, Bore.Or(0), PeakForce, Gap, LoadWidth, static (yield, d, bore, force, gap, width) => OverReduced(
                yield, BendingOfOverhung(d, bore, force, gap, width), new PlanetPin(d, bore).ShearStress(force)));

    public static readonly NumberDefinition<PlanetPinSpec> Modulus = Number("elastic_modulus", "E", "Modulus of elasticity of the pin", Units.Megapascal)
        .For(static s => s.Material is not null).Found(
            static (s, subject) => subject.Context.Spec.Catalogue.Materials.Find(s.Material!.Value)?.ElasticModulus,
            static s => $"elastic_modulus of material {s.Material!.Value} in the catalogue")
        .Assumed(SteelModulus, "206 000 MPa, steel, for no material is stated");

    public static readonly NumberDefinition<PlanetPinSpec> Slope = Number("slope", "φ", "Slope of the pin at the edge of its load, rated torque", Units.Arcminute)
        .By("straddled F·(L²/16 − b²/48 − a²/4)/(E·I), a = (L − b)/2; overhung F·(g²/2 + g·b/2 + b²/6)/(E·I)", Beam).Scaled(1e-4).Turns()
        .From(
            Diameter, Bore.Or(0), Force, Span, LoadWidth, Modulus,
            static (d, bore, force, span, width, modulus) => new PlanetPin(d, bore).StraddledSlope(force, span, width, modulus))
        .From(
            Diameter, Bore.Or(0), Force, Gap, LoadWidth, Modulus,
            static (d, bore, force, gap, width, modulus) => new PlanetPin(d, bore).OverhungSlope(force, gap, width, modulus));

    public static readonly NumberDefinition<PlanetPinSpec> StatedTwistStiffness =
        Number("stated_twist_stiffness", "c_t", "Torsional stiffness of the carrier from cheek to cheek, as stated", Units.NewtonMetrePerRadian).NeverNegative()
        .When(IsStraddled).Stated(static s => s.TwistStiffness).Optional();

    public static readonly NumberDefinition<PlanetPinSpec> TwistStiffness =
        Number("twist_stiffness", "c_t", "Torsional stiffness of the carrier from cheek to cheek", Units.NewtonMetrePerRadian).NeverNegative()
        .By("as stated; of webs: n·(D_w/2)²/(l³/(12·E·I) + 1.2·l/(G·A)), l = L − t, I = h·w³/12, A = w·h", "beams guided at both ends, bent and sheared")
        .Noted("the cheeks and the corners of the windows are taken as stiff")
        .When(static s => IsStraddled(s) && (s.TwistStiffness is not null || s.Webs is not null))
        .From(StatedTwistStiffness, static stiffness => stiffness)
        .From(Span, Own(static () => Cheek!), Layout(WebsOf), static (span, cheek, webs) => new CarrierCage(
            webs.Spec.Count.Value, webs.Spec.Circle.Value.Coherent, webs.Spec.Width.Value.Coherent, webs.Spec.Depth.Value.Coherent, span - cheek).TorsionalStiffness(webs.Material));

    public static readonly NumberDefinition<PlanetPinSpec> CarrierTwist =
        Number("carrier_twist", "φ_t", "Slope of the pins by the twist of the carrier, rated torque", Units.Arcminute).NeverNegative()
        .By("φ_t = K_A·T_c/2/c_t·a/L", "statics: each cheek takes half of the force, the webs bring one half across").Scaled(1e-4)
        .When(static (s, subject) => IsStraddled(s) && (s.TwistStiffness is not null || s.Webs is not null))
        .From(
            Of("carrier", static () => BodyQuantities.Torque, "T_c"), ApplicationFactor, TwistStiffness, Layout(RadiusOf), Span,
            static (torque, application, stiffness, orbit, span) => CarrierCage.Slope(torque * application, stiffness, orbit.Radius, span));

    public static readonly NumberDefinition<PlanetPinSpec> MaxSlope = Number("max_slope", "φ_max", "Slope that the planet bearing permits", Units.Arcminute)
        .Stated(static s => s.MaxSlope).Assumed(UsualSlope, "3′, common practice for needles and cylindrical rollers, no source");

    public static readonly NumberDefinition<PlanetPinSpec> Cheek = Number("cheek", "t", "Length that bears in a cheek", Units.Millimetre).Stated(static s => s.Cheek);

    public static readonly NumberDefinition<PlanetPinSpec> CheekPressure = Number("cheek_pressure", "p", "Mean pressure in a cheek at the peak torque", Units.Megapascal)
        .By("straddled F_p/(2·d·t), overhung F_p/(d·t)", Closed).Scaled(1)
        .From(Held, Diameter, PeakForce, Cheek, static (held, d, force, cheek) => new PlanetPin(d).CheekPressure(OnCheek(held, force), cheek));

    public static readonly NumberDefinition<PlanetPinSpec> CheekYield =
        Number("cheek_yield", "R_e,c", "Yield of the carrier", Units.Megapascal).Stated(static s => s.CheekYield);

    public static readonly NumberDefinition<PlanetPinSpec> CheekRoom =
        Number("cheek_room", "", "Room that the gears of the planet leave between the cheeks", Units.Millimetre)
        .By("L − t − (z_1 − z_0), with the outer faces z_0 and z_1 of the gears on the planet", "geometry").Scaled(1)
        .When(static (s, subject) => IsStraddled(s) && s is { Span: not null, Cheek: not null } && HasPlaces(s, subject))
        .From(
            Span, Cheek, Each("gears", static () => GearQuantities.FaceWidth, "b"), Each("gears", static () => GearQuantities.AxialPosition, "z"),
            static (span, cheek, faces, places) => span - cheek
                - (places.Zip(faces, static (z, b) => z + b / 2).Max() - places.Zip(faces, static (z, b) => z - b / 2).Min()));

    public static readonly NumberDefinition<PlanetPinSpec> CheekHole =
        Number("cheek_hole", "D", "Hole of the cheek", Units.Millimetre).Stated(static s => s.CheekHole).Optional();

    // Of a fit the nominal size may lie outside both tolerances: the middle stands for it.
    public static readonly NumberDefinition<PlanetPinSpec> Overlap = Number("press_overlap", "d − D", "Overlap of pin and hole of the cheek", Units.Micrometre)
        .By("d − D", "ISO 286-1").Scaled(0.01)
        .Range(Diameter.Limits(), CheekHole.Limits(), static (pin, hole) => pin.Less(hole));

    /// <summary>The pins of all planet sets, in the order of the spec.</summary>
    internal static void AddAll(AnalysisContext context)
    {
        foreach (var spec in context.Spec.PlanetPins.Entries)
        {
            context.Begin(SubjectKinds.PlanetPin, $"planet_pins.{spec.Name.Value}", spec.Name.Span, spec)
                .InDuty(context)
                .RelateOptional("carrier", () => CarrierOf(spec, context))
                .RelateOptional("lubrication", () => context.Find(SubjectKinds.Lubrication, "lubrication"))
                .RelateAll("central", () => CentralOf(spec, context))
                .RelateAll("gears", () => GearsOf(spec, context).Select(gear => context.Find(SubjectKinds.Gear, $"gears.{gear.Name.Value}")!));
        }
    }

    private static IEnumerable<GearSpec> GearsOf(PlanetPinSpec pin, AnalysisContext context) =>
        context.Spec.Train?.Gears.Entries.Where(gear => gear.On.Value == pin.Planets.Value) ?? [];

    private static Subject? CarrierOf(PlanetPinSpec pin, AnalysisContext context) =>
        context.Spec.Train?.Planets.Find(pin.Planets.Value) is { } set ? context.Find(SubjectKinds.Body, $"bodies.{set.Carrier.Value}") : null;

    /// <summary>The meshes of the planet with gears that no planet carries.</summary>
    private static IEnumerable<Subject> CentralOf(PlanetPinSpec pin, AnalysisContext context)
    {
        var train = context.Spec.Train;
        return train?.Meshes.Where(mesh => mesh.Gears.Count(gear => On(gear.Value) == pin.Planets.Value) == 1
                && mesh.Gears.Any(gear => On(gear.Value) is { } on && train.Planets.Find(on) is null))
            .Select(mesh => context.Find(SubjectKinds.Mesh, $"meshes.{mesh.Gears[0].Value}~{mesh.Gears[1].Value}")).OfType<Subject>() ?? [];

        string? On(string gear) => train.Gears.Find(gear)?.On.Value;
    }

    private static bool HasPlaces(PlanetPinSpec pin, Subject subject) =>
        GearsOf(pin, subject.Context).ToArray() is { Length: > 0 } gears && Array.TrueForAll(gears, static gear => gear is { FaceWidth: not null, AxialPosition: not null });

    private static WebsOfCarrier? WebsOf(Subject subject)
    {
        var pin = (PlanetPinSpec)subject.Model;
        var carrier = subject.Context.Spec.Train?.Planets.Find(pin.Planets.Value)?.Carrier.Value;
        var id = carrier is null ? null : subject.Context.Spec.Train!.Bodies.Find(carrier)?.Material?.Value;
        var material = id is null ? null : subject.Context.Spec.Catalogue.Materials.Find(id);
        return pin.Webs is not { } webs ? null
            : new(webs, material is { ElasticModulus: { } modulus, PoissonRatio: { } poisson } ? new(modulus.Value.Coherent, poisson.Value) : new(SteelModulus, 0.3));
    }

    private static OrbitOfPlanet? RadiusOf(Subject subject) =>
        subject.Context.Forces?.RadiusOf(((PlanetPinSpec)subject.Model).Planets.Value) is { } radius ? new(radius) : null;

    private sealed record WebsOfCarrier(CarrierWebSpec Spec, Elastic Material);

    private sealed record OrbitOfPlanet(double Radius);

    private static bool IsStraddled(PlanetPinSpec spec) => spec.Held.Value == "straddled";

    private static double OnCheek(string held, double force) => held == "straddled" ? force / 2 : force;

    private static double BendingOfStraddled(double diameter, double bore, double force, double span, double width) =>
        new PlanetPin(diameter, bore).BendingStress(PlanetPin.StraddledMoment(force, span, width));

    private static double BendingOfOverhung(double diameter, double bore, double force, double gap, double width) =>
        new PlanetPin(diameter, bore).BendingStress(PlanetPin.OverhungMoment(force, gap, width));

    private static double OverReduced(double yield, double bending, double shear) => yield / Math.Sqrt(bending * bending + 3 * shear * shear);

    private static Quantity OfForces(Subject subject, QuantityKind kind, Func<TrainForces, string, double> read)
    {
        var planet = ((PlanetPinSpec)subject.Model).Planets.Value;
        if (subject.Context.Forces is not { } forces)
            return Quantity.NotEvaluated(kind, [], "train is not stated");
        return forces.Of(planet).Reasons is { Count: > 0 } reasons
            ? Quantity.NotEvaluated(kind, [], [.. reasons])
            : Quantity.Computed(kind, read(forces, planet), [subject.Reach("train")![TrainQuantities.InputTorque]]).With(["T_in"]);
    }

    /// <summary>Tooth forces of every plane as vectors, the planes in size: forces that pull apart in two planes bend the pin all the same.</summary>
    private static double InSize(BodyForces forces) => forces.TeethRadial.Concat(forces.TeethTangential)
        .GroupBy(load => Math.Round(load.Position))
        .Sum(plane => double.Hypot(plane.Sum(load => load.X), plane.Sum(load => load.Y)));
}
