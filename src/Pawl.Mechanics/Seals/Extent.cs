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

        (Least, Greatest) = (least, greatest);
    }

    public double Least { get; }

    public double Greatest { get; }

    public double Middle => (Least + Greatest) / 2;

    /// <summary>A value without tolerance.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Extent Exactly(double value) => new(value, value);

    /// <summary>A nominal value and its deviation ±.</summary>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static Extent About(double nominal, double deviation) => new(nominal - deviation, nominal + deviation);

    public bool Contains(double value) => value >= Least && value <= Greatest;

    public bool Contains(Extent other) => other.Least >= Least && other.Greatest <= Greatest;

    internal double Clamp(double value) => Math.Clamp(value, Least, Greatest);

    internal Extent Scaled(double factor) => new(Least * factor, Greatest * factor);

    internal Extent AboveZero(string name)
    {
        Guard.Positive(Least, name);
        return this;
    }

    internal Extent NotNegative(string name) =>
        Least >= 0 ? this : throw Guard.Because($"{name} must not be below zero; it is {Least:0.######}");
}
