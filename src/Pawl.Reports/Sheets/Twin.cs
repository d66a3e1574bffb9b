using Pawl.Quantities;

namespace Pawl.Reports.Sheets;

/// <summary>An amount in the unit of the spec, with its twin in the other system: <c>18 N·m (13.3 lbf·ft)</c>.</summary>
internal static class Twin
{
    private const int Digits = 3;
    private const int OwnDigits = 4;

    // Below this a wrench in lbf·ft has no marks left to set.
    private const double SmallTorque = 10_000;

    /// <summary>The text of a spec with its twin; as it is where it has none.</summary>
    public static string Of(string written) => Amount.TryParse(written, out var amount, out _) && Other(amount) is { } other ? $"{written} ({other})" : written;

    /// <summary>An amount with its twin.</summary>
    public static string Of(Amount amount) => Share(amount, 1);

    /// <summary>A share of an amount with its twin, in the units of the whole, so that the steps of one torque read alike.</summary>
    public static string Share(Amount whole, double share)
    {
        var part = whole with { Value = Math.Round(whole.Value * share, 9) };
        return $"{Formatting.Significant(part.Value, OwnDigits)} {part.Unit.Symbol}" + (Other(part, whole) is { } other ? $" ({other})" : "");
    }

    /// <summary>A number of a record in its unit, with its twin.</summary>
    public static string Of(double value, string unit) =>
        Units.TryParse(unit, out var known) ? Of(new Amount(Math.Round(value, 6), known)) : Formatting.Significant(value, OwnDigits);

    private static string? Other(Amount amount) => Other(amount, amount);

    private static string? Other(Amount amount, Amount whole)
    {
        var imperial = amount.Unit.Symbol;
        var name = amount.Dimension switch
        {
            var d when d == Dimension.OfTorque => imperial.Contains("lb", StringComparison.Ordinal) || imperial.Contains("oz", StringComparison.Ordinal) ? "N·m"
                : Math.Abs(whole.Coherent) < SmallTorque ? "lbf·in" : "lbf·ft",
            var d when d == Dimension.OfTemperature => imperial == "°F" ? "°C" : "°F",
            var d when d == Dimension.OfForce => imperial.Contains("lb", StringComparison.Ordinal) ? "kN" : "lbf",
            var d when d == Dimension.OfLength => imperial is "in" or "ft" ? "mm" : "in",
            _ => null,
        };
        return name is not null && Units.TryParse(name, out var unit) && unit.Dimension == amount.Dimension
            ? $"{Formatting.Significant(amount.In(unit), Digits)} {unit.Symbol}"
            : null;
    }
}
