namespace Pawl.Mechanics.Seals;

/// <summary>A radial gland whose groove is in the bore.</summary>
/// <param name="Groove">Diameter of the groove G, mm.</param>
/// <param name="Rod">Diameter of the rod R, mm.</param>
/// <param name="Bore">Bore B beside the groove, mm.</param>
/// <param name="Width">Width of the groove W, mm.</param>
/// <param name="Guided">Eccentricity that another guide allows at the most, mm as a radius; none when the bore alone guides.</param>
/// <param name="RunOut">Run-out of the groove against the bore, mm, full indicator reading.</param>
public sealed record RodGland(
    Extent Groove, Extent Rod, Extent Bore, Extent Width, double? Guided = null, double RunOut = 0)
{
    /// <summary>Least and greatest over all corners, in closed form.</summary>
    /// <remarks>
    /// <code>
    /// L_max = (G_max − R_min)/2 + e(B_max, R_min), L_min = (G_min − R)/2 − e(B_max, R)
    /// s_min: d₂ min, d₁ min, R_min, L_max, no credit for a thickened cord; s_max: d₂ max, d₁ max, G_min
    /// </code>
    /// Symbols: as <see cref="Gland"/>.<br/>
    /// Source: every term moves one way with every dimension but the rod, which both closes the gland and, by stretch, thins the
    /// cord; the places where it turns are tried.
    /// </remarks>
    public GlandExtremes Extremes(RingExtents ring, RubberService service)
    {
        var (inside, cord) = (ring.InsideDiameter.AboveZero("the inside diameter"), ring.Cord.AboveZero("the cord"));
        Width.AboveZero("the width of the groove");

        double Open(double rod) =>
            Gland.Height(Groove.Greatest, rod, Gland.Eccentricity(Bore.Greatest, rod, Guided, RunOut));
        double Closed(double rod) =>
            Gland.Height(Groove.Least, rod, -Gland.Eccentricity(Bore.Greatest, rod, Guided, RunOut));
        double Thin(double rod) => Gland.StretchedCord(inside.Least, cord.Least, rod);
        double Thick(double rod) => Gland.CordOnRod(inside.Greatest, cord.Greatest, rod, Groove.Least);

        var clearanceUsed = Bore.Greatest - 2 * (Guided ?? 0);
        double[] turns = [clearanceUsed, inside.Greatest];
        var openAtRod = Open(Rod.Least);
        double[] emptiest =
        [
            clearanceUsed,
            inside.Least,
            (openAtRod + Rod.Least - cord.Least) / 2,
            (2 * openAtRod + Rod.Least - cord.Least) / 2,
        ];
        return new GlandExtremes(
            new(GlandSearch.Least(Rod, Closed, turns), openAtRod),
            new(Gland.SqueezeLength(Thin(Rod.Least), openAtRod),
                GlandSearch.Greatest(Rod, rod => Gland.SqueezeLength(Thick(rod), Closed(rod)), turns)),
            new(Gland.Squeeze(Thin(Rod.Least), openAtRod),
                GlandSearch.Greatest(Rod, rod => Gland.Squeeze(Thick(rod), Closed(rod)), turns)),
            new(GlandSearch.Least(Rod, rod => Gland.Fill(Thin(rod), Open(rod), Width.Greatest), emptiest) * service.LeastGrowth,
                GlandSearch.Greatest(Rod, rod => Gland.Fill(Thick(rod), Closed(rod), Width.Least), turns) * service.GreatestGrowth),
            new(Gland.Stretch(inside.Greatest, Rod.Least), Gland.Stretch(inside.Least, Rod.Greatest)),
            new(Gland.Compression(inside.Least, cord.Least, Groove.Greatest),
                Gland.Compression(inside.Greatest, cord.Greatest, Groove.Least)),
            new(Gland.ExtrusionGap(Bore.Least, Rod.Greatest, Guided), Gland.ExtrusionGap(Bore.Greatest, Rod.Least, Guided)));
    }
}
