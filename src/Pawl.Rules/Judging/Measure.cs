using Pawl.Analysis.Core;
using Pawl.Rules.Expressions;

namespace Pawl.Rules.Judging;

/// <summary>What a rule measures of a subject.</summary>
internal abstract class Measure(QuantityKind kind)
{
    public QuantityKind Kind { get; } = kind;

    /// <summary>The measured quantity; null with the reason when the subject has none.</summary>
    public abstract Quantity? Of(Subject subject, out ImmutableArray<string> absence);

    public sealed class Number(NumberExpression expression) : Measure(expression.Kind)
    {
        public override Quantity? Of(Subject subject, out ImmutableArray<string> absence) => expression.Evaluate(subject, out absence);
    }

    /// <summary>A text or truth quantity.</summary>
    public sealed class Named(QuantityPath path) : Measure(path.Kind)
    {
        public override Quantity? Of(Subject subject, out ImmutableArray<string> absence)
        {
            var quantity = path.Find(subject);
            absence = quantity is null ? path.Absence : [];
            return quantity;
        }
    }

    /// <summary>A condition that must hold, or must not.</summary>
    /// <param name="kind">Kind of the quantity that it becomes.</param>
    /// <param name="condition">The condition.</param>
    /// <param name="inputs">Every quantity in it.</param>
    /// <param name="demanded">What the rule demands: where tolerances leave it open, the other is reported.</param>
    public sealed class Truth(QuantityKind kind, Condition condition, ImmutableArray<QuantityPath> inputs, bool demanded) : Measure(kind)
    {
        public override Quantity? Of(Subject subject, out ImmutableArray<string> absence)
        {
            if (PathInputs.Find(inputs, subject, out absence) is not { IsDefault: false } found)
                return null;
            var verdict = condition.Of(subject);
            if (verdict == Verdict.Unknown)
                return Quantity.NotEvaluated(Kind, found, Quantity.MissingReasons(found));
            var holds = verdict == Verdict.Yes || (verdict == Verdict.Perhaps && !demanded);
            return Quantity.OfTruth(Kind, Origin.Computed.Instance, holds, found);
        }
    }
}
