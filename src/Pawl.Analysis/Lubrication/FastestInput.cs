namespace Pawl.Analysis.Lubrication;

/// <summary>The fastest that the input turns in duty or spectrum.</summary>
internal static class FastestInput
{
    /// <summary>The fastest, without sign.</summary>
    public static double Of(ReadOnlySpan<double> speeds)
    {
        var fastest = 0.0;
        foreach (var speed in speeds)
            fastest = Math.Max(fastest, Math.Abs(speed));
        return fastest;
    }
}
