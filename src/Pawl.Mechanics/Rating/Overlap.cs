namespace Pawl.Mechanics.Rating;

/// <summary>How far a pair is on the way from spur to fully overlapping helical teeth.</summary>
internal static class Overlap
{
    /// <summary>The overlap ratio, but no more than 1.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double UpToOne(double overlapRatio) =>
        overlapRatio >= 0 && double.IsFinite(overlapRatio)
            ? Math.Min(overlapRatio, 1)
            : throw Guard.Because($"the overlap ratio must not be below zero; it is {overlapRatio:0.####}");

    /// <summary>The transverse contact ratio, if it keeps the teeth in contact.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Transverse(double transverseContactRatio) =>
        transverseContactRatio >= 1 && double.IsFinite(transverseContactRatio)
            ? transverseContactRatio
            : throw Guard.Because(
                $"the source covers transverse contact ratios of 1 and above; it is {transverseContactRatio:0.####}");
}
