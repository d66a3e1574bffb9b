namespace Pawl.Mechanics.Gears;

/// <summary>Says in plain words why a formula has no answer. The text is shown to the designer as it stands.</summary>
internal static class Impossible
{
    /// <summary>The exception with this reason as its whole message, numbers written the same on every machine.</summary>
    public static ArgumentOutOfRangeException Because(FormattableString reason) =>
        new(paramName: null, FormattableString.Invariant(reason));

    /// <summary>The value itself, if it is above zero.</summary>
    public static double Positive(double value, string name) =>
        value > 0 && double.IsFinite(value) ? value : throw Because($"{name} must be above zero; it is {value:0.######}");

    /// <summary>The value itself, if it is neither zero nor without meaning. Diameters of internal gears are negative.</summary>
    public static double NotZero(double value, string name) =>
        value != 0 && double.IsFinite(value) ? value : throw Because($"{name} must not be zero; it is {value:0.######}");

    /// <summary>The number of teeth itself: positive external, negative internal, never zero.</summary>
    public static int Teeth(int teeth) =>
        teeth != 0 ? teeth : throw Because($"a gear must have teeth; the number of teeth is 0");

    /// <summary>An angle from zero up to, but not including, a right angle, rad.</summary>
    public static double Acute(double angle, string name) =>
        angle >= 0 && angle < Math.PI / 2
            ? angle
            : throw Because($"{name} must lie from 0° to below 90°; it is {angle * 180 / Math.PI:0.######}°");

    /// <summary>An angle above zero and below a right angle, rad.</summary>
    public static double AcuteAboveZero(double angle, string name) =>
        angle > 0 && angle < Math.PI / 2
            ? angle
            : throw Because($"{name} must lie between 0° and 90°; it is {angle * 180 / Math.PI:0.######}°");

    /// <summary>A helix angle, rad: right-hand positive, left-hand negative, below a right angle.</summary>
    public static double Helix(double angle) =>
        Math.Abs(angle) < Math.PI / 2
            ? angle
            : throw Because($"the helix angle must lie between −90° and 90°; it is {angle * 180 / Math.PI:0.######}°");

    /// <summary>The result itself, if it is a number. A result that is none never leaves silently.</summary>
    public static double Finite(double result, string name) =>
        double.IsFinite(result) ? result : throw Because($"{name} has no value: an input is not a finite number");
}
