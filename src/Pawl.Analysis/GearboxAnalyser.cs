using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Interfaces;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Shafts;
using Pawl.Analysis.Trains;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis;

/// <summary>Walks a spec and computes every quantity of every subject.</summary>
public static class GearboxAnalyser
{
    /// <summary>Pure: the same spec gives the same analysis.</summary>
    public static GearboxAnalysis Analyse(GearboxSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var draft = new Draft(spec);
        var subject = draft.Begin(SubjectKinds.Train, "train", spec.Train?.Span ?? SourceSpan.Whole(spec.File));
        if (spec.Train is null)
        {
            foreach (var kind in SubjectKinds.Train.Quantities)
                subject.Add(Quantity.NotEvaluated(kind, [], "train is not stated"));
            TrainDraft.AddOil(draft, subject);
            return Finish(draft, "");
        }

        var train = TrainDraft.Build(draft, spec.Train, subject);
        draft.Forces = new(() => TrainForces.Build(draft, spec.Train, train));
        TrainResults.Add(draft, spec.Train, train);
        var bodies = draft.Subjects.Where(each => each.Kind == SubjectKinds.Body)
            .ToDictionary(each => each.Path["bodies.".Length..], StringComparer.Ordinal);
        RatingDraft.Add(draft, spec.Train, train);
        PlanetSetDraft.AddAll(draft, spec.Train, train, bodies);
        PassingDraft.AddAll(draft, train);
        foreach (var gear in train.Gears)
        {
            gear.Subject.Relate("train", subject).Relate("body", bodies[gear.Spec.On.Value]);
            PartFeatureQuantities.AddAll(draft, gear, subject);
        }

        var held = BearingDraft.AddAll(draft, spec.Train, train, bodies);
        ShaftDraft.AddAll(draft, spec.Train, train, held, bodies);
        InterfaceDraft.AddAll(draft, train, bodies);
        return Finish(draft, train.Topology);
    }

    private static GearboxAnalysis Finish(Draft draft, string topology)
    {
        foreach (var kind in SubjectKinds.All)
            kind.AddAll?.Invoke(draft);
        return new()
        {
            Spec = draft.Spec,
            Subjects = [.. draft.Subjects.OrderBy(subject => SubjectKinds.All.IndexOf(subject.Kind))],
            Topology = topology,
            Draft = draft,
        };
    }
}
