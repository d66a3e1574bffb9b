using Pawl.Analysis.Core;

namespace Pawl.Rules.Judging;

/// <summary>What may have been meant by a value outside of what occurs.</summary>
internal static class LikelySlip
{
    private const double KelvinOfFreezing = 273.15;

    private static readonly (double Factor, string Below, string Above)[] Slips =
    [
        (10, "ten times as much", "a tenth"),
        (100, "a hundred times as much", "a hundredth"),
        (1000, "a thousand times as much (another prefix of the unit)", "a thousandth (another prefix of the unit)"),
        (25.4, "25.4 times as much (inches for millimetres)", "1/25.4 (millimetres for inches)"),
        (1e6, "a million times as much (another prefix of the unit)", "a millionth (another prefix of the unit)"),
    ];

    /// <summary>The first slip that would bring the value within its limits; none when no usual one does.</summary>
    public static ImmutableArray<string> Of(Quantity measured, Quantity? least, Quantity? most)
    {
        var (value, low, high) = (measured.Value.Nominal, least?.Value.Nominal ?? double.NegativeInfinity, most?.Value.Nominal ?? double.PositiveInfinity);
        if (measured.Kind.Dimension.IsPoint)
            return IsWithin(value - KelvinOfFreezing) ? ["in kelvin it would be plausible"] : [];
        foreach (var (factor, below, above) in Slips)
        {
            if (IsWithin(value > high ? value / factor : value * factor))
                return [$"{(value > high ? above : below)} would be plausible"];
        }

        return [];

        bool IsWithin(double meant) => meant >= low && meant <= high;
    }
}
