using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Lubrication;
using Pawl.Analysis.Rating;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Lubrication;
using Pawl.Quantities;
using Pawl.Specs.Model;
using static Pawl.Analysis.Core.Inputs;

namespace Pawl.Analysis.Pins;

/// <summary>Oil on its way to the bearing on a planet pin.</summary>
public sealed class PinOil : Section<PlanetPinSpec>
{
    private const string Closed = "closed form";

    private static readonly IInput<double> CarrierRatio = Of("carrier", static () => BodyQuantities.SpeedRatio, "ω_c/ω_in");

    public static readonly RowDefinition<PlanetPinSpec, string> Feed =
        Text("oil_feed", "Oil supply of the bearing on the pin").OneOf("holes", "catcher", "splash", "none")
        .When(static (_, subject) => IsOiled(subject)).Stated(static s => s.Oil?.Feed, "oil.feed");

    public static readonly NumberDefinition<PlanetPinSpec> OrbitRadius =
        Number("orbit_radius", "r", "Distance of the pin from the axis of the carrier", Units.Millimetre)
        .By("greatest a_w of the planet with central gears", Closed)
        .When(static (_, subject) => subject.ReachAll("central").Any())
        .From(Each("central", static () => MeshQuantities.CentreDistance, "a_w"), static centres => centres.Max(Math.Abs));

    public static readonly NumberDefinition<PlanetPinSpec> Acceleration =
        Number("orbit_acceleration", "a/g", "Centrifugal acceleration at the pin, in multiples of free fall").NeverNegative()
        .By("a/g = ω_c²·r/g at the fastest input, g = 9.80665 m/s²", "circular motion; g of ISO 80000-3")
        .From(BodyInputs.FastestSpeed, CarrierRatio, OrbitRadius, static (fastest, ratio, radius) =>
            RotatingOil.AccelerationOverFreeFall(fastest * ratio, radius));

    public static readonly NumberDefinition<PlanetPinSpec> EntryRadius =
        Number("oil_radius", "r_0", "Radius at which oil enters the carrier", Units.Millimetre)
        .When(IsFed).Stated(static s => s.Oil?.Radius, "oil.radius");

    public static readonly NumberDefinition<PlanetPinSpec> FeedPressure =
        Number("oil_feed_pressure", "p_0", "Pressure of the oil where it enters the carrier", Units.Megapascal).NeverNegative()
        .When(IsFed).Stated(static s => s.Oil?.Pressure, "oil.pressure").Assumed(0, "0: no pump feeds it");

    public static readonly NumberDefinition<PlanetPinSpec> Gain =
        Number("oil_pressure_gain", "Δp", "Pressure that the turning carrier adds on the way to the pin", Units.Megapascal)
        .By("Δp = ρ·ω_c²·(r² − r_0²)/2 at the fastest input", "liquid in rigid rotation, textbooks of fluid mechanics").Scaled(0.01)
        .Noted("passages full of oil; friction in them is left out; density at 15 °C")
        .When(IsFed)
        .From(
            Of("train", static () => DutyQuantities.OilDensity, "ρ"), BodyInputs.FastestSpeed, CarrierRatio, OrbitRadius, EntryRadius,
            static (density, fastest, ratio, radius, entry) => RotatingOil.PressureGain(density, fastest * ratio, entry, radius));

    public static readonly NumberDefinition<PlanetPinSpec> Pressure =
        Number("oil_pressure", "p", "Pressure of the oil at the pin at the fastest input", Units.Megapascal)
        .By("p = p_0 + Δp", Closed).Scaled(0.01)
        .From(FeedPressure, Gain, static (feed, gain) => feed + gain);

    public static readonly RowDefinition<PlanetPinSpec, string> OilSupplied = Text("oil_supply", "Oil supply of the unit").OneOf("splash", "jet", "grease")
        .When(static (s, subject) => IsFed(s) && subject.Context.Spec.Lubrication?.Supply is not null)
        .From(OfRow("lubrication", static () => OilSystem.Supply), static supply => supply);

    public static readonly NumberDefinition<PlanetPinSpec> Dip =
        Number("oil_dip", "", "Depth of the lowest side of the pin below the oil, where it passes the bottom", Units.Millimetre)
        .By("h + r + d/2, h level over the axis", Closed).Scaled(1)
        .Noted("of a horizontal unit, at rest; a turning carrier throws oil up and lowers the level")
        .When(static (s, subject) => s.Oil?.Feed is { Value: "splash" } && subject.Context.Spec.Lubrication?.MountingPosition is { Value: "horizontal" })
        .From(Of("lubrication", static () => OilLevel.Level, "h"), OrbitRadius, PlanetPins.Diameter, static (level, radius, d) => level + radius + d / 2);

    /// <summary>A unit that is lubricated with oil.</summary>
    private static bool IsOiled(Subject subject) => subject.Context.Spec.Lubrication is { Supply: not { Value: "grease" } };

    private static bool IsFed(PlanetPinSpec spec) => spec.Oil?.Feed is { Value: "holes" or "catcher" };
}
