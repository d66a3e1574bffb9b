namespace Pawl.Quantities;

/// <summary>A number with its least and greatest value over all tolerances, in coherent units.</summary>
/// <param name="Nominal">The value with every input at its nominal.</param>
/// <param name="Min">The smallest value in the worst case.</param>
/// <param name="Max">The largest value in the worst case.</param>
public readonly record struct Extent(double Nominal, double Min, double Max)
{
    /// <summary>A number without a tolerance.</summary>
    public static Extent Exactly(double value) => new(value, value, value);

    /// <summary>The difference to another value that varies by itself; nominal is the middle, for of a fit the nominal sizes may lie outside their limits.</summary>
    public Extent Less(Extent other)
    {
        var (least, greatest) = (Min - other.Max, Max - other.Min);
        return new((least + greatest) / 2, least, greatest);
    }

    /// <summary>Whether least and greatest coincide.</summary>
    public bool IsExact => Min.Equals(Max);
}
