using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Joints;

/// <summary>A layer of what a joint clamps, from the head on; under a central nut a ring.</summary>
public sealed class JointLayers : Section<ClampedLayerSpec>
{
    public static readonly NumberDefinition<ClampedLayerSpec> Thickness =
        Number("thickness", "l", "Thickness", Units.Millimetre).Stated(static s => s.Thickness);

    public static readonly NumberDefinition<ClampedLayerSpec> Modulus = Number("elastic_modulus", "E", "Modulus of elasticity", Units.Megapascal)
        .Custom(static subject => OfMaterial(
            subject, Modulus!, ((ClampedLayerSpec)subject.Model).Material, "elastic_modulus", static material => material.ElasticModulus));

    public static readonly NumberDefinition<ClampedLayerSpec> Expansion = Number("thermal_expansion", "α", "Thermal expansion", Units.PerKelvin)
        .Custom(static subject => OfMaterial(
            subject, Expansion!, ((ClampedLayerSpec)subject.Model).Material, "thermal_expansion", static material => material.ThermalExpansion));

    public static readonly NumberDefinition<ClampedLayerSpec> Outside = Number("outside", "D", "Outside diameter", Units.Millimetre).NeverNegative()
        .When(IsRing).Stated(static s => s.Outside);

    public static readonly NumberDefinition<ClampedLayerSpec> Inside = Number("inside", "d", "Inside diameter", Units.Millimetre)
        .When(IsRing).Stated(static s => s.Inside);

    public static readonly NumberDefinition<ClampedLayerSpec> LimitingPressure = Number("limiting_pressure", "p_G", "Limiting pressure", Units.Megapascal)
        .Custom(static subject =>
        {
            var spec = (ClampedLayerSpec)subject.Model;
            return subject.Context.Amount(
                LimitingPressure!, spec.LimitingPressure ?? subject.Context.Spec.Catalogue.Materials.Find(spec.Material.Value)?.LimitingPressure,
                $"{subject.Path}.limiting_pressure");
        });

    internal static Quantity OfMaterial(
        Subject subject, QuantityKind kind, Stated<string> id, string key, Func<MaterialSpec, Stated<Amount>?> property) =>
        subject.Context.Spec.Catalogue.Materials.Find(id.Value) is { } material
            ? subject.Context.Amount(kind, property(material), $"{key} of material {id.Value} in the catalogue")
            : Quantity.NotEvaluated(kind, [], $"no catalogue holds the material {id.Value}");

    private static bool IsRing(ClampedLayerSpec spec, Subject layer) => layer.Reach("joint") is { } joint && Joints.IsCentral((JointSpec)joint.Model);
}
