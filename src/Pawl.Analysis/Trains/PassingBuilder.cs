using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Assembly;
using G = Pawl.Analysis.Gears.GearQuantities;
using K = Pawl.Analysis.Trains.PassingQuantities;

namespace Pawl.Analysis.Trains;

/// <summary>Pinions on planets beside central gears that they do not mesh with.</summary>
internal static class PassingBuilder
{
    public static void AddAll(AnalysisContext context, TrainBuilder train)
    {
        foreach (var pinion in train.Gears)
        {
            if (train.PlanetSet(pinion.Spec.On.Value) is not { } set || CentreOf(train, pinion) is not { } centre)
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

    private static Quantity? CentreOf(TrainBuilder train, GearBuilder pinion)
    {
        foreach (var mesh in train.Meshes)
        {
            if (train.PlanetOf(mesh.First, mesh.Second) == pinion.Spec.On.Value)
                return mesh[MeshQuantities.CentreDistance];
        }

        return null;
    }

    private static void Add(AnalysisContext context, TrainBuilder train, GearBuilder pinion, GearBuilder passed, Quantity centre)
    {
        var overlap = Derive.From(
            K.AxialOverlap, pinion[G.FaceWidth], pinion[G.AxialPosition], passed[G.FaceWidth], passed[G.AxialPosition],
            (b1, place1, b2, place2) => -new AxialSpan(place1, b1).GapTo(new(place2, b2)));
        if (overlap is { IsEvaluated: true, Value.Max: <= 0 } && !SameStage(train, pinion, passed))
            return;

        var s = context.Begin(SubjectKinds.Passing, $"passings.{pinion.Name}~{passed.Name}", pinion.Spec.Name.Span)
            .Relate("train", train.Subject).Relate("pinion", pinion.Subject).Relate("passed", passed.Subject);
        var ring = passed.IsInternal;
        s.Add(overlap);
        s.Add(Derive.From(
            K.Clearance, centre, pinion[G.TipDiameter], passed[G.TipDiameter],
            (a, own, other) => ring ? PassingClearance.Ring(a, own / 2, other / 2) : PassingClearance.Sun(a, own / 2, other / 2)));
    }

    private static bool SameStage(TrainBuilder train, GearBuilder pinion, GearBuilder passed)
    {
        var carrier = train.PlanetSet(pinion.Spec.On.Value)!.Carrier.Value;
        return train.Meshes.Any(mesh => mesh.MateOf(passed) is not null && train.CarrierOf(mesh) == carrier);
    }
}
