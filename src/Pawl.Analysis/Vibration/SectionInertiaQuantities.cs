using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Rating;
using Pawl.Mechanics.Rating;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;
using S = Pawl.Analysis.Shafts.ShaftSectionQuantities;

namespace Pawl.Analysis.Vibration;

/// <summary>What a section of a shaft adds to the inertia of its body; where the inertia of a machine is stated.</summary>
public sealed class SectionInertiaQuantities : Section<ShaftSectionSpec>
{
    public static readonly NumberDefinition<ShaftSectionSpec> UnderGears = Number("length_under_gears", "l_z", "Length under the teeth of gears", Units.Millimetre)
        .By("overlap of the section with the face widths of the gears of its body", "geometry")
        .Noted("there the gears count; at nominal places")
        .When(IsJudged)
        .Solved([], Reasons, static (s, subject) => Overlap(s, subject));

    public static readonly NumberDefinition<ShaftSectionSpec> Inertia =
        Number("moment_of_inertia", "J", "Moment of inertia of the section beside the gears", GearInertiaQuantities.KilogramSquareMillimetre)
        .By("J = (π/32)·ρ·(l − l_z)·(d⁴ − d_i⁴)", "closed form").Scaled(1)
        .When(IsJudged)
        .From(
            Of("shaft", static () => Shafts.ShaftQuantities.Density), S.Length, UnderGears, S.Outside, S.Bore,
            static (density, length, under, outside, bore) => length > under ? MeshResonance.Inertia(outside, bore, length - under, density) : 0);

    private static bool IsJudged(ShaftSectionSpec section, Subject subject) =>
        TorsionQuantities.IsAsked(subject.Context.Spec) && subject.Context.Spec.Train!.Fixed.All(held => held.Value != ShaftOf(subject).Body.Value);

    private static ShaftSpec ShaftOf(Subject section) => (ShaftSpec)section.Reach("shaft")!.Model;

    private static IEnumerable<GearBuilder> GearsOf(Subject section) =>
        section.Context.Train!.GearsOn(ShaftOf(section).Body.Value);

    private static ImmutableArray<string> Reasons(Subject section)
    {
        var reasons = ImmutableArray.CreateBuilder<string>();
        foreach (var gear in GearsOf(section))
        {
            if (TrainForces.PlaceOf(gear) is null)
                reasons.Add($"train.gears.{gear.Name}.axial_position is not stated");
            if (gear[GearQuantities.FaceWidth] is { IsEvaluated: false } width)
                reasons.AddRange(width.Reasons);
        }

        if (GearsOf(section).Any() && ShaftOf(section).From is null)
            reasons.Add($"shafts.{ShaftOf(section).Name.Value}.from is not stated");
        return reasons.ToImmutable();
    }

    private static double Overlap(ShaftSectionSpec spec, Subject section)
    {
        var shaft = ShaftOf(section);
        var start = shaft.From?.Value.Coherent ?? 0;
        foreach (var before in shaft.Sections.Entries.TakeWhile(each => each != spec))
            start += before.Length.Value.Coherent;
        var length = spec.Length.Value.Coherent;
        var under = 0.0;
        foreach (var gear in GearsOf(section))
        {
            var (middle, width) = (TrainForces.PlaceOf(gear)!.Value.Nominal, gear[GearQuantities.FaceWidth].Value.Nominal);
            under += Math.Max(0, Math.Min(start + length, middle + (width / 2)) - Math.Max(start, middle - (width / 2)));
        }

        return Math.Min(under, length);
    }
}
