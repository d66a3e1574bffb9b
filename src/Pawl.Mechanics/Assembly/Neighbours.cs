namespace Pawl.Mechanics.Assembly;

/// <summary>The outline of one gear of a planet group: a disc at its place on the carrier.</summary>
/// <param name="Body">Planet body that the gear belongs to; gears of one body turn on one pin.</param>
/// <param name="CentreRadius">Distance of the pin from the carrier axis, mm.</param>
/// <param name="Place">Angle from the reference of the group to the pin, rad.</param>
/// <param name="TipRadius">Greatest tip radius, mm.</param>
/// <param name="Span">Where it lies along the axis; none means that it may meet every other.</param>
public readonly record struct PlanetDisc(
    int Body, double CentreRadius, double Place, double TipRadius, AxialSpan? Span = null);

/// <summary>The tightest pair of planet discs.</summary>
/// <param name="FirstPlanet">Index of the group on the carrier.</param>
/// <param name="FirstDisc">Index of the disc in its group.</param>
/// <param name="SecondPlanet">Index of the other group.</param>
/// <param name="SecondDisc">Index of the other disc.</param>
/// <param name="Clearance">Clearance between the tips, mm; negative where they cross.</param>
public readonly record struct TightestNeighbours(
    int FirstPlanet, int FirstDisc, int SecondPlanet, int SecondDisc, double Clearance);

/// <summary>Clearances between the planets of one carrier.</summary>
public static class Neighbours
{
    // Half a nanometre: a clearance exactly as required is one that fits.
    private const double Exactly = 5e-7;

    /// <summary>Greatest number of equally spaced equal planets on one circle with at least a required clearance.</summary>
    /// <remarks>
    /// <code>N = ⌊π / asin( (d_a + c)/(2·a) )⌋</code>
    /// Symbols: d_a tip diameter, mm; c least clearance, mm; a centre distance from the carrier axis, mm.<br/>
    /// Source: chord between two planets, c = 2·a·sin(π/N) − d_a, solved for the number.<br/>
    /// Valid for: d_a + c > 0; a planet with no room for an opposite one gives 1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static int MaxNumberOnCircle(double centreDistance, double tipDiameter, double leastClearance)
    {
        Guard.Positive(centreDistance, "the centre distance", "mm");
        Guard.Positive(Guard.NotNegative(tipDiameter, "the tip diameter", "mm") + leastClearance, "the tip diameter with its clearance", "mm");
        var sine = (tipDiameter + leastClearance - Exactly) / (2 * centreDistance);
        return sine > 1 ? 1 : (int)Math.Floor(Math.PI / Math.Asin(Math.Max(sine, 1e-9)));
    }

    /// <summary>The tightest pair of discs of a carrier, in one group or in two; none when no two discs can meet.</summary>
    /// <remarks>
    /// <code>c = √( r_1² + r_2² − 2·r_1·r_2·cos φ ) − r_a1 − r_a2</code>
    /// Symbols: r distance of a pin from the carrier axis, mm; φ angle between the pins, rad; r_a tip radius, mm; c in mm.<br/>
    /// Source: cosine rule.<br/>
    /// Valid for: discs that share some width of the axis; gears of one body and gears that mesh are left out.
    /// </remarks>
    /// <param name="discs">The discs of one group.</param>
    /// <param name="positions">Position of each group, rad.</param>
    /// <param name="meshing">Pairs of discs of a group that mesh with each other and so cross on purpose.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static TightestNeighbours? Tightest(
        ReadOnlySpan<PlanetDisc> discs, ReadOnlySpan<double> positions, ReadOnlySpan<(int First, int Second)> meshing = default)
    {
        TightestNeighbours? tightest = null;
        for (var planet = 0; planet < positions.Length; planet++)
        {
            for (var other = planet; other < positions.Length; other++)
            {
                for (var disc = 0; disc < discs.Length; disc++)
                {
                    for (var next = planet == other ? disc + 1 : 0; next < discs.Length; next++)
                    {
                        if (planet == other && !MayCollideInGroup(discs, disc, next, meshing)
                            || !ShareWidth(discs[disc], discs[next]))
                        {
                            continue;
                        }

                        var clearance = Clearance(discs[disc], positions[planet], discs[next], positions[other]);
                        if (tightest is not { } known || clearance < known.Clearance)
                        {
                            tightest = new(planet, disc, other, next, clearance);
                        }
                    }
                }
            }
        }

        return tightest;
    }

    /// <summary>Greatest number of equally spaced groups with a required clearance; 0 when one does not clear itself.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static int MaxNumber(
        ReadOnlySpan<PlanetDisc> discs, double leastClearance, ReadOnlySpan<(int First, int Second)> meshing = default)
    {
        Guard.Count(discs.Length, 1, "the number of planet gears");
        var most = int.MaxValue;
        foreach (var disc in discs)
        {
            most = Math.Min(most, MaxNumberOnCircle(disc.CentreRadius, 2 * disc.TipRadius, leastClearance));
        }

        // Interleaved chains need not get worse with every planet more, so the search comes down from the bound.
        for (var planets = most; planets >= 1; planets--)
        {
            var tightest = Tightest(discs, PlanetPositions.Equal(planets).Angles.AsSpan(), meshing);
            if (tightest is not { } found || found.Clearance >= leastClearance - Exactly)
            {
                return planets;
            }
        }

        return 0;
    }

    private static double Clearance(PlanetDisc first, double firstPosition, PlanetDisc second, double secondPosition)
    {
        var angle = secondPosition + second.Place - firstPosition - first.Place;
        return Distance(first.CentreRadius, second.CentreRadius, angle) - first.TipRadius - second.TipRadius;
    }

    // In this form of the cosine rule nothing cancels when the pins are near each other.
    internal static double Distance(double firstRadius, double secondRadius, double angle)
    {
        var radial = firstRadius - secondRadius;
        var half = Math.Sin(angle / 2);
        return Guard.Finite(Math.Sqrt(radial * radial + 4 * firstRadius * secondRadius * half * half), "the distance of two pins");
    }

    private static bool ShareWidth(PlanetDisc first, PlanetDisc second) =>
        first.Span is not { } one || second.Span is not { } two || one.GapTo(two) < 0;

    private static bool MayCollideInGroup(
        ReadOnlySpan<PlanetDisc> discs, int first, int second, ReadOnlySpan<(int First, int Second)> meshing)
    {
        if (discs[first].Body == discs[second].Body)
        {
            return false;
        }

        foreach (var pair in meshing)
        {
            if (pair == (first, second) || pair == (second, first))
            {
                return false;
            }
        }

        return true;
    }
}
