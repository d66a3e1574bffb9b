using Pawl.Mechanics.Fits;
using Pawl.Mechanics.Tables;

namespace Pawl.Mechanics.Splines;

/// <summary>Limits of the space width or the tooth thickness of a spline, mm.</summary>
/// <param name="EffectiveMin">Least effective: of the space E_v min, of the tooth S_v min.</param>
/// <param name="ActualMin">Least actual: E min, S min.</param>
/// <param name="EffectiveMax">Greatest effective: E_v max, S_v max.</param>
/// <param name="ActualMax">Greatest actual: E max, S max.</param>
public sealed record SplineWidths(double EffectiveMin, double ActualMin, double EffectiveMax, double ActualMax);

/// <summary>Tolerances of ISO 4156 splines.</summary>
/// <remarks>
/// Source: ISO 4156-1; table <c>iso4156-tolerances</c>, from memory. The tolerances of ANSI B92.1 stand in tables that are not here: state
/// the limits of the drawing.
/// </remarks>
public static class SplineTolerance
{
    /// <summary>The id of the table.</summary>
    public const string TableId = "iso4156-tolerances";

    private static ImmutableArray<ImmutableArray<double>> _rows;

    /// <summary>Total tolerance T + λ of space width or tooth thickness, mm.</summary>
    /// <param name="spline">The spline.</param>
    /// <param name="class">Class 4 to 7.</param>
    /// <remarks>
    /// <code>
    /// T + λ = a·i* + b·i**;  i* = 0.001·(0.45·∛D + 0.001·D) up to 500 mm, 0.001·(0.004·D + 2.1) above;  i** = 0.001·(0.45·∛E + 0.001·E)
    /// </code>
    /// Symbols: D pitch diameter, E basic space width, mm; a, b of the class. Not homogeneous.<br/>
    /// Source: ISO 4156-1, from memory.
    /// </remarks>
    public static double Total(InvoluteSpline spline, int @class)
    {
        var row = Row(spline, @class);
        var diameter = spline.PitchDiameter;
        var ofDiameter = diameter <= 500 ? Factor(diameter) : 0.004 * diameter + 2.1;
        return (row[1] * ofDiameter + row[2] * Factor(spline.BasicSpaceWidth)) / 1000;
    }

    /// <summary>Effect of the deviations of pitch, profile and direction on the fit λ, mm.</summary>
    /// <param name="spline">The spline.</param>
    /// <param name="class">Class 4 to 7.</param>
    /// <param name="length">Length g of the spline, mm.</param>
    /// <remarks>
    /// <code>
    /// λ = 0.6·√(F_p² + F_α² + F_β²)
    /// F_p of the arc L = π·m·z/2;  F_α of φ_f = m + 0.0125·m·z;  F_β of the length
    /// </code>
    /// Source: ISO 4156-1, from memory. Not homogeneous.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static double Effect(InvoluteSpline spline, int @class, double length)
    {
        var row = Row(spline, @class);
        var pitch = row[3] * Math.Sqrt(Math.PI * spline.PitchDiameter / 2) + row[4];
        var profile = row[5] * (spline.Module + 0.0125 * spline.PitchDiameter) + row[6];
        var direction = row[7] * Math.Sqrt(Guard.Positive(length, "the length of the spline")) + row[8];
        return 0.6 * Math.Sqrt(pitch * pitch + profile * profile + direction * direction) / 1000;
    }

    /// <summary>Fundamental deviation es_v of the external tooth thickness, mm.</summary>
    /// <param name="spline">The spline.</param>
    /// <param name="letter">Letter of the fit: d, e, f, h, js or k.</param>
    /// <param name="class">Class 4 to 7.</param>
    /// <remarks>
    /// <code>d, e, f, h: those of ISO 286-1 at the pitch diameter;  js: (T + λ)/2;  k: T + λ</code>
    /// Source: ISO 4156-1, from memory.
    /// </remarks>
    public static double Deviation(InvoluteSpline spline, string letter, int @class) => letter switch
    {
        "d" => Iso286.Limits("d", 9, spline.PitchDiameter).Upper,
        "e" => Iso286.Limits("e", 8, spline.PitchDiameter).Upper,
        "f" => Iso286.Limits("f", 7, spline.PitchDiameter).Upper,
        "h" => 0,
        "js" => Total(spline, @class) / 2,
        "k" => Total(spline, @class),
        _ => throw Guard.Because($"ISO 4156 has the fits d, e, f, h, js and k of external splines; `{letter}` is none of them"),
    };

    /// <summary>Limits of the space width of an internal spline, H.</summary>
    /// <remarks>
    /// <code>E_v min = E;  E max = E + (T + λ);  E min = E + λ;  E_v max = E max − λ</code>
    /// Source: ISO 4156-1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static SplineWidths Spaces(InvoluteSpline spline, int @class, double length)
    {
        var (total, effect) = Both(spline, @class, length);
        var basic = spline.BasicSpaceWidth;
        return new(basic, basic + effect, basic + total - effect, basic + total);
    }

    /// <summary>Limits of the tooth thickness of an external spline.</summary>
    /// <remarks>
    /// <code>S_v max = S + es_v;  S min = S_v max − (T + λ);  S max = S_v max − λ;  S_v min = S min + λ</code>
    /// Source: ISO 4156-1.
    /// </remarks>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static SplineWidths Teeth(InvoluteSpline spline, string letter, int @class, double length)
    {
        var (total, effect) = Both(spline, @class, length);
        var most = spline.BasicSpaceWidth + Deviation(spline, letter, @class);
        return new(most - total + effect, most - total, most, most - effect);
    }

    /// <summary>Effective clearance of the flanks, least and greatest, mm of arc at the pitch circle; below zero they overlap.</summary>
    /// <remarks>
    /// <code>E_v min − S_v max … E_v max − S_v min</code>
    /// Source: ISO 4156-1.
    /// </remarks>
    public static FitLimits Clearance(SplineWidths spaces, SplineWidths teeth) =>
        new(spaces.EffectiveMin - teeth.EffectiveMax, spaces.EffectiveMax - teeth.EffectiveMin);

    private static (double Total, double Effect) Both(InvoluteSpline spline, int @class, double length)
    {
        var (total, effect) = (Total(spline, @class), Effect(spline, @class, length));
        return effect < total
            ? (total, effect)
            : throw Guard.Because(
                $"class {@class} leaves no tolerance: its deviations make up {effect * 1000:0.#} µm of {total * 1000:0.#} µm");
    }

    private static double Factor(double length) => 0.45 * Math.Cbrt(length) + 0.001 * length;

    private static ImmutableArray<double> Row(InvoluteSpline spline, int @class)
    {
        if (spline.System != SplineSystem.Iso4156)
            throw Guard.Because($"the source has no tolerances of ANSI B92.1; state the limits of the drawing");

        foreach (var row in _rows.IsDefault ? _rows = NumberTable.Read(TableId, 9) : _rows)
        {
            if (row[0] == @class)
                return row;
        }

        throw Guard.Because($"ISO 4156 has the classes 4, 5, 6 and 7; {@class} is none of them");
    }
}
