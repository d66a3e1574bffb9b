namespace Pawl.Mechanics.Seals;

/// <summary>A radial gland whose groove is in the plug.</summary>
/// <param name="Bore">Bore B, mm.</param>
/// <param name="Root">Diameter of the groove root G, mm.</param>
/// <param name="Plug">Diameter of the plug P beside the groove, mm.</param>
/// <param name="Width">Width of the groove W, mm.</param>
/// <param name="Guided">Eccentricity that another guide allows at the most, mm as a radius; none when the plug alone guides.</param>
/// <param name="RunOut">Run-out of the groove root against the plug, mm, full indicator reading.</param>
public sealed record PistonGland(
    Interval Bore, Interval Root, Interval Plug, Interval Width, double? Guided = null, double RunOut = 0)
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
            Gland.Height(Bore.Max, root, Gland.Eccentricity(Bore.Max, Plug.Min, Guided, RunOut));
        double Closed(double root) =>
            Gland.Height(Bore.Min, root, -Gland.Eccentricity(Bore.Min, Plug.Min, Guided, RunOut));
        double Thin(double root) => Gland.StretchedCord(inside.Min, cord.Min, root);
        double Thick(double root) => Gland.StretchedCord(inside.Max, cord.Max, root);

        // (G + d₂)·(2L₀ − G) is greatest half-way: there the gland is emptiest.
        var emptiest = (2 * Open(Root.Min) + Root.Min - cord.Min) / 2;
        return new GlandExtremes(
            new(Closed(Root.Max), Open(Root.Min)),
            new(Gland.SqueezeLength(Thin(Root.Min), Open(Root.Min)),
                Gland.SqueezeLength(Thick(Root.Max), Closed(Root.Max))),
            new(Gland.Squeeze(Thin(Root.Min), Open(Root.Min)), Gland.Squeeze(Thick(Root.Max), Closed(Root.Max))),
            new(GlandSearch.Min(Root, root => Gland.Fill(Thin(root), Open(root), Width.Max), emptiest) * service.MinGrowth,
                GlandSearch.Max(Root, root => Gland.Fill(Thick(root), Closed(root), Width.Min), inside.Max)
                * service.MaxGrowth),
            new(Gland.Stretch(inside.Max, Root.Min), Gland.Stretch(inside.Min, Root.Max)),
            null,
            new(Gland.ExtrusionGap(Bore.Min, Plug.Max, Guided), Gland.ExtrusionGap(Bore.Max, Plug.Min, Guided)));
    }
}
