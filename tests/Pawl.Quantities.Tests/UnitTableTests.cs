using UnitsNet;
using UnitsNet.Units;

namespace Pawl.Quantities.Tests;

/// <summary>Every factor of the unit table against the package UnitsNet, many also against NIST SP 811.</summary>
public class UnitTableTests
{
    private static readonly Dictionary<string, (Enum Unit, Enum Coherent)> Oracle = new()
    {
        ["%"] = (RatioUnit.Percent, RatioUnit.DecimalFraction),
        ["‰"] = (RatioUnit.PartPerThousand, RatioUnit.DecimalFraction),
        ["ppm"] = (RatioUnit.PartPerMillion, RatioUnit.DecimalFraction),
        ["mm"] = (LengthUnit.Millimeter, LengthUnit.Millimeter),
        ["µm"] = (LengthUnit.Micrometer, LengthUnit.Millimeter),
        ["in"] = (LengthUnit.Inch, LengthUnit.Millimeter),
        ["m"] = (LengthUnit.Meter, LengthUnit.Millimeter),
        ["cm"] = (LengthUnit.Centimeter, LengthUnit.Millimeter),
        ["nm"] = (LengthUnit.Nanometer, LengthUnit.Millimeter),
        ["mil"] = (LengthUnit.Mil, LengthUnit.Millimeter),
        ["thou"] = (LengthUnit.Mil, LengthUnit.Millimeter),
        ["µin"] = (LengthUnit.Microinch, LengthUnit.Millimeter),
        ["ft"] = (LengthUnit.Foot, LengthUnit.Millimeter),
        ["yd"] = (LengthUnit.Yard, LengthUnit.Millimeter),
        ["mm²"] = (AreaUnit.SquareMillimeter, AreaUnit.SquareMillimeter),
        ["cm²"] = (AreaUnit.SquareCentimeter, AreaUnit.SquareMillimeter),
        ["m²"] = (AreaUnit.SquareMeter, AreaUnit.SquareMillimeter),
        ["in²"] = (AreaUnit.SquareInch, AreaUnit.SquareMillimeter),
        ["ft²"] = (AreaUnit.SquareFoot, AreaUnit.SquareMillimeter),
        ["L"] = (VolumeUnit.Liter, VolumeUnit.CubicMillimeter),
        ["mL"] = (VolumeUnit.Milliliter, VolumeUnit.CubicMillimeter),
        ["cm³"] = (VolumeUnit.CubicCentimeter, VolumeUnit.CubicMillimeter),
        ["mm³"] = (VolumeUnit.CubicMillimeter, VolumeUnit.CubicMillimeter),
        ["m³"] = (VolumeUnit.CubicMeter, VolumeUnit.CubicMillimeter),
        ["in³"] = (VolumeUnit.CubicInch, VolumeUnit.CubicMillimeter),
        ["gal"] = (VolumeUnit.UsGallon, VolumeUnit.CubicMillimeter),
        ["qt"] = (VolumeUnit.UsQuart, VolumeUnit.CubicMillimeter),
        ["fl oz"] = (VolumeUnit.UsOunce, VolumeUnit.CubicMillimeter),
        ["kg"] = (MassUnit.Kilogram, MassUnit.Tonne),
        ["g"] = (MassUnit.Gram, MassUnit.Tonne),
        ["mg"] = (MassUnit.Milligram, MassUnit.Tonne),
        ["t"] = (MassUnit.Tonne, MassUnit.Tonne),
        ["lb"] = (MassUnit.Pound, MassUnit.Tonne),
        ["oz"] = (MassUnit.Ounce, MassUnit.Tonne),
        ["h"] = (DurationUnit.Hour, DurationUnit.Second),
        ["s"] = (DurationUnit.Second, DurationUnit.Second),
        ["min"] = (DurationUnit.Minute, DurationUnit.Second),
        ["d"] = (DurationUnit.Day, DurationUnit.Second),
        ["ms"] = (DurationUnit.Millisecond, DurationUnit.Second),
        ["year"] = (DurationUnit.Year365, DurationUnit.Second),
        ["°"] = (AngleUnit.Degree, AngleUnit.Radian),
        ["′"] = (AngleUnit.Arcminute, AngleUnit.Radian),
        ["″"] = (AngleUnit.Arcsecond, AngleUnit.Radian),
        ["rad"] = (AngleUnit.Radian, AngleUnit.Radian),
        ["mrad"] = (AngleUnit.Milliradian, AngleUnit.Radian),
        ["µrad"] = (AngleUnit.Microradian, AngleUnit.Radian),
        ["rev"] = (AngleUnit.Revolution, AngleUnit.Radian),
        ["°C"] = (TemperatureUnit.DegreeCelsius, TemperatureUnit.DegreeCelsius),
        ["°F"] = (TemperatureUnit.DegreeFahrenheit, TemperatureUnit.DegreeCelsius),
        ["K"] = (TemperatureDeltaUnit.Kelvin, TemperatureDeltaUnit.Kelvin),
        ["Δ°C"] = (TemperatureDeltaUnit.DegreeCelsius, TemperatureDeltaUnit.Kelvin),
        ["Δ°F"] = (TemperatureDeltaUnit.DegreeFahrenheit, TemperatureDeltaUnit.Kelvin),
        ["N"] = (ForceUnit.Newton, ForceUnit.Newton),
        ["kN"] = (ForceUnit.Kilonewton, ForceUnit.Newton),
        ["lbf"] = (ForceUnit.PoundForce, ForceUnit.Newton),
        ["daN"] = (ForceUnit.Decanewton, ForceUnit.Newton),
        ["MN"] = (ForceUnit.Meganewton, ForceUnit.Newton),
        ["mN"] = (ForceUnit.Millinewton, ForceUnit.Newton),
        ["ozf"] = (ForceUnit.OunceForce, ForceUnit.Newton),
        ["kgf"] = (ForceUnit.KilogramForce, ForceUnit.Newton),
        ["kip"] = (ForceUnit.KilopoundForce, ForceUnit.Newton),
        ["N·m"] = (TorqueUnit.NewtonMeter, TorqueUnit.NewtonMillimeter),
        ["N·mm"] = (TorqueUnit.NewtonMillimeter, TorqueUnit.NewtonMillimeter),
        ["kN·m"] = (TorqueUnit.KilonewtonMeter, TorqueUnit.NewtonMillimeter),
        ["lbf·ft"] = (TorqueUnit.PoundForceFoot, TorqueUnit.NewtonMillimeter),
        ["lbf·in"] = (TorqueUnit.PoundForceInch, TorqueUnit.NewtonMillimeter),
        ["N·cm"] = (TorqueUnit.NewtonCentimeter, TorqueUnit.NewtonMillimeter),
        ["kgf·m"] = (TorqueUnit.KilogramForceMeter, TorqueUnit.NewtonMillimeter),
        ["kgf·cm"] = (TorqueUnit.KilogramForceCentimeter, TorqueUnit.NewtonMillimeter),
        ["MPa"] = (PressureUnit.Megapascal, PressureUnit.Megapascal),
        ["N/mm²"] = (PressureUnit.NewtonPerSquareMillimeter, PressureUnit.Megapascal),
        ["bar"] = (PressureUnit.Bar, PressureUnit.Megapascal),
        ["psi"] = (PressureUnit.PoundForcePerSquareInch, PressureUnit.Megapascal),
        ["Pa"] = (PressureUnit.Pascal, PressureUnit.Megapascal),
        ["kPa"] = (PressureUnit.Kilopascal, PressureUnit.Megapascal),
        ["GPa"] = (PressureUnit.Gigapascal, PressureUnit.Megapascal),
        ["mbar"] = (PressureUnit.Millibar, PressureUnit.Megapascal),
        ["ksi"] = (PressureUnit.KilopoundForcePerSquareInch, PressureUnit.Megapascal),
        ["kW"] = (PowerUnit.Kilowatt, PowerUnit.Milliwatt),
        ["W"] = (PowerUnit.Watt, PowerUnit.Milliwatt),
        ["hp"] = (PowerUnit.MechanicalHorsepower, PowerUnit.Milliwatt),
        ["MW"] = (PowerUnit.Megawatt, PowerUnit.Milliwatt),
        ["PS"] = (PowerUnit.MetricHorsepower, PowerUnit.Milliwatt),
        ["rpm"] = (RotationalSpeedUnit.RevolutionPerMinute, RotationalSpeedUnit.RadianPerSecond),
        ["1/min"] = (RotationalSpeedUnit.RevolutionPerMinute, RotationalSpeedUnit.RadianPerSecond),
        ["rad/s"] = (RotationalSpeedUnit.RadianPerSecond, RotationalSpeedUnit.RadianPerSecond),
        ["°/s"] = (RotationalSpeedUnit.DegreePerSecond, RotationalSpeedUnit.RadianPerSecond),
        ["rev/s"] = (RotationalSpeedUnit.RevolutionPerSecond, RotationalSpeedUnit.RadianPerSecond),
        ["Hz"] = (FrequencyUnit.Hertz, FrequencyUnit.Hertz),
        ["kHz"] = (FrequencyUnit.Kilohertz, FrequencyUnit.Hertz),
        ["1/s"] = (FrequencyUnit.PerSecond, FrequencyUnit.Hertz),
        ["m/s"] = (SpeedUnit.MeterPerSecond, SpeedUnit.MillimeterPerSecond),
        ["mm/s"] = (SpeedUnit.MillimeterPerSecond, SpeedUnit.MillimeterPerSecond),
        ["ft/min"] = (SpeedUnit.FootPerMinute, SpeedUnit.MillimeterPerSecond),
        ["km/h"] = (SpeedUnit.KilometerPerHour, SpeedUnit.MillimeterPerSecond),
        ["m/min"] = (SpeedUnit.MeterPerMinute, SpeedUnit.MillimeterPerSecond),
        ["mm/min"] = (SpeedUnit.MillimeterPerMinute, SpeedUnit.MillimeterPerSecond),
        ["ft/s"] = (SpeedUnit.FootPerSecond, SpeedUnit.MillimeterPerSecond),
        ["in/s"] = (SpeedUnit.InchPerSecond, SpeedUnit.MillimeterPerSecond),
        ["mm²/s"] = (KinematicViscosityUnit.Centistokes, KinematicViscosityUnit.Centistokes),
        ["cSt"] = (KinematicViscosityUnit.Centistokes, KinematicViscosityUnit.Centistokes),
        ["St"] = (KinematicViscosityUnit.Stokes, KinematicViscosityUnit.Centistokes),
        ["m²/s"] = (KinematicViscosityUnit.SquareMeterPerSecond, KinematicViscosityUnit.Centistokes),
        ["kg/m³"] = (DensityUnit.KilogramPerCubicMeter, DensityUnit.TonnePerCubicMillimeter),
        ["g/cm³"] = (DensityUnit.GramPerCubicCentimeter, DensityUnit.TonnePerCubicMillimeter),
        ["kg/L"] = (DensityUnit.KilogramPerLiter, DensityUnit.TonnePerCubicMillimeter),
        ["lb/in³"] = (DensityUnit.PoundPerCubicInch, DensityUnit.TonnePerCubicMillimeter),
        ["1/K"] = (CoefficientOfThermalExpansionUnit.PerKelvin, CoefficientOfThermalExpansionUnit.PerKelvin),
        ["ppm/K"] = (CoefficientOfThermalExpansionUnit.PpmPerKelvin, CoefficientOfThermalExpansionUnit.PerKelvin),
        ["1/°F"] = (CoefficientOfThermalExpansionUnit.PerDegreeFahrenheit, CoefficientOfThermalExpansionUnit.PerKelvin),
        ["N/mm"] = (ForcePerLengthUnit.NewtonPerMillimeter, ForcePerLengthUnit.NewtonPerMillimeter),
        ["lbf/in"] = (ForcePerLengthUnit.PoundForcePerInch, ForcePerLengthUnit.NewtonPerMillimeter),
        ["N/m"] = (ForcePerLengthUnit.NewtonPerMeter, ForcePerLengthUnit.NewtonPerMillimeter),
        ["N·m/rad"] = (RotationalStiffnessUnit.NewtonMeterPerRadian, RotationalStiffnessUnit.NewtonMillimeterPerRadian),
        ["rad/s²"] = (RotationalAccelerationUnit.RadianPerSecondSquared, RotationalAccelerationUnit.RadianPerSecondSquared),
        ["m/s²"] = (AccelerationUnit.MeterPerSecondSquared, AccelerationUnit.MillimeterPerSecondSquared),
        ["kg·m²"] = (MassMomentOfInertiaUnit.KilogramSquareMeter, MassMomentOfInertiaUnit.TonneSquareMilimeter),
        ["kg·cm²"] = (MassMomentOfInertiaUnit.KilogramSquareCentimeter, MassMomentOfInertiaUnit.TonneSquareMilimeter),
        ["lb·in²"] = (MassMomentOfInertiaUnit.PoundSquareInch, MassMomentOfInertiaUnit.TonneSquareMilimeter),
        ["L/min"] = (VolumeFlowUnit.LiterPerMinute, VolumeFlowUnit.CubicMillimeterPerSecond),
        ["gal/min"] = (VolumeFlowUnit.UsGallonPerMinute, VolumeFlowUnit.CubicMillimeterPerSecond),
        ["1/MPa"] = (CompressibilityUnit.InverseMegapascal, CompressibilityUnit.InverseMegapascal),
    };

    // UnitsNet 5 keeps these rounded: to 7 digits or more, the horsepower to 745.69 W. The definitions are checked below.
    private static readonly Dictionary<string, double> RoundedInOracle = new()
    {
        ["fl oz"] = 2e-12,
        ["hp"] = 2e-5,
        ["rpm"] = 1e-11,
        ["1/min"] = 1e-11,
        ["rev/s"] = 1e-11,
        ["lb/in³"] = 2e-7,
        ["lbf/in"] = 2e-9,
        ["lb·in²"] = 2e-8,
    };

    // Not in UnitsNet 5, or without a coherent unit there to compare with; the factor follows from the definitions.
    private static readonly Dictionary<string, double> NotInOracle = new()
    {
        [""] = 1,
        ["ozf·in"] = 4.4482216152605 / 16 * 25.4,
        ["mN·m"] = 1,
        ["daN·m"] = 10_000,
        ["Msi"] = 4.4482216152605e6 / 645.16,
        ["mPa·s"] = 1e-9, // 1e-3 N/m² · s = 1e-9 N/mm² · s
        ["Pa·s"] = 1e-6,
        ["cP"] = 1e-9,
        ["µm/(m·K)"] = 1e-6,
        ["in/(in·°F)"] = 1.8,
        ["N/µm"] = 1000,
        ["N·m/′"] = 1000 * 60 * 180 / Math.PI,
        ["W/(m·K)"] = 1, // 1000 N·mm/s / (1000 mm · K)
        ["W/(m²·K)"] = 1e-3,
        ["W/K"] = 1e3, // 1000 N·mm/s / K
        ["J/(kg·K)"] = 1e6, // 1000 N·mm / (0.001 t · K)
        ["kJ/(kg·K)"] = 1e9,
        ["1/GPa"] = 1e-3,
        ["HV"] = 1, // A scale of its own.
    };

    public static TheoryData<string> Symbols => [.. Units.All.Select(unit => unit.Symbol)];

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Factor_and_offset_agree_with_UnitsNet_or_the_definition(string symbol)
    {
        var unit = Units.All.Single(unit => unit.Symbol == symbol);
        if (NotInOracle.TryGetValue(symbol, out var factor))
        {
            Assert.Equal(1, unit.Factor / factor, tolerance: 1e-14);
            return;
        }

        var (theirs, coherent) = Oracle[symbol];
        foreach (var value in new[] { 1.0, 250.0, -40.0 })
        {
            var expected = UnitConverter.Convert(value, theirs, coherent);

            // Both sides round in binary: a few units in the last of 16 digits.
            var relative = RoundedInOracle.GetValueOrDefault(symbol, 1e-13);
            Assert.Equal(expected, unit.ToCoherent(value), tolerance: Math.Abs(expected) * relative);
        }
    }

    [Fact]
    public void Each_unit_has_one_check_and_each_check_a_unit()
    {
        var symbols = Units.All.Select(unit => unit.Symbol).Order(StringComparer.Ordinal).ToArray();

        Assert.Equal(symbols, Oracle.Keys.Concat(NotInOracle.Keys).Order(StringComparer.Ordinal));
        Assert.Equal(symbols.Length, symbols.Distinct().Count());
    }

    // NIST Special Publication 811, appendix B, factors printed in bold: exact. Psi and horsepower as printed, 7 digits.
    [Theory]
    [InlineData("in", "mm", 25.4, 0)]
    [InlineData("ft", "m", 0.3048, 0)]
    [InlineData("yd", "m", 0.9144, 0)]
    [InlineData("mil", "mm", 0.0254, 0)]
    [InlineData("lb", "kg", 0.45359237, 0)]
    [InlineData("lbf", "N", 4.4482216152605, 0)]
    [InlineData("kgf", "N", 9.80665, 0)]
    [InlineData("gal", "L", 3.785411784, 0)]
    [InlineData("qt", "L", 0.946352946, 0)]
    [InlineData("fl oz", "mL", 29.57353, 5e-6)]
    [InlineData("lbf·ft", "N·m", 1.355818, 5e-7)]
    [InlineData("lbf·in", "N·m", 0.1129848, 5e-8)]
    [InlineData("ozf·in", "N·mm", 7.061552, 5e-7)]
    [InlineData("psi", "kPa", 6.894757, 5e-7)]
    [InlineData("hp", "W", 745.6999, 5e-5)]
    [InlineData("PS", "W", 735.4988, 5e-5)]
    [InlineData("cP", "mPa·s", 1, 0)]
    [InlineData("cSt", "mm²/s", 1, 0)]
    [InlineData("bar", "kPa", 100, 0)]
    [InlineData("rpm", "rad/s", 0.1047198, 5e-8)]
    [InlineData("lb/in³", "kg/m³", 27679.90, 5e-3)]
    public void One_of_this_is_so_many_of_that_in_NIST_SP_811(string one, string other, double factor, double halfLastDigit)
    {
        var found = new Amount(1, Parse.Unit(one)).In(Parse.Unit(other));

        Assert.Equal(factor, found, tolerance: halfLastDigit + (1e-14 * factor));
    }

    [Theory]
    [InlineData("400 °F", 204.444, 5e-4)] // (400 − 32)·5/9
    [InlineData("212 °F", 100, 1e-12)]
    [InlineData("-40 °F", -40, 1e-12)]
    public void Fahrenheit_counts_from_minus_32_degrees(string text, double celsius, double tolerance) =>
        Assert.Equal(celsius, Parse.Amount(text).Coherent, tolerance);

    [Fact]
    public void A_compound_in_the_table_is_the_compound_of_its_parts()
    {
        foreach (var unit in Units.All.Where(unit => unit.Symbol.AsSpan().ContainsAny("·/²³")))
        {
            // Spelt differently, so that the table's own row is not what answers.
            var parts = new UnitExpression($"({unit.Symbol})^1");
            if (unit.Symbol == "1/min") continue; // The one exception: a speed of rotation by decree.

            Assert.True(parts.TryEvaluate(out var found, out _), unit.Symbol);
            Assert.Same(unit, found);

            // With another unit behind it the factor must be worked out.
            Assert.True(new UnitExpression($"({unit.Symbol})·yd").TryEvaluate(out var product, out _), unit.Symbol);
            Assert.Equal(unit.Dimension * Dimension.OfLength, product.Dimension);
            Assert.Equal(1, product.Factor / unit.Factor / 914.4, tolerance: 1e-14);
        }
    }

    [Fact]
    public void No_spelling_stands_for_two_units()
    {
        var spellings = UnitRows.Named.SelectMany(row => row.Aliases.Split(' ').Append(row.Unit.Symbol))
            .Where(spelling => spelling.Length > 0).ToArray();

        Assert.Empty(spellings.GroupBy(spelling => spelling).Where(group => group.Count() > 1).Select(group => group.Key));
        Assert.All(UnitRows.Named, row =>
            Assert.All(row.Aliases.Split(' ').Where(alias => alias.Length > 0), alias => Assert.Same(row.Unit, Parse.Unit(alias))));
    }

    [Fact]
    public void Fitting_units_measure_the_dimension_and_come_first_things_first()
    {
        Assert.Equal(["mm", "µm", "in", "m"], Units.Fitting(Dimension.OfLength).Select(unit => unit.Symbol));
        Assert.Equal(["°C", "°F"], Units.Fitting(Dimension.OfTemperature).Select(unit => unit.Symbol));
        Assert.DoesNotContain("J", Units.Fitting(Dimension.OfTorque).Select(unit => unit.Symbol));
        Assert.Empty(Units.Fitting(new Dimension(Length: 7)));
    }
}
