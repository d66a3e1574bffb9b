using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Gears;

/// <summary>One gear, as meshes, planet sets and the rating need it.</summary>
internal sealed class GearDraft
{
    private GearDraft(GearSpec spec, Subject subject)
    {
        Spec = spec;
        Subject = subject;
        Sign = GearQuantities.IsInternal(spec) ? -1 : 1;
        Material = new(subject);
    }

    public GearSpec Spec { get; }

    public Subject Subject { get; }

    /// <summary>Its steel and treatment.</summary>
    public MaterialDraft Material { get; }

    public string Name => Spec.Name.Value;

    /// <summary>−1 for an internal gear: the sign that ISO 21771 gives its teeth and diameters.</summary>
    public int Sign { get; }

    public bool IsInternal => Sign < 0;

    /// <summary>Number of teeth with the sign of ISO 21771.</summary>
    public int SignedTeeth => Sign * Spec.Teeth.Value;

    public Quantity this[QuantityKind kind] => Subject[kind];

    public static GearDraft Build(Draft draft, GearSpec spec)
    {
        var gear = new GearDraft(
            spec, draft.Begin(SubjectKinds.Gear, $"gears.{spec.Name.Value}", spec.Name.Span, spec, $"train.gears.{spec.Name.Value}"));
        ToothDraft.Add(draft, gear);
        return gear;
    }
}
