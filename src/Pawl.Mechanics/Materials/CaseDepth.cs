namespace Pawl.Mechanics.Materials;

/// <summary>Effective depth of a case-hardened layer: to 550 HV, after grinding, at half the tooth height.</summary>
public static class CaseDepth
{
    private const double MinOfAll = 0.3;
    private const double MostOfAll = 6;

    /// <summary>Least depth by the module.</summary>
    /// <remarks>
    /// <code>Eht_min = max(0.1·m_n, 0.3 mm)</code>
    /// Symbols: m_n normal module, mm.<br/>
    /// Source: common practice, no source; ISO 6336-5 is said to name 0.3 mm.<br/>
    /// Valid for: case-hardened teeth. Below a module of 0.75 mm it leaves no room under <see cref="Most"/>: such teeth are nitrided
    /// or hardened through.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Min(double module) => Math.Max(0.1 * Guard.Positive(module, "the module"), MinOfAll);

    /// <summary>Greatest depth by the module.</summary>
    /// <remarks>
    /// <code>Eht_max = min(0.4·m_n, 6 mm)</code>
    /// Symbols: m_n normal module, mm.<br/>
    /// Source: ISO 6336-5, from memory.<br/>
    /// Valid for: case-hardened teeth.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Most(double module) => Math.Min(0.4 * Guard.Positive(module, "the module"), MostOfAll);

    /// <summary>Depth that the carburiser is asked for, before grinding.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Ordered(double finished, double stock) =>
        Guard.Positive(finished, "the case depth", "mm") + Guard.NotNegative(stock, "the stock for grinding", "mm");

    /// <summary>Share of the tip that the layers of both flanks take.</summary>
    /// <remarks>
    /// <code>2·Eht/s_an</code>
    /// Symbols: Eht depth, s_an thickness of the tip, mm.<br/>
    /// Source: closed form.<br/>
    /// Valid for: layers as deep at the tip as at half the height; at a tip they are deeper, so the share is a lower bound.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double TipShare(double depth, double tipThickness) =>
        tipThickness > 0 && double.IsFinite(tipThickness)
            ? 2 * Guard.NotNegative(depth, "the case depth", "mm") / tipThickness
            : throw Guard.Because($"the tip is pointed: its thickness is {tipThickness:0.###} mm");

    /// <summary>Depth at which the core bears the shear below the contact.</summary>
    /// <remarks>
    /// <code>Eht_H = σ_H·d_w1·sin α_wt/(U_H·cos β_b) · u/(u + 1)</code>
    /// Symbols: σ_H contact stress, MPa; d_w1 working pitch diameter of the pinion, mm; α_wt working pressure angle, β_b base helix
    /// angle, rad; u gear ratio with its sign; U_H, MPa: see <see cref="ShearStrength"/>.<br/>
    /// Source: ISO 6336-5, from memory; the same form stands in ANSI/AGMA 2101.<br/>
    /// Valid for: case-hardened flanks of steel. An internal gear (u below −1) lies flatter on its pinion, and needs a deeper case.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ForContact(double stress, double pinionDiameter, double workingAngle, double baseHelix, double ratio, double shearStrength)
    {
        if (!(ratio > 0 || ratio < -1) || !double.IsFinite(ratio))
            throw Guard.Because($"the gear ratio must be above zero, or below −1 for an internal gear; it is {ratio:0.####}");

        return Guard.Finite(
            Guard.NotNegative(stress, "the contact stress", "MPa") * Guard.Positive(pinionDiameter, "the pitch diameter of the pinion", "mm") * Math.Sin(Guard.AcuteAboveZero(workingAngle, "the working pressure angle"))
            / (Guard.Positive(shearStrength, "U_H") * Math.Cos(Guard.Helix(baseHelix))) * (ratio / (ratio + 1)),
            "the case depth for contact");
    }

    /// <summary>U_H of <see cref="ForContact"/>, MPa.</summary>
    /// <remarks>Source: 44 000 MPa for ML, 66 000 MPa for MQ and ME; from memory, not sure.</remarks>
    public static double ShearStrength(MaterialQuality quality) => quality == MaterialQuality.Ml ? 44_000 : 66_000;
}
