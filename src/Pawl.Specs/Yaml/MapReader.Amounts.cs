using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <content>Amounts with units, dimensions with tolerances, hardness.</content>
public sealed partial class MapReader
{
    /// <summary>An amount of a dimension; <paramref name="range"/> bounds it in coherent units.</summary>
    public Stated<Amount>? Amount(string key, Dimension dimension, AmountRange range = AmountRange.Any, bool required = false) =>
        Scalar(key, required, DiagnosticCodes.MalformedAmount, "a number with a unit") is { } scalar
            ? AsAmount(scalar, PathOf(key), dimension, range)
            : null;

    /// <summary>An amount between two others, both included.</summary>
    public Stated<Amount>? Amount(string key, Dimension dimension, Amount least, Amount most, bool required = false)
    {
        if (Amount(key, dimension, AmountRange.Any, required) is not { } stated)
            return null;

        // A bound written in another unit is still that bound.
        var slack = 1e-9 * (most.Coherent - least.Coherent);
        if (stated.Value.Coherent >= least.Coherent - slack && stated.Value.Coherent <= most.Coherent + slack)
            return stated;

        Report(SpecDiagnostics.OutOfRange(stated.Span, PathOf(key), stated.Text, $"from {least} to {most}", null));
        return null;
    }

    /// <summary>A list of amounts.</summary>
    public ImmutableArray<Stated<Amount>> Amounts(string key, Dimension dimension, AmountRange range = AmountRange.Any, bool required = false)
    {
        var items = List(key, required);
        var amounts = ImmutableArray.CreateBuilder<Stated<Amount>>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            var path = $"{PathOf(key)}[{i}]";
            if (items[i] is not YamlScalar { IsNull: false } scalar)
                Report(SpecDiagnostics.NotA(DiagnosticCodes.MalformedAmount, items[i], path, "a number with a unit"));
            else if (AsAmount(scalar, path, dimension, range) is { } amount)
                amounts.Add(amount);
        }

        return amounts.DrainToImmutable();
    }

    /// <summary>A dimension with its tolerance; a fit of two parts only where <paramref name="allowFit"/> says so.</summary>
    public Stated<Toleranced>? Toleranced(
        string key, Dimension dimension, AmountRange range = AmountRange.Any, bool required = false, bool allowFit = false)
    {
        if (Scalar(key, required, DiagnosticCodes.MalformedAmount, "a dimension with a unit") is not { } scalar)
            return null;

        var path = PathOf(key);
        if (!Quantities.Toleranced.TryParse(scalar.Value, out var dimensioned, out var error))
        {
            ReportNotation(scalar, path, error, dimension);
            return null;
        }

        if (!IsOf(scalar, path, dimensioned.Nominal, dimension) || !IsInRange(scalar, path, dimensioned.Nominal, range))
            return null;
        if (range == AmountRange.Positive && dimensioned.Tolerance is Tolerance.Deviations { Lower: var lower } && dimensioned.Nominal.Coherent + lower <= 0)
        {
            Report(SpecDiagnostics.OutOfRange(scalar.Span, path, scalar.Value, "more than zero at its lower limit"));
            return null;
        }

        if (!allowFit && dimensioned.Tolerance is Tolerance.Fit)
        {
            Report(SpecDiagnostics.FitNotAllowed(scalar.Span, path, scalar.Value));
            return null;
        }

        return new(dimensioned, scalar.Span, scalar.Value);
    }

    /// <summary>A hardness with its window, in one of the scales that convert.</summary>
    public Stated<Hardness>? Hardness(string key, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.MalformedAmount, "a hardness") is not { } scalar)
            return null;
        if (Quantities.Hardness.TryParse(scalar.Value, out var hardness, out var error))
            return new(hardness, scalar.Span, scalar.Value);

        ReportNotation(scalar, PathOf(key), error, Dimension.OfHardness);
        return null;
    }

    private Stated<Amount>? AsAmount(YamlScalar scalar, string path, Dimension dimension, AmountRange range)
    {
        if (!Quantities.Amount.TryParse(scalar.Value, out var amount, out var error))
        {
            ReportNotation(scalar, path, error, dimension);
            return null;
        }

        return IsOf(scalar, path, amount, dimension) && IsInRange(scalar, path, amount, range)
            ? new(amount, scalar.Span, scalar.Value)
            : null;
    }

    private void ReportNotation(YamlScalar scalar, string path, NotationError error, Dimension dimension)
    {
        if (CoreSchema.KindOf(scalar) == ScalarKind.NotFinite)
            Report(SpecDiagnostics.NotFinite(scalar.Span, path, scalar.Value));
        else if (string.IsNullOrWhiteSpace(scalar.Value))
            Report(SpecDiagnostics.EmptyText(scalar.Span, path));
        else
            Report(SpecDiagnostics.Notation(scalar.Part(error.Start, error.Length), path, error, dimension));
    }

    private bool IsOf(YamlScalar scalar, string path, Amount amount, Dimension dimension)
    {
        if (!double.IsFinite(amount.Coherent))
        {
            Report(SpecDiagnostics.NotFinite(scalar.Span, path, scalar.Value));
            return false;
        }

        // 0.5 may be half of it or half a per cent.
        if (dimension == Dimension.Ratio && amount.Unit.Symbol.Length == 0)
        {
            Report(SpecDiagnostics.ShareWithoutUnit(scalar.Span, path, scalar.Value, amount));
            return false;
        }

        if (amount.Dimension == dimension)
            return true;

        if (amount.Unit.Symbol.Length == 0)
        {
            Report(SpecDiagnostics.MissingUnit(scalar.Span, path, scalar.Value, dimension));
        }
        else
        {
            var unit = NumberHints.AfterNumber(scalar.Value);
            Report(SpecDiagnostics.UnitMismatch(
                scalar.Part(unit, scalar.Value.Length - unit), path, scalar.Value, dimension, amount.Dimension));
        }

        return false;
    }

    private bool IsInRange(YamlScalar scalar, string path, Amount amount, AmountRange range)
    {
        var value = amount.Coherent;
        var expected = range switch
        {
            AmountRange.NotNegative when value < 0 => "zero or more",
            AmountRange.Positive when value <= 0 => "more than zero",
            AmountRange.NotPositive when value > 0 => "zero or less",
            _ => null,
        };
        if (expected is null && Limits.Of(amount.Dimension) is var (least, most) && !(value >= least.Coherent && value <= most.Coherent))
            expected = value < least.Coherent ? $"at least {least}" : $"at most {most}";
        if (expected is null)
            return true;

        Report(SpecDiagnostics.OutOfRange(scalar.Span, path, scalar.Value, expected));
        return false;
    }
}
