using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Shafts;

/// <summary>How a shaft's steel was made strong; it decides how much a notch hurts.</summary>
public enum ShaftSteel
{
    /// <summary>Normalised, quenched and tempered, or core of a hardened shaft.</summary>
    Tempered,

    /// <summary>With a hard case at the notch: carburised, nitrided, induction hardened.</summary>
    CaseHardened,
}

/// <summary>Strength of a shaft's steel at the diameter it has, MPa.</summary>
/// <param name="Tensile">Tensile strength σ_B of the part as made.</param>
/// <param name="Yield">Yield strength σ_S of the part as made.</param>
/// <param name="Steel">How it was made strong.</param>
public sealed record ShaftStrength(double Tensile, double Yield, ShaftSteel Steel = ShaftSteel.Tempered);

/// <summary>Notch factors of a place on a shaft, by which its nominal stresses count in fatigue.</summary>
/// <param name="Axial">β_zd for tension and pressure.</param>
/// <param name="Bending">β_b for bending.</param>
/// <param name="Torsion">β_t for torsion.</param>
/// <param name="Rise">Rise of the static limit γ_F by the notch: 1 to 1.15 for ductile steel.</param>
/// <param name="CoversRoughness">Whether the factors were measured with their roughness, so that none counts again.</param>
public sealed record ShaftNotch(double Axial, double Bending, double Torsion, double Rise, bool CoversRoughness = false)
{
    // Diameter of the test shafts of the measured factors.
    private const double TestDiameter = 40;

    /// <summary>No notch.</summary>
    public static ShaftNotch None { get; } = new(1, 1, 1, 1);

    /// <summary>A shoulder with a fillet.</summary>
    /// <param name="large">Larger diameter D, mm.</param>
    /// <param name="small">Smaller diameter d, mm: nominal stresses are of this section.</param>
    /// <param name="radius">Radius r of the fillet, mm.</param>
    /// <param name="strength">The steel.</param>
    /// <remarks>
    /// <code>
    /// t = (D − d)/2;  β = α/n;  α from <see cref="NotchForm.Shoulder"/>
    /// G' = 2.3·(1 + φ)/r (axial, bending), 1.15/r (torsion);  φ = 1/(4·√(t/r) + 2) for d/D > 0.67, else 0
    /// n = 1 + √(G'·mm)·10^−(0.33 + σ_S/712);  case hardened: n = 1 + √(G'·mm)·10^−0.7
    /// </code>
    /// Symbols: α form factor; G' related fall of stress, 1/mm; n support number; σ_S yield strength, MPa. Not homogeneous.<br/>
    /// Source: DIN 743-2:2012, from memory; the form factors agree with Peterson's within a tenth.<br/>
    /// Valid for: r/t ≥ 0.03, d/D ≤ 0.98, α ≤ 6; hollow shafts by the nominal stress of the hollow section.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ShaftNotch Shoulder(double large, double small, double radius, ShaftStrength strength)
    {
        var form = NotchForm.Shoulder(large, small, radius);
        var depth = (large - small) / 2;
        var flank = small / large > 0.67 ? 1 / (4 * Math.Sqrt(depth / radius) + 2) : 0;
        return Supported(form, 2.3 * (1 + flank) / radius, 2.3 * (1 + flank) / radius, 1.15 / radius, strength);
    }

    /// <summary>A round groove all about.</summary>
    /// <param name="large">Diameter D beside the groove, mm.</param>
    /// <param name="small">Diameter d in its bottom, mm: nominal stresses are of this section.</param>
    /// <param name="radius">Radius r of the groove, mm.</param>
    /// <param name="strength">The steel.</param>
    /// <remarks>
    /// <code>G' = 2·(1 + φ)/r (axial, bending), 1/r (torsion);  else as <see cref="Shoulder"/>, α from <see cref="NotchForm.RoundGroove"/></code>
    /// Source: DIN 743-2:2012, from memory.<br/>
    /// Valid for: as <see cref="Shoulder"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ShaftNotch RoundGroove(double large, double small, double radius, ShaftStrength strength)
    {
        var form = NotchForm.RoundGroove(large, small, radius);
        var depth = (large - small) / 2;
        var flank = small / large > 0.67 ? 1 / (4 * Math.Sqrt(depth / radius) + 2) : 0;
        return Supported(form, 2 * (1 + flank) / radius, 2 * (1 + flank) / radius, 1 / radius, strength);
    }

    /// <summary>A square groove all about: retaining ring, O-ring.</summary>
    /// <param name="large">Diameter D beside the groove, mm.</param>
    /// <param name="small">Diameter d in its bottom, mm: nominal stresses are of this section.</param>
    /// <param name="width">Width m of the groove, mm.</param>
    /// <param name="radius">Radius r in its corners, mm.</param>
    /// <param name="strength">The steel.</param>
    /// <remarks>
    /// <code>
    /// r_f = r + 2.9·ρ*;  ρ* = 10^−(0.514 + 0.00152·σ_S)
    /// β_zd = 0.9·(1.27 + 1.17·√(t/r_f)) ≤ 4;  β_b = 0.9·(1.14 + 1.08·√(t/r_f)) ≤ 4;  β_t = 1.48 + 0.45·√(t/r_f) ≤ 2.5
    /// narrow grooves, m/t &lt; 1.4: axial and bending times 1.08·(m/t)^−0.2
    /// </code>
    /// Symbols: t depth, mm; σ_S yield strength, MPa. Not homogeneous.<br/>
    /// Source: DIN 743-2:2012, from memory.<br/>
    /// Valid for: grooves at least as wide as 0.2 of their depth; steels not case hardened.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ShaftNotch SquareGroove(double large, double small, double width, double radius, ShaftStrength strength)
    {
        Sizes(large, small);
        var depth = (large - small) / 2;
        DynamicLoad.NotNegative(radius, "the corner radius");
        if (!(width >= 0.2 * depth) || double.IsInfinity(width))
            throw Guard.Because(
                $"the source covers grooves at least 0.2 of their depth wide; this one is {width:0.###} mm wide and {depth:0.###} mm deep");
        if (strength.Steel == ShaftSteel.CaseHardened)
            throw Guard.Because($"the source has no notch factor of a square groove in a hard case");

        var blunt = radius + 2.9 * Math.Pow(10, -(0.514 + 0.00152 * Guard.Positive(strength.Yield, "the yield strength")));
        var root = Math.Sqrt(depth / blunt);
        var narrow = width / depth < 1.4 ? 1.08 * Math.Pow(width / depth, -0.2) : 1;
        var axial = Math.Min(4, 0.9 * (1.27 + 1.17 * root) * narrow);
        return new(axial, Math.Min(4, 0.9 * (1.14 + 1.08 * root) * narrow), Math.Min(2.5, 1.48 + 0.45 * root), RiseOf(axial));
    }

    /// <summary>A keyway with its key.</summary>
    /// <param name="diameter">Diameter d of the shaft, mm: nominal stresses are of the full section.</param>
    /// <param name="strength">The steel.</param>
    /// <param name="keys">Number of keys, one or two.</param>
    /// <remarks>
    /// <code>β_b = 3·(σ_B/1000)^0.38 at 40 mm;  β_t = 0.56·β_b + 0.1;  two keys: β_b times 1.15;  then to d by K_3</code>
    /// Symbols: σ_B tensile strength, MPa; K_3 size factor of the notch. Not homogeneous.<br/>
    /// Source: DIN 743-2:2012, from memory. Axial as bending.<br/>
    /// Valid for: σ_B from 400 MPa to 1200 MPa; measured with their roughness.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ShaftNotch Keyway(double diameter, ShaftStrength strength, int keys = 1)
    {
        if (keys is not (1 or 2))
            throw Guard.Because($"the source has notch factors of one or two keys; there are {keys}");

        var bending = 3 * Math.Pow(Measured(strength) / 1000, 0.38) * (keys == 2 ? 1.15 : 1);
        return OfTest(bending, 0.56 * bending + 0.1, diameter);
    }

    /// <summary>A hub pressed on.</summary>
    /// <param name="diameter">Diameter d of the seat, mm.</param>
    /// <param name="strength">The steel.</param>
    /// <remarks>
    /// <code>β_b = 2.7·(σ_B/1000)^0.43 at 40 mm;  β_t = 0.65·β_b;  then to d by K_3</code>
    /// Source: DIN 743-2:2012, from memory. Axial as bending.<br/>
    /// Valid for: σ_B from 400 MPa to 1200 MPa, no relief at the end of the hub; measured with their roughness.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ShaftNotch PressedHub(double diameter, ShaftStrength strength)
    {
        var bending = 2.7 * Math.Pow(Measured(strength) / 1000, 0.43);
        return OfTest(bending, 0.65 * bending, diameter);
    }

    /// <summary>An involute spline.</summary>
    /// <param name="root">Diameter in the bottom of the teeth, mm: nominal stresses are of this section.</param>
    /// <param name="strength">The steel.</param>
    /// <remarks>
    /// <code>β* = exp(4.2·10⁻⁷·σ_B²);  β_t = 1 + 0.75·(β* − 1);  β_b = 1 + 0.49·(β* − 1) at 40 mm;  then to d by K_3</code>
    /// Source: DIN 743-2:2012, from memory. Axial as bending.<br/>
    /// Valid for: σ_B from 400 MPa to 1200 MPa; measured with their roughness.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ShaftNotch InvoluteSpline(double root, ShaftStrength strength)
    {
        var tensile = Measured(strength);
        var serration = Math.Exp(4.2e-7 * tensile * tensile);
        return OfTest(1 + 0.49 * (serration - 1), 1 + 0.75 * (serration - 1), root);
    }

    private static ShaftNotch Supported(NotchForm form, double axialFall, double bendingFall, double torsionFall, ShaftStrength strength)
    {
        var power = strength.Steel == ShaftSteel.CaseHardened ? 0.7 : 0.33 + Guard.Positive(strength.Yield, "the yield strength") / 712;
        double Support(double fall) => 1 + Math.Sqrt(fall) * Math.Pow(10, -power);

        // Support never makes a notch better than none.
        return new(
            Math.Max(1, form.Axial / Support(axialFall)),
            Math.Max(1, form.Bending / Support(bendingFall)),
            Math.Max(1, form.Torsion / Support(torsionFall)),
            strength.Steel == ShaftSteel.CaseHardened ? 1 : RiseOf(form.Axial));
    }

    // γ_F of DIN 743-1, by the form or notch factor.
    private static double RiseOf(double factor) => factor < 1.5 ? 1 : factor < 2 ? 1.05 : factor < 3 ? 1.10 : 1.15;

    private static ShaftNotch OfTest(double bending, double torsion, double diameter)
    {
        var (b, t) = (Math.Max(1, bending), Math.Max(1, torsion));
        var forBending = b * ShaftFatigue.NotchSize(b, TestDiameter) / ShaftFatigue.NotchSize(b, diameter);
        var forTorsion = t * ShaftFatigue.NotchSize(t, TestDiameter) / ShaftFatigue.NotchSize(t, diameter);
        return new(forBending, forBending, forTorsion, 1, CoversRoughness: true);
    }

    private static double Measured(ShaftStrength strength) => strength.Tensile is >= 400 and <= 1200
        ? strength.Tensile
        : throw Guard.Because($"the source measured this notch on steels of 400 MPa to 1200 MPa; this one has {strength.Tensile:0.#} MPa");

    internal static void Sizes(double large, double small)
    {
        if (!(small > 0 && large > small) || double.IsInfinity(large))
            throw Guard.Because($"a notch needs a smaller and a larger diameter; they are {small:0.###} mm and {large:0.###} mm");
    }
}
