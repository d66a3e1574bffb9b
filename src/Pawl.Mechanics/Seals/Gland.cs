namespace Pawl.Mechanics.Seals;

/// <summary>How an O-ring sits in its gland, at one set of dimensions. All lengths in mm, all diameters as measured.</summary>
/// <remarks>
/// Piston type: the groove is in the plug, the ring is stretched over its root G and seals in the bore B. Rod type: the groove
/// G is in the bore and the ring seals on the rod R. Face type: the groove is in a face, h deep.
/// </remarks>
public static class Gland
{
    /// <summary>Stretch of the inside diameter, 1; below zero the ring lies loose.</summary>
    /// <remarks>
    /// <code>stretch = (G − d₁) / d₁</code>
    /// Symbols: G diameter that the ring is pulled over (groove root, rod), d₁ inside diameter of the free ring, mm.<br/>
    /// Source: definition.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Stretch(double insideDiameter, double over) =>
        (Guard.Positive(over, "the diameter under the ring") - Guard.Positive(insideDiameter, "the inside diameter"))
        / insideDiameter;

    /// <summary>Compression of the outside diameter, 1; below zero the ring does not reach the wall.</summary>
    /// <remarks>
    /// <code>compression = (d₁ + 2·d₂ − G) / (d₁ + 2·d₂)</code>
    /// Symbols: d₁ inside diameter, d₂ cord of the free ring, G diameter of the outer wall, mm.<br/>
    /// Source: definition.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Compression(double insideDiameter, double cord, double wall)
    {
        var outside = Guard.Positive(insideDiameter, "the inside diameter") + 2 * Guard.Positive(cord, "the cord");
        return (outside - Guard.Positive(wall, "the diameter around the ring")) / outside;
    }

    /// <summary>Cord d₂' of a ring that is pulled over a diameter, mm.</summary>
    /// <remarks>
    /// <code>d₂' = d₂ · √((d₁ + d₂) / (G + d₂)) for G > d₁, else d₂' = d₂</code>
    /// Symbols: d₁ inside diameter, d₂ cord of the free ring, G diameter under the ring, mm.<br/>
    /// Source: the volume of rubber stays; its centre line runs from d₁ + d₂ to G + d₂.<br/>
    /// Valid for: a cord that stays round. Measured cords thin somewhat more at a stretch of 1 % to 3 % (common practice, no
    /// source).
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double StretchedCord(double insideDiameter, double cord, double over) =>
        Stretch(insideDiameter, over) > 0
            ? cord * Math.Sqrt((insideDiameter + Guard.Positive(cord, "the cord")) / (over + cord))
            : Guard.Positive(cord, "the cord");

    /// <summary>Cord d₂' of a ring that is pushed into a diameter, mm.</summary>
    /// <remarks>
    /// <code>d₂' = d₂ · √((d₁ + d₂) / (G − d₂)) for G &lt; d₁ + 2·d₂, else d₂' = d₂</code>
    /// Symbols: d₁ inside diameter, d₂ cord of the free ring, G diameter of the outer wall, mm.<br/>
    /// Source: the volume of rubber stays; its centre line runs from d₁ + d₂ to G − d₂.<br/>
    /// Valid for: a ring that stays round and does not buckle.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double CompressedCord(double insideDiameter, double cord, double wall)
    {
        if (Compression(insideDiameter, cord, wall) <= 0)
            return cord;
        return wall > cord
            ? cord * Math.Sqrt((insideDiameter + cord) / (wall - cord))
            : throw Guard.Because($"no ring of a cord of {cord:0.###} mm goes into a diameter of {wall:0.###} mm");
    }

    /// <summary>Cord d₂' of a ring between a rod and the groove around it, mm.</summary>
    /// <remarks>
    /// <code>d₁ &lt; R: pulled over R; else pushed into G</code>
    /// Symbols: d₁ inside diameter of the free ring, R rod, G groove, mm.<br/>
    /// Source: as <see cref="StretchedCord"/> and <see cref="CompressedCord"/>.<br/>
    /// Valid for: as there. For the least squeeze take <see cref="StretchedCord"/>, which gives no credit for the thickening.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double CordOnRod(double insideDiameter, double cord, double rod, double groove) =>
        Stretch(insideDiameter, rod) > 0
            ? StretchedCord(insideDiameter, cord, rod)
            : CompressedCord(insideDiameter, cord, groove);

    /// <summary>How far two parts may lie off centre, mm, never below zero.</summary>
    /// <remarks>
    /// <code>e = min(e_guide, (B − P)/2) + t/2</code>
    /// Symbols: e_guide what another guide allows, B bore, P plug or rod that touches it at the latest, t run-out of the groove
    /// against the plug or the bore, full indicator reading, mm.<br/>
    /// Source: geometry.
    /// </remarks>
    /// <param name="bore">Bore B.</param>
    /// <param name="plug">Plug or rod P.</param>
    /// <param name="guided">What another guide allows, as a radius; none when absent.</param>
    /// <param name="runOut">Run-out t of the groove.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Eccentricity(double bore, double plug, double? guided = null, double runOut = 0)
    {
        var touching = Math.Max(0, (Guard.Positive(bore, "the bore") - Guard.Positive(plug, "the plug")) / 2);
        return Math.Min(NotNegative(guided ?? touching, "the eccentricity"), touching) + NotNegative(runOut, "the run-out") / 2;
    }

    /// <summary>Height of a radial gland L at one place of the circumference, mm.</summary>
    /// <remarks>
    /// <code>L = (D − d)/2 + e</code>
    /// Symbols: D outer, d inner of the two diameters that hold the ring (bore and root, groove and rod), mm; e eccentricity, mm:
    /// positive where the gland opens, negative where it closes.<br/>
    /// Source: geometry.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Height(double outer, double inner, double eccentricity = 0)
    {
        var height = (Guard.Positive(outer, "the outer diameter of the gland", "mm") - Guard.Positive(inner, "the inner diameter of the gland", "mm")) / 2
            + Guard.Number(eccentricity, "the eccentricity", "mm");
        return height > 0 && double.IsFinite(height)
            ? height
            : throw Guard.Because($"no gland: between {outer:0.###} mm and {inner:0.###} mm, {eccentricity:0.###} mm off centre, no room is left");
    }

    /// <summary>Squeeze s in length, mm; below zero the ring does not touch.</summary>
    /// <remarks>
    /// <code>s = d₂' − L</code>
    /// Symbols: d₂' cord as it lies in the gland, L height of the gland, mm.<br/>
    /// Source: definition.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double SqueezeLength(double cord, double height) =>
        Guard.Positive(cord, "the cord") - Guard.Positive(height, "the height of the gland");

    /// <summary>Squeeze as a share of the cord, 1.</summary>
    /// <remarks>
    /// <code>s/d₂' = (d₂' − L) / d₂'</code>
    /// Symbols: as <see cref="SqueezeLength"/>.<br/>
    /// Source: definition. The cord as it lies in the gland, not the free one.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Squeeze(double cord, double height) => SqueezeLength(cord, height) / cord;

    /// <summary>Width of the groove that back-up rings leave to the rubber, mm.</summary>
    /// <remarks>
    /// <code>w_r = w − k·t_b</code>
    /// Symbols: w width of the groove, t_b thickness of one back-up ring, mm; k their number.<br/>
    /// Source: geometry.<br/>
    /// Valid for: rings that fill the height of the groove.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double RubberWidth(double width, int rings, double thickness)
    {
        var left = Guard.Positive(width, "the width of the groove", "mm")
            - Guard.Count(rings, 1, "the number of back-up rings") * Guard.Positive(thickness, "the thickness of a back-up ring", "mm");
        return left > 0 && double.IsFinite(left)
            ? left
            : throw Guard.Because($"no gland: in a groove of {width:0.###} mm the back-up rings leave no room for the O-ring");
    }

    /// <summary>How much of the gland the rubber fills, 1.</summary>
    /// <remarks>
    /// <code>fill = π/4 · d₂'² · (1 + 3·α·Δθ) · (1 + q) / (L · W)</code>
    /// Symbols: d₂' cord as it lies in the gland, mm; α expansion of the elastomer, 1/K; Δθ temperature above 20 °C, K; q swell by
    /// volume, 1; L height, W width of the gland, mm.<br/>
    /// Source: areas of the cross-sections; the growth of the metal is left out, which is on the safe side in the heat.<br/>
    /// Valid for: a groove with straight walls.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Fill(
        double cord, double height, double width, double expansion = 0, double rise = 0, double swell = 0)
    {
        var growth = (1 + 3 * Guard.NotNegative(expansion, "the expansion of the rubber", "1/K") * rise) * (1 + Guard.Number(swell, "the swell"));
        return Math.PI / 4 * Guard.Positive(cord, "the cord") * cord * Guard.Positive(growth, "the growth of the rubber")
            / (Guard.Positive(height, "the height of the gland") * Guard.Positive(width, "the width of the groove"));
    }

    /// <summary>Widest gap that pressure can push the rubber into, mm, across one side.</summary>
    /// <remarks>
    /// <code>g = (B − P)/2 + min(e, (B − P)/2)</code>
    /// Symbols: B bore, P plug or rod, mm; e eccentricity allowed by another guide, mm. With no other guide the parts touch and g
    /// is the whole diametral clearance.<br/>
    /// Source: geometry.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ExtrusionGap(double bore, double plug, double? guided = null) =>
        Math.Max(0, (bore - plug) / 2) + Eccentricity(bore, plug, guided);

    /// <summary>Least length of the chamfer that lets the ring in without cutting it, mm along the axis.</summary>
    /// <remarks>
    /// <code>z = |D − B| / (2 · tan θ)</code>
    /// Symbols: D diameter of the ring as it comes to the chamfer (piston type G + 2·d₂', rod type G − 2·d₂'), B diameter at the
    /// end of the chamfer (bore or rod), mm; θ angle of the chamfer to the axis, rad.<br/>
    /// Source: geometry.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double LeadIn(double ring, double end, double angle) =>
        Math.Abs(Guard.Positive(ring, "the diameter of the ring") - Guard.Positive(end, "the diameter past the chamfer"))
        / (2 * Math.Tan(Guard.AcuteAboveZero(angle, "the angle of the chamfer")));

    private static double NotNegative(double value, string name) =>
        value >= 0 && double.IsFinite(value)
            ? value
            : throw Guard.Because($"{name} must not be below zero; it is {value:0.######}");
}
