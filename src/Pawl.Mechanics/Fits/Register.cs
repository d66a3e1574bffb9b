namespace Pawl.Mechanics.Fits;

/// <summary>How far a part can sit off centre in the play of what locates it. Clearances are of diameters, mm.</summary>
public static class Register
{
    /// <summary>Greatest eccentricity in a pilot (spigot), mm.</summary>
    /// <remarks>
    /// <code>e = C/2;  none where the pilot is tight</code>
    /// Symbols: C greatest clearance of the diameters, mm.<br/>
    /// Source: geometry.<br/>
    /// Valid for: one pilot that locates alone; screws in clearance holes centre nothing.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OfPilot(double clearance) => Math.Max(0, Guard.Number(clearance, "the clearance of the pilot", "mm")) / 2;

    /// <summary>Greatest eccentricity on two dowels, mm: how far a point of the part can move.</summary>
    /// <param name="firstClearance">Clearance C_1 of the first dowel, mm.</param>
    /// <param name="secondClearance">Clearance C_2 of the second dowel, mm.</param>
    /// <param name="distance">Distance L of the dowels, mm.</param>
    /// <param name="along">Place of the point along the line of the dowels from the first, mm.</param>
    /// <param name="aside">Distance of the point from that line, mm.</param>
    /// <remarks>
    /// <code>
    /// greatest of |u| with u = ( s − q·(β − α)/L, α + p·(β − α)/L ),  s² + α² ≤ (C_1/2)²,  s² + β² ≤ (C_2/2)²
    /// midway on the line: (C_1 + C_2)/4
    /// </code>
    /// Symbols: s common shift along the line, α, β shifts of the ends across it, p place along, q beside the line, mm.<br/>
    /// Source: kinematics of a rigid plate, small turns. |u| is convex, so both ends lie on their bounds; s is searched.<br/>
    /// Valid for: dowels that are all the location there is, holes where the drawing has them.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OnDowels(double firstClearance, double secondClearance, double distance, double along, double aside)
    {
        var (first, second) = (OfPilot(firstClearance), OfPilot(secondClearance));
        var span = Guard.Positive(distance, "the distance of the dowels");
        var (p, q) = (Guard.Finite(along, "the place of the centre") / span, Guard.Finite(aside, "the place of the centre") / span);
        var bound = Math.Min(first, second);

        double Move(double shift, int sign)
        {
            var alpha = Math.Sqrt(Math.Max(0, first * first - shift * shift));
            var beta = sign * Math.Sqrt(Math.Max(0, second * second - shift * shift));
            return double.Hypot(shift - q * (beta - alpha), alpha + p * (beta - alpha));
        }

        const int steps = 200;
        var greatest = 0.0;
        foreach (var sign in (ReadOnlySpan<int>)[1, -1])
        {
            var best = 0;
            for (var step = -steps; step <= steps; step++)
            {
                if (Move(bound * step / steps, sign) > Move(bound * best / steps, sign))
                    best = step;
            }

            var (low, high) = (bound * Math.Max(-steps, best - 1) / steps, bound * Math.Min(steps, best + 1) / steps);
            for (var round = 0; round < 80; round++)
            {
                var third = (high - low) / 3;
                if (Move(low + third, sign) < Move(high - third, sign))
                    low += third;
                else
                    high -= third;
            }

            greatest = Math.Max(greatest, Math.Max(Move((low + high) / 2, sign), Move(bound * best / steps, sign)));
        }

        return greatest;
    }
}
