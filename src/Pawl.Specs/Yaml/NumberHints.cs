namespace Pawl.Specs.Yaml;

/// <summary>What a text that should be a number or a truth value was probably meant to be.</summary>
internal static class NumberHints
{
    public static string? ForWhole(YamlScalar scalar) =>
        CoreSchema.KindOf(scalar) == ScalarKind.Real ? "Write it in digits, without a point or an exponent." : ForNumber(scalar);

    public static string? ForNumber(YamlScalar scalar)
    {
        var text = scalar.Value;
        if (scalar.IsQuoted && CoreSchema.KindOf(scalar with { IsQuoted = false }) is ScalarKind.Whole or ScalarKind.Real)
            return $"Write {text} without quotes.";
        if (text.Length == 0 || !char.IsAsciiDigit(text[text[0] is '+' or '-' && text.Length > 1 ? 1 : 0]))
            return "Write it in digits.";
        if (text.Contains(':', StringComparison.Ordinal))
            return "Some readers of YAML take this for a number to base 60. Write a plain number.";
        if (text.StartsWith("0x", StringComparison.OrdinalIgnoreCase) || text.StartsWith("0o", StringComparison.OrdinalIgnoreCase))
            return "Write it in decimal digits.";
        if (text.Length > 1 && text[0] == '0' && char.IsAsciiDigit(text[1]))
            return "Some readers of YAML take a leading zero for an octal number. Write it without.";
        if (text.Contains(',', StringComparison.Ordinal))
            return "The decimal mark is the point.";
        return text.Contains('_', StringComparison.Ordinal) ? "Write it without underscores." : "Write a number alone, without a unit.";
    }

    public static string? ForTruth(YamlScalar scalar) => scalar.Value.ToUpperInvariant() switch
    {
        "YES" or "Y" or "ON" or "TRUE" or "1" => "true",
        "NO" or "N" or "OFF" or "FALSE" or "0" => "false",
        _ => null,
    };

    /// <summary>Where the unit starts in <c>12 N·m</c>; 0 when no number leads.</summary>
    public static int AfterNumber(string text)
    {
        var at = 0;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] is '+' or '-' or '−' or '.' or ' '))
            at++;
        if (at + 1 < text.Length && text[at] is 'e' or 'E' && (char.IsAsciiDigit(text[at + 1]) || text[at + 1] is '+' or '-'))
        {
            at += 2;
            while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == ' '))
                at++;
        }

        return at == text.Length ? 0 : at;
    }
}
