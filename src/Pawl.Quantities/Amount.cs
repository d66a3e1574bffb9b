using System.Diagnostics.CodeAnalysis;

namespace Pawl.Quantities;

/// <summary>A number with its unit, as written.</summary>
/// <param name="Value">The number in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit as written.</param>
public readonly record struct Amount(double Value, Unit Unit)
{
    /// <summary>The number in the coherent set N, mm, MPa, N·mm, rad, s, °C (mass: tonne).</summary>
    public double Coherent => Unit.ToCoherent(Value);

    public Dimension Dimension => Unit.Dimension;

    /// <summary>The number in another unit of the same dimension.</summary>
    /// <exception cref="ArgumentException">The unit measures something else.</exception>
    public double In(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return unit.Dimension == Dimension
            ? unit.FromCoherent(Coherent)
            : throw new ArgumentException(
                $"{unit.Symbol} measures {unit.Dimension.NameWithArticle}, not {Dimension.NameWithArticle}.", nameof(unit));
    }

    /// <summary>Reads a number with a unit, as a drawing or a bench sheet writes it: <c>2.5 mm</c>, <c>150 lbf·ft</c>.</summary>
    /// <remarks>Always the point as decimal mark, whatever the culture. A bare number is a ratio.</remarks>
    public static bool TryParse(ReadOnlySpan<char> text, out Amount amount, [NotNullWhen(false)] out NotationError? error) =>
        Notation.TryParseAmount(text, out amount, out error);

    /// <summary>The amount as text, invariant: <c>2.5 mm</c>. Nothing for the default value, which has no unit.</summary>
    public override string ToString() => Unit is null ? "" : Formatting.WithUnit(Value, Unit);
}
