using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Bearings;

/// <summary>The cage of a carrier: two cheeks, joined by webs between the planets.</summary>
/// <param name="Webs">Count n of the webs.</param>
/// <param name="Circle">Diameter D_w of the circle of their middles, mm.</param>
/// <param name="Width">Width w of a web around the axis, mm.</param>
/// <param name="Depth">Depth h of a web along the radius, mm.</param>
/// <param name="Length">Length l of the webs, the room between the cheeks, mm.</param>
public sealed record CarrierCage(int Webs, double Circle, double Width, double Depth, double Length)
{
    /// <summary>Torsional stiffness between both cheeks, N·mm/rad.</summary>
    /// <remarks>
    /// <code>c = n·(D_w/2)²/(l³/(12·E·I) + 1.2·l/(G·A)),  I = h·w³/12, A = w·h, G = E/(2·(1 + ν))</code>
    /// Source: beams guided at both ends, bent and sheared; 1.2 is the shear factor of a rectangle.<br/>
    /// Valid for: cheeks that are stiff beside the webs; their own shear and the windows' corners are left out.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double TorsionalStiffness(Elastic material)
    {
        Guard.Count(Webs, 1, "the number of webs");
        var (w, h, l) = (Guard.Positive(Width, "the width of a web"), Guard.Positive(Depth, "the depth of a web"), Guard.Positive(Length, "the length of a web"));
        var modulus = Guard.Positive(material.Modulus, "the modulus of elasticity");
        var shear = modulus / (2 * (1 + Guard.Between(material.Poisson, 0, 0.5, "Poisson's ratio")));
        var bent = l * l * l / (12 * modulus * h * w * w * w / 12);
        var radius = Guard.Positive(Circle, "the circle of the webs") / 2;
        return Webs * radius * radius / (bent + (1.2 * l / (shear * w * h)));
    }

    /// <summary>Slope of the planets' axes around the carrier's, rad.</summary>
    /// <param name="torque">Torque T of the carrier, N·mm, which leaves by one cheek.</param>
    /// <param name="stiffness">c, N·mm/rad.</param>
    /// <param name="radius">a, distance of the planets from the axis, mm.</param>
    /// <param name="span">L, distance of the middles of the cheeks, mm.</param>
    /// <remarks>
    /// <code>φ = (T/2)/c·a/L</code>
    /// Source: statics: each cheek takes half of every planet's force, and the webs bring one half across.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Slope(double torque, double stiffness, double radius, double span) =>
        Math.Abs(Guard.Number(torque, "the torque")) / 2 / Guard.Positive(stiffness, "the torsional stiffness")
        * Guard.Positive(radius, "the distance of the planets") / Guard.Positive(span, "the span");
}
