using Pawl.Analysis.Core;
using Pawl.Analysis.Rating;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Lubrication;

/// <summary>The fastest that the input turns in duty or spectrum.</summary>
internal static class FastestInput
{
    /// <summary>The rated speed, then those of the spectrum.</summary>
    public static ImmutableArray<Quantity> Speeds(Draft draft, Subject train) =>
    [
        train[T.InputSpeed],
        .. draft.Subjects.Where(subject => subject.Kind == SubjectKinds.LoadCase).Select(subject => subject[LoadCaseQuantities.Speed]),
    ];

    /// <summary>The fastest, without sign.</summary>
    public static double Of(ReadOnlySpan<double> speeds) => Of(speeds, speeds.Length);

    /// <summary>The fastest of the first <paramref name="count"/> values, without sign.</summary>
    public static double Of(ReadOnlySpan<double> values, int count)
    {
        var fastest = 0.0;
        foreach (var value in values[..count])
            fastest = Math.Max(fastest, Math.Abs(value));
        return fastest;
    }
}
