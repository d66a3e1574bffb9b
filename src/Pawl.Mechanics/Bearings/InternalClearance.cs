using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Bearings;

/// <summary>Class of radial internal clearance, ISO 5753-1.</summary>
public enum ClearanceClass
{
    C2,
    Normal,
    C3,
    C4,
    C5,
}

/// <summary>Play between rings and rolling elements: new, mounted, warm.</summary>
/// <remarks>
/// All clearances, interferences and changes are of diameters, mm: radial clearance is the whole way from side to side. Positive
/// is play; positive interference is overlap.
/// </remarks>
public static class InternalClearance
{
    /// <summary>The id of the table of deep groove ball bearings.</summary>
    public const string DeepGrooveTableId = "iso5753-1-deep-groove";

    /// <summary>The id of the table of cylindrical and machined needle roller bearings.</summary>
    public const string RollerTableId = "iso5753-1-cylindrical-roller";

    private static ImmutableArray<ImmutableArray<double>> _deepGroove;
    private static ImmutableArray<ImmutableArray<double>> _rollers;

    /// <summary>Radial internal clearance of a new bearing, mm.</summary>
    /// <remarks>
    /// Source: ISO 5753-1:2009; tables <c>iso5753-1-deep-groove</c>, <c>iso5753-1-cylindrical-roller</c>. The bore is over the
    /// first and up to the second limit of a row.<br/>
    /// Valid for: cylindrical bores; deep groove ball, cylindrical roller and machined needle roller bearings.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Interval New(BearingKind kind, ClearanceClass @class, double bore)
    {
        Guard.Positive(bore, "the bore");
        var rows = kind switch
        {
            BearingKind.DeepGrooveBall => _deepGroove.IsDefault ? _deepGroove = NumberTable.Read(DeepGrooveTableId, 12) : _deepGroove,
            BearingKind.CylindricalRoller or BearingKind.NeedleRoller =>
                _rollers.IsDefault ? _rollers = NumberTable.Read(RollerTableId, 12) : _rollers,
            _ => throw Guard.Because($"ISO 5753-1 has no classes of clearance for {BearingType.Name(kind)} bearings; it is set at mounting"),
        };
        foreach (var row in rows)
        {
            if (bore > row[0] && bore <= row[1])
                return new(row[2 + 2 * (int)@class] / 1000, row[3 + 2 * (int)@class] / 1000);
        }

        var (name, over, to) = (BearingType.Name(kind), rows[0][0], rows[^1][1]);
        throw Guard.Because(
            $"the source has no clearance of {name} bearings with a bore of {bore:0.###} mm; it covers over {over} mm to {to} mm");
    }

    /// <summary>Loss of clearance because rings and rolling elements are not equally warm, mm; below zero a gain.</summary>
    /// <remarks>
    /// <code>Δ = α_r·(F·(θ_i − 20) − E·(θ_o − 20)) + 2·α_w·D_w·(θ_w − 20)</code>
    /// Symbols: F, E diameters of inner and outer raceway, mm, E = F + 2·D_w; D_w diameter of a rolling element; θ temperatures
    /// of inner ring, outer ring, rolling elements, °C; α expansion of rings and of rolling elements, 1/K.<br/>
    /// Source: thermal expansion; clearance is E − F − 2·D_w.<br/>
    /// Valid for: rings free to expand; what shaft and housing do to them is another term. Equal warmth of one material loses
    /// nothing.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double ThermalLoss(
        double innerRaceway,
        double outerRaceway,
        double innerTemperature,
        double outerTemperature,
        double elementTemperature,
        double ringExpansion = SteelExpansion,
        double elementExpansion = SteelExpansion)
    {
        Guard.Positive(innerRaceway, "the inner raceway");
        Guard.Celsius(innerTemperature, "the temperature of the inner ring");
        Guard.Celsius(outerTemperature, "the temperature of the outer ring");
        Guard.Celsius(elementTemperature, "the temperature of the rolling elements");
        if (!(outerRaceway > innerRaceway))
            throw Guard.Because($"the outer raceway must be above the inner; they are {outerRaceway:0.###} mm and {innerRaceway:0.###} mm");

        return Guard.Finite(
            ringExpansion * (innerRaceway * (innerTemperature - 20) - outerRaceway * (outerTemperature - 20))
                + elementExpansion * (outerRaceway - innerRaceway) * (elementTemperature - 20),
            "the loss of clearance");
    }

    /// <summary>Thermal expansion of bearing steel, 1/K; from memory.</summary>
    public const double SteelExpansion = 12e-6;

    /// <summary>Thermal expansion of silicon nitride, 1/K; from memory.</summary>
    public const double SiliconNitrideExpansion = 3.2e-6;

    /// <summary>Clearance mounted and warm, least and greatest, mm; below zero is preload.</summary>
    /// <param name="fresh">Clearance of the new bearing.</param>
    /// <param name="innerGrowth">Growth of the inner raceway by its seat.</param>
    /// <param name="outerContraction">Contraction of the outer raceway by its seat.</param>
    /// <param name="thermalLoss">Loss by warmth, from start to hottest.</param>
    /// <remarks>
    /// <code>s_least = s₀,least − ΔF_greatest − ΔE_greatest − Δ_greatest;  s_greatest with all others</code>
    /// Source: sum of the worst cases.
    /// </remarks>
    public static Interval Operating(Interval fresh, Interval innerGrowth, Interval outerContraction, Interval thermalLoss) => new(
        fresh.Min - innerGrowth.Max - outerContraction.Max - thermalLoss.Max,
        fresh.Max - innerGrowth.Min - outerContraction.Min - thermalLoss.Min);

    /// <summary>Diameters of inner and outer raceway where they are not known, mm.</summary>
    /// <remarks>
    /// <code>balls: F ≈ (4·d + D)/5, E ≈ (d + 4·D)/5;  rollers: F ≈ d + (D − d)/4, E ≈ D − (D − d)/4</code>
    /// Symbols: d bore, D outside diameter, mm.<br/>
    /// Source: common practice, no source.<br/>
    /// Valid for: a guess within some hundredths, good enough for losses of clearance.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static (double Inner, double Outer) Raceways(BearingType type, double bore, double outside)
    {
        BearingSpeed.MeanDiameter(bore, outside);
        var depth = (outside - bore) / (type.IsBall ? 5 : 4);
        return (bore + depth, outside - depth);
    }
}
