namespace Pawl.Mechanics.Seals;

/// <summary>A radial gland whose groove is in the bore.</summary>
/// <param name="Groove">Diameter of the groove G, mm.</param>
/// <param name="Rod">Diameter of the rod R, mm.</param>
/// <param name="Bore">Bore B beside the groove, mm.</param>
/// <param name="Width">Width of the groove W, mm.</param>
/// <param name="Guided">Eccentricity that another guide allows at the most, mm as a radius; none when the bore alone guides.</param>
/// <param name="RunOut">Run-out of the groove against the bore, mm, full indicator reading.</param>
public sealed record RodGland(
    Interval Groove, Interval Rod, Interval Bore, Interval Width, double? Guided = null, double RunOut = 0)
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
            Gland.Height(Groove.Max, rod, Gland.Eccentricity(Bore.Max, rod, Guided, RunOut));
        double Closed(double rod) =>
            Gland.Height(Groove.Min, rod, -Gland.Eccentricity(Bore.Max, rod, Guided, RunOut));
        double Thin(double rod) => Gland.StretchedCord(inside.Min, cord.Min, rod);
        double Thick(double rod) => Gland.CordOnRod(inside.Max, cord.Max, rod, Groove.Min);

        var clearanceUsed = Bore.Max - 2 * (Guided ?? 0);
        double[] turns = [clearanceUsed, inside.Max];
        var openAtRod = Open(Rod.Min);
        double[] emptiest =
        [
            clearanceUsed,
            inside.Min,
            (openAtRod + Rod.Min - cord.Min) / 2,
            (2 * openAtRod + Rod.Min - cord.Min) / 2,
        ];
        return new GlandExtremes(
            new(GlandSearch.Min(Rod, Closed, turns), openAtRod),
            new(Gland.SqueezeLength(Thin(Rod.Min), openAtRod),
                GlandSearch.Max(Rod, rod => Gland.SqueezeLength(Thick(rod), Closed(rod)), turns)),
            new(Gland.Squeeze(Thin(Rod.Min), openAtRod),
                GlandSearch.Max(Rod, rod => Gland.Squeeze(Thick(rod), Closed(rod)), turns)),
            new(GlandSearch.Min(Rod, rod => Gland.Fill(Thin(rod), Open(rod), Width.Max), emptiest) * service.MinGrowth,
                GlandSearch.Max(Rod, rod => Gland.Fill(Thick(rod), Closed(rod), Width.Min), turns) * service.MaxGrowth),
            new(Gland.Stretch(inside.Max, Rod.Min), Gland.Stretch(inside.Min, Rod.Max)),
            new(Gland.Compression(inside.Min, cord.Min, Groove.Max),
                Gland.Compression(inside.Max, cord.Max, Groove.Min)),
            new(Gland.ExtrusionGap(Bore.Min, Rod.Max, Guided), Gland.ExtrusionGap(Bore.Max, Rod.Min, Guided)));
    }
}
