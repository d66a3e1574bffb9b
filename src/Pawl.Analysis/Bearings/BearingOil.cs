using Pawl.Analysis.Core;
using Pawl.Analysis.Lubrication;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Bearings;

/// <summary>A bearing against the level of the oil.</summary>
public sealed class BearingOil : Section<BearingSpec>
{
    public static readonly NumberDefinition<BearingSpec> LevelOverElement =
        Number("level_over_element", "", "Height of the oil over the centre of the lowest rolling element", Units.Millimetre)
        .By("h + D_pw/2, h level over the axis", "closed form").Scaled(1)
        .Noted("of a horizontal unit at rest, bearings on the common axis")
        .When(static (s, subject) => subject.Context.Spec.Lubrication is { MountingPosition.Value: "horizontal", Supply: not { Value: "grease" } }
            && OilLevel.IsOnAxis(subject.Context, s.Shaft.Value) && OilLevel.IsOnAxis(subject.Context, s.Housing.Value))
        .From(Of("lubrication", static () => OilLevel.Level, "h"), BearingQuantities.PitchDiameter, static (level, pitch) => level + pitch / 2);
}
