namespace Pawl.Mechanics.Seals;

/// <summary>Least and greatest of a value that a drawing or a service leaves open. The unit is that of the value.</summary>
public readonly record struct Extent
{
    /// <summary>From the least to the greatest, both allowed.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public Extent(double least, double greatest)
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
    public static Extent Exactly(double value) => new(value, value);

    /// <summary>A nominal value and its deviation ±.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Extent About(double nominal, double deviation) => new(nominal - deviation, nominal + deviation);

    public bool Contains(double value) => value >= Min && value <= Max;

    public bool Contains(Extent other) => other.Min >= Min && other.Max <= Max;

    internal double Clamp(double value) => Math.Clamp(value, Min, Max);

    internal Extent Scaled(double factor) => new(Min * factor, Max * factor);

    internal Extent AboveZero(string name)
    {
        Guard.Positive(Min, name);
        return this;
    }

    internal Extent NotNegative(string name) =>
        Min >= 0 ? this : throw Guard.Because($"{name} must not be below zero; it is {Min:0.######}");
}
