using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Pawl.Quantities;

/// <summary>Reads hardness as drawings write it: a number or a window, and a scale.</summary>
internal static class HardnessNotation
{
    private const string Example = "Write a number or a window and its scale: 58..62 HRC, 700 HV, 280..320 HBW.";

    // HB is what HBW was before the steel ball was given up; old drawings have it.
    private static readonly (string Word, HardnessScale Scale)[] s_scales =
    [
        ("HRC", HardnessScale.RockwellC), ("HBW", HardnessScale.Brinell), ("HB", HardnessScale.Brinell), ("HV", HardnessScale.Vickers),
    ];

    public static bool TryRead(
        ReadOnlySpan<char> text, [NotNullWhen(true)] out Hardness? hardness, [NotNullWhen(false)] out NotationError? error)
    {
        hardness = null;
        if (!TryFindScale(text, out var scale, out var scaleAt, out var scaleEnd, out error)) return false;

        var number = string.Concat(text[..scaleAt].Trim(), " ", text[scaleEnd..].Trim()).Trim();
        if (TryReadWindow(number, out var low, out var high)) return TryMake(text, scale, (low + high) / 2, low, high, out hardness, out error);

        if (!Toleranced.TryParse(number, out var written, out var problem))
        {
            error = problem.Kind == NotationErrorKind.NotFinite
                ? problem with { Start = 0, Length = text.Length }
                : new(NotationErrorKind.NotANumber, 0, text.Length, $"`{text}` is no hardness.", Example);
            return false;
        }

        var nominal = written.Nominal.Value;
        switch (written)
        {
            case { Nominal.Unit.Symbol: "", Tolerance: Tolerance.General }:
                return TryMake(text, scale, nominal, nominal, nominal, out hardness, out error);
            case { Nominal.Unit.Symbol: "", Tolerance: Tolerance.Deviations window }:
                return TryMake(text, scale, nominal, nominal + window.Lower, nominal + window.Upper, out hardness, out error);
            default:
                error = new(NotationErrorKind.NotANumber, 0, text.Length, $"`{text}` is no hardness.", Example);
                return false;
        }
    }

    private static bool TryFindScale(
        ReadOnlySpan<char> text, out HardnessScale scale, out int start, out int end, [NotNullWhen(false)] out NotationError? error)
    {
        (scale, end, error) = (default, 0, null);
        start = text.IndexOf('H');
        if (start >= 0)
        {
            end = start;
            while (end < text.Length && (char.IsAsciiLetterOrDigit(text[end]) || text[end] is '.' or '/')) end++;

            // The load follows its scale and is no part of the value: HV10, HV0.5, HBW2.5/187.5.
            var word = text[start..end].TrimEnd("0123456789./");
            foreach (var (known, found) in s_scales)
            {
                if (!word.SequenceEqual(known)) continue;
                scale = found;
                return true;
            }

            error = new(
                NotationErrorKind.UnknownUnit, start, end - start, $"`{text[start..end]}` is not a hardness scale that can be converted.",
                "Scales: HRC, HV, HBW.");
            return false;
        }

        error = new(NotationErrorKind.UnknownUnit, 0, text.Length, $"`{text}` names no hardness scale.", Example);
        return false;
    }

    /// <summary>A window without a nominal: <c>58..62</c>, <c>58-62</c>, <c>58–62</c>.</summary>
    private static bool TryReadWindow(string text, out double low, out double high)
    {
        (low, high) = (0, 0);
        foreach (var mark in (ReadOnlySpan<string>)["..", "–", "-"])
        {
            var at = text.IndexOf(mark, StringComparison.Ordinal);
            if (at > 0) return TryNumber(text.AsSpan(0, at), out low) && TryNumber(text.AsSpan(at + mark.Length), out high);
        }

        return false;
    }

    private static bool TryNumber(ReadOnlySpan<char> text, out double number) => double.TryParse(
        text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);

    private static bool TryMake(
        ReadOnlySpan<char> text, HardnessScale scale, double nominal, double least, double greatest,
        [NotNullWhen(true)] out Hardness? hardness, [NotNullWhen(false)] out NotationError? error)
    {
        (hardness, error) = (null, null);
        var (lowest, highest) = Hardness.RangeOf(scale);
        if (least > greatest)
        {
            error = new(NotationErrorKind.MalformedTolerance, 0, text.Length, $"`{text}` begins above its end.", "The lower limit comes first: 58..62 HRC.");
        }
        else if (!(least >= lowest && greatest <= highest))
        {
            error = new(
                NotationErrorKind.NotANumber, 0, text.Length,
                string.Create(CultureInfo.InvariantCulture, $"{Hardness.SymbolOf(scale)} goes from {lowest} to {highest}, but `{text}` leaves it."),
                scale == HardnessScale.RockwellC ? "State a soft or very hard material in HV or HBW." : null);
        }
        else
        {
            hardness = new(scale, nominal, least, greatest);
        }

        return error is null;
    }
}
