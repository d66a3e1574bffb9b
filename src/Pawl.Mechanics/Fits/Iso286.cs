using System.Diagnostics.CodeAnalysis;

namespace Pawl.Mechanics.Fits;

/// <summary>Limit deviations of a tolerance class such as H7 or k6.</summary>
/// <remarks>
/// A class is letters and a grade; capitals are holes, small letters shafts. The fundamental deviation is one limit, the standard
/// tolerance IT gives the other. A size belongs to the step with over &lt; D ≤ up to, and the two tables have steps of their own.
/// Source: ISO 286-1:2010; tables <c>iso286-standard-tolerances</c> and <c>iso286-fundamental-deviations</c>.
/// Valid for: 0 &lt; D ≤ 500 mm, grades 1 to 18 and the letters in the table.
/// </remarks>
public static class Iso286
{
    /// <summary>The ids of the tables that every answer rests on.</summary>
    public static ImmutableArray<string> Tables { get; } = [StandardToleranceTable.Id, FundamentalDeviationTable.Id];

    /// <summary>Limit deviations, or an exception whose message is the reason why there are none.</summary>
    /// <inheritdoc cref="Iso286" path="/remarks"/>
    /// <exception cref="OutsideValidityException">An input lies outside the range of validity.</exception>
    public static LimitDeviations Limits(string letters, int grade, double nominalMillimetres) =>
        TryLimits(letters, grade, nominalMillimetres, out var limits, out var reason)
            ? limits
            : throw new OutsideValidityException(reason);

    /// <summary>Limit deviations, mm, or the reason why the tables have none.</summary>
    /// <inheritdoc cref="Iso286" path="/remarks"/>
    public static bool TryLimits(
        string letters, int grade, double nominalMillimetres, out LimitDeviations limits, [NotNullWhen(false)] out string? reason)
    {
        limits = default;
        if (!TryTolerance(grade, nominalMillimetres, out var tolerance, out reason))
        {
            return false;
        }

        if (letters is "js" or "JS")
        {
            limits = InMillimetres(-tolerance / 2, tolerance / 2);
            return true;
        }

        var letter = letters is { Length: 1 } ? letters[0] : '\0';
        if (!FundamentalDeviationTable.Current.TryFind(letter, grade, nominalMillimetres, out var row))
        {
            reason = FundamentalDeviationTable.Current.Knows(letter)
                ? FormattableString.Invariant(
                    $"the table of ISO 286-1 here has no class {letters}{grade} for {nominalMillimetres:0.####} mm")
                : FormattableString.Invariant($"the table of ISO 286-1 here has no deviation {letters}");
            return false;
        }

        var deviation = row.Value;
        if (row.AddDelta)
        {
            if (!FundamentalDeviationTable.Current.TryFindDelta(grade, nominalMillimetres, out var delta))
            {
                reason = FormattableString.Invariant(
                    $"the table of ISO 286-1 here has no Δ of grade {grade} for {nominalMillimetres:0.####} mm");
                return false;
            }

            deviation += delta;
        }

        limits = row.IsUpper
            ? InMillimetres(deviation - tolerance, deviation)
            : InMillimetres(deviation, deviation + tolerance);
        return true;
    }

    private static bool TryTolerance(
        int grade, double nominal, out double micrometres, [NotNullWhen(false)] out string? reason)
    {
        micrometres = 0;
        if (grade is < 1 or > 18)
        {
            reason = FormattableString.Invariant($"ISO 286-1 has the grades IT1 to IT18 for common use; {grade} is none of them");
            return false;
        }

        if (!(nominal > 0 && nominal <= 500))
        {
            reason = FormattableString.Invariant(
                $"the table of ISO 286-1 here covers sizes above 0 up to 500 mm; the size is {nominal:0.####} mm");
            return false;
        }

        if (grade >= 14 && nominal <= 1)
        {
            reason = FormattableString.Invariant($"ISO 286-1 does not use IT{grade} for sizes up to 1 mm");
            return false;
        }

        micrometres = StandardToleranceTable.Current.Find(grade, nominal);
        reason = null;
        return true;
    }

    // Negative zero would print as −0.
    private static LimitDeviations InMillimetres(double lower, double upper) =>
        new(lower / 1000 + 0.0, upper / 1000 + 0.0);
}
