using System.Globalization;
using Pawl.Quantities;
using Pawl.Reports.Records;

namespace Pawl.Reports.Rendering;

/// <summary>Numbers of the record as people read them: rounded, with unit and bounds.</summary>
internal static class Figures
{
    private const int Usual = 4;
    private const int Most = 12;
    private const double MostPercent = 999;

    /// <summary>A value in a table or sentence: <c>0.12 mm (0.10…0.14)</c>, <c>yes</c>, a text, <c>not evaluated</c>.</summary>
    public static string Of(ValueRecord value) => Of(value, DigitsFor(value));

    /// <summary>The nominal alone, with its unit.</summary>
    public static string Nominal(ValueRecord value) =>
        value.Nominal is { } nominal ? Join(Rounded(nominal, DigitsFor(value)), value.Unit) : Of(value);

    /// <summary>The least and the greatest, of a dimension that is measured: <c>27.612…27.655 mm</c>.</summary>
    public static string Limits(ValueRecord value)
    {
        if (value is not { Nominal: { } nominal, Min: { } least, Max: { } greatest })
            return Of(value);
        var (_, low, high) = Triple(nominal, least, greatest, DigitsFor(value));
        return Join($"{low}…{high}", value.Unit);
    }

    /// <summary>A margin: <c>−20 %</c>, <c>+12 %</c>, <c>on the limit</c>; beyond ten times the limit a multiple of it, <c>−423 times the limit</c>.</summary>
    public static string Margin(double margin)
    {
        if (margin == 0)
            return "on the limit";
        var percent = margin * 100;

        // Hundreds of times the limit read as a percentage say nothing.
        if (Math.Abs(percent) > MostPercent)
            return $"{(margin > 0 ? "+" : "")}{Rounded(margin, Math.Clamp(Magnitude(margin) + 1, 2, 3))} times the limit";
        var digits = Math.Max(2, Magnitude(percent) + 1);
        return $"{(margin > 0 ? "+" : "")}{Rounded(percent, digits)} %";
    }

    /// <summary>A share without a sign: <c>12 %</c>.</summary>
    public static string Share(double share) => $"{Rounded(share * 100, Math.Max(2, Magnitude(share * 100) + 1))} %";

    /// <summary>The margin of a finding: in the unit of the value where the limit is zero, <c>−5 mm</c>, else a percentage; a dash without one.</summary>
    public static string Margin(FindingRecord finding) => Margin(finding.Margin, finding.AbsoluteMargin);

    /// <inheritdoc cref="Margin(FindingRecord)"/>
    public static string Margin(double? share, ValueRecord? absolute) => (share, absolute?.Nominal) switch
    {
        (not 0, { } distance and not 0) => (distance > 0 ? "+" : "") + Of(absolute!, absolute!.Unit == "mm" ? DigitsFor(absolute) : 3),
        ({ } margin, _) => Margin(margin),
        _ => "–",
    };

    /// <summary>The margin with the share that a concession is held to, where that is another number: <c>−5 mm, −500 %</c>.</summary>
    public static string ConcededMargin(FindingRecord finding) =>
        finding is { AbsoluteMargin.Nominal: not 0, Margin: { } share } ? $"{Margin(finding)}, {Margin(share)}" : Margin(finding);

    /// <summary>A measured value and its limits, with digits enough that what differs looks different.</summary>
    public static (string Value, string Limit) Apart(FindingRecord finding)
    {
        var value = finding.Measured?.Value;
        if (value?.Nominal is null)
            return (value is null ? "–" : Of(value), Limit(finding, Usual));

        var digits = Math.Max(3, value.Min is null ? 3 : DigitsFor(value));
        while (digits < Most && (SameText(value, value.Low, finding.AtLeast, v => v.High, digits)
            || SameText(value, value.High, finding.AtMost, v => v.Low, digits)))
        {
            digits++;
        }

        var isBroken = finding.Outcome is OutcomeWord.Fails or OutcomeWord.UnderConcession;
        return (isBroken && finding.Worst is { } worst ? AtWorst(value, worst, digits) : Of(value, digits), Limit(finding, digits));
    }

    /// <summary>The end that governs first: <c>1.84 mm at worst (nominal 2.08, 1.84…2.32)</c>.</summary>
    private static string AtWorst(ValueRecord value, double worst, int digits)
    {
        if (value is not { Nominal: { } nominal, Min: { } least, Max: { } greatest })
            return Of(value, digits);
        var (middle, low, high) = Triple(nominal, least, greatest, digits);
        return $"{Join(worst - least < greatest - worst ? low : high, value.Unit)} at worst (nominal {middle}, {low}…{high})";
    }

    public static string Join(string number, string unit) => unit.Length == 0 ? number
        : unit is "°" or "′" or "″" ? number + unit
        : $"{number} {unit}";

    private static string Of(ValueRecord value, int digits)
    {
        if (value.Nominal is not { } nominal)
            return value.Text ?? (value.Truth is { } truth ? (truth ? "yes" : "no") : "not evaluated");
        if (value is not { Min: { } least, Max: { } greatest })
            return Join(Rounded(nominal, digits), value.Unit);

        var (middle, low, high) = Triple(nominal, least, greatest, digits);
        return $"{Join(middle, value.Unit)} ({low}…{high})";
    }

    private static string Limit(FindingRecord finding, int digits)
    {
        if (finding is { AtLeast.Value: var equal, AtMost.Value: var same } && equal == same)
            return "equal to " + Of(equal, LimitDigits(equal, digits));

        List<string> limits = [];
        if (finding.AtLeast is { } least)
            limits.Add("at least " + Of(least.Value, LimitDigits(least.Value, digits)));
        if (finding.AtMost is { } most)
            limits.Add("at most " + Of(most.Value, LimitDigits(most.Value, digits)));
        if (!finding.OneOf.IsEmpty)
            limits.Add((finding.OneOf.Length == 1 ? "" : "one of ") + string.Join(", ", finding.OneOf.Select(w => Word(w, finding))));
        return limits.Count == 0 ? "–" : string.Join(", ", limits);
    }

    // Packs write true and false, people read yes and no.
    private static string Word(string word, FindingRecord finding) => (word, finding.Measured?.Value.Truth) switch
    {
        (_, null) => word,
        ("true", _) => "yes",
        ("false", _) => "no",
        _ => word,
    };

    private static int LimitDigits(ValueRecord limit, int digits) => Math.Max(digits, limit.Min is null ? Usual : DigitsFor(limit));

    private static bool SameText(
        ValueRecord value, double? worst, MeasureRecord? limit, Func<ValueRecord, double?> boundOf, int digits)
    {
        if (worst is not { } shown || limit is null || boundOf(limit.Value) is not { } bound || limit.Value.Unit != value.Unit
            || shown.Equals(bound))
        {
            return false;
        }

        return Read(Laid(value, shown, digits)).Equals(Read(Laid(limit.Value, bound, LimitDigits(limit.Value, digits))));
    }

    // 405.000 and 405 are different texts and the same number.
    private static double Read(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    /// <summary>One bound of a value as <see cref="Of(ValueRecord, int)"/> writes it.</summary>
    private static string Laid(ValueRecord value, double bound, int digits)
    {
        if (value is not { Nominal: { } nominal, Min: { } least, Max: { } greatest })
            return Rounded(bound, digits);
        var (_, low, high) = Triple(nominal, least, greatest, digits);
        return bound.Equals(least) ? low : high;
    }

    /// <summary>Nominal and bounds to the same decimal place, without zeros that all three end in.</summary>
    private static (string Nominal, string Min, string Max) Triple(double nominal, double least, double greatest, int digits)
    {
        var largest = Math.Max(Math.Abs(nominal), Math.Max(Math.Abs(least), Math.Abs(greatest)));
        var decimals = digits - 1 - Magnitude(largest);
        if (largest is >= 1e9 or < 1e-5 || decimals is > 15)
            return (Rounded(nominal, digits), Rounded(least, digits), Rounded(greatest, digits));

        // Below zero there is nothing to leave out after the point: whole numbers are shown in full.
        var (a, b, c) = (Fixed(nominal, decimals), Fixed(least, decimals), Fixed(greatest, decimals));
        var end = 0;
        while (decimals > 0 && end < decimals && a[^(end + 1)] == '0' && b[^(end + 1)] == '0' && c[^(end + 1)] == '0')
            end++;
        if (end > 0 && end >= decimals)
            end++;
        return (a[..^end], b[..^end], c[..^end]);
    }

    private static string Fixed(double value, int decimals)
    {
        var text = value.ToString("F" + Phrase.Whole(Math.Max(0, decimals)), CultureInfo.InvariantCulture);
        return Minus(text);
    }

    private static string Rounded(double value, int digits)
    {
        var whole = Math.Abs(value) < 1e9 && value.Equals(Math.Truncate(value));
        return Minus(Formatting.Significant(value, whole ? 10 : digits));
    }

    // "-0.00" is zero as well.
    private static string Minus(string text) => text[0] != '-' ? text
        : text.AsSpan(1).ContainsAnyExcept('0', '.') ? "−" + text[1..]
        : text[1..];

    /// <summary>Digits that show a length to the micrometre and a tolerance to two figures, to three where it begins with 1 or 2.</summary>
    private static int DigitsFor(ValueRecord value)
    {
        if (value.Nominal is not { } nominal)
            return Usual;
        var largest = Math.Max(Math.Abs(value.Low!.Value), Math.Max(Math.Abs(nominal), Math.Abs(value.High!.Value)));
        var digits = value.Unit == "mm" && largest >= 1e-3 ? Math.Max(Usual, Magnitude(largest) + 4) : Usual;
        var spread = value.High!.Value - value.Low!.Value;
        return spread > 0 ? Math.Clamp(Math.Max(digits, Magnitude(largest) - Magnitude(spread) + FiguresOf(spread)), Usual, Most) : Math.Min(digits, Most);
    }

    private static int FiguresOf(double spread) => spread / Math.Pow(10, Magnitude(spread)) < 3 ? 3 : 2;

    private static int Magnitude(double value) => value == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(value)));
}
