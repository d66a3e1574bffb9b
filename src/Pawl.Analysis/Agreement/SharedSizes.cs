using Pawl.Analysis.Core;
using Pawl.Quantities;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Agreement;

/// <summary>What two sections state of one size.</summary>
public sealed class SharedSizes : Section<SharedSize>
{
    // A size in inches and one in millimetres are the same when no gauge tells them apart.
    internal const double Same = 1e-6;

    public static readonly NumberDefinition<SharedSize> First =
        Number("first", "D_1", "Size as the one section states it", Units.Millimetre).Stated(static s => s.First);

    public static readonly NumberDefinition<SharedSize> Second =
        Number("second", "D_2", "Size as the other section states it", Units.Millimetre).Stated(static s => s.Second);

    public static readonly NumberDefinition<SharedSize> Difference = Number("difference", "Δ", "Difference of the nominal sizes", Units.Millimetre)
        .By("Δ = D_1 − D_2, nominal", "closed form").Scaled(1)
        .Range(First.Limits(), Second.Limits(), static (first, second) => Extent.Exactly(Rounded(first.Nominal - second.Nominal)));

    public static readonly NumberDefinition<SharedSize> LimitsDifference =
        Number("limits_difference", "Δ_lim", "Difference of the limits of one nominal size", Units.Millimetre)
        .By("the greater of |D_1,max − D_2,max| and |D_1,min − D_2,min|", "closed form").Scaled(0.01)
        .When(static s => s.HasLimits)
        .Range(First.Limits(), Second.Limits(), static (first, second) =>
            Extent.Exactly(Rounded(Math.Max(Math.Abs(first.Max - second.Max), Math.Abs(first.Min - second.Min)))));

    internal static void AddAll(AnalysisContext context)
    {
        var train = context.Find(SubjectKinds.Train, "train")!;
        foreach (var pair in SharedSize.Of(context.Spec))
            context.Begin(SubjectKinds.SharedSize, $"{pair.FirstKey}~{pair.SecondKey}", pair.First.Span, pair).Relate("train", train);
    }

    private static double Rounded(double difference) => Math.Abs(difference) < Same ? 0 : difference;
}
