namespace Pawl.Mechanics.Shafts;

/// <summary>Form factors: greatest stress in a notch by the nominal stress of its smaller section, elastic.</summary>
/// <param name="Axial">α_zd.</param>
/// <param name="Bending">α_b.</param>
/// <param name="Torsion">α_t.</param>
public sealed record NotchForm(double Axial, double Bending, double Torsion)
{
    /// <summary>A shoulder with a fillet.</summary>
    /// <param name="large">Larger diameter D, mm.</param>
    /// <param name="small">Smaller diameter d, mm.</param>
    /// <param name="radius">Radius r of the fillet, mm.</param>
    /// <remarks>
    /// <code>
    /// α = 1 + 1/√( A·r/t + 2·B·(r/d)·(1 + 2·r/d)² + C·(r/t)^z·d/D );  t = (D − d)/2
    /// axial A 0.62, B 3.5, C 0;  bending A 0.62, B 5.8, C 0.2, z 3;  torsion A 3.4, B 19, C 1, z 2
    /// </code>
    /// Source: DIN 743-2:2012, from memory; compared with Peterson's curves.<br/>
    /// Valid for: r/t ≥ 0.03, d/D ≤ 0.98, α ≤ 6.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static NotchForm Shoulder(double large, double small, double radius) => Checked(new(
        Factor(large, small, radius, 0.62, 3.5, 0, 0),
        Factor(large, small, radius, 0.62, 5.8, 0.2, 3),
        Factor(large, small, radius, 3.4, 19, 1, 2)));

    /// <summary>A round groove all about.</summary>
    /// <param name="large">Diameter D beside the groove, mm.</param>
    /// <param name="small">Diameter d in its bottom, mm.</param>
    /// <param name="radius">Radius r of its bottom, mm.</param>
    /// <remarks>
    /// <code>as <see cref="Shoulder"/>: axial A 0.22, B 1.37;  bending A 0.2, B 2.75;  torsion A 0.7, B 10.3;  C 0</code>
    /// Source: DIN 743-2:2012, from memory; compared with Peterson's curves.<br/>
    /// Valid for: as <see cref="Shoulder"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static NotchForm RoundGroove(double large, double small, double radius) => Checked(new(
        Factor(large, small, radius, 0.22, 1.37, 0, 0),
        Factor(large, small, radius, 0.2, 2.75, 0, 0),
        Factor(large, small, radius, 0.7, 10.3, 0, 0)));

    private static double Factor(double large, double small, double radius, double a, double b, double c, double z)
    {
        ShaftNotch.Sizes(large, small);
        Guard.Positive(radius, "the radius of the notch");
        var blunt = radius / ((large - small) / 2);
        var slender = radius / small;
        if (blunt < 0.03 || small / large > 0.98)
            throw Guard.Because(
                $"the source covers r/t from 0.03 and d/D up to 0.98; here r/t is {blunt:0.###} and d/D is {small / large:0.###}");

        return 1 + 1 / Math.Sqrt(
            a * blunt + 2 * b * slender * (1 + 2 * slender) * (1 + 2 * slender) + c * Math.Pow(blunt, z) * small / large);
    }

    private static NotchForm Checked(NotchForm form) => Math.Max(form.Axial, form.Bending) <= 6
        ? form
        : throw Guard.Because($"the source covers form factors up to 6; this notch has {Math.Max(form.Axial, form.Bending):0.##}");
}
