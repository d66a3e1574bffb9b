using System.Globalization;
using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Rules;

namespace Pawl.Cli.Sizing;

/// <summary>Numbers of sizes as people read them.</summary>
internal static class Shown
{
    /// <summary>Least, nominal and greatest with their unit: <c>12.3 / 19.5 / 23.0 %</c>; a dash where there is no value.</summary>
    public static string Range(Quantity? quantity, int decimals)
    {
        if (quantity is null)
            return "–";
        var (unit, value) = (quantity.Kind.Unit, quantity.Value);
        if (value.IsExact)
            return $"{Fixed(unit.FromCoherent(value.Nominal), decimals)} {unit.Symbol}";
        return $"{Fixed(unit.FromCoherent(value.Min), decimals)} / {Fixed(unit.FromCoherent(value.Nominal), decimals)} / {Fixed(unit.FromCoherent(value.Max), decimals)} {unit.Symbol}";
    }

    /// <summary>A margin: <c>+20.6 %</c>, <c>−3 %</c>; more digits where it would round to nothing.</summary>
    public static string Margin(double margin)
    {
        if (margin == 0)
            return "on the limit";
        var percent = margin * 100;
        var text = Math.Abs(percent) >= 0.05 ? Fixed(percent, 1) : Formatting.Significant(percent, 2).Replace('-', '−');
        return $"{(margin > 0 ? "+" : "")}{text} %";
    }

    /// <summary>The margin of a finding: a distance where its limit is zero; a dash without one.</summary>
    public static string Margin(Finding? finding)
    {
        if (finding is not { Margin: { } margin, Measured.Kind.Unit: var unit })
            return "–";
        if (finding.Distance is not { } distance || margin == 0)
            return Margin(margin);
        var text = Formatting.Significant(unit.FromCoherent(distance), 3).Replace('-', '−');
        return $"{(distance > 0 ? "+" : "")}{text}{(unit.Symbol.Length == 0 ? "" : " ")}{unit.Symbol}";
    }

    /// <summary>A length in mm to the hundredth.</summary>
    public static string Millimetres(double length) => $"{Fixed(length, 2)} mm";

    private static string Fixed(double value, int decimals)
    {
        var text = value.ToString(decimals == 1 ? "F1" : "F2", CultureInfo.InvariantCulture);
        return text[0] != '-' ? text : text.AsSpan(1).ContainsAnyExcept('0', '.') ? "−" + text[1..] : text[1..];
    }
}
