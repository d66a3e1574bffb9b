using Pawl.Analysis.Core;
using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Rules.Expressions;

/// <summary>Settles names, kinds and dimensions of an expression once, when a pack is read.</summary>
/// <param name="subject">The kind of subject that the rule is put to.</param>
/// <param name="source">The text and its place.</param>
/// <param name="report">Receives complaints.</param>
internal sealed partial class Binder(SubjectKind subject, ExpressionSource source, Action<Diagnostic> report)
{
    /// <summary>Larger exponents of a base dimension are no physics.</summary>
    private const int MostExponent = 20;

    private const double Same = 1e-9;

    /// <summary>Reads and binds a text; null when it was wrong, which is then reported.</summary>
    public static Bound? Bind(SubjectKind subject, ExpressionSource source, List<QuantityPath> scope, Action<Diagnostic> report)
    {
        if (ExpressionParser.Parse(source.Text, out var error) is { } syntax)
            return new Binder(subject, source, report).Bind(syntax, scope);
        report(RuleDiagnostics.Expression(source.SpanOf(error!.Start, error.End), error));
        return null;
    }

    private Bound? Bind(Syntax syntax, List<QuantityPath> scope) => syntax switch
    {
        Syntax.Number { Amount: var amount } => new Bound.Number(syntax, Constant(amount.Coherent), amount.Dimension)
        {
            Constant = amount.Coherent,
            Unit = amount.Unit,
        },
        Syntax.Text text => new Bound.Text(syntax, null, text.Value),
        Syntax.Truth truth => new Bound.Truth(syntax, new Condition.Literal(truth.Value), truth.Value),
        Syntax.Name name => Name(name, scope),
        Syntax.Unary { Operator: Operator.Not } not => Truth(not.Operand) is { } operand
            ? new Bound.Truth(syntax, new Condition.Not(operand.Condition))
            : null,
        // −20 °C is a temperature, not twenty degrees that are turned round.
        Syntax.Unary { Operand: Syntax.Number { Amount: { Dimension.IsPoint: true } warm } literal } =>
            Bind(literal with { Amount = warm with { Value = -warm.Value } }, scope),
        Syntax.Unary negate => Number(negate.Operand, scope) is { } operand ? Negate(syntax, operand) : null,
        Syntax.Binary { Operator: Operator.And or Operator.Or } both => Connect(both),
        Syntax.Binary { Operator: var op } comparison when op.IsComparison() => Compare(comparison),
        Syntax.Binary arithmetic => Arithmetic(arithmetic, scope),
        Syntax.In within => In(within),
        Syntax.Call call => Call(call, scope),
        _ => throw new InvalidOperationException($"No meaning for {syntax.GetType().Name}."),
    };

    private static Formula Constant(double value) => _ => value;

    private Bound? Name(Syntax.Name name, List<QuantityPath> scope)
    {
        if (Paths.Find(subject, name.Path, source.SpanOf(name.Start, name.End), report) is not { } path)
            return null;

        switch (path.Kind.ValueKind)
        {
            case ValueKind.Text:
                return new Bound.Text(name, path, null);
            case ValueKind.Truth:
                return new Bound.Truth(name, new Condition.Named(path));
        }

        return Named(name, path, scope);
    }

    private static Bound.Number Named(Syntax syntax, QuantityPath path, List<QuantityPath> scope)
    {
        var index = scope.FindIndex(p => p.Text == path.Text);
        if (index < 0)
        {
            index = scope.Count;
            scope.Add(path);
        }

        return new(syntax, x => x[index], path.Kind.Dimension) { Unit = path.Kind.Unit, Scale = path.Kind.Scale, Bare = path };
    }

    /// <summary>A quantity without its tolerances, for a rule on what was meant rather than on what may be made.</summary>
    private Bound.Number? Nominal(Syntax.Call call, List<QuantityPath> scope)
    {
        if (call.Arguments is [Syntax.Name name])
            return Number(name, []) is { Bare: { } path } ? Named(call, path.AtNominal(), scope) : null;
        Report(call, "`nominal` takes the name of one quantity.", null, RuleCodes.ExpressionSyntax);
        return null;
    }

    private Bound.Number? Negate(Syntax syntax, Bound.Number operand)
    {
        if (IsPoint(operand))
            return null;
        var formula = operand.Formula;
        return operand with { Syntax = syntax, Formula = x => -formula(x), Constant = -operand.Constant, Bare = null };
    }

    private Bound.Truth? Connect(Syntax.Binary both)
    {
        var (left, right) = (Truth(both.Left), Truth(both.Right));
        if (left is null || right is null)
            return null;
        return new Bound.Truth(both, both.Operator == Operator.And
            ? new Condition.Both(left.Condition, right.Condition)
            : new Condition.Either(left.Condition, right.Condition));
    }

    private Bound.Truth? Compare(Syntax.Binary comparison)
    {
        var scope = new List<QuantityPath>();
        var (left, right) = (Bind(comparison.Left, scope), Bind(comparison.Right, scope));
        switch (left, right)
        {
            case (null, _) or (_, null):
                return null;
            case (Bound.Number a, Bound.Number b):
                return CompareNumbers(comparison, a, b, [.. scope]);
            case (Bound.Text a, Bound.Text b) when comparison.Operator is Operator.Equal or Operator.NotEqual:
                return CompareTexts(comparison, a, b);
            case (Bound.Truth a, Bound.Truth b) when comparison.Operator is Operator.Equal or Operator.NotEqual:
                return Denied(comparison, new Condition.Same(a.Condition, b.Condition));
            default:
                Report(comparison, left.ValueKind == right.ValueKind
                    ? $"A {Word(left.ValueKind)} is not more or less than another."
                    : $"`{comparison.Operator.Text()}` compares a {Word(left.ValueKind)} with a {Word(right.ValueKind)}.",
                    "A text stands in quotes: 'internal'. Parentheses go around a comparison behind `not`.", RuleCodes.KindMismatch);
                return null;
        }
    }

    private Bound.Truth? CompareNumbers(Syntax.Binary comparison, Bound.Number left, Bound.Number right, ImmutableArray<QuantityPath> inputs)
    {
        if (!left.FitsWith(right))
        {
            report(RuleDiagnostics.Dimension(Span(comparison), $"`{comparison.Operator.Text()}` compares", left.Dimension, right.Dimension));
            return null;
        }

        // Greater is less with the sides changed; greater or equal is less, denied.
        var turned = comparison.Operator is Operator.Greater or Operator.LessOrEqual;
        var (a, b) = turned ? (right.Formula, left.Formula) : (left.Formula, right.Formula);
        var kind = new QuantityKind
        {
            Name = "difference",
            Title = "Difference",
            Unit = UnitOf(left.Dimension, left.Unit),
            Formula = source.Text,
            Symbols = [.. inputs.Select(p => p.Text)],
        };
        var difference = NumberExpression.OfFormula(kind, left.Dimension, left.IsLoose || right.IsLoose, inputs, x => Difference(a(x), b(x)));
        var strict = comparison.Operator is Operator.Equal or Operator.NotEqual ? Operator.Equal : Operator.Less;
        Condition compared = new Condition.Compared(difference, inputs, strict);
        return new Bound.Truth(comparison, comparison.Operator is Operator.NotEqual or Operator.GreaterOrEqual or Operator.LessOrEqual
            ? new Condition.Not(compared)
            : compared);
    }

    private static double Difference(double a, double b)
    {
        var difference = a - b;
        return Math.Abs(difference) <= Same * Math.Max(Math.Abs(a), Math.Abs(b)) ? 0 : difference;
    }

    private Bound.Truth? CompareTexts(Syntax.Binary comparison, Bound.Text left, Bound.Text right)
    {
        Condition? condition = (left, right) switch
        {
            ({ Path: { } a }, { Path: { } b }) => new Condition.SameText(a, b),
            ({ Path: { } a }, { Literal: { } word }) => new Condition.OneOf(a, [word]),
            ({ Literal: { } word }, { Path: { } b }) => new Condition.OneOf(b, [word]),
            _ => null,
        };
        if (condition is not null)
            return Denied(comparison, condition);
        Report(comparison, "Two texts in quotes are compared.", "Name a quantity on one side.", RuleCodes.KindMismatch);
        return null;
    }

    private static Bound.Truth Denied(Syntax.Binary comparison, Condition same) =>
        new(comparison, comparison.Operator == Operator.NotEqual ? new Condition.Not(same) : same);

    private Bound.Truth? In(Syntax.In within)
    {
        if (Bind(within.Operand, []) is not { } operand)
            return null;
        if (operand is not Bound.Text { Path: { } path })
        {
            Report(within.Operand, "Before `in` stands a text quantity.", null, RuleCodes.KindMismatch);
            return null;
        }

        var words = ImmutableArray.CreateBuilder<string>(within.Words.Length);
        foreach (var word in within.Words)
        {
            if (word is Syntax.Text text)
            {
                words.Add(text.Value);
                continue;
            }

            Report(word, "Behind `in` stand texts in quotes.", "Write `kind in ('internal', 'external')`.", RuleCodes.KindMismatch);
            return null;
        }

        Condition condition = new Condition.OneOf(path, words.DrainToImmutable());
        return new Bound.Truth(within, within.Negated ? new Condition.Not(condition) : condition);
    }

    private Bound.Number? Call(Syntax.Call call, List<QuantityPath> scope)
    {
        if (call.Function == "nominal")
            return Nominal(call, scope);
        var arguments = new List<Bound.Number>(call.Arguments.Length);
        foreach (var argument in call.Arguments)
        {
            if (Number(argument, scope) is { } number)
                arguments.Add(number);
        }

        if (!Functions.Names.Contains(call.Function))
        {
            report(RuleDiagnostics.UnknownFunction(source.SpanOf(call.Start, call.Start + call.Function.Length), call.Function));
            return null;
        }

        if (arguments.Count < call.Arguments.Length)
            return null;
        if (call.Function is "min" or "max" ? arguments.Count < 2 : arguments.Count != 1)
        {
            Report(call, $"`{call.Function}` takes {(call.Function is "min" or "max" ? "two or more values" : "one value")}.", null, RuleCodes.ExpressionSyntax);
            return null;
        }

        var first = arguments[0];
        var a = first.Formula;
        switch (call.Function)
        {
            case "min" or "max":
                return MinOrMax(call, arguments);
            case "abs":
                return IsPoint(first) ? null : Combined(call, x => Math.Abs(a(x)), first.Dimension, first, first);
            case "sqrt" when !IsPoint(first) && Exponents.TryHalve(first.Dimension, out var half):
                return Combined(call, x => Math.Sqrt(a(x)), half, first, first);
            case "round" or "floor" when first.FitsWith(Dimension.Ratio, false):
                Formula whole = call.Function == "round" ? x => Math.Round(a(x), MidpointRounding.AwayFromZero) : x => Math.Floor(a(x));
                return Combined(call, whole, first.Dimension, first, first);
            case "sin" or "cos" or "tan" when first.FitsWith(Dimension.OfAngle, false):
                Formula turn = call.Function switch
                {
                    "sin" => x => Math.Sin(a(x)),
                    "cos" => x => Math.Cos(a(x)),
                    _ => x => Math.Tan(a(x)),
                };
                return Combined(call, turn, Dimension.Ratio, first, first) with { IsLoose = false };
            default:
                var expected = call.Function switch
                {
                    "sqrt" => "a square, an area for example",
                    "round" or "floor" => "a number without a unit",
                    _ => "an angle",
                };
                Report(
                    call.Arguments[0], $"`{call.Function}` takes {expected}, but a {first.Dimension.Name} stands here.", null,
                    RuleCodes.DimensionMismatch);
                return null;
        }
    }

    private Bound.Number? MinOrMax(Syntax.Call call, List<Bound.Number> arguments)
    {
        var result = arguments[0];
        var least = call.Function == "min";
        for (var i = 1; i < arguments.Count; i++)
        {
            var next = arguments[i];
            if (!result.FitsWith(next))
            {
                report(RuleDiagnostics.Dimension(Span(call.Arguments[i]), $"`{call.Function}` compares", result.Dimension, next.Dimension));
                return null;
            }

            var (a, b) = (result.Formula, next.Formula);
            result = Combined(call, least ? x => Math.Min(a(x), b(x)) : x => Math.Max(a(x), b(x)), result.Dimension, result, next);
        }

        return result;
    }

    private Bound.Number? Number(Syntax syntax, List<QuantityPath> scope)
    {
        switch (Bind(syntax, scope))
        {
            case Bound.Number number:
                return number;
            case { } other:
                Report(syntax, $"A number is required here, but this is a {Word(other.ValueKind)}.", null, RuleCodes.KindMismatch);
                return null;
            default:
                return null;
        }
    }

    private Bound.Truth? Truth(Syntax syntax)
    {
        switch (Bind(syntax, []))
        {
            case Bound.Truth truth:
                return truth;
            case { } other:
                Report(
                    syntax, $"Something true or false is required here, but this is a {Word(other.ValueKind)}.",
                    "Compare it: `count > 1`, `kind == 'internal'`.", RuleCodes.KindMismatch);
                return null;
            default:
                return null;
        }
    }

    private bool IsPoint(Bound.Number number)
    {
        if (number.Dimension.IsPoint)
        {
            Report(
                number.Syntax, "A temperature on a scale cannot be scaled or multiplied.",
                "Take the difference of two temperatures first.", RuleCodes.DimensionMismatch);
        }

        return number.Dimension.IsPoint;
    }

    internal static Unit UnitOf(Dimension dimension, Unit? expected) =>
        expected is not null && expected.Dimension == dimension ? expected
        : dimension == Dimension.Ratio ? Units.One
        : Units.Fitting(dimension) is [var fitting, ..] ? fitting
        : new(dimension.Name, dimension, 1);

    internal static string Word(ValueKind kind) => kind switch
    {
        ValueKind.Number => "number",
        ValueKind.Text => "text",
        _ => "truth value",
    };

    private SourceSpan Span(Syntax syntax) => source.SpanOf(syntax.Start, syntax.End);

    private void Report(Syntax syntax, string message, string? hint, string code) =>
        report(RuleDiagnostics.Error(code, Span(syntax), message, hint));
}
