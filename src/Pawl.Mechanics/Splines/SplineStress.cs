using Pawl.Mechanics.Bearings;

namespace Pawl.Mechanics.Splines;

/// <summary>Nominal stresses of a splined joint under a torque, MPa: before any factor of application, distribution and life.</summary>
/// <param name="Torque">Torque T, N·mm.</param>
/// <param name="PitchDiameter">Pitch diameter D, mm.</param>
/// <param name="Teeth">Number of teeth z.</param>
/// <param name="Length">Length in engagement L, mm, less chamfers and runout.</param>
/// <remarks>
/// Source: Dudley, When Splines Need Stress Control, Product Engineering 1957, as textbooks and handbooks reprint it; from memory but where
/// a derivation stands.
/// </remarks>
public sealed record SplineStress(double Torque, double PitchDiameter, int Teeth, double Length)
{
    /// <summary>Height of the flanks in contact h, mm.</summary>
    /// <remarks>
    /// <code>h = (D_EE − D_II)/2 − c</code>
    /// Symbols: D_EE major diameter of the external, D_II minor diameter of the internal spline, c chamfers, mm.<br/>
    /// Source: geometry.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ContactHeight(double externalMajor, double internalMinor, double chamfers = 0) =>
        Guard.Positive(
            (Guard.Positive(externalMajor, "the major diameter", "mm") - Guard.Positive(internalMinor, "the minor diameter", "mm")) / 2 - DynamicLoad.NotNegative(chamfers, "the chamfers"), "the height of the flanks in contact");

    /// <summary>Pressure on the flanks, MPa.</summary>
    /// <param name="height">Height h of the flanks in contact, mm.</param>
    /// <param name="share">Share ψ of the teeth that carry, 0 to 1.</param>
    /// <remarks>
    /// <code>p = 2·T/(D·z·L·h·ψ)</code>
    /// Source: Dudley, with ψ = 1; statics.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double FlankPressure(double height, double share = 1) =>
        Force / (Guard.Count(Teeth, 1, "the number of teeth") * Share(share) * Interval * Guard.Positive(height, "the height of the flanks in contact"));

    /// <summary>Shear stress of the teeth at the pitch circle, MPa.</summary>
    /// <param name="thickness">Tooth thickness t at the pitch circle, mm.</param>
    /// <param name="share">Share ψ of the teeth that carry; Dudley has half.</param>
    /// <remarks>
    /// <code>τ = 2·T/(D·z·L·t·ψ);  ψ = ½: 4·T/(D·z·L·t)</code>
    /// Source: Dudley; statics.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double ToothShear(double thickness, double share = 0.5) =>
        Force / (Guard.Count(Teeth, 1, "the number of teeth") * Share(share) * Interval * Guard.Positive(thickness, "the tooth thickness"));

    /// <summary>Torsion of the shaft under the roots of its teeth, MPa.</summary>
    /// <param name="root">Minor diameter d_r of the external spline, mm.</param>
    /// <param name="bore">Bore d_h of the shaft, mm.</param>
    /// <remarks>
    /// <code>τ = 16·T·d_r/(π·(d_r⁴ − d_h⁴))</code>
    /// Source: torsion of a round tube.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double RootTorsion(double root, double bore = 0) =>
        Math.Abs(new Shafts.ShaftSection(root, bore).Stresses(0, 0, Guard.Finite(Torque, "the torque")).Torsion);

    /// <summary>Hoop stress of the sleeve by the radial force of the flanks, MPa, greatest at its bore.</summary>
    /// <param name="pressureAngle">Pressure angle α, rad.</param>
    /// <param name="major">Major diameter D_EI of the internal spline, mm: the bore of the ring that holds.</param>
    /// <param name="outside">Outside diameter D_o of the sleeve, mm.</param>
    /// <remarks>
    /// <code>q = 2·T·tan α/(D·π·D_EI·L);  σ = q·(D_o² + D_EI²)/(D_o² − D_EI²);  thin: T·tan α/(π·D·t_w·L)</code>
    /// Symbols: q radial force by area, MPa; t_w wall, mm.<br/>
    /// Source: radial force spread evenly, Lamé; the thin ring is Dudley's.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double BurstingHoop(double pressureAngle, double major, double outside)
    {
        Ring(major, outside);
        var radial = Force * Math.Tan(Guard.Acute(pressureAngle, "the pressure angle")) / (Math.PI * major * Interval);
        return radial * (outside * outside + major * major) / (outside * outside - major * major);
    }

    /// <summary>Hoop stress of a spinning sleeve, MPa, greatest at its bore.</summary>
    /// <param name="speed">Speed ω, rad/s.</param>
    /// <param name="density">Density ρ, t/mm³.</param>
    /// <param name="poisson">Poisson's ratio ν.</param>
    /// <param name="major">Major diameter D_EI of the internal spline, mm.</param>
    /// <param name="outside">Outside diameter D_o, mm.</param>
    /// <remarks>
    /// <code>σ = ρ·ω²/16·[ (3 + ν)·D_o² + (1 − ν)·D_EI² ]</code>
    /// Source: rotating ring, plane stress; Dudley's 1.656·n²·(D_o² + 0.212·D²)/10⁶ psi of steel.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double CentrifugalHoop(double speed, double density, double poisson, double major, double outside)
    {
        Ring(major, outside);
        return Guard.Positive(density, "the density") * Guard.Finite(speed * speed, "the speed") / 16
            * ((3 + Guard.Between(poisson, 0, 0.5, "Poisson's ratio")) * outside * outside + (1 - poisson) * major * major);
    }

    /// <summary>Bending of the internal teeth, MPa, which pulls at their roots.</summary>
    /// <param name="form">Form factor Y of the tooth; 1.5 at 30°.</param>
    /// <remarks>
    /// <code>σ = 4·T/(D²·L·Y)</code>
    /// Source: Dudley, from memory.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double ToothBending(double form = 1.5) =>
        2 * Force / (Guard.Positive(PitchDiameter, "the pitch diameter") * Interval * Guard.Positive(form, "the form factor"));

    // Force at the pitch circle, N.
    private double Force => 2 * Math.Abs(Guard.Finite(Torque, "the torque")) / Guard.Positive(PitchDiameter, "the pitch diameter");

    private double Interval => Guard.Positive(Length, "the length of the spline");

    private static double Share(double share) =>
        share is > 0 and <= 1
            ? share
            : throw Guard.Because($"the share of the teeth that carry must lie above 0 and up to 1; it is {share:0.###}");

    private static void Ring(double major, double outside)
    {
        if (!(major > 0 && outside > major) || double.IsInfinity(outside))
            throw Guard.Because(
                $"a sleeve needs a wall about its spline; the spline reaches {major:0.###} mm and the outside is {outside:0.###} mm");
    }
}
