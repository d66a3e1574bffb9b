using System.ComponentModel.DataAnnotations;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Specs.Model;

/// <summary>How the gearbox is lubricated and cooled.</summary>
public sealed record LubricationSpec
{
    [Display(Name = "Supply", Description = "How oil reaches the meshes and bearings.")]
    [OneOf("splash", "jet", "grease")]
    public Stated<string>? Supply { get; init; }

    [Display(Name = "Cleanliness", Description = "Of the oil in service: code of ISO 4406, or in words after ISO 281; typical where the wear of the gears stays in the sump.")]
    [OneOf("-/13/10", "-/15/12", "-/17/14", "-/19/16", "-/21/18", "extreme", "high", "normal", "slight", "typical", "severe")]
    public Stated<string>? Cleanliness { get; init; }

    [Display(Name = "Filtered", Description = "Whether the oil circulates through a filter in the line.")]
    public Stated<bool>? Filtered { get; init; }

    [Display(Name = "Additives against wear", Description = "Whether the oil has proven additives of extreme pressure.")]
    public Stated<bool>? ExtremePressure { get; init; }

    [Display(Name = "Attitude", Description = "How the common axis lies.")]
    [OneOf("horizontal", "vertical")]
    public Stated<string>? MountingPosition { get; init; }

    [Display(Name = "Lowest planet wetted", Description = "Whether the level at rest wets the lowest planet, or the lowest gear, over its whole face in this attitude.")]
    public Stated<bool>? LowestWetted { get; init; }

    [Display(Name = "Supply of the top bearing", Description = "How the upper bearing of an upright unit gets its lubricant.")]
    [OneOf("grease", "trough", "jet", "flooded", "none")]
    public Stated<string>? TopBearing { get; init; }

    [Display(Name = "Oil before", Description = "Id in the catalogue of the oil that was in the unit before this revision; absent: a new unit.")]
    [Refers(Declared.Lubricant)]
    public Stated<string>? OilBefore { get; init; }

    [Display(Name = "Flushed", Description = "Whether the unit is flushed before the oil is changed.")]
    public Stated<bool>? Flushed { get; init; }

    [Display(Name = "Ambient", Description = "Warmest air around the housing.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "35 °C")]
    public Stated<Amount>? Ambient { get; init; }

    [Display(Name = "Cooling area", Description = "Surface of the housing in free air.")]
    [Measures(nameof(Dimension.OfArea), AmountRange.Positive, Example = "0.18 m²")]
    public Stated<Amount>? CoolingArea { get; init; }

    [Display(Name = "Heat transfer", Description = "From the housing to the air; absent: 15 W/(m²·K), calm air.")]
    [Measures(nameof(Dimension.OfHeatTransfer), AmountRange.Positive, Example = "20 W/(m²·K)")]
    public Stated<Amount>? HeatTransfer { get; init; }

    [Display(Name = "Other losses", Description = "Churning and pumps, where known; absent: not counted.")]
    [Measures(nameof(Dimension.OfPower), AmountRange.NotNegative, Example = "25 W")]
    public Stated<Amount>? OtherLosses { get; init; }

    [Display(Name = "Free volume", Description = "Of the inside of the housing without its parts.")]
    [Measures(nameof(Dimension.OfVolume), AmountRange.Positive, Example = "1.4 L")]
    public Stated<Amount>? FreeVolume { get; init; }

    [Display(Name = "Fill", Description = "Oil in the housing.")]
    [Measures(nameof(Dimension.OfVolume), AmountRange.Positive, Example = "0.6 L")]
    public Stated<Amount>? Fill { get; init; }

    [Display(Name = "Minimum fill", Description = "Minimum oil that the builder permits.")]
    [Measures(nameof(Dimension.OfVolume), AmountRange.Positive, Example = "0.5 L")]
    public Stated<Amount>? MinFill { get; init; }

    [Display(Name = "Maximum fill", Description = "Most oil that the builder permits.")]
    [Measures(nameof(Dimension.OfVolume), AmountRange.Positive, Example = "0.7 L")]
    public Stated<Amount>? MaxFill { get; init; }

    [Display(Name = "Grease", Description = "Of the bearings that run on grease of their own.")]
    public GreaseSpec? Grease { get; init; }

    [Display(Name = "Level", Description = "Height of the oil at rest over the common axis of a horizontal unit, after a fill as stated; below the axis it is negative.")]
    [Measures(nameof(Dimension.OfLength), Example = "-36 mm")]
    public Stated<Amount>? Level { get; init; }

    [Display(Name = "Minimum level", Description = "Lowest level that the builder permits; absent: the level.")]
    [Measures(nameof(Dimension.OfLength), Example = "-38 mm")]
    public Stated<Amount>? MinLevel { get; init; }

    [Display(Name = "Maximum level", Description = "Highest level that the builder permits; absent: the level.")]
    [Measures(nameof(Dimension.OfLength), Example = "-34 mm")]
    public Stated<Amount>? MaxLevel { get; init; }

    [Display(Name = "Lowest opening", Description = "Height over the common axis of the lowest place that is open to the outside without contact, a labyrinth, a gap or the vent; absent: not judged.")]
    [Measures(nameof(Dimension.OfLength), Example = "62 mm")]
    public Stated<Amount>? LowestOpening { get; init; }

    [Display(Name = "Cooler", Description = "A cooler beside the surface of the housing.")]
    public CoolerSpec? Cooler { get; init; }

    [Display(Name = "Vent", Description = "The vent that the port carries.")]
    public VentSpec? Vent { get; init; }

    [Display(Name = "Warm-up", Description = "Time from the coldest start to the hottest oil; absent: the flow through the vent is not counted.")]
    [Measures(nameof(Dimension.OfTime), AmountRange.Positive, Example = "20 min")]
    public Stated<Amount>? WarmUp { get; init; }

    [Display(Name = "Cool-down", Description = "Shortest time from the hottest oil to the coldest, under a hose or a wave; absent: the flow through the vent is not counted.")]
    [Measures(nameof(Dimension.OfTime), AmountRange.Positive, Example = "5 min")]
    public Stated<Amount>? CoolDown { get; init; }

    [Display(Name = "Pump", Description = "The pump that feeds a jet.")]
    public PumpSpec? Pump { get; init; }

    [Display(Name = "Ports", Description = "Openings for service.")]
    public PortsSpec? Ports { get; init; }
}

/// <summary>Grease of the bearings that run on grease of their own.</summary>
public sealed record GreaseSpec
{
    [Display(Name = "Fill", Description = "Grease as a share of the free space in the bearing; that of sealed bearings is their maker's.")]
    [Measures(nameof(Dimension.Ratio), Example = "40 %", Min = 0, Max = 100, Unit = nameof(Units.Percent))]
    public Stated<Amount>? Fill { get; init; }

    [Display(Name = "Relubrication", Description = "Running time after which the grease is renewed; absent: it must last the service life.")]
    [Measures(nameof(Dimension.OfTime), AmountRange.Positive, Example = "2000 h")]
    public Stated<Amount>? Relubrication { get; init; }
}

/// <summary>The pump of the oil.</summary>
public sealed record PumpSpec
{
    [Display(Name = "Driven by", Description = "input, output: that shaft of the gearbox; machine: the coupled machine at the input; own: a motor of its own that runs whenever the gearbox turns.")]
    [OneOf("input", "output", "machine", "own")]
    public Stated<string>? DrivenBy { get; init; }

    [Display(Name = "Reversible", Description = "Whether it delivers in the same way when it turns the other way.")]
    public Stated<bool>? Reversible { get; init; }

    [Display(Name = "Minimum speed", Description = "Speed of the shaft that drives it, above which it delivers enough.")]
    [Measures(nameof(Dimension.OfAngularSpeed), AmountRange.Positive, Example = "600 rpm")]
    public Stated<Amount>? MinSpeed { get; init; }
}

/// <summary>A vent of the housing.</summary>
public sealed record VentSpec
{
    [Display(Name = "Bore", Description = "Its narrowest bore.")]
    [Measures(nameof(Dimension.OfLength), AmountRange.Positive, Example = "3 mm")]
    public Stated<Amount>? Bore { get; init; }

    [Display(Name = "Opening pressure", Description = "Gauge pressure at which it lets air out; absent: always open.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.NotNegative, Example = "20 mbar")]
    public Stated<Amount>? OpeningPressure { get; init; }

    [Display(Name = "Intake pressure", Description = "Suction at which it lets air in; absent: always open.")]
    [Measures(nameof(Dimension.OfStress), AmountRange.NotNegative, Example = "5 mbar")]
    public Stated<Amount>? IntakePressure { get; init; }

    [Display(Name = "One way", Description = "Whether it lets air out and none in.")]
    public Stated<bool>? OneWay { get; init; }
}

/// <summary>A cooler of the oil.</summary>
public sealed record CoolerSpec
{
    [Display(Name = "Capacity", Description = "Heat that it takes, as its maker states it at a difference of temperatures.")]
    [Measures(nameof(Dimension.OfPower), AmountRange.Positive, Example = "300 W")]
    public Stated<Amount>? Capacity { get; init; }

    [Display(Name = "At", Description = "Difference of oil and coolant as they enter, for which the capacity is stated.")]
    [Measures(nameof(Dimension.OfTemperatureDifference), AmountRange.Positive, Example = "40 K")]
    public Stated<Amount>? At { get; init; }

    [Display(Name = "Transfer", Description = "Heat for each kelvin between oil and coolant as they enter, in place of a capacity.")]
    [Measures(nameof(Dimension.OfHeatConductance), AmountRange.Positive, Example = "12 W/K")]
    public Stated<Amount>? Transfer { get; init; }

    [Display(Name = "Coolant", Description = "Warmest coolant as it enters.")]
    [Measures(nameof(Dimension.OfTemperature), Example = "25 °C")]
    public required Stated<Amount> Coolant { get; init; }
}

/// <summary>Openings for service.</summary>
public sealed record PortsSpec
{
    [Display(Name = "Fill", Description = "An opening to fill.")]
    public Stated<bool>? Fill { get; init; }

    [Display(Name = "Drain", Description = "An opening at the lowest place.")]
    public Stated<bool>? Drain { get; init; }

    [Display(Name = "Vent", Description = "A breather at the highest place.")]
    public Stated<bool>? Vent { get; init; }

    [Display(Name = "Level", Description = "A mark or plug for the level.")]
    public Stated<bool>? Level { get; init; }
}
