using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Bearings;

/// <summary>What an interference fit does to a ring of a bearing: Lamé's thick rings.</summary>
/// <remarks>Interferences and changes are of diameters, mm; a loose fit has none.</remarks>
public static class RingFit
{
    /// <summary>Pressure in the joint of two round parts, MPa.</summary>
    /// <param name="interference">Overlap I of the diameters, mm; zero or below presses nothing.</param>
    /// <param name="joint">Diameter of the joint, mm.</param>
    /// <param name="hole">Diameter of the hole in the inner part, mm; zero for a solid one.</param>
    /// <param name="outside">Outside diameter of the outer part, mm; infinite for a solid block.</param>
    /// <param name="inner">Material of the inner part.</param>
    /// <param name="outer">Material of the outer part.</param>
    /// <remarks>
    /// <code>p = I / ( d·[ ((d² + h²)/(d² − h²) − ν_i)/E_i + ((D² + d²)/(D² − d²) + ν_o)/E_o ] )</code>
    /// Symbols: I interference, d joint, h hole, D outside diameter, mm; E moduli, MPa; ν Poisson's ratios; i inner, o outer
    /// part.<br/>
    /// Source: Lamé, press fits; textbooks of machine design.<br/>
    /// Valid for: plane stress, elastic, parts of equal length.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Pressure(double interference, double joint, double hole, double outside, Elastic inner, Elastic outer)
    {
        Sizes(hole, joint, outside);
        _ = (inner.Compliance, outer.Compliance);
        return Math.Max(0, Guard.Finite(interference, "the interference"))
            / (joint * ((Ratio(hole / joint) - inner.Poisson) / inner.Modulus + (Ratio(joint / outside) + outer.Poisson) / outer.Modulus));
    }

    /// <summary>Growth of the inner raceway by the seat on the shaft, mm.</summary>
    /// <param name="interference">Effective overlap, mm.</param>
    /// <param name="bore">Bore d of the bearing, mm.</param>
    /// <param name="raceway">Diameter F of the inner raceway, mm.</param>
    /// <param name="shaftHole">Hole of the shaft, mm; zero for a solid one.</param>
    /// <param name="shaft">Material of the shaft.</param>
    /// <param name="ring">Material of the ring.</param>
    /// <remarks>
    /// <code>ΔF = 2·p·F·d² / (E·(F² − d²));  steel on solid steel: I·d/F</code>
    /// Symbols: p pressure in the joint, MPa; F raceway, d bore, mm; E modulus of the ring, MPa.<br/>
    /// Source: Lamé.<br/>
    /// Valid for: as <see cref="Pressure"/>; the ring as a plain tube up to its raceway.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double InnerRacewayGrowth(double interference, double bore, double raceway, double shaftHole, Elastic shaft, Elastic ring)
    {
        var pressure = Pressure(interference, bore, shaftHole, Guard.Positive(raceway, "the inner raceway"), shaft, ring);
        return 2 * pressure * raceway / (ring.Modulus * (raceway * raceway / (bore * bore) - 1));
    }

    /// <summary>Contraction of the outer raceway by the seat in the housing, mm.</summary>
    /// <param name="interference">Effective overlap, mm.</param>
    /// <param name="outside">Outside diameter D of the bearing, mm.</param>
    /// <param name="raceway">Diameter E of the outer raceway, mm.</param>
    /// <param name="housingOutside">Outside diameter of the housing about the seat, mm; infinite for a solid block.</param>
    /// <param name="housing">Material of the housing, or of the planet that is one.</param>
    /// <param name="ring">Material of the ring.</param>
    /// <remarks>
    /// <code>ΔE = 2·p·E·D² / (E_r·(D² − E²));  all of steel: I·(E/D)·(1 − (D/D₀)²)/(1 − (E/D₀)²)</code>
    /// Symbols: p pressure in the joint, MPa; E raceway, D outside diameter of the ring, D₀ of the housing, mm; E_r modulus of
    /// the ring.<br/>
    /// Source: Lamé.<br/>
    /// Valid for: as <see cref="Pressure"/>.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double OuterRacewayContraction(
        double interference, double outside, double raceway, double housingOutside, Elastic housing, Elastic ring)
    {
        Guard.Positive(raceway, "the outer raceway");
        var pressure = Pressure(interference, outside, raceway, housingOutside, ring, housing);
        return 2 * pressure * raceway / (ring.Modulus * (1 - raceway * raceway / (outside * outside)));
    }

    /// <summary>Interference that is left of a measured one once the roughness is smoothed down, mm.</summary>
    /// <remarks>
    /// <code>I_eff = max(0, I − s)</code>
    /// Symbols: I interference of the drawing, s smoothing, mm.<br/>
    /// Source: common practice, no source: s is 0.002 mm to 0.005 mm on both surfaces of ground seats.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Effective(double interference, double smoothing) =>
        Math.Max(0, Guard.Finite(interference, "the interference") - DynamicLoad.NotNegative(smoothing, "the smoothing"));

    /// <summary>Interference of a warm joint, mm; below zero it has become play.</summary>
    /// <param name="interference">Interference I at 20 °C, mm, play negative.</param>
    /// <param name="joint">Diameter of the joint, mm.</param>
    /// <param name="innerExpansion">Expansion of the inner part, 1/K: the shaft, or the outer ring in a housing.</param>
    /// <param name="innerTemperature">Its temperature, °C.</param>
    /// <param name="outerExpansion">Expansion of the outer part, 1/K: the inner ring, or the housing.</param>
    /// <param name="outerTemperature">Its temperature, °C.</param>
    /// <remarks>
    /// <code>I_θ = I + d·(α_i·(θ_i − 20) − α_o·(θ_o − 20))</code>
    /// Symbols: d joint, mm; α expansions, 1/K; θ temperatures, °C.<br/>
    /// Source: thermal expansion.<br/>
    /// Valid for: parts that expand freely. An outer ring of steel in a housing of aluminium loosens when hot and tightens when
    /// cold.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Warm(
        double interference, double joint, double innerExpansion, double innerTemperature, double outerExpansion, double outerTemperature) =>
        Guard.Finite(
            interference + Guard.Positive(joint, "the diameter of the joint")
                * (innerExpansion * (Guard.Celsius(innerTemperature, "the temperature") - 20) - outerExpansion * (Guard.Celsius(outerTemperature, "the temperature") - 20)),
            "the interference");

    private static double Ratio(double quotient) => (1 + quotient * quotient) / (1 - quotient * quotient);

    private static void Sizes(double hole, double joint, double outside)
    {
        if (!(hole >= 0 && joint > hole && outside > joint) || double.IsInfinity(joint))
            throw Guard.Because(
                $"a fit needs a joint between hole and outside; they are {hole:0.###} mm, {joint:0.###} mm and {outside:0.###} mm");
    }
}
