using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Gears;

/// <summary>A seat, spline or thread that is cut into the part of a gear.</summary>
public sealed class PartFeatureQuantities : Section<PartFeatureSpec>
{
    public static readonly RowDefinition<PartFeatureSpec, string> Feature = Text("feature", "What it is")
        .OneOf("raceway", "seal-seat", "bearing-seat", "spline", "floating-spline", "thread").Stated(static s => s.Feature);

    public static readonly NumberDefinition<PartFeatureSpec> Hardness = Number("hardness", "", "Hardness of its surface", Units.Vickers).NeverNegative()
        .Noted("converted to HV after ISO 18265, table A.1, where written in HRC or HBW")
        .Custom(static subject => MaterialBuilder.Hardness(
            subject.Context, Hardness!, ((PartFeatureSpec)subject.Model).Hardness, $"{subject.Keys}.hardness"));

    internal static void AddAll(AnalysisContext context)
    {
        foreach (var gear in context.Train?.Gears ?? [])
        {
            for (var i = 0; i < (gear.Spec.HeatTreatment?.Features.Length ?? 0); i++)
            {
                var spec = gear.Spec.HeatTreatment!.Features[i];
                context.Begin(
                    SubjectKinds.PartFeature, $"gears.{gear.Name}.features[{i}]", spec.Span, spec,
                    $"train.gears.{gear.Name}.heat_treatment.features[{i}]")
                    .Relate("train", context.Train!.Subject).Relate("gear", gear.Subject);
            }
        }
    }
}
