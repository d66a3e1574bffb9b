using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Analysis.Gears;

/// <summary>What is known of a seat, spline or thread that is cut into the part of a gear.</summary>
public static class PartFeatureQuantities
{
    public static readonly QuantityKind Feature = new()
    {
        Name = "feature", Title = "What it is", ValueKind = ValueKind.Text, Certainty = Certainty.Declared,
    };

    public static readonly QuantityKind Hardness = new()
    {
        Name = "hardness", Title = "Hardness of its surface", Unit = Units.Vickers, Certainty = Certainty.Declared,
        Note = "converted to HV after ISO 18265, table A.1, where written in HRC or HBW",
    };

    public static readonly ImmutableArray<QuantityKind> All = [Feature, Hardness];
}

/// <summary>Seats, splines and threads of the parts that the gears are.</summary>
internal static class PartFeatureDraft
{
    public static void AddAll(Draft draft, GearDraft gear, Subject train)
    {
        if (gear.Spec.HeatTreatment is not { } heat)
            return;
        for (var i = 0; i < heat.Features.Length; i++)
        {
            var spec = heat.Features[i];
            var subject = draft.Begin(SubjectKinds.PartFeature, $"gears.{gear.Name}.features[{i}]", spec.Span)
                .Relate("train", train).Relate("gear", gear.Subject);
            subject.Add(Draft.Text(PartFeatureQuantities.Feature, spec.Feature, ""));
            subject.Add(MaterialDraft.Hardness(
                draft, PartFeatureQuantities.Hardness, spec.Hardness, $"train.gears.{gear.Name}.heat_treatment.features[{i}].hardness"));
        }
    }
}
