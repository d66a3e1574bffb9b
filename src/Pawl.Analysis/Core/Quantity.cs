using Pawl.Quantities;
using Pawl.Specs.Text;

namespace Pawl.Analysis.Core;

/// <summary>Where a quantity comes from.</summary>
public abstract record Origin
{
    private Origin()
    {
    }

    /// <summary>The spec or its catalogue states it.</summary>
    /// <param name="Span">Where.</param>
    /// <param name="Text">As written.</param>
    /// <param name="Tolerance">Where its limits come from: the class of ISO 286, the general tolerance, "none stated".</param>
    public sealed record Declared(SourceSpan Span, string Text, string Tolerance = "") : Origin;

    /// <summary>The spec is silent; a default stands in. Every one is listed in the report.</summary>
    /// <param name="Basis">Which default, and its source.</param>
    public sealed record Assumed(string Basis) : Origin;

    /// <summary>Computed by the kind's formula from the inputs.</summary>
    public sealed record Computed : Origin
    {
        public static readonly Computed Instance = new();
    }
}

/// <summary>
/// A named, dimensioned value of a subject, nominal with least and greatest over all tolerances, with its derivation; or not
/// evaluated, with the reasons.
/// </summary>
/// <remarks>
/// Quantities form a graph: each knows its inputs. A toleranced declared value is a <em>leaf</em>. A computed quantity holds its
/// value at every corner of the leaves that it depends on, so that an input which enters twice (a centre distance that sets both
/// the pressure angle and the clearance) is not counted as two. The worst case is exact for formulas that are monotonic in each
/// leaf.
/// </remarks>
public sealed class Quantity
{
    private const int MaxReasons = 8;
    private const string FurtherReasons = "further reasons, not listed";

    // The quantity itself stands for none.
    private Quantity? _nearest;
    private int _steps;

    private Quantity(QuantityKind kind, Origin origin, ImmutableArray<Quantity> inputs)
    {
        Kind = kind;
        Origin = origin;
        Inputs = inputs;
    }

    public QuantityKind Kind { get; }

    /// <summary>Path of the subject that has it; set when the subject takes it in.</summary>
    public string Subject { get; internal set; } = "";

    public Origin Origin { get; }

    /// <summary>What the formula was given, in the order of <see cref="QuantityKind.Symbols"/>.</summary>
    public ImmutableArray<Quantity> Inputs { get; }

    /// <summary>Symbols of <see cref="Inputs"/> in the formula, one each: as declared, else those that the inputs bear themselves.</summary>
    public ImmutableArray<string> Symbols
    {
        get => field.IsEmpty && !Inputs.IsEmpty ? Kind.Symbols.IsEmpty ? [.. Inputs.Select(OwnSymbol)] : Kind.Symbols : field;
        private set;
    }
    = [];

    private static string OwnSymbol(Quantity input) => input.Kind.Symbol.Length > 0 ? input.Kind.Symbol : input.Kind.Name;

    /// <summary>The formula, for what is computed of numbers.</summary>
    internal Formula? Formula { get; private init; }

    /// <summary>The row of a table that a text stands for.</summary>
    internal object? Row { get; private set; }

    /// <summary>Why there is no value; empty when there is one.</summary>
    public ImmutableArray<string> Reasons { get; private init; } = [];

    public bool IsEvaluated => Reasons.IsEmpty;

    /// <summary>The value in coherent units; only for numbers that are evaluated.</summary>
    public Extent Value { get; private init; }

    /// <summary>The value of a text quantity.</summary>
    public string? Text { get; private init; }

    /// <summary>The value of a truth quantity.</summary>
    public bool Truth { get; private init; }

    /// <summary>True when the leaves were too many and the inputs were taken as independent: bounds wide, never narrow.</summary>
    public bool IsBounded { get; private init; }

    /// <summary>Toleranced declared values that this depends on, by <see cref="Serial"/>; a leaf depends on itself.</summary>
    internal ImmutableArray<Quantity> Leaves { get; private set; } = [];

    /// <summary>Values at the corners of <see cref="Leaves"/>: bit k of the index set means leaf k at its greatest.</summary>
    internal ImmutableArray<double> Corners { get; private init; } = [];

    /// <summary>The declared value that the fewest steps lead to, itself included; of several the first in the order of the inputs; null when there is none.</summary>
    public Quantity? NearestDeclared
    {
        get
        {
            if (_nearest is null)
                FindNearest();
            return ReferenceEquals(_nearest, this) && Origin is not Origin.Declared ? null : _nearest;
        }
    }

    private void FindNearest()
    {
        (_nearest, _steps) = (this, 0);
        if (Origin is Origin.Declared)
            return;
        foreach (var input in Inputs)
        {
            if (input.Origin is Origin.Declared)
            {
                (_nearest, _steps) = (input, 1);
                return;
            }
        }

        foreach (var input in Inputs)
        {
            if (input.NearestDeclared is { } declared && (ReferenceEquals(_nearest, this) || input._steps + 1 < _steps))
                (_nearest, _steps) = (declared, input._steps + 1);
        }
    }

    /// <summary>Tells leaves apart and orders them.</summary>
    internal long Serial { get; private init; }

    /// <summary>Widened quantities count as leaves of their own; their serials follow those of declared ones.</summary>
    private static long _widened = 1L << 32;

    /// <summary>A number that is stated or assumed. <paramref name="serial"/> must be unique in the analysis.</summary>
    public static Quantity Leaf(QuantityKind kind, Origin origin, Extent value, int serial)
    {
        if (value.IsExact)
            return new(kind, origin, []) { Value = value, Serial = serial };

        var leaf = new Quantity(kind, origin, []) { Value = value, Serial = serial, Corners = [value.Min, value.Max] };
        leaf.Leaves = [leaf];
        return leaf;
    }

    public static Quantity OfText(QuantityKind kind, Origin origin, string text, ImmutableArray<Quantity> inputs) =>
        new(kind, origin, inputs) { Text = text };

    public static Quantity OfTruth(QuantityKind kind, Origin origin, bool truth, ImmutableArray<Quantity> inputs) =>
        new(kind, origin, inputs) { Truth = truth };

    public static Quantity NotEvaluated(QuantityKind kind, ImmutableArray<Quantity> inputs, params ImmutableArray<string> reasons) =>
        new(kind, Origin.Computed.Instance, inputs) { Reasons = reasons };

    /// <summary>Applies a formula at nominal and at every corner of the leaves beneath the inputs.</summary>
    /// <param name="kind">What is computed.</param>
    /// <param name="inputs">Numbers, in the order that the formula wants them.</param>
    /// <param name="formula">Pure; an <see cref="OutsideValidityException"/> makes the result not evaluated, with its message.</param>
    public static Quantity Compute(QuantityKind kind, ImmutableArray<Quantity> inputs, Formula formula) =>
        Compute(kind, inputs, formula, turns: false);

    internal static Quantity Compute(QuantityKind kind, ImmutableArray<Quantity> inputs, Formula formula, bool turns)
    {
        ArgumentNullException.ThrowIfNull(formula);
        if (MissingReasons(inputs) is { IsEmpty: false } reasons)
            return NotEvaluated(kind, inputs, reasons);

        try
        {
            var result = CornerAlgebra.Evaluate(inputs, formula);
            if (!Shows(kind, result.Extent))
                return NotFinite(kind, inputs);
            if (turns && InsideTheBox.Search(inputs, formula, result) is { } wider)
                return Widened(kind, inputs, wider, result.IsBounded, formula);
            return result.IsBounded
                ? Widened(kind, inputs, result.Extent, formula: formula)
                : new(kind, Origin.Computed.Instance, inputs)
                {
                    Value = result.Extent,
                    Formula = formula,
                    Leaves = result.Leaves,
                    Corners = result.Corners,
                };
        }
        catch (OutsideValidityException outside)
        {
            return NotEvaluated(kind, inputs, [outside.Message]);
        }
    }

    /// <summary>What another subject states, under a kind of its own: the same place, value and tolerances.</summary>
    internal static Quantity Taken(QuantityKind kind, Quantity there) => !there.IsEvaluated
        ? NotEvaluated(kind, [there], there.Reasons)
        : new(kind, there.Origin, [there]) { Value = there.Value, Formula = static x => x[0], Leaves = there.Leaves, Corners = there.Corners };

    /// <summary>The same value, that counts as one tolerance from here on, whatever it depends on: wide, never narrow.</summary>
    /// <remarks>For a value whose parts enter nothing else, such as a loss: that is exact and saves corners.</remarks>
    internal static Quantity AsOne(Quantity value) => !value.IsEvaluated || value.Value.IsExact
        ? value
        : Widened(value.Kind, value.Inputs, value.Value, value.IsBounded, value.Formula).With(value.Symbols);

    /// <summary>A value whose least and greatest the mechanics knows in closed form; it counts as one tolerance from there on.</summary>
    public static Quantity WithLimits(QuantityKind kind, Extent bounds, ImmutableArray<Quantity> inputs) =>
        Shows(kind, bounds)
            ? Widened(kind, inputs, bounds, isWide: false)
            : NotFinite(kind, inputs);

    private static Quantity Widened(
        QuantityKind kind, ImmutableArray<Quantity> inputs, Extent bounds, bool isWide = true, Formula? formula = null)
    {
        var quantity = new Quantity(kind, Origin.Computed.Instance, inputs)
        {
            Formula = formula,
            Value = bounds,
            IsBounded = isWide,
            Serial = Interlocked.Increment(ref _widened),
            Corners = [bounds.Min, bounds.Max],
        };
        quantity.Leaves = [quantity];
        return quantity;
    }

    /// <summary>A number that another part of the mechanics computed at nominal, such as the solution of a linear system.</summary>
    public static Quantity Computed(QuantityKind kind, double value, ImmutableArray<Quantity> inputs) =>
        MissingReasons(inputs) is { IsEmpty: false } reasons ? NotEvaluated(kind, inputs, reasons)
        : Shows(kind, Extent.Exactly(value)) ? new(kind, Origin.Computed.Instance, inputs) { Value = Extent.Exactly(value) }
        : NotFinite(kind, inputs);

    // Also in the unit of a report, where a number near the end of its range may go beyond it.
    private static bool Shows(QuantityKind kind, Extent value) =>
        double.IsFinite(kind.Unit.FromCoherent(value.Nominal)) && double.IsFinite(kind.Unit.FromCoherent(value.Min)) && double.IsFinite(kind.Unit.FromCoherent(value.Max));

    private static Quantity NotFinite(QuantityKind kind, ImmutableArray<Quantity> inputs) =>
        NotEvaluated(kind, inputs, [$"{kind.Title.ToLowerInvariant()} has no finite value for these inputs"]);

    /// <summary>A text that is computed.</summary>
    public static Quantity ComputedText(QuantityKind kind, string text, ImmutableArray<Quantity> inputs = default) =>
        OfText(kind, Origin.Computed.Instance, text, inputs.IsDefault ? [] : inputs);

    internal Quantity With(ImmutableArray<string> symbols)
    {
        Symbols = symbols;
        return this;
    }

    internal Quantity With(object row)
    {
        Row = row;
        return this;
    }

    /// <summary>The value where the toleranced values beneath are as given: the same formulas over again.</summary>
    /// <param name="leaf">Value of a toleranced declared quantity, and of one whose limits are known in closed form only.</param>
    /// <param name="known">Values at this point, so that each is computed once.</param>
    internal double At(Func<Quantity, double> leaf, Dictionary<Quantity, double> known)
    {
        if (Formula is null)
            return Leaves.IsEmpty ? Value.Nominal : Leaves.Length == 1 && ReferenceEquals(Leaves[0], this) ? Once(leaf) : Value.Nominal;
        return Once(quantity =>
        {
            var x = new double[Inputs.Length];
            for (var i = 0; i < x.Length; i++)
                x[i] = Inputs[i].At(leaf, known);
            return Formula(x);
        });

        double Once(Func<Quantity, double> compute)
        {
            if (!known.TryGetValue(this, out var value))
                known.Add(this, value = compute(this));
            return value;
        }
    }

    /// <summary>The reasons of all inputs that are not evaluated, each once, in order; of many the first, for the others go with them.</summary>
    public static ImmutableArray<string> MissingReasons(ImmutableArray<Quantity> inputs)
    {
        ImmutableArray<string> reasons = [];
        foreach (var input in inputs)
        {
            foreach (var reason in input.Reasons)
            {
                if (reasons.Length == MaxReasons)
                    return reasons.Add(FurtherReasons);
                if (!reasons.Contains(reason))
                    reasons = reasons.IsEmpty && input.Reasons.Length <= MaxReasons ? input.Reasons : reasons.Add(reason);
            }
        }

        return reasons;
    }

    public override string ToString() => $"{Subject}.{Kind.Name}";
}

/// <summary>A pure formula over numbers in coherent units.</summary>
public delegate double Formula(ReadOnlySpan<double> inputs);
