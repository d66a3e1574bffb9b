using Pawl.Analysis.Core;
using Pawl.Quantities;

namespace Pawl.Rules.Expressions;

/// <summary>An expression whose names, kinds and dimensions are settled.</summary>
internal abstract record Bound(Syntax Syntax)
{
    public abstract ValueKind ValueKind { get; }

    /// <summary>A number as a formula over the inputs of its scope.</summary>
    /// <param name="Syntax">As written.</param>
    /// <param name="Formula">In coherent units.</param>
    /// <param name="Dimension">What it measures.</param>
    public sealed record Number(Syntax Syntax, Formula Formula, Dimension Dimension) : Bound(Syntax)
    {
        public override ValueKind ValueKind => ValueKind.Number;

        /// <summary>A product or quotient took part: angles count as plain numbers.</summary>
        public bool IsLoose { get; init; }

        /// <summary>The value, when no quantity takes part.</summary>
        public double? Constant { get; init; }

        /// <summary>The unit in which to show it: that of a quantity or amount in it, of the same dimension.</summary>
        public Unit? Unit { get; init; }

        /// <summary>What a margin is a fraction of when the limit is zero.</summary>
        public double Scale { get; init; } = 1;

        /// <summary>The quantity, when it is nothing but one.</summary>
        public QuantityPath? Bare { get; init; }

        public bool FitsWith(Number other) => FitsWith(other.Dimension, other.IsLoose);

        public bool FitsWith(Dimension other, bool otherIsLoose) =>
            IsLoose || otherIsLoose ? Dimension.EqualsUpToAngle(other) : Dimension == other;
    }

    public sealed record Text(Syntax Syntax, QuantityPath? Path, string? Literal) : Bound(Syntax)
    {
        public override ValueKind ValueKind => ValueKind.Text;
    }

    public sealed record Truth(Syntax Syntax, Condition Condition, bool? Literal = null) : Bound(Syntax)
    {
        public override ValueKind ValueKind => ValueKind.Truth;
    }
}
