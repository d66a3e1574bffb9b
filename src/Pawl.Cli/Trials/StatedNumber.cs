using System.Globalization;
using System.Text.RegularExpressions;
using Pawl.Quantities;

namespace Pawl.Cli.Trials;

/// <summary>A number as a spec writes it, with what stands behind it: <c>59.8</c> and <c> mm js6</c>.</summary>
/// <param name="Value">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Its unit; of a bare number the unit of ratios.</param>
/// <param name="Tail">What follows the number: unit and tolerance, as written.</param>
internal sealed partial record StatedNumber(double Value, Unit Unit, string Tail)
{
    // Figures that tell neighbouring steps apart and hide the last bits of binary numbers.
    private const int Digits = 12;

    /// <summary>Reads the text of a value; null where it is no single number: a word, a range, a list.</summary>
    public static StatedNumber? Of(string text)
    {
        var match = Form().Match(text);
        if (!match.Success)
            return null;
        var value = double.Parse(match.Groups["number"].ValueSpan, CultureInfo.InvariantCulture);
        if (match.Groups["divisor"] is { Success: true } divisor)
            value /= double.Parse(divisor.ValueSpan, CultureInfo.InvariantCulture);
        var tail = match.Groups["tail"].Value;

        // The unit ends where a tolerance begins; the longest beginning that is one is it.
        var words = tail.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var count = words.Length; count > 0; count--)
        {
            if (Amount.TryParse($"1 {string.Join(' ', words[..count])}", out var one, out _))
                return double.IsFinite(value) ? new(value, one.Unit, tail) : null;
        }

        // A tolerance class alone, or nothing: a bare number.
        return double.IsFinite(value) && Amount.TryParse("1", out var bare, out _) ? new(value, bare.Unit, tail) : null;
    }

    /// <summary>The text with another number.</summary>
    public string With(double value) => Formatting.Significant(value, Digits) + Tail;

    /// <summary>The number as text, without unit.</summary>
    public static string Plain(double value) => Formatting.Significant(value, Digits);

    [GeneratedRegex(@"^\s*(?<number>[+-]?(\d+(\.\d+)?|\.\d+)([eE][+-]?\d+)?)(/(?<divisor>\d+))?(?<tail>(?!\s*\.\.)\D.*|)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
