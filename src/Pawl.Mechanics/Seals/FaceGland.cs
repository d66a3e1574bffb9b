namespace Pawl.Mechanics.Seals;

/// <summary>A gland in a face: a ring groove, closed by a flat part.</summary>
/// <param name="Depth">Depth of the groove h, mm.</param>
/// <param name="Gap">Gap between the faces, mm; zero where metal meets metal.</param>
/// <param name="Width">Width of the groove W, mm.</param>
/// <param name="Wall">Diameter of the wall that pressure pushes the ring against, mm: the outer wall with pressure inside, the
/// inner wall with pressure outside.</param>
/// <param name="PressureInside">Whether pressure comes from inside the ring.</param>
public sealed record FaceGland(Interval Depth, Interval Gap, Interval Width, Interval Wall, bool PressureInside)
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

        var height = new Interval(Depth.Min + Gap.Min, Depth.Max + Gap.Max);
        var thin = PressureInside ? cord.Min : Gland.StretchedCord(inside.Min, cord.Min, Wall.Max);
        var thick = PressureInside
            ? Gland.CompressedCord(inside.Max, cord.Max, Wall.Min)
            : Gland.StretchedCord(inside.Max, cord.Max, Wall.Min);
        return new GlandExtremes(
            height,
            new(Gland.SqueezeLength(thin, height.Max), Gland.SqueezeLength(thick, height.Min)),
            new(Gland.Squeeze(thin, height.Max), Gland.Squeeze(thick, height.Min)),
            new(Gland.Fill(thin, height.Max, Width.Max) * service.MinGrowth,
                Gland.Fill(thick, height.Min, Width.Min) * service.MaxGrowth),
            PressureInside
                ? null
                : new(Gland.Stretch(inside.Max, Wall.Min), Gland.Stretch(inside.Min, Wall.Max)),
            PressureInside
                ? new(Gland.Compression(inside.Min, cord.Min, Wall.Max),
                    Gland.Compression(inside.Max, cord.Max, Wall.Min))
                : null,
            Gap);
    }
}
