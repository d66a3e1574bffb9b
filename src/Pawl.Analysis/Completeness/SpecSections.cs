using Pawl.Analysis.Core;

namespace Pawl.Analysis.Completeness;

/// <summary>The sections of a spec: which are stated, and which the product must have.</summary>
public sealed class SpecSections : Section<SectionInSpec>
{
    public static readonly TruthDefinition<SectionInSpec> Required = Truth("required", "Required of the product")
        .By("named under required_sections of the spec or of pawl.yaml", "the spec").Named(static s => s.Demand is not null);

    public static readonly RowDefinition<SectionInSpec, string> Statement = Text("statement", "What the spec says")
        .By("stated; none where the section is empty; not stated", "the spec")
        .Unless(static subject => Missing((SectionInSpec)subject.Model))
        .Named(static s => s.Statement);

    internal static void AddAll(AnalysisContext context)
    {
        var train = context.Find(SubjectKinds.Train, "train")!;
        foreach (var section in SectionInSpec.Of(context.Spec))
            context.Begin(SubjectKinds.SpecSection, $"sections.{section.Name}", section.Span, section, section.Name).Relate("train", train);
    }

    private static ImmutableArray<string> Missing(SectionInSpec section) => section.Demand is not { } demand || section.Statement == SectionInSpec.Stated
        ? []
        : [$"{demand.Span} requires `{section.Name}`, which {(section.Statement == SectionInSpec.None ? "is empty" : "is not stated")}"];
}
