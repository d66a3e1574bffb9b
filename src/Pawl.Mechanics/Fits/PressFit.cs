using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Rating;

namespace Pawl.Mechanics.Fits;

/// <summary>A hub pressed or shrunk on a shaft. Interferences are of diameters, mm; both parts may be hollow.</summary>
/// <param name="Diameter">Diameter d of the joint, mm.</param>
/// <param name="Hole">Bore d_i of the shaft, mm; zero for a solid shaft.</param>
/// <param name="Outside">Outside diameter D of the hub, mm.</param>
/// <param name="Length">Length l of the joint, mm.</param>
/// <param name="Shaft">Material of the shaft.</param>
/// <param name="Hub">Material of the hub.</param>
public sealed record PressFit(double Diameter, double Hole, double Outside, double Length, Elastic Shaft, Elastic Hub)
{
    /// <summary>Roughness lost in pressing, mm of the diameter.</summary>
    /// <remarks>
    /// <code>s = 0.8·(Rz_s + Rz_h)</code>
    /// Symbols: Rz heights of roughness of shaft and hub, mm.<br/>
    /// Source: DIN 7190-1, from memory.<br/>
    /// Valid for: turned and ground seats.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Smoothing(double shaftRoughness, double hubRoughness) =>
        0.8 * (DynamicLoad.NotNegative(shaftRoughness, "the roughness of the shaft")
            + DynamicLoad.NotNegative(hubRoughness, "the roughness of the hub"));

    /// <summary>Pressure in the joint, MPa.</summary>
    /// <param name="interference">Effective overlap of the diameters, mm: less smoothing, growth at speed and warmth.</param>
    /// <remarks>
    /// <code>p = U / ( d·[ ((1 + Q_s²)/(1 − Q_s²) − ν_s)/E_s + ((1 + Q_h²)/(1 − Q_h²) + ν_h)/E_h ] );  Q_s = d_i/d;  Q_h = d/D</code>
    /// Symbols: U interference, mm; E moduli, MPa; ν Poisson's ratios; s shaft, h hub.<br/>
    /// Source: Lamé; DIN 7190-1.<br/>
    /// Valid for: plane stress, elastic, parts of equal length. Nothing where there is play.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double Pressure(double interference) =>
        RingFit.Pressure(interference, Diameter, Hole, Guard.Number(Outside, "the outside diameter of the hub", "mm"), Shaft, Hub);

    /// <summary>Effective overlap that gives a pressure, mm.</summary>
    /// <remarks>
    /// <code>U = p·d·[ … ]</code>
    /// Source: <see cref="Pressure"/> turned round.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double Interference(double pressure) => DynamicLoad.NotNegative(pressure, "the pressure") / Pressure(1);

    /// <summary>Von Mises stress at the bore of the hub, MPa.</summary>
    /// <remarks>
    /// <code>σ_v = p·√(3 + Q_h⁴)/(1 − Q_h²)</code>
    /// Symbols: p pressure, MPa; Q_h = d/D.<br/>
    /// Source: Lamé; von Mises of σ_t, σ_r = −p, σ_z = 0.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double HubStress(double pressure)
    {
        var square = HubQuotient;
        return DynamicLoad.NotNegative(pressure, "the pressure") * Math.Sqrt(3 + square * square) / (1 - square);
    }

    /// <summary>Greatest hoop stress of the shaft, MPa, pressing and so below zero: at the bore, or anywhere in a solid shaft.</summary>
    /// <remarks>
    /// <code>hollow: σ_t = −2·p/(1 − Q_s²);  solid: σ_t = −p</code>
    /// Symbols: p pressure, MPa; Q_s = d_i/d.<br/>
    /// Source: Lamé.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double ShaftHoopStress(double pressure)
    {
        Sizes();
        return -DynamicLoad.NotNegative(pressure, "the pressure") * (Hole > 0 ? 2 / (1 - ShaftQuotient) : 1);
    }

    /// <summary>Greatest von Mises stress of the shaft, MPa.</summary>
    /// <remarks>
    /// <code>hollow: σ_v = 2·p/(1 − Q_s²) at the bore;  solid: σ_v = p</code>
    /// Source: Lamé; a bore carries hoop stress alone, a solid shaft the same pressure both ways.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double ShaftStress(double pressure) => Math.Abs(ShaftHoopStress(pressure));

    /// <summary>Axial force at which the joint slips, N; also the force to press it on, with the greatest friction.</summary>
    /// <remarks>
    /// <code>F = µ·p·π·d·l</code>
    /// Symbols: µ friction; p pressure, MPa; d diameter, l length of the joint, mm.<br/>
    /// Source: DIN 7190-1; statics.<br/>
    /// Valid for: even pressure over the length.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double AxialCapacity(double pressure, double friction) =>
        Guard.Positive(friction, "the friction") * Sized() * DynamicLoad.NotNegative(pressure, "the pressure")
        * Math.PI * Guard.Positive(Length, "the length of the joint");

    /// <summary>Torque at which the joint slips, N·mm.</summary>
    /// <remarks>
    /// <code>T = µ·p·π·d²·l/2</code>
    /// Symbols: as <see cref="AxialCapacity"/>.<br/>
    /// Source: DIN 7190-1; statics.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double TorqueCapacity(double pressure, double friction) => AxialCapacity(pressure, friction) * Diameter / 2;

    /// <summary>Safety against slip under a torque and an axial force together.</summary>
    /// <remarks>
    /// <code>S = µ·p·π·d·l / √((2·T/d)² + F²)</code>
    /// Symbols: T torque, N·mm; F axial force, N.<br/>
    /// Source: DIN 7190-1; friction works against the resultant.<br/>
    /// Valid for: no bending of the joint.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double SlipSafety(double pressure, double friction, double torque, double axialForce)
    {
        var load = double.Hypot(2 * torque / Guard.Positive(Diameter, "the diameter of the joint"), axialForce);
        return AxialCapacity(pressure, friction) / Guard.Positive(load, "the load on the joint");
    }

    /// <summary>Temperature of the hub at which it slips on freely, °C.</summary>
    /// <param name="interference">Greatest interference U at 20 °C, mm.</param>
    /// <param name="clearance">Play required while joining, mm: a thousandth of the diameter by DIN 7190-1.</param>
    /// <param name="hubExpansion">Expansion of the hub α_h, 1/K.</param>
    /// <param name="shaftExpansion">Expansion of the shaft α_s, 1/K.</param>
    /// <param name="shaftTemperature">Temperature θ_s of the shaft, °C, 20 or cooled.</param>
    /// <remarks>
    /// <code>θ_h = 20 + [ U + s + α_s·d·(θ_s − 20) ] / (α_h·d)</code>
    /// Symbols: U interference, s play, d diameter, mm; α expansions, 1/K; θ temperatures, °C.<br/>
    /// Source: DIN 7190-1; thermal expansion.<br/>
    /// Valid for: steady expansions; what the steel of the hub stands is to be stated.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double HubTemperature(
        double interference, double clearance, double hubExpansion, double shaftExpansion, double shaftTemperature = 20) =>
        20 + Joining(interference, clearance, shaftExpansion, shaftTemperature)
            / (Guard.Positive(hubExpansion, "the expansion of the hub") * Sized());

    /// <summary>Interference lost at speed because the hub grows more than the shaft, mm.</summary>
    /// <param name="speed">Speed ω, rad/s.</param>
    /// <param name="shaftDensity">Density of the shaft, t/mm³: 7.85e-9 for steel.</param>
    /// <param name="hubDensity">Density of the hub, t/mm³.</param>
    /// <remarks>
    /// <code>
    /// hub:    u_h = ρ·ω²·r/(4·E)·[ (3 + ν)·R² + (1 − ν)·r² ]
    /// shaft:  u_s = ρ·ω²·r/(4·E)·[ (1 − ν)·r² + (3 + ν)·r_i² ]
    /// loss = 2·(u_h − u_s)
    /// </code>
    /// Symbols: ρ density, t/mm³; ω speed, rad/s; r, R, r_i radii of joint, hub outside and shaft bore, mm; E, ν of each part.<br/>
    /// Source: rotating ring, plane stress (Timoshenko, Theory of Elasticity).<br/>
    /// Valid for: rings of even thickness; a toothed rim counts as a plain ring up to its outside.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public double CentrifugalLoss(double speed, double shaftDensity, double hubDensity)
    {
        Sizes();
        var (joint, outside, hole) = (Diameter / 2, Outside / 2, Hole / 2);
        var square = Guard.Finite(speed * speed, "the speed");
        double Growth(double density, Elastic material, double far) =>
            Guard.Positive(density, "the density") * square * joint / (4 * material.Modulus)
            * ((3 + material.Poisson) * far * far + (1 - material.Poisson) * joint * joint);
        return 2 * (Growth(hubDensity, Hub, outside) - Growth(shaftDensity, Shaft, hole));
    }

    private double HubQuotient
    {
        get
        {
            Sizes();
            return Diameter * Diameter / (Outside * Outside);
        }
    }

    private double ShaftQuotient => Hole * Hole / (Diameter * Diameter);

    private double Joining(double interference, double clearance, double expansion, double temperature) =>
        Guard.Finite(
            Guard.Finite(interference, "the interference") + DynamicLoad.NotNegative(clearance, "the clearance for joining")
                + Guard.Number(expansion, "the expansion", "1/K") * Guard.Positive(Diameter, "the diameter of the joint") * (Guard.Celsius(temperature, "the temperature") - 20),
            "the temperature for joining");

    // Lamé refuses sizes that are none.
    private void Sizes()
    {
        _ = Pressure(0);
    }

    private double Sized()
    {
        Sizes();
        return Diameter;
    }
}
