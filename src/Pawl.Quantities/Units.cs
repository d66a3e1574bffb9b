using System.Diagnostics.CodeAnalysis;

namespace Pawl.Quantities;

/// <summary>Every unit that a builder writes on a drawing or a bench sheet.</summary>
/// <remarks>Factors lead to the coherent set N, mm, MPa, N·mm, rad, s, °C (mass: tonne).</remarks>
public static class Units
{
    public static readonly Unit One = new("", Dimension.Ratio, 1);
    public static readonly Unit Percent = new("%", Dimension.Ratio, 0.01);
    public static readonly Unit Millimetre = new("mm", Dimension.OfLength, 1);
    public static readonly Unit Micrometre = new("µm", Dimension.OfLength, 1e-3);
    public static readonly Unit Inch = new("in", Dimension.OfLength, 25.4);
    public static readonly Unit Foot = new("ft", Dimension.OfLength, 304.8);
    public static readonly Unit SquareMetre = new("m²", Dimension.OfArea, 1e6);
    public static readonly Unit Litre = new("L", Dimension.OfVolume, 1e6);
    public static readonly Unit Radian = new("rad", Dimension.OfAngle, 1);
    public static readonly Unit Degree = new("°", Dimension.OfAngle, Math.PI / 180);
    public static readonly Unit Arcminute = new("′", Dimension.OfAngle, Math.PI / 10_800);
    public static readonly Unit Arcsecond = new("″", Dimension.OfAngle, Math.PI / 648_000);
    public static readonly Unit Celsius = new("°C", Dimension.OfTemperature, 1);
    public static readonly Unit Fahrenheit = new("°F", Dimension.OfTemperature, 5 / 9d, -160 / 9d);
    public static readonly Unit Kelvin = new("K", Dimension.OfTemperatureDifference, 1);
    public static readonly Unit Newton = new("N", Dimension.OfForce, 1);
    public static readonly Unit NewtonMetre = new("N·m", Dimension.OfTorque, 1000);
    public static readonly Unit Megapascal = new("MPa", Dimension.OfStress, 1);
    public static readonly Unit Kilowatt = new("kW", Dimension.OfPower, 1e6);
    public static readonly Unit Watt = new("W", Dimension.OfPower, 1e3);
    public static readonly Unit RevolutionPerMinute = new("1/min", Dimension.OfAngularSpeed, Math.PI / 30);
    public static readonly Unit Hertz = new("Hz", Dimension.OfFrequency, 1);
    public static readonly Unit MetrePerSecond = new("m/s", Dimension.OfSpeed, 1000);
    public static readonly Unit MetrePerSecondSquared = new("m/s²", Dimension.OfAcceleration, 1000);
    public static readonly Unit MillimetrePerSecond = new("mm/s", Dimension.OfSpeed, 1);
    public static readonly Unit MillimetrePerMinute = new("mm/min", Dimension.OfSpeed, 1 / 60d);
    public static readonly Unit Hour = new("h", Dimension.OfTime, 3600);
    public static readonly Unit Kilogram = new("kg", Dimension.OfMass, 1e-3);
    public static readonly Unit SquareMillimetrePerSecond = new("mm²/s", Dimension.OfKinematicViscosity, 1);
    public static readonly Unit WattPerSquareMetreKelvin = new("W/(m²·K)", Dimension.OfHeatTransfer, 1e-3);
    public static readonly Unit WattPerKelvin = new("W/K", Dimension.OfHeatConductance, 1e3);
    public static readonly Unit LitrePerMinute = new("L/min", Dimension.OfVolumeFlow, 1e6 / 60);
    public static readonly Unit KilogramPerCubicMetre = new("kg/m³", Dimension.OfDensity, 1e-12);
    public static readonly Unit PerKelvin = new("1/K", Dimension.OfThermalExpansion, 1);

    public static readonly Unit NewtonPerMillimetre = new("N/mm", Dimension.OfLineLoad, 1);
    public static readonly Unit PerGigapascal = new("1/GPa", Dimension.OfInverseStress, 1e-3);
    public static readonly Unit KilogramSquareMetre = new("kg·m²", Dimension.OfInertia, 1e3);
    public static readonly Unit NewtonMetrePerRadian = new("N·m/rad", Dimension.OfTorsionalStiffness, 1e3);
    public static readonly Unit Vickers = new("HV", Dimension.OfHardness, 1);

    /// <summary>Every unit with a name of its own, the usual ones first. Compounds of them are units too.</summary>
    public static ImmutableArray<Unit> All => UnitTable.All;

    /// <summary>Reads a unit, simple or compound: <c>mm</c>, <c>lbf*ft</c>, <c>W/(m·K)</c>.</summary>
    /// <remarks>
    /// Case counts: mN is not MN. After a solidus a product needs parentheses (ISO 80000-1): <c>W/m·K</c> is no unit.
    /// A temperature inside a compound is a difference. <c>1/min</c> is a speed of rotation, <c>1/s</c> a frequency.
    /// No text is the unit of a bare number.
    /// </remarks>
    public static bool TryParse(ReadOnlySpan<char> text, [NotNullWhen(true)] out Unit? unit)
    {
        if (!text.IsWhiteSpace()) return UnitText.TryParse(text, out unit, out _);
        unit = One;
        return true;
    }

    /// <summary>A few units that measure this, for a hint: <c>mm, µm, in</c>.</summary>
    public static ImmutableArray<Unit> Fitting(Dimension dimension)
    {
        const int Few = 4;
        var fitting = ImmutableArray.CreateBuilder<Unit>(Few);
        foreach (var unit in UnitTable.All)
        {
            if (unit.Dimension == dimension && unit.Symbol.Length > 0) fitting.Add(unit);
            if (fitting.Count == Few) break;
        }

        return fitting.ToImmutable();
    }

    /// <summary>Every spelling of every unit with a name of its own, with what it measures; a product is spelt with <c>·</c>.</summary>
    public static IEnumerable<(Dimension Dimension, string Spelling)> Spellings()
    {
        foreach (var (unit, aliases) in UnitRows.Named)
        {
            if (unit.Symbol.Length > 0) yield return (unit.Dimension, unit.Symbol);
            foreach (var alias in aliases.Split(' ', StringSplitOptions.RemoveEmptyEntries)) yield return (unit.Dimension, alias);
        }
    }

    /// <summary>The known unit symbol nearest to a misspelt one, or null when none is near.</summary>
    public static string? Nearest(ReadOnlySpan<char> text) => UnitTable.NearestSymbol(text);
}
