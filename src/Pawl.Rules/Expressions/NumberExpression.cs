using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Rules.Expressions;

/// <summary>A number, read from a subject: an amount, a quantity, or a formula of quantities.</summary>
internal sealed class NumberExpression
{
    private readonly ImmutableArray<QuantityPath> _inputs;
    private readonly Formula? _formula;
    private readonly Quantity? _constant;
    private readonly QuantityPath? _bare;

    private NumberExpression(
        QuantityKind kind, Dimension dimension, bool isLoose, ImmutableArray<QuantityPath> inputs, Formula? formula, Quantity? constant, QuantityPath? bare)
    {
        Kind = kind;
        Dimension = dimension;
        IsLoose = isLoose;
        _inputs = inputs;
        _formula = formula;
        _constant = constant;
        _bare = bare;
    }

    /// <summary>The kind of the quantity that evaluation gives.</summary>
    public QuantityKind Kind { get; }

    public Dimension Dimension { get; }

    /// <summary>A product or quotient took part: angles count as plain numbers.</summary>
    public bool IsLoose { get; }

    /// <summary>The value, when it hangs on no subject.</summary>
    public double? Constant => _constant?.Value.Nominal;

    public static NumberExpression OfConstant(Quantity constant) =>
        new(constant.Kind, constant.Kind.Dimension, false, [], null, constant, null);

    public static NumberExpression OfQuantity(QuantityPath path) =>
        new(path.Kind, path.Kind.Dimension, false, [path], null, null, path);

    public static NumberExpression OfFormula(
        QuantityKind kind, Dimension dimension, bool isLoose, ImmutableArray<QuantityPath> inputs, Formula formula) =>
        new(kind, dimension, isLoose, inputs, formula, null, null);

    /// <summary>The value as a quantity with its derivation, or null with the reason when the subject lacks what it needs.</summary>
    public Quantity? Evaluate(Subject subject, out ImmutableArray<string> absence)
    {
        absence = [];
        if (_constant is not null)
            return _constant;
        if (_bare is not null)
        {
            var quantity = _bare.Find(subject);
            if (quantity is null)
                absence = _bare.Absence;
            return quantity;
        }

        return PathInputs.Find(_inputs, subject, out absence) is { IsDefault: false } inputs
            ? Quantity.Compute(Kind, inputs, _formula!)
            : null;
    }
}

internal static class PathInputs
{
    /// <summary>All quantities that the paths name, or the default array with what is absent.</summary>
    public static ImmutableArray<Quantity> Find(ImmutableArray<QuantityPath> paths, Subject subject, out ImmutableArray<string> absence)
    {
        absence = [];
        var found = ImmutableArray.CreateBuilder<Quantity>(paths.Length);
        foreach (var path in paths)
        {
            if (path.Find(subject) is not { } quantity)
            {
                absence = path.Absence;
                return default;
            }

            found.Add(quantity);
        }

        return found.MoveToImmutable();
    }
}
