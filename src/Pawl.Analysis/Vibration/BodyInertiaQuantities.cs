using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Trains;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Vibration;

/// <summary>Inertia of a body that turns, and what of it the input feels; where the inertia of a machine is stated.</summary>
public sealed class BodyInertiaQuantities : Section<BodyInTrain>
{
    private const string EqualEnergy = "equal kinetic energy";

    public static readonly NumberDefinition<BodyInTrain> Count = Number("count", "N", "How many there are")
        .By("planets of the set; 1 of any other body", "the spec", Certainty.Declared)
        .When(IsJudged).Counted(static s => s.Set?.Count.Value ?? 1);

    public static readonly NumberDefinition<BodyInTrain> Inertia =
        Number("moment_of_inertia", "J", "Moment of inertia about its own axis", GearInertiaQuantities.KilogramSquareMillimetre)
        .By("as stated, else Σ J of its gears and of the sections of its shafts beside them", "closed form").Scaled(1)
        .Noted("gears as rims or solid discs; webs, pins and bearings left out").AsOne()
        .When(IsJudged)
        .Stated(static s => s.Spec?.Inertia)
        .For(HasParts).From(
            Each("body_gears", static () => GearInertiaQuantities.MomentOfInertia, "J_z"), Each("body_sections", static () => SectionInertiaQuantities.Inertia, "J_s"),
            static (gears, sections) => gears.Sum() + sections.Sum())
        .Otherwise(static s => $"train.bodies.{s.Name}.inertia is not stated, and {s.Name} has neither gears nor sections of a shaft");

    public static readonly NumberDefinition<BodyInTrain> PlanetMass = Number("planet_mass", "m", "Mass of one planet", Units.Kilogram)
        .When(IsPlanet).Found(static (s, _) => s.Set!.Mass, static s => $"train.planets.{s.Name}.mass");

    public static readonly NumberDefinition<BodyInTrain> OrbitRadius = Number("orbit_radius", "a", "Radius of the path of the planets", Units.Millimetre)
        .By("centre distance of a mesh with a central gear", "the spec")
        .When(IsPlanet).From(Of("central_mesh", static () => MeshQuantities.CentreDistance, "a_w"), static a => Math.Abs(a))
        .Otherwise(static s => $"no mesh of {s.Name} with a central gear tells where it stands");

    public static readonly NumberDefinition<BodyInTrain> Reduced =
        Number("reduced_inertia", "J_red", "Moment of inertia that the input feels", GearInertiaQuantities.KilogramSquareMillimetre)
        .By("J_red = J·(ω/ω_in)²; planets: N·(J·(ω/ω_in)² + m·a²·(ω_c/ω_in)²)", EqualEnergy).Scaled(1)
        .When(IsJudged)
        .For(static s => s.Set is not null).From(
            Count, Inertia, BodyQuantities.SpeedRatio, PlanetMass, OrbitRadius, Of("carrier", static () => BodyQuantities.SpeedRatio, "ω_c/ω_in"),
            static (count, inertia, speed, mass, radius, carrier) => TorsionalChain.Reduced((int)count, inertia, speed, mass, radius, carrier))
        .From(Inertia, BodyQuantities.SpeedRatio, static (inertia, speed) => TorsionalChain.Reduced(1, inertia, speed));

    /// <summary>The roles that the quantities above read.</summary>
    internal static void Relate(AnalysisContext context, Subject body)
    {
        var model = (BodyInTrain)body.Model;
        var train = context.Train!;
        body.RelateAll("body_gears", () => train.GearsOn(model.Name).Select(static gear => gear.Subject))
            .RelateAll("body_sections", () => context.Of(SubjectKinds.ShaftSection).Where(each => ((ShaftSpec)each.Reach("shaft")!.Model).Body.Value == model.Name));
        if (model.Set is not { } set)
            return;
        body.RelateOptional("carrier", () => context.Find(SubjectKinds.Body, $"bodies.{set.Carrier.Value}"))
            .RelateOptional("central_mesh", () => train.Meshes.FirstOrDefault(mesh => train.PlanetOf(mesh.First, mesh.Second) == model.Name)?.Subject);
    }

    internal static bool IsJudged(BodyInTrain body, Subject subject) =>
        TorsionQuantities.IsAsked(subject.Context.Spec) && subject.Context.Spec.Train!.Fixed.All(held => held.Value != body.Name);

    private static bool IsPlanet(BodyInTrain body, Subject subject) => body.Set is not null && IsJudged(body, subject);

    private static bool HasParts(BodyInTrain body, Subject subject) => subject.ReachAll("body_gears").Any() || subject.ReachAll("body_sections").Any();
}
