namespace Pawl.Mechanics.Assembly;

/// <summary>Whether all meshes of planets on one pin circle ask for the same centre distance.</summary>
public static class Coaxiality
{
    /// <summary>Spread of the working centre distances that one pin circle must serve, mm.</summary>
    /// <remarks>
    /// <code>Δa = max|a_w| − min|a_w|</code>
    /// Symbols: a_w working centre distance of each mesh with a central gear, mm, of either sign for a ring; Δa in mm.<br/>
    /// Source: geometry, with the sign of ISO 21771.<br/>
    /// Valid for: meshes of planets on one circle.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Spread(ReadOnlySpan<double> workingCentreDistances)
    {
        Guard.Count(workingCentreDistances.Length, 1, "the number of centre distances");
        var (least, greatest) = (double.PositiveInfinity, 0.0);
        foreach (var distance in workingCentreDistances)
        {
            least = Math.Min(least, Math.Abs(Guard.Number(distance, "the centre distance", "mm")));
            greatest = Math.Max(greatest, Math.Abs(distance));
        }

        return greatest - least;
    }
}
