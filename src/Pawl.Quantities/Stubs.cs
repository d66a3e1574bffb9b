using System.Diagnostics.CodeAnalysis;

namespace Pawl.Quantities;

internal static class DimensionNames
{
    public static string Of(Dimension dimension) => throw new NotImplementedException();
}

internal static class Notation
{
    public static bool TryParseAmount(ReadOnlySpan<char> text, out Amount amount, [NotNullWhen(false)] out NotationError? error) =>
        throw new NotImplementedException();

    public static bool TryParseToleranced(
        ReadOnlySpan<char> text, [NotNullWhen(true)] out Toleranced? dimension, [NotNullWhen(false)] out NotationError? error) =>
        throw new NotImplementedException();
}

/// <summary>Every unit that a builder writes on a drawing or a bench sheet.</summary>
public static class Units
{
    public static readonly Unit One = new("", Dimension.Ratio, 1);
    public static readonly Unit Percent = new("%", Dimension.Ratio, 0.01);
    public static readonly Unit Millimetre = new("mm", Dimension.OfLength, 1);
    public static readonly Unit Micrometre = new("µm", Dimension.OfLength, 1e-3);
    public static readonly Unit Radian = new("rad", Dimension.OfAngle, 1);
    public static readonly Unit Degree = new("°", Dimension.OfAngle, Math.PI / 180);
    public static readonly Unit Arcminute = new("′", Dimension.OfAngle, Math.PI / 10_800);
    public static readonly Unit Celsius = new("°C", Dimension.OfTemperature, 1);
    public static readonly Unit Kelvin = new("K", Dimension.OfTemperatureDifference, 1);
    public static readonly Unit Newton = new("N", Dimension.OfForce, 1);
    public static readonly Unit NewtonMetre = new("N·m", Dimension.OfTorque, 1000);
    public static readonly Unit Megapascal = new("MPa", Dimension.OfStress, 1);
    public static readonly Unit Kilowatt = new("kW", Dimension.OfPower, 1e6);
    public static readonly Unit Watt = new("W", Dimension.OfPower, 1e3);
    public static readonly Unit RevolutionPerMinute = new("1/min", Dimension.OfAngularSpeed, Math.PI / 30);
    public static readonly Unit Hertz = new("Hz", Dimension.OfFrequency, 1);
    public static readonly Unit MetrePerSecond = new("m/s", Dimension.OfSpeed, 1000);
    public static readonly Unit Hour = new("h", Dimension.OfTime, 3600);
    public static readonly Unit Kilogram = new("kg", Dimension.OfMass, 1e-3);
    public static readonly Unit SquareMillimetrePerSecond = new("mm²/s", Dimension.OfKinematicViscosity, 1);
    public static readonly Unit KilogramPerCubicMetre = new("kg/m³", Dimension.OfDensity, 1e-12);
    public static readonly Unit PerKelvin = new("1/K", Dimension.OfThermalExpansion, 1);

    /// <summary>Reads a unit, simple or compound: <c>mm</c>, <c>lbf*ft</c>, <c>W/(m·K)</c>.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, [NotNullWhen(true)] out Unit? unit) => throw new NotImplementedException();

    /// <summary>A few units that measure this, for a hint: <c>mm, µm, in</c>.</summary>
    public static ImmutableArray<Unit> Fitting(Dimension dimension) => throw new NotImplementedException();

    /// <summary>The known unit symbol nearest to a misspelt one, or null when none is near.</summary>
    public static string? Nearest(ReadOnlySpan<char> text) => throw new NotImplementedException();
}

/// <summary>Numbers as text, the same on every desk.</summary>
public static class Formatting
{
    /// <summary>Up to this many significant digits, no exponent between 1e-5 and 1e9, no trailing zeros after the point.</summary>
    public static string Significant(double value, int digits) => throw new NotImplementedException();

    /// <summary>A number and its unit, in full: <c>2.5 mm</c>, <c>20°</c>, <c>15 %</c>.</summary>
    public static string WithUnit(double value, Unit unit) => throw new NotImplementedException();
}

/// <summary>The known word nearest to a misspelt one.</summary>
public static class Nearest
{
    /// <summary>The best candidate within a third of the word's length in edits, or null. Ties go to the first.</summary>
    public static string? To(string word, IEnumerable<string> candidates) => throw new NotImplementedException();
}
