namespace Pawl.Mechanics;

/// <summary>Least and greatest of a value that a drawing or a service leaves open. The unit is that of the value.</summary>
public sealed record Interval
{
    /// <summary>From the least to the greatest, both allowed.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public Interval(double least, double greatest)
    {
        if (!double.IsFinite(least) || !double.IsFinite(greatest) || least > greatest)
            throw Guard.Because($"the least of a value is not above its greatest; here they are {least:0.######} and {greatest:0.######}");

        (Min, Max) = (least, greatest);
    }

    public double Min { get; }

    public double Max { get; }

    public double Middle => (Min + Max) / 2;

    /// <summary>A value without tolerance.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Interval Exactly(double value) => new(value, value);

    /// <summary>A nominal value and its deviation ±.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Interval About(double nominal, double deviation) => new(nominal - deviation, nominal + deviation);

    public bool Contains(double value) => value >= Min && value <= Max;

    public bool Contains(Interval other) => other.Min >= Min && other.Max <= Max;

    internal double Clamp(double value) => Math.Clamp(value, Min, Max);

    internal Interval Scaled(double factor) => new(Min * factor, Max * factor);

    internal Interval AboveZero(string name)
    {
        Guard.Positive(Min, name);
        return this;
    }

    internal Interval NotNegative(string name) =>
        Min >= 0 ? this : throw Guard.Because($"{name} must not be below zero; it is {Min:0.######}");
}
