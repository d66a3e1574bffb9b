using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Assembly;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using G = Pawl.Analysis.Gears.GearQuantities;

namespace Pawl.Analysis.Trains;

/// <summary>A pinion on a planet and a central gear that it does not mesh with.</summary>
public sealed record PassingPair(GearSpec Pinion, GearSpec Passed);

/// <summary>A pinion beside a central gear that it does not mesh with.</summary>
public sealed class PassingQuantities : Section<PassingPair>
{
    public static readonly NumberDefinition<PassingPair> AxialOverlap =
        Number("axial_overlap", "", "Axial overlap of pinion and gear", Units.Millimetre)
        .By("b_overlap = (b_1 + b_2)/2 − |place_1 − place_2|; positive: they share a plane", "closed form").Scaled(1)
        .From(
            Of("pinion", static () => G.FaceWidth, "b_1"), Of("pinion", static () => G.AxialPosition, "place_1"), Of("passed", static () => G.FaceWidth, "b_2"),
            Of("passed", static () => G.AxialPosition, "place_2"), static (b1, place1, b2, place2) => -new AxialSpan(place1, b1).GapTo(new(place2, b2)));

    public static readonly NumberDefinition<PassingPair> Clearance =
        Number("passing_clearance", "c_p", "Clearance of the pinion as it passes, tip to tip", Units.Millimetre)
        .By("c_p = a − r_a,pinion − r_a,gear (ring: r_a,ring − a − r_a,pinion)", "closed form")
        .From(
            OfRow("passed", static () => G.Kind), Of("centre", static () => MeshQuantities.CentreDistance, "a"), Of("pinion", static () => G.TipDiameter, "d_a1"),
            Of("passed", static () => G.TipDiameter, "d_a2"), static (kind, a, own, other) =>
                kind == G.Internal ? PassingClearance.Ring(a, own / 2, other / 2) : PassingClearance.Sun(a, own / 2, other / 2));

    internal static void AddAll(AnalysisContext context)
    {
        if (context.Train is not { } train)
            return;
        foreach (var pinion in train.Gears)
        {
            if (train.PlanetSet(pinion.Spec.On.Value) is null || CentreOf(train, pinion) is not { } centre)
                continue;
            foreach (var passed in train.Gears)
            {
                if (IsCentral(train, passed) && !train.Meshes.Any(mesh => mesh.MateOf(pinion) == passed))
                    Add(context, train, pinion, passed, centre);
            }
        }
    }

    /// <summary>A gear about the common axis: on a body that is no planet and meshes with one.</summary>
    private static bool IsCentral(TrainBuilder train, GearBuilder gear) =>
        train.PlanetSet(gear.Spec.On.Value) is null
        && train.Meshes.Any(mesh => mesh.MateOf(gear) is { } mate && train.PlanetSet(mate.Spec.On.Value) is not null);

    private static MeshBuilder? CentreOf(TrainBuilder train, GearBuilder pinion) =>
        train.Meshes.FirstOrDefault(mesh => train.PlanetOf(mesh.First, mesh.Second) == pinion.Spec.On.Value);

    private static void Add(AnalysisContext context, TrainBuilder train, GearBuilder pinion, GearBuilder passed, MeshBuilder centre)
    {
        var subject = context.Make(SubjectKinds.Passing, $"passings.{pinion.Name}~{passed.Name}", pinion.Spec.Name.Span, new PassingPair(pinion.Spec, passed.Spec))
            .Relate("train", train.Subject).Relate("pinion", pinion.Subject).Relate("passed", passed.Subject).RelateOptional("centre", () => centre.Subject);
        if (subject[AxialOverlap] is not { IsEvaluated: true, Value.Max: <= 0 } || SameStage(train, pinion, passed))
            context.Register(subject);
    }

    private static bool SameStage(TrainBuilder train, GearBuilder pinion, GearBuilder passed)
    {
        var carrier = train.PlanetSet(pinion.Spec.On.Value)!.Carrier.Value;
        return train.Meshes.Any(mesh => mesh.MateOf(passed) is not null && train.CarrierOf(mesh) == carrier);
    }
}
