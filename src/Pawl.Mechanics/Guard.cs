namespace Pawl.Mechanics;

/// <summary>
/// Says in plain words why a formula has no answer, and refuses what lies outside its range. The text is shown to the
/// engineer as it stands. Every check returns the value that it let pass, and lets neither NaN nor infinity pass.
/// </summary>
public static class Guard
{
    /// <summary>The exception with this reason as its whole message, numbers written the same on every machine.</summary>
    public static OutsideValidityException Because(FormattableString reason) => new(FormattableString.Invariant(reason));

    /// <summary>A finite value, as an input.</summary>
    /// <exception cref="OutsideValidityException">The value is not finite.</exception>
    public static double Number(double value, string name, string unit = "") =>
        double.IsFinite(value) ? value : throw Because($"{name} must be a finite number; it is {Text(value, unit)}");

    /// <summary>A value above zero.</summary>
    /// <exception cref="OutsideValidityException">The value is zero, below zero or not finite.</exception>
    public static double Positive(double value, string name, string unit = "") =>
        value > 0 && double.IsFinite(value) ? value : throw Because($"{name} must be above zero; it is {Text(value, unit)}");

    /// <summary>A value of zero or above.</summary>
    /// <exception cref="OutsideValidityException">The value is below zero or not finite.</exception>
    public static double NotNegative(double value, string name, string unit = "") =>
        value >= 0 && double.IsFinite(value) ? value : throw Because($"{name} must not be below zero; it is {Text(value, unit)}");

    /// <summary>A value other than zero. Diameters of internal gears are negative.</summary>
    /// <exception cref="OutsideValidityException">The value is zero or not finite.</exception>
    public static double NotZero(double value, string name, string unit = "") =>
        value != 0 && double.IsFinite(value) ? value : throw Because($"{name} must not be zero; it is {Text(value, unit)}");

    /// <summary>A value from the least to the greatest, both included.</summary>
    /// <exception cref="OutsideValidityException">The value lies outside or is not finite.</exception>
    public static double Between(double value, double least, double greatest, string name, string unit = "") =>
        value >= least && value <= greatest && double.IsFinite(value)
            ? value
            : throw Because($"{name} must lie from {Text(least, unit)} to {Text(greatest, unit)}; it is {Text(value, unit)}");

    /// <summary>A value of the least or above.</summary>
    /// <exception cref="OutsideValidityException">The value is below the least or not finite.</exception>
    public static double AtLeast(double value, double least, string name, string unit = "") =>
        value >= least && double.IsFinite(value)
            ? value
            : throw Because($"{name} must not be below {Text(least, unit)}; it is {Text(value, unit)}");

    /// <summary>A share of a whole: above zero, and one at the most.</summary>
    /// <exception cref="OutsideValidityException">The value lies outside or is not finite.</exception>
    public static double Share(double value, string name) =>
        value > 0 && value <= 1 ? value : throw Because($"{name} must lie above 0 and up to 1; it is {Text(value, "")}");

    /// <summary>A ratio from zero to one, both included.</summary>
    /// <exception cref="OutsideValidityException">The value lies outside or is not finite.</exception>
    public static double ZeroToOne(double value, string name) =>
        value >= 0 && value <= 1 ? value : throw Because($"{name} must lie from 0 to 1; it is {Text(value, "")}");

    /// <summary>A temperature above absolute zero, °C.</summary>
    /// <exception cref="OutsideValidityException">The value is no temperature or not finite.</exception>
    public static double Celsius(double value, string name) =>
        value > -273.15 && double.IsFinite(value)
            ? value
            : throw Because($"{name} must lie above absolute zero; it is {Text(value, "°C")}");

    /// <summary>A count of at least so many.</summary>
    /// <exception cref="OutsideValidityException">There are fewer.</exception>
    public static int Count(int count, int least, string name) =>
        count >= least ? count : throw Because($"{name} must be {least} or more; it is {count}");

    /// <inheritdoc cref="Count(int, int, string)"/>
    public static long Count(long count, long least, string name) =>
        count >= least ? count : throw Because($"{name} must be {least} or more; it is {count}");

    /// <summary>The number of teeth itself: positive external, negative internal, never zero.</summary>
    /// <exception cref="OutsideValidityException">The number is zero.</exception>
    public static int Teeth(int teeth) =>
        teeth != 0 ? teeth : throw Because($"a gear must have teeth; the number of teeth is 0");

    /// <summary>An angle from zero up to, but not including, a right angle, rad.</summary>
    /// <exception cref="OutsideValidityException">The angle lies outside or is not finite.</exception>
    public static double Acute(double angle, string name) =>
        angle >= 0 && angle < Math.PI / 2
            ? angle
            : throw Because($"{name} must lie from 0° to below 90°; it is {angle * 180 / Math.PI:0.######}°");

    /// <summary>An angle above zero and below a right angle, rad.</summary>
    /// <exception cref="OutsideValidityException">The angle lies outside or is not finite.</exception>
    public static double AcuteAboveZero(double angle, string name) =>
        angle > 0 && angle < Math.PI / 2
            ? angle
            : throw Because($"{name} must lie between 0° and 90°; it is {angle * 180 / Math.PI:0.######}°");

    /// <summary>A helix angle, rad: right-hand positive, left-hand negative, below a right angle.</summary>
    /// <exception cref="OutsideValidityException">The angle lies outside or is not finite.</exception>
    public static double Helix(double angle) =>
        Math.Abs(angle) < Math.PI / 2
            ? angle
            : throw Because($"the helix angle must lie between −90° and 90°; it is {angle * 180 / Math.PI:0.######}°");

    /// <summary>The result itself, if it is a number. A result that is none never leaves silently.</summary>
    /// <exception cref="OutsideValidityException">The result is not finite.</exception>
    public static double Finite(double result, string name) =>
        double.IsFinite(result) ? result : throw Because($"{name} has no value: an input is not a finite number or too large");

    private static string Text(double value, string unit) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{value:0.######}{(unit.Length == 0 ? "" : " ")}{unit}");
}
