namespace Pawl.Quantities;

/// <summary>A unit and its other spellings, parted by blanks.</summary>
internal readonly record struct UnitRow(Unit Unit, string Aliases);

/// <summary>The units themselves. Within a dimension the usual ones come first: hints quote them in this order.</summary>
/// <remarks>
/// SI units and prefixes: BIPM, The International System of Units (SI brochure). Inch-pound units: exact by definition, NIST
/// Special Publication 811, appendix B: inch 25.4 mm, pound 0.453 592 37 kg, US gallon 231 in³; pound-force with the standard
/// acceleration 9.806 65 m/s². Aliases are spelt as <see cref="UnitSpelling"/> leaves them: a product with <c>·</c>.
/// </remarks>
internal static class UnitRows
{
    private const double Inch = 25.4; // mm
    private const double Foot = 12 * Inch; // mm
    private const double Pound = 0.45359237e-3; // t
    private const double PoundForce = 4.4482216152605; // N, = 0.453 592 37 kg · 9.806 65 m/s²
    private const double OunceForce = PoundForce / 16; // N
    private const double KilogramForce = 9.80665; // N
    private const double Psi = PoundForce / (Inch * Inch); // MPa
    private const double Gallon = 231 * Inch * Inch * Inch; // mm³
    private const double Degree = Math.PI / 180; // rad
    private const double Revolution = 2 * Math.PI; // rad
    private const double DegreeFahrenheit = 5 / 9d; // K
    private const double Day = 86_400; // s

    private static readonly Dimension DynamicViscosity = new(Length: -1, Mass: 1, Time: -1);
    private static readonly Dimension ThermalConductivity = new(Length: 1, Mass: 1, Time: -3, Temperature: -1);
    private static readonly Dimension SpecificHeat = new(Length: 2, Time: -2, Temperature: -1);
    private static readonly Dimension AngularAcceleration = new(Angle: 1, Time: -2);

    public static readonly UnitRow[] Named =
    [
        new(Units.One, "1"),
        new(Units.Percent, ""),
        Row("‰", Dimension.Ratio, 1e-3),
        Row("ppm", Dimension.Ratio, 1e-6),

        new(Units.Millimetre, ""),
        new(Units.Micrometre, "um micron"),
        new(Units.Inch, "\" inch inches"),
        Row("m", Dimension.OfLength, 1000),
        Row("cm", Dimension.OfLength, 10),
        Row("nm", Dimension.OfLength, 1e-6),
        Row("mil", Dimension.OfLength, Inch / 1000),
        Row("thou", Dimension.OfLength, Inch / 1000),
        Row("µin", Dimension.OfLength, Inch / 1e6, "uin"),
        new(Units.Foot, "foot feet"),
        Row("yd", Dimension.OfLength, 3 * Foot),

        Row("mm²", Dimension.OfArea, 1, "mm2"),
        Row("cm²", Dimension.OfArea, 100, "cm2"),
        new(Units.SquareMetre, "m2"),
        Row("in²", Dimension.OfArea, Inch * Inch, "in2"),
        Row("ft²", Dimension.OfArea, Foot * Foot, "ft2"),

        new(Units.Litre, "l litre litres liter liters"),
        Row("mL", Dimension.OfVolume, 1e3, "ml"),
        Row("cm³", Dimension.OfVolume, 1e3, "cm3 cc"),
        Row("mm³", Dimension.OfVolume, 1, "mm3"),
        Row("m³", Dimension.OfVolume, 1e9, "m3"),
        Row("in³", Dimension.OfVolume, Inch * Inch * Inch, "in3"),
        Row("gal", Dimension.OfVolume, Gallon),
        Row("qt", Dimension.OfVolume, Gallon / 4),
        Row("fl oz", Dimension.OfVolume, Gallon / 128, "floz fl·oz"),

        new(Units.Kilogram, ""),
        Row("g", Dimension.OfMass, 1e-6),
        Row("mg", Dimension.OfMass, 1e-9),
        Row("t", Dimension.OfMass, 1, "tonne tonnes"),
        Row("lb", Dimension.OfMass, Pound, "lbm lbs"),
        Row("oz", Dimension.OfMass, Pound / 16),

        new(Units.Hour, "hr hrs hour hours"),
        Row("s", Dimension.OfTime, 1, "sec"),
        Row("min", Dimension.OfTime, 60),
        Row("d", Dimension.OfTime, Day, "day days"),
        Row("ms", Dimension.OfTime, 1e-3),

        // NIST SP 811, appendix B: year of 365 days.
        Row("year", Dimension.OfTime, 365 * Day, "a yr years"),

        new(Units.Degree, "deg"),
        new(Units.Arcminute, "arcmin"),
        new(Units.Arcsecond, "arcsec"),
        new(Units.Radian, ""),
        Row("mrad", Dimension.OfAngle, 1e-3),
        Row("µrad", Dimension.OfAngle, 1e-6, "urad"),
        Row("rev", Dimension.OfAngle, Revolution, "revs"),

        new(Units.Celsius, "degC ℃"),
        new(Units.Fahrenheit, "degF ℉"),

        new(Units.Kelvin, ""),
        Row("Δ°C", Dimension.OfTemperatureDifference, 1, "ΔC ΔK ΔdegC Δ℃ delta_degC"),
        Row("Δ°F", Dimension.OfTemperatureDifference, DegreeFahrenheit, "ΔF ΔdegF Δ℉ delta_degF"),

        new(Units.Newton, ""),
        Row("kN", Dimension.OfForce, 1e3),
        Row("lbf", Dimension.OfForce, PoundForce),
        Row("daN", Dimension.OfForce, 10),
        Row("MN", Dimension.OfForce, 1e6),
        Row("mN", Dimension.OfForce, 1e-3),
        Row("ozf", Dimension.OfForce, OunceForce),
        Row("kgf", Dimension.OfForce, KilogramForce),
        Row("kip", Dimension.OfForce, 1000 * PoundForce),

        // In the shops a torque wrench reads ft·lb: the pound there is a force.
        new(Units.NewtonMetre, "Nm m·N N-m"),
        Row("N·mm", Dimension.OfTorque, 1, "Nmm N-mm"),
        Row("kN·m", Dimension.OfTorque, 1e6, "kNm kN-m"),
        Row("lbf·ft", Dimension.OfTorque, PoundForce * Foot,
            "ft·lbf lb·ft ft·lb ft·lbs lbf-ft ft-lbf lb-ft ft-lb ft-lbs lbs-ft"),
        Row("lbf·in", Dimension.OfTorque, PoundForce * Inch,
            "in·lbf lb·in in·lb in·lbs lbf-in in-lbf lb-in in-lb in-lbs lbs-in"),
        Row("ozf·in", Dimension.OfTorque, OunceForce * Inch, "in·ozf oz·in in·oz ozf-in in-ozf oz-in in-oz"),
        Row("N·cm", Dimension.OfTorque, 10, "Ncm N-cm"),
        Row("mN·m", Dimension.OfTorque, 1, "mNm"),
        Row("daN·m", Dimension.OfTorque, 1e4, "daNm"),
        Row("kgf·m", Dimension.OfTorque, KilogramForce * 1000),
        Row("kgf·cm", Dimension.OfTorque, KilogramForce * 10),

        new(Units.Megapascal, ""),
        Row("N/mm²", Dimension.OfStress, 1, "N/mm2"),
        Row("bar", Dimension.OfStress, 0.1),
        Row("psi", Dimension.OfStress, Psi, "PSI lbf/in² lbf/in2"),
        Row("Pa", Dimension.OfStress, 1e-6),
        Row("kPa", Dimension.OfStress, 1e-3),
        Row("GPa", Dimension.OfStress, 1e3),
        Row("mbar", Dimension.OfStress, 1e-4),
        Row("ksi", Dimension.OfStress, 1e3 * Psi),
        Row("Msi", Dimension.OfStress, 1e6 * Psi, "Mpsi"),

        new(Units.Kilowatt, ""),
        new(Units.Watt, ""),
        Row("hp", Dimension.OfPower, 550 * PoundForce * Foot, "HP"), // NIST SP 811: 550 ft·lbf/s.
        Row("MW", Dimension.OfPower, 1e9),
        Row("PS", Dimension.OfPower, 75 * KilogramForce * 1000), // NIST SP 811, horsepower (metric): 75 kgf·m/s.

        Row("rpm", Dimension.OfAngularSpeed, Revolution / 60, "RPM r/min rev/min revs/min"),
        new(Units.RevolutionPerMinute, "min-1"),
        Row("rad/s", Dimension.OfAngularSpeed, 1),
        Row("°/s", Dimension.OfAngularSpeed, Degree),
        Row("rev/s", Dimension.OfAngularSpeed, Revolution, "r/s rps"),

        new(Units.Hertz, ""),
        Row("kHz", Dimension.OfFrequency, 1e3),
        Row("1/s", Dimension.OfFrequency, 1, "s-1"),

        new(Units.MetrePerSecond, ""),
        new(Units.MillimetrePerSecond, ""),
        Row("ft/min", Dimension.OfSpeed, Foot / 60, "fpm"),
        Row("km/h", Dimension.OfSpeed, 1e6 / 3600),
        Row("m/min", Dimension.OfSpeed, 1000 / 60d),
        Row("mm/min", Dimension.OfSpeed, 1 / 60d),
        Row("ft/s", Dimension.OfSpeed, Foot),
        Row("in/s", Dimension.OfSpeed, Inch),

        // Stokes and poise: NIST SP 811, appendix B.
        new(Units.SquareMillimetrePerSecond, "mm2/s"),
        Row("cSt", Dimension.OfKinematicViscosity, 1),
        Row("St", Dimension.OfKinematicViscosity, 100),
        Row("m²/s", Dimension.OfKinematicViscosity, 1e6, "m2/s"),

        Row("mPa·s", DynamicViscosity, 1e-9),
        Row("Pa·s", DynamicViscosity, 1e-6),
        Row("cP", DynamicViscosity, 1e-9),

        new(Units.KilogramPerCubicMetre, "kg/m3"),
        Row("g/cm³", Dimension.OfDensity, 1e-9, "g/cm3 g/cc"),
        Row("kg/L", Dimension.OfDensity, 1e-9, "kg/l"),
        Row("lb/in³", Dimension.OfDensity, Pound / (Inch * Inch * Inch), "lb/in3"),

        new(Units.PerKelvin, "/K"),
        Row("µm/(m·K)", Dimension.OfThermalExpansion, 1e-6),
        Row("ppm/K", Dimension.OfThermalExpansion, 1e-6),
        Row("1/°F", Dimension.OfThermalExpansion, 1 / DegreeFahrenheit),
        Row("in/(in·°F)", Dimension.OfThermalExpansion, 1 / DegreeFahrenheit),

        new(Units.NewtonPerMillimetre, ""),
        Row("N/µm", Dimension.OfLineLoad, 1e3),
        Row("lbf/in", Dimension.OfLineLoad, PoundForce / Inch),
        Row("N/m", Dimension.OfLineLoad, 1e-3),

        new(Units.NewtonMetrePerRadian, "Nm/rad"),
        Row("N·m/′", Dimension.OfTorsionalStiffness, 1e3 / (Degree / 60), "Nm/′ N·m/arcmin Nm/arcmin"),

        Row("W/(m·K)", ThermalConductivity, 1),
        new(Units.WattPerSquareMetreKelvin, ""),
        new(Units.WattPerKelvin, ""),
        Row("J/(kg·K)", SpecificHeat, 1e6),
        Row("kJ/(kg·K)", SpecificHeat, 1e9),

        new(Units.KilogramSquareMetre, "kg·m2"),
        Row("kg·cm²", Dimension.OfInertia, 0.1, "kg·cm2"),
        Row("lb·in²", Dimension.OfInertia, Pound * Inch * Inch, "lb·in2"),

        Row("m/s²", Dimension.OfAcceleration, 1e3, "m/s2"),
        Row("rad/s²", AngularAcceleration, 1, "rad/s2"),

        new(Units.LitrePerMinute, "l/min"),
        Row("gal/min", Dimension.OfVolumeFlow, Gallon / 60, "gpm"),

        // Rules and reports speak of Vickers hardness; specs may write other scales, which convert by a table and not by a factor.
        new(Units.Vickers, ""),

        Row("1/MPa", Dimension.OfInverseStress, 1),
        new(Units.PerGigapascal, ""),
    ];

    /// <summary>
    /// Parts of compounds that mislead when alone: a torque given in joules is a mistake, mPa one for MPa, and no reducer
    /// has a length in km.
    /// </summary>
    public static readonly UnitRow[] OnlyInCompounds =
    [
        Row("J", Dimension.OfTorque, 1e3),
        Row("kJ", Dimension.OfTorque, 1e6),
        Row("mPa", Dimension.OfStress, 1e-9),
        Row("km", Dimension.OfLength, 1e6),
        Row("dm", Dimension.OfLength, 100),
    ];

    private static UnitRow Row(string symbol, Dimension dimension, double factor, string aliases = "") =>
        new(new Unit(symbol, dimension, factor), aliases);
}
