using Pawl.Analysis.Core;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Gears;

/// <summary>One gear, as meshes, planet sets and the rating need it.</summary>
internal sealed class GearBuilder
{
    private GearBuilder(GearSpec spec, Subject subject)
    {
        Spec = spec;
        Subject = subject;
        Sign = GearQuantities.IsInternal(spec) ? -1 : 1;
        Material = new(subject);
    }

    public GearSpec Spec { get; }

    public Subject Subject { get; }

    /// <summary>Its steel and treatment.</summary>
    public MaterialBuilder Material { get; }

    public string Name => Spec.Name.Value;

    /// <summary>−1 for an internal gear: the sign that ISO 21771 gives its teeth and diameters.</summary>
    public int Sign { get; }

    public bool IsInternal => Sign < 0;

    public Quantity this[QuantityKind kind] => Subject[kind];

    public static GearBuilder Build(AnalysisContext context, GearSpec spec) => new(
        spec, context.Begin(SubjectKinds.Gear, $"gears.{spec.Name.Value}", spec.Name.Span, spec, $"train.gears.{spec.Name.Value}")
            .Relate("train", () => context.Find(SubjectKinds.Train, "train"))
            .Relate("body", () => context.Find(SubjectKinds.Body, $"bodies.{spec.On.Value}"))
            .RelateAll("body_gears", () => context.Spec.Train!.Gears.Entries.Where(each => each.On.Value == spec.On.Value)
                .Select(each => context.Find(SubjectKinds.Gear, $"gears.{each.Name.Value}")!)));
}
