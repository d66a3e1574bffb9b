namespace Pawl.Mechanics.Seals;

/// <summary>A radial gland whose groove is in the plug.</summary>
/// <param name="Bore">Bore B, mm.</param>
/// <param name="Root">Diameter of the groove root G, mm.</param>
/// <param name="Plug">Diameter of the plug P beside the groove, mm.</param>
/// <param name="Width">Width of the groove W, mm.</param>
/// <param name="Guided">Eccentricity that another guide allows at the most, mm as a radius; none when the plug alone guides.</param>
/// <param name="RunOut">Run-out of the groove root against the plug, mm, full indicator reading.</param>
public sealed record PistonGland(
    Extent Bore, Extent Root, Extent Plug, Extent Width, double? Guided = null, double RunOut = 0)
{
    /// <summary>Least and greatest over all corners, in closed form.</summary>
    /// <remarks>
    /// <code>
    /// L_max = (B_max − G_min)/2 + e(B_max, P_min), L_min = (B_min − G_max)/2 − e(B, P_min) with B the bore least or, touching, any
    /// s_min: d₂ min, d₁ min, G_min, L_max; s_max: d₂ max, d₁ max, G_max, L_min
    /// </code>
    /// Symbols: as <see cref="Gland"/>. The root that makes the gland high also thins the cord, so one root serves both ends.<br/>
    /// Source: every term moves one way with every dimension. Only the fill may turn with the root, where it is small against the
    /// cord; its turning points are tried.
    /// </remarks>
    public GlandExtremes Extremes(RingExtents ring, RubberService service)
    {
        var (inside, cord) = (ring.InsideDiameter.AboveZero("the inside diameter"), ring.Cord.AboveZero("the cord"));
        Width.AboveZero("the width of the groove");

        double Open(double root) =>
            Gland.Height(Bore.Greatest, root, Gland.Eccentricity(Bore.Greatest, Plug.Least, Guided, RunOut));
        double Closed(double root) =>
            Gland.Height(Bore.Least, root, -Gland.Eccentricity(Bore.Least, Plug.Least, Guided, RunOut));
        double Thin(double root) => Gland.StretchedCord(inside.Least, cord.Least, root);
        double Thick(double root) => Gland.StretchedCord(inside.Greatest, cord.Greatest, root);

        // (G + d₂)·(2L₀ − G) is greatest half-way: there the gland is emptiest.
        var emptiest = (2 * Open(Root.Least) + Root.Least - cord.Least) / 2;
        return new GlandExtremes(
            new(Closed(Root.Greatest), Open(Root.Least)),
            new(Gland.SqueezeLength(Thin(Root.Least), Open(Root.Least)),
                Gland.SqueezeLength(Thick(Root.Greatest), Closed(Root.Greatest))),
            new(Gland.Squeeze(Thin(Root.Least), Open(Root.Least)), Gland.Squeeze(Thick(Root.Greatest), Closed(Root.Greatest))),
            new(GlandSearch.Least(Root, root => Gland.Fill(Thin(root), Open(root), Width.Greatest), emptiest) * service.LeastGrowth,
                GlandSearch.Greatest(Root, root => Gland.Fill(Thick(root), Closed(root), Width.Least), inside.Greatest)
                * service.GreatestGrowth),
            new(Gland.Stretch(inside.Greatest, Root.Least), Gland.Stretch(inside.Least, Root.Greatest)),
            null,
            new(Gland.ExtrusionGap(Bore.Least, Plug.Greatest, Guided), Gland.ExtrusionGap(Bore.Greatest, Plug.Least, Guided)));
    }
}
