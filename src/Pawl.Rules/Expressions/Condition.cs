using Pawl.Analysis.Core;

namespace Pawl.Rules.Expressions;

/// <summary>Whether something holds, over all tolerances.</summary>
internal enum Verdict
{
    /// <summary>At no corner of the tolerances.</summary>
    No,

    /// <summary>At some corners.</summary>
    Perhaps,

    /// <summary>At every corner.</summary>
    Yes,

    /// <summary>A quantity that it needs is not evaluated.</summary>
    Unknown,

    /// <summary>The subject has no quantity of that kind.</summary>
    Absent,
}

/// <summary>Something that holds of a subject or not.</summary>
internal abstract class Condition
{
    /// <summary>Every quantity that takes part.</summary>
    public abstract void Collect(List<QuantityPath> paths);

    public abstract Verdict Of(Subject subject);

    public sealed class Literal(bool value) : Condition
    {
        public override void Collect(List<QuantityPath> paths)
        {
        }

        public override Verdict Of(Subject subject) => value ? Verdict.Yes : Verdict.No;
    }

    /// <summary>A truth quantity.</summary>
    public sealed class Named(QuantityPath path) : Condition
    {
        public QuantityPath Path { get; } = path;

        public override void Collect(List<QuantityPath> paths) => paths.Add(Path);

        public override Verdict Of(Subject subject) => Path.Find(subject) switch
        {
            null => Verdict.Absent,
            { IsEvaluated: false } => Verdict.Unknown,
            { Truth: true } => Verdict.Yes,
            _ => Verdict.No,
        };
    }

    public sealed class Not(Condition operand) : Condition
    {
        public override void Collect(List<QuantityPath> paths) => operand.Collect(paths);

        public override Verdict Of(Subject subject) => operand.Of(subject) switch
        {
            Verdict.No => Verdict.Yes,
            Verdict.Yes => Verdict.No,
            var other => other,
        };
    }

    public sealed class Both(Condition left, Condition right) : Condition
    {
        public override void Collect(List<QuantityPath> paths)
        {
            left.Collect(paths);
            right.Collect(paths);
        }

        public override Verdict Of(Subject subject)
        {
            var first = left.Of(subject);
            if (first == Verdict.No)
                return Verdict.No;
            var second = right.Of(subject);
            if (second == Verdict.No)
                return Verdict.No;
            if (first == Verdict.Absent || second == Verdict.Absent)
                return Verdict.Absent;
            if (first == Verdict.Unknown || second == Verdict.Unknown)
                return Verdict.Unknown;
            return first == Verdict.Yes && second == Verdict.Yes ? Verdict.Yes : Verdict.Perhaps;
        }
    }

    public sealed class Either(Condition left, Condition right) : Condition
    {
        public override void Collect(List<QuantityPath> paths)
        {
            left.Collect(paths);
            right.Collect(paths);
        }

        public override Verdict Of(Subject subject)
        {
            var first = left.Of(subject);
            if (first == Verdict.Yes)
                return Verdict.Yes;
            var second = right.Of(subject);
            if (second == Verdict.Yes)
                return Verdict.Yes;
            if (first == Verdict.Perhaps || second == Verdict.Perhaps)
                return Verdict.Perhaps;
            if (first == Verdict.Unknown || second == Verdict.Unknown)
                return Verdict.Unknown;
            return first == Verdict.Absent || second == Verdict.Absent ? Verdict.Absent : Verdict.No;
        }
    }

    /// <summary>Two truths that agree.</summary>
    public sealed class Same(Condition left, Condition right) : Condition
    {
        public override void Collect(List<QuantityPath> paths)
        {
            left.Collect(paths);
            right.Collect(paths);
        }

        public override Verdict Of(Subject subject)
        {
            var (first, second) = (left.Of(subject), right.Of(subject));
            if (first == Verdict.Absent || second == Verdict.Absent)
                return Verdict.Absent;
            if (first == Verdict.Unknown || second == Verdict.Unknown)
                return Verdict.Unknown;
            if (first == Verdict.Perhaps || second == Verdict.Perhaps)
                return Verdict.Perhaps;
            return first == second ? Verdict.Yes : Verdict.No;
        }
    }

    /// <summary>A text quantity that is one of some words.</summary>
    public sealed class OneOf(QuantityPath path, ImmutableArray<string> words) : Condition
    {
        public override void Collect(List<QuantityPath> paths) => paths.Add(path);

        public override Verdict Of(Subject subject) => path.Find(subject) switch
        {
            null => Verdict.Absent,
            { IsEvaluated: false } => Verdict.Unknown,
            var quantity => words.Contains(quantity.Text!) ? Verdict.Yes : Verdict.No,
        };
    }

    /// <summary>Two text quantities that say the same.</summary>
    public sealed class SameText(QuantityPath left, QuantityPath right) : Condition
    {
        public override void Collect(List<QuantityPath> paths)
        {
            paths.Add(left);
            paths.Add(right);
        }

        public override Verdict Of(Subject subject)
        {
            if (left.Find(subject) is not { } first || right.Find(subject) is not { } second)
                return Verdict.Absent;
            if (!first.IsEvaluated || !second.IsEvaluated)
                return Verdict.Unknown;
            return first.Text == second.Text ? Verdict.Yes : Verdict.No;
        }
    }

    /// <summary>A difference of two numbers against zero.</summary>
    /// <param name="difference">Left less right, zero where they agree to nine digits.</param>
    /// <param name="inputs">Every quantity in it.</param>
    /// <param name="op">Less or equal to; the others are these two, turned or denied.</param>
    public sealed class Compared(NumberExpression difference, ImmutableArray<QuantityPath> inputs, Operator op) : Condition
    {
        public override void Collect(List<QuantityPath> paths) => paths.AddRange(inputs);

        public override Verdict Of(Subject subject)
        {
            if (difference.Evaluate(subject, out _) is not { } quantity)
                return Verdict.Absent;
            if (!quantity.IsEvaluated)
                return Verdict.Unknown;

            var (least, greatest) = (quantity.Value.Min, quantity.Value.Max);
            return op == Operator.Less
                ? Of(certain: greatest < 0, possible: least < 0)
                : Of(certain: least == 0 && greatest == 0, possible: least <= 0 && greatest >= 0);
        }

        private static Verdict Of(bool certain, bool possible) => certain ? Verdict.Yes : possible ? Verdict.Perhaps : Verdict.No;
    }
}
