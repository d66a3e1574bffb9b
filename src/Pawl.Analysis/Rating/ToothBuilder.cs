using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Mechanics.Rating;
using G = Pawl.Analysis.Gears.GearQuantities;
using K = Pawl.Analysis.Rating.ToothQuantities;

namespace Pawl.Analysis.Rating;

/// <summary>Accuracy of a gear, and the cutter of an internal one.</summary>
internal static class ToothBuilder
{
    public static void Add(AnalysisContext context, GearBuilder gear)
    {
        var (s, spec) = (gear.Subject, gear.Spec);
        var key = $"train.gears.{gear.Name}";
        s.Add(spec.AccuracyGrade is { } grade ? context.Number(K.AccuracyGrade, grade) : AnalysisContext.Missing(K.AccuracyGrade, $"{key}.accuracy_grade"));
        s.Add(spec.PitchDeviation is { } deviation
            ? context.Amount(K.PitchDeviation, deviation, "")
            : Derive.From(
                K.PitchDeviation, s[G.ReferenceDiameter], s[G.Module], s[K.AccuracyGrade],
                (d, module, grade) => FlankTolerance.SinglePitch(d, module, (int)grade)));
        if (gear.IsInternal && spec.Cutter is not null)
            Cutter(context, gear);
    }

    private static void Cutter(AnalysisContext context, GearBuilder gear)
    {
        var (s, cutter, z) = (gear.Subject, gear.Spec.Cutter!, gear.SignedTeeth);
        s.Add(context.Number(K.CutterTeeth, cutter.Teeth));
        s.Add(context.Amount(K.CutterTipDiameter, cutter.TipDiameter, ""));
        s.Add(context.Amount(K.CutterTipRadius, cutter.TipRadius, ""));
        s.Add(context.Number(K.CutterProfileShift, cutter.ProfileShift, 0, "0: a cutter without profile shift"));
        ImmutableArray<Quantity> inputs =
        [
            s[G.Teeth], s[G.Module], s[G.PressureAngle], s[G.ProfileShift], s[K.CutterTeeth], s[K.CutterTipDiameter], s[K.CutterTipRadius],
            s[K.CutterProfileShift],
        ];
        s.Add(Quantity.Compute(K.CutterRootDiameter, inputs, v => -Shaping(z, v).RootDiameter));
        s.Add(Quantity.Compute(K.CutterRootFormDiameter, inputs, v => -Shaping(z, v).FormDiameter));
        if (gear.Spec.RootDiameter is not null)
            s.Add(Derive.From(K.CutterRootDifference, s[G.RootDiameter], s[K.CutterRootDiameter], (stated, made) => Math.Abs(stated - made)));
    }

    private static RootShaping Shaping(int z, ReadOnlySpan<double> v) =>
        new(new(z, v[1], v[2], 0, v[3], z * v[1]), new((int)v[4], v[5], v[6], v[7]));
}
