namespace Pawl.Mechanics.Shafts;

/// <summary>How the stresses of a shaft grow when it is overloaded.</summary>
public enum ShaftOverload
{
    /// <summary>The mean stays, the swing grows.</summary>
    MeanStays,

    /// <summary>Mean and swing grow together.</summary>
    RatioStays,
}

/// <summary>Static and fatigue safety of a place on a shaft.</summary>
/// <remarks>
/// Strengths are those of the part at its size, so that the technological size factor K_1 is in them already; <see cref="Technological"/>
/// has it where a bar's strength is stated. Source: DIN 743-1 to -3:2012, from memory.
/// </remarks>
public static class ShaftFatigue
{
    /// <summary>Technological size factor K_1 of the tensile strength: how much less a thick part gets of a heat treatment.</summary>
    /// <param name="steel">How the steel is made strong.</param>
    /// <param name="diameter">Diameter at the heat treatment d, mm.</param>
    /// <remarks>
    /// <code>tempered: 1 − 0.26·lg(d/16);  case hardened: 1 − 0.41·lg(d/16);  1 up to 16 mm</code>
    /// Source: DIN 743-2:2012, from memory; values stated for 16 mm.<br/>
    /// Valid for: up to 300 mm (tempered), 150 mm (case hardened).
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Technological(ShaftSteel steel, double diameter)
    {
        Guard.Positive(diameter, "the diameter at the heat treatment");
        var (fall, most) = steel == ShaftSteel.CaseHardened ? (0.41, 150) : (0.26, 300);
        return diameter <= most
            ? 1 - fall * Math.Log10(Math.Max(1, diameter / 16))
            : throw Guard.Because($"the source has strengths up to {most} mm; the part is {diameter:0.#} mm thick at its heat treatment");
    }

    /// <summary>Geometric size factor K_2 of bending and torsion.</summary>
    /// <remarks>
    /// <code>1 − 0.2·lg(d/7.5)/lg 20 from 7.5 mm to 150 mm;  0.8 above</code>
    /// Source: DIN 743-2:2012, from memory. Axial stress has none.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Size(double diameter) => 1 - 0.2 * Share(diameter);

    /// <summary>Size factor K_3 of a measured notch factor.</summary>
    /// <remarks>
    /// <code>1 − 0.2·lg β·lg(d/7.5)/lg 20 from 7.5 mm to 150 mm</code>
    /// Source: DIN 743-2:2012, from memory.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double NotchSize(double factor, double diameter) =>
        1 - 0.2 * Math.Log10(Guard.AtLeast(factor, 1, "the notch factor")) * Share(diameter);

    /// <summary>Roughness factor K_F of normal stress; <see cref="TorsionRoughness"/> has that of torsion.</summary>
    /// <param name="roughnessInMicrometres">Height of roughness Rz, µm.</param>
    /// <param name="tensile">Tensile strength σ_B, MPa.</param>
    /// <remarks>
    /// <code>1 − 0.22·lg Rz·(lg(σ_B/20) − 1);  1 for Rz up to 1 µm</code>
    /// Not homogeneous.<br/>
    /// Source: DIN 743-2:2012, from memory.<br/>
    /// Valid for: σ_B up to 2000 MPa.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Roughness(double roughnessInMicrometres, double tensile)
    {
        if (!(tensile > 0 && tensile <= 2000))
            throw Guard.Because($"the source covers tensile strengths up to 2000 MPa; this is {tensile:0.#} MPa");

        return 1 - 0.22 * Math.Log10(Math.Max(1, Guard.Positive(roughnessInMicrometres, "the roughness"))) * Math.Max(0, Math.Log10(tensile / 20) - 1);
    }

    /// <summary>Roughness factor of torsion.</summary>
    /// <remarks>
    /// <code>0.575·K_F + 0.425</code>
    /// Source: DIN 743-2:2012, from memory.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TorsionRoughness(double ofNormalStress) => 0.575 * Guard.Share(ofNormalStress, "the roughness factor") + 0.425;

    /// <summary>Strengths against swinging stress of the notched part, MPa.</summary>
    /// <param name="strength">The steel at this size.</param>
    /// <param name="notch">The notch.</param>
    /// <param name="diameter">Diameter d of the section, mm.</param>
    /// <param name="roughnessInMicrometres">Height of roughness Rz, µm.</param>
    /// <param name="hardening">Factor K_V of rolling, peening, hardening; 1 where none is proven.</param>
    /// <remarks>
    /// <code>
    /// σ_WK = σ_W·K_V/(β/K_2 + 1/K_F − 1)
    /// σ_bW = 0.5·σ_B;  σ_zdW = 0.4·σ_B;  τ_tW = 0.3·σ_B
    /// </code>
    /// Source: DIN 743-1, -3:2012, from memory.<br/>
    /// Valid for: steel, 10⁷ swings and more, −40 °C to 150 °C, no corrosion.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static ShaftStresses NotchedStrength(
        ShaftStrength strength, ShaftNotch notch, double diameter, double roughnessInMicrometres, double hardening = 1)
    {
        var tensile = Guard.Positive(strength.Tensile, "the tensile strength");
        var normal = notch.CoversRoughness ? 1 : Roughness(roughnessInMicrometres, tensile);
        var (size, boost) = (Size(diameter), Guard.Positive(hardening, "the factor of hardening"));
        return new(
            0.4 * tensile * boost / (notch.Axial + 1 / normal - 1),
            0.5 * tensile * boost / (notch.Bending / size + 1 / normal - 1),
            0.3 * tensile * boost / (notch.Torsion / size + 1 / (notch.CoversRoughness ? 1 : TorsionRoughness(normal)) - 1));
    }

    /// <summary>Safety against fatigue.</summary>
    /// <param name="strength">The steel at this size.</param>
    /// <param name="notched">Strengths of the notched part.</param>
    /// <param name="mean">Mean stresses σ_m.</param>
    /// <param name="swing">Amplitudes σ_a.</param>
    /// <param name="overload">How they grow in an overload.</param>
    /// <remarks>
    /// <code>
    /// ψ = σ_WK/(2·σ_B − σ_WK);  σ_mv = √((σ_zdm + σ_bm)² + 3·τ_m²);  τ_mv = σ_mv/√3
    /// mean stays: σ_ADK = σ_WK − ψ·σ_mv;  ratio stays: σ_ADK = σ_WK/(1 + ψ·σ_mv/σ_a)
    /// S = 1/√( (σ_zda/σ_zdADK + σ_ba/σ_bADK)² + (τ_a/τ_ADK)² )
    /// </code>
    /// Source: DIN 743-1:2012, from memory.<br/>
    /// Valid for: a mean below what <see cref="StaticSafety"/> allows; without swing there is no fatigue.
    /// </remarks>
    public static double Safety(
        ShaftStrength strength, ShaftStresses notched, ShaftStresses mean, ShaftStresses swing, ShaftOverload overload)
    {
        var equivalent = Guard.Finite(mean.Equivalent, "the mean stress");
        var axial = Use(swing.Axial, notched.Axial, equivalent);
        var bending = Use(swing.Bending, notched.Bending, equivalent);
        var torsion = Use(swing.Torsion, notched.Torsion, equivalent / Math.Sqrt(3));
        return 1 / Guard.Positive(double.Hypot(axial + bending, torsion), "the swing of the stress");

        double Use(double amplitude, double limit, double middle)
        {
            amplitude = Math.Abs(amplitude);
            if (amplitude == 0)
                return 0;

            var lean = limit / (2 * strength.Tensile - limit);
            var allowed = overload == ShaftOverload.MeanStays ? limit - lean * middle : limit / (1 + lean * middle / amplitude);
            return allowed > 0
                ? amplitude / allowed
                : throw Guard.Because($"no safety against fatigue: the mean stress of {equivalent:0.#} MPa leaves no room for a swing");
        }
    }

    /// <summary>Safety against lasting deformation.</summary>
    /// <param name="strength">The steel at this size.</param>
    /// <param name="notch">The notch.</param>
    /// <param name="greatest">Greatest stresses.</param>
    /// <param name="hollow">Whether the shaft is hollow.</param>
    /// <remarks>
    /// <code>
    /// σ_FK = K_2F·γ_F·σ_S;  τ_FK = K_2F·σ_S/√3
    /// K_2F: axial 1; bending 1.2, hollow 1.1; torsion 1.2, hollow 1; with a hard case 1 throughout
    /// S = 1/√( (σ_zd/σ_zdFK + σ_b/σ_bFK)² + (τ/τ_FK)² )
    /// </code>
    /// Source: DIN 743-1:2012, from memory.<br/>
    /// Valid for: ductile steel.
    /// </remarks>
    public static double StaticSafety(ShaftStrength strength, ShaftNotch notch, ShaftStresses greatest, bool hollow)
    {
        var yield = Guard.Positive(strength.Yield, "the yield strength");
        var (bending, torsion) = strength.Steel == ShaftSteel.CaseHardened ? (1.0, 1.0) : hollow ? (1.1, 1.0) : (1.2, 1.2);
        var normal = Math.Abs(greatest.Axial) / (notch.Rise * yield) + Math.Abs(greatest.Bending) / (bending * notch.Rise * yield);
        return 1 / Guard.Positive(double.Hypot(normal, Math.Sqrt(3) * greatest.Torsion / (torsion * yield)), "the stress");
    }

    private static double Share(double diameter) =>
        Math.Log10(Math.Clamp(Guard.Positive(diameter, "the diameter of the shaft"), 7.5, 150) / 7.5) / Math.Log10(20);
}
