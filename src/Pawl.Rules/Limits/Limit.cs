using Pawl.Analysis.Core;
using Pawl.Rules.Expressions;
using Pawl.Specs.Yaml;

namespace Pawl.Rules.Limits;

/// <summary>A bound for a number: an expression, or one for each category.</summary>
internal abstract class Limit
{
    /// <summary>The bound as a quantity; null with the reason when the subject lacks what it needs.</summary>
    public abstract Quantity? Of(Subject subject, out ImmutableArray<string> absence);

    /// <summary>The bound, when it is the same for every subject.</summary>
    public virtual double? Constant => null;

    public sealed class Simple(NumberExpression expression, YamlScalar written) : Limit
    {
        public YamlScalar Written { get; } = written;

        public override double? Constant => expression.Constant;

        public override Quantity? Of(Subject subject, out ImmutableArray<string> absence) => expression.Evaluate(subject, out absence);
    }

    public sealed class ByCategory(Table<Limit> table) : Limit
    {
        public Table<Limit> Table { get; } = table;

        public override Quantity? Of(Subject subject, out ImmutableArray<string> absence) =>
            Table.Choose(subject, out absence, out var unevaluated) is { } limit ? limit.Of(subject, out absence) : unevaluated;
    }
}
