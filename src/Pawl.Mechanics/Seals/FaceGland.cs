namespace Pawl.Mechanics.Seals;

/// <summary>A gland in a face: a ring groove, closed by a flat part.</summary>
/// <param name="Depth">Depth of the groove h, mm.</param>
/// <param name="Gap">Gap between the faces, mm; zero where metal meets metal.</param>
/// <param name="Width">Width of the groove W, mm.</param>
/// <param name="Wall">Diameter of the wall that pressure pushes the ring against, mm: the outer wall with pressure inside, the
/// inner wall with pressure outside.</param>
/// <param name="PressureInside">Whether pressure comes from inside the ring.</param>
public sealed record FaceGland(Extent Depth, Extent Gap, Extent Width, Extent Wall, bool PressureInside)
{
    /// <summary>Least and greatest over all corners, in closed form.</summary>
    /// <remarks>
    /// <code>
    /// L = h + gap; pressure inside: the ring lies against the outer wall, compressed; outside: over the inner wall, stretched
    /// s_min: d₂ min, d₁ min, L_max, no credit for a thickened cord; s_max: d₂ max, d₁ max, L_min
    /// </code>
    /// Symbols: as <see cref="Gland"/>.<br/>
    /// Source: every term moves one way with every dimension.
    /// </remarks>
    public GlandExtremes Extremes(RingExtents ring, RubberService service)
    {
        var (inside, cord) = (ring.InsideDiameter.AboveZero("the inside diameter"), ring.Cord.AboveZero("the cord"));
        Width.AboveZero("the width of the groove");
        Gap.NotNegative("the gap between the faces");
        Depth.AboveZero("the depth of the groove");

        var height = new Extent(Depth.Least + Gap.Least, Depth.Greatest + Gap.Greatest);
        var thin = PressureInside ? cord.Least : Gland.StretchedCord(inside.Least, cord.Least, Wall.Greatest);
        var thick = PressureInside
            ? Gland.CompressedCord(inside.Greatest, cord.Greatest, Wall.Least)
            : Gland.StretchedCord(inside.Greatest, cord.Greatest, Wall.Least);
        return new GlandExtremes(
            height,
            new(Gland.SqueezeLength(thin, height.Greatest), Gland.SqueezeLength(thick, height.Least)),
            new(Gland.Squeeze(thin, height.Greatest), Gland.Squeeze(thick, height.Least)),
            new(Gland.Fill(thin, height.Greatest, Width.Greatest) * service.LeastGrowth,
                Gland.Fill(thick, height.Least, Width.Least) * service.GreatestGrowth),
            PressureInside
                ? null
                : new(Gland.Stretch(inside.Greatest, Wall.Least), Gland.Stretch(inside.Least, Wall.Greatest)),
            PressureInside
                ? new(Gland.Compression(inside.Least, cord.Least, Wall.Greatest),
                    Gland.Compression(inside.Greatest, cord.Greatest, Wall.Least))
                : null,
            Gap);
    }
}
