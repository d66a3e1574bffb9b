namespace Pawl.Quantities;

/// <summary>A number with its least and greatest value over all tolerances, in coherent units.</summary>
/// <param name="Nominal">The value with every input at its nominal.</param>
/// <param name="Least">The smallest value in the worst case.</param>
/// <param name="Greatest">The largest value in the worst case.</param>
public readonly record struct Extent(double Nominal, double Least, double Greatest)
{
    /// <summary>A number without a tolerance.</summary>
    public static Extent Exactly(double value) => new(value, value, value);

    /// <summary>Whether least and greatest coincide.</summary>
    public bool IsExact => Least.Equals(Greatest);
}
