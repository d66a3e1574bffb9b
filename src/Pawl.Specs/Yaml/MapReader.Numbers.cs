using System.Globalization;
using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <content>Numbers, counts and truth values.</content>
public sealed partial class MapReader
{
    public Stated<int>? Whole(string key, int least, int most, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotAWholeNumber, "a whole number") is not { } scalar)
            return null;

        var path = PathOf(key);
        var kind = CoreSchema.KindOf(scalar);
        if (kind == ScalarKind.NotFinite)
        {
            Report(SpecDiagnostics.NotFinite(scalar.Span, path, scalar.Value));
            return null;
        }

        if (kind != ScalarKind.Whole)
        {
            Report(SpecDiagnostics.NotAWholeNumber(scalar, path, NumberHints.ForWhole(scalar)));
            return null;
        }

        if (int.TryParse(scalar.Value, NumberStyles.AllowLeadingSign, Invariant, out var value) && value >= least && value <= most)
            return new(value, scalar.Span, scalar.Value);

        var expected = least == most ? least.ToString(Invariant) : string.Create(Invariant, $"a whole number from {least} to {most}");
        Report(SpecDiagnostics.OutOfRange(scalar.Span, path, scalar.Value, expected));
        return null;
    }

    public Stated<bool>? Truth(string key, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotATruthValue, "true or false") is not { } scalar)
            return null;
        if (CoreSchema.KindOf(scalar) == ScalarKind.Truth)
            return new(scalar.Value[0] is 't' or 'T', scalar.Span, scalar.Value);

        Report(SpecDiagnostics.NotATruthValue(scalar, PathOf(key), NumberHints.ForTruth(scalar)));
        return null;
    }

    public Stated<double>? Number(string key, double least, double most, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotANumber, "a number") is not { } scalar)
            return null;
        return AsNumber(scalar, PathOf(key)) is { } value && IsWithin(scalar, PathOf(key), value, least, most)
            ? new(value, scalar.Span, scalar.Value)
            : null;
    }

    /// <summary>A positive number, or a fraction of two whole numbers: <c>1.8</c> or <c>9/5</c>.</summary>
    public Stated<double>? Fraction(string key, double least, double most, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotANumber, "a number or a fraction") is not { } scalar)
            return null;

        var path = PathOf(key);
        var slash = scalar.Value.IndexOf('/', StringComparison.Ordinal);
        double value;
        if (slash < 0)
        {
            if (AsNumber(scalar, path) is not { } number)
                return null;
            value = number;
        }
        else if (WholePart(scalar.Value.AsSpan(0, slash)) is { } over && WholePart(scalar.Value.AsSpan(slash + 1)) is { } under && under > 0)
        {
            value = (double)over / under;
        }
        else
        {
            Report(SpecDiagnostics.NotANumber(scalar, path, "A fraction is two whole numbers: 9/5."));
            return null;
        }

        return IsWithin(scalar, path, value, least, most) ? new(value, scalar.Span, scalar.Value) : null;
    }

    private double? AsNumber(YamlScalar scalar, string path)
    {
        if (CoreSchema.TryNumber(scalar, out var value))
            return value;

        Report(CoreSchema.KindOf(scalar) is ScalarKind.NotFinite or ScalarKind.Whole or ScalarKind.Real
            ? SpecDiagnostics.NotFinite(scalar.Span, path, scalar.Value)
            : SpecDiagnostics.NotANumber(scalar, path, NumberHints.ForNumber(scalar)));
        return null;
    }

    private bool IsWithin(YamlScalar scalar, string path, double value, double least, double most)
    {
        if (value >= least && value <= most)
            return true;

        Report(SpecDiagnostics.OutOfRange(scalar.Span, path, scalar.Value, string.Create(Invariant, $"a number from {least} to {most}")));
        return false;
    }

    private static long? WholePart(ReadOnlySpan<char> text) =>
        long.TryParse(text.Trim(), NumberStyles.None, Invariant, out var value) ? value : null;
}
