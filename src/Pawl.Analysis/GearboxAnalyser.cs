using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis;

/// <summary>Walks a spec and computes every quantity of every subject.</summary>
public static class GearboxAnalyser
{
    /// <summary>Pure: the same spec gives the same analysis.</summary>
    public static GearboxAnalysis Analyse(GearboxSpec spec) => Analyse(spec, SubjectKinds.All);

    /// <summary>Sections in any order: what they compute does not depend on it.</summary>
    internal static GearboxAnalysis Analyse(GearboxSpec spec, IEnumerable<SubjectKind> order)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var context = new AnalysisContext(spec);
        var subject = context.Begin(SubjectKinds.Train, "train", spec.Train?.Span ?? SourceSpan.Whole(spec.File), spec);
        var train = spec.Train is { } stated ? TrainBuilder.Build(context, stated, subject) : null;
        foreach (var kind in order)
            kind.AddAll?.Invoke(context);
        return new()
        {
            Spec = context.Spec,
            Subjects = [.. context.Subjects.OrderBy(subject => SubjectKinds.All.IndexOf(subject.Kind))],
            Topology = train?.Topology ?? "",
            Context = context,
        };
    }
}
