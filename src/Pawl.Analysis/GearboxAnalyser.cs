using Pawl.Analysis.Gears;
using Pawl.Analysis.Rating;
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
        var context = new AnalysisContext(spec);
        var subject = context.Begin(SubjectKinds.Train, "train", spec.Train?.Span ?? SourceSpan.Whole(spec.File), spec);
        if (spec.Train is null)
        {
            return Finish(context, "");
        }

        LoadCaseQuantities.AddAll(context, subject);
        var train = TrainBuilder.Build(context, spec.Train, subject);
        BodyQuantities.AddAll(context, train);
        var bodies = context.Subjects.Where(each => each.Kind == SubjectKinds.Body)
            .ToDictionary(each => each.Path["bodies.".Length..], StringComparer.Ordinal);
        foreach (var mesh in train.Meshes)
            MeshCaseQuantities.AddAll(context, mesh.Subject);
        foreach (var gear in train.Gears)
        {
            gear.Subject.Relate("train", subject).Relate("body", bodies[gear.Spec.On.Value]);
            PartFeatureQuantities.AddAll(context, gear, subject);
        }

        return Finish(context, train.Topology);
    }

    private static GearboxAnalysis Finish(AnalysisContext context, string topology)
    {
        foreach (var kind in SubjectKinds.All)
            kind.AddAll?.Invoke(context);
        return new()
        {
            Spec = context.Spec,
            Subjects = [.. context.Subjects.OrderBy(subject => SubjectKinds.All.IndexOf(subject.Kind))],
            Topology = topology,
            Context = context,
        };
    }
}
