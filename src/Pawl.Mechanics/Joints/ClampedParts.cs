using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Joints;

/// <summary>A layer of what a bolt clamps, from the head on.</summary>
/// <param name="Thickness">Thickness l, mm.</param>
/// <param name="Modulus">Modulus of elasticity E, MPa.</param>
/// <param name="Expansion">Linear expansion α, 1/K.</param>
public sealed record ClampedLayer(double Thickness, double Modulus, double Expansion = 0);

/// <summary>The parts that a bolt clamps, round about its axis.</summary>
/// <param name="Layers">The layers, from the head on.</param>
/// <param name="Face">The face under the head; of a through bolt also that under the nut.</param>
/// <param name="Outer">Diameter D_A of the parts round the bolt, mm: twice the distance to the nearest edge.</param>
/// <param name="Tapped">True where the bolt is held by a tapped hole, false where by a nut.</param>
public sealed record ClampedParts(ImmutableArray<ClampedLayer> Layers, BearingFace Face, double Outer, bool Tapped)
{
    /// <summary>Clamped length l_K, mm.</summary>
    public double Length => Layers.Sum(layer => Guard.Positive(layer.Thickness, "the thickness of a layer"));

    /// <summary>Tangent of the angle of the cone that is squeezed, tan φ.</summary>
    /// <remarks>
    /// <code>
    /// nut: tan φ = 0.362 + 0.032·ln(β/2) + 0.153·ln y;  tapped: tan φ = 0.348 + 0.013·ln β + 0.193·ln y
    /// β = l_K/d_W;  y = D_A/d_W
    /// </code>
    /// Source: VDI 2230 Part 1, from memory.<br/>
    /// Valid for: parts wider than the head.
    /// </remarks>
    public double ConeTangent
    {
        get
        {
            var (slenderness, width) = (Length / Face.Outer, Outer / Face.Outer);
            var tangent = Tapped
                ? 0.348 + 0.013 * Math.Log(slenderness) + 0.193 * Math.Log(width)
                : 0.362 + 0.032 * Math.Log(slenderness / 2) + 0.153 * Math.Log(width);
            return width > 1 && tangent > 0 && double.IsFinite(tangent)
                ? tangent
                : throw Guard.Because(
                    $"the cone of VDI 2230 needs parts wider than the head and not too thin; they are {Outer:0.###} mm wide and {Length:0.###} mm thick under a head of {Face.Outer:0.###} mm");
        }
    }

    /// <summary>Compliance δ_P, mm/N.</summary>
    /// <remarks>
    /// <code>δ_P = Σ l/(E·A), along a cone from each face, cut to a sleeve at D_A; a sleeve where D_A ≤ d_W</code>
    /// Source: VDI 2230 Part 1, concentric joint; layers of unlike material by slices.<br/>
    /// Valid for: the bolt in the middle of what it clamps, loaded along its axis.
    /// </remarks>
    public double Compliance => ComplianceOf(Outer <= Face.Outer ? 0 : ConeTangent);

    /// <summary>Compliance of cones of a given angle, mm/N: 30° in textbooks of the English tongue.</summary>
    /// <remarks>
    /// <code>δ = Σ (1/(π·E·d_h·tan φ))·ln((D₂ − d_h)·(D₁ + d_h)/((D₂ + d_h)·(D₁ − d_h)))</code>
    /// Symbols: D₁, D₂ diameters of the cone at the ends of a slice, d_h hole, mm; E modulus, MPa.<br/>
    /// Source: integral of dx/(E·A) along a cone.
    /// </remarks>
    /// <param name="tangent">Tangent of the angle of the cone; zero for a sleeve.</param>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double ComplianceOf(double tangent)
    {
        DynamicLoad.NotNegative(tangent, "the tangent of the cone");
        if (!(Outer > Guard.NotNegative(Face.Hole, "the hole", "mm")) || !double.IsFinite(Outer))
            throw Guard.Because($"the clamped parts must be wider than the hole; they are {Outer:0.###} mm and {Face.Hole:0.###} mm");

        var length = Length;
        var reach = Tapped ? length : length / 2;
        var cut = tangent > 0 ? (Outer - Face.Outer) / (2 * tangent) : 0;
        double[] ends = [.. new[] { cut, reach, length - cut }.Where(end => end > 0 && end < length).Order()];
        var (place, compliance) = (0.0, 0.0);
        foreach (var layer in Layers)
        {
            var (start, stop) = (place, place + layer.Thickness);
            foreach (var end in ends.Where(end => end > start && end < stop).Append(stop))
            {
                compliance += Slice(Wide(start), Wide(end), end - start, tangent) / Guard.Positive(layer.Modulus, "the modulus of a layer");
                start = end;
            }

            place = stop;
        }

        return Guard.Finite(compliance, "the compliance of the parts");

        double Wide(double from) => Math.Min(Outer, Face.Outer + 2 * tangent * (Tapped ? from : Math.Min(from, length - from)));
    }

    // Times the modulus. Both ends equal: a sleeve.
    private double Slice(double first, double second, double length, double tangent)
    {
        var hole = Face.Hole;
        if (Math.Abs(second - first) < 1e-9 * first)
            return length / (Math.PI / 4 * (first * first - hole * hole));
        var (narrow, wide) = (Math.Min(first, second), Math.Max(first, second));
        return hole > 0
            ? Math.Log((wide - hole) * (narrow + hole) / ((wide + hole) * (narrow - hole))) / (Math.PI * hole * tangent)
            : 2 / (Math.PI * tangent) * (1 / narrow - 1 / wide);
    }
}
